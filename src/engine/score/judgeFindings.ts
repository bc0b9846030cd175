/**
 * Each finding against what was there and what could be known: a hit names a cause rightly after a sign of it could be perceived or
 * measured; a condition that holds by the part's own state, one that names a fault which makes no hazard here, and one that means
 * nothing is wrong, is right without being a hazard;
 * the rest is a false call, a clean bill for a part that bears a cause too, unless it names a look-alike there.
 */

import type { Replay } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { condition } from '../catalogue/conditions.ts';
import { faultKind } from '../catalogue/faults.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { faultsOf, findPart, toolById } from '../world/edit.ts';
import type { Finding, World } from '../world/types.ts';
import { holdsAround } from './holdsAround.ts';
import { type Laid, perceivableFromVisited, premisesOf } from './known.ts';
import type { JudgedFinding } from './types.ts';

/** What the dispatcher has wrong is wrong on the ticket. */
const isOfTicket = (finding: Finding, { on }: Laid): boolean => finding.on === 'ticket' && on === 'dispatcher';

/** Whether a finding on one part speaks of a cause on another: the same premises, or metal that its source holds alive. */
const concerns = (world: World, finding: Finding, laid: Laid): boolean => {
  if (finding.on === laid.on || isOfTicket(finding, laid)) return true;
  const premises = premisesOf(world, laid);
  const part = findPart(world, finding.on);
  if (premises === null || part === null) return false;
  if (part.premises === premises) return true;
  const solution = solveCircuit(world);
  return solution.points.some(
    ({ point, live, sources }) =>
      point.startsWith(`${part.id}/`) && live && sources.some((group) => group.startsWith(`${premises}.`)),
  );
};

/** Whether a condition holds by the state of the part or tool, faults apart. */
const holdsByState = (world: World, finding: Finding): boolean => {
  const tool = toolById(world, finding.on);
  if (tool !== null) return finding.condition === 'wet' && tool.wet;
  const part = findPart(world, finding.on);
  if (part === null) return holdsAround(world, finding);
  return componentKind(part.kind).trueWhen.some(
    (entry) =>
      entry.condition === finding.condition &&
      Object.entries(entry.when).every(([name, value]) => part.state[name] === value),
  );
};

const isHealthy = (finding: Finding): boolean => condition(finding.condition).healthy === true;

/** Whether it calls fine what bears a cause, and is no name of a look-alike that lies there as well. */
const denies = (start: World, finding: Finding, causes: readonly Laid[]): boolean =>
  causes.some(({ on }) => on === finding.on) &&
  !faultsOf(start).some(
    ({ on, fault }) =>
      on === finding.on &&
      faultKind(fault.kind).benign &&
      finding.condition !== 'sound' &&
      faultKind(fault.kind).conditions.includes(finding.condition),
  );

/** Whether it names something wrong that lies there and is no cause of a hazard here. */
const namesFault = (start: World, finding: Finding): boolean =>
  faultsOf(start).some(
    ({ on, fault }) =>
      on === finding.on &&
      !faultKind(fault.kind).benign &&
      faultKind(fault.kind).conditions.includes(finding.condition),
  );

/** Judges one finding at the step where it was called. */
const judgeOne = (
  replay: Replay,
  step: number,
  world: World,
  finding: Finding,
  causes: readonly Laid[],
): JudgedFinding => {
  const named = causes.filter(
    (laid) => faultKind(laid.fault.kind).conditions.includes(finding.condition) && concerns(world, finding, laid),
  );
  const base = { finding: finding.id, on: finding.on, condition: finding.condition, minute: finding.minute };
  const hit = named.find((laid) => perceivableFromVisited(replay, step, laid, world));
  if (hit !== undefined) return { ...base, outcome: 'hit', cause: hit.fault.id };
  if (named[0] !== undefined) return { ...base, outcome: 'not-perceivable', cause: named[0].fault.id };
  const right =
    holdsByState(world, finding) ||
    namesFault(replay.start, finding) ||
    (isHealthy(finding) && !denies(replay.start, finding, causes));
  return { ...base, outcome: right ? 'correct-no-hazard' : 'false-call', cause: null };
};

/** All findings that stand at the end, each judged at the moment of its call. */
export const judgeFindings = (replay: Replay, causes: readonly Laid[]): readonly JudgedFinding[] => {
  const standing = new Set(replay.end.paper.findings.map(({ id }) => id));
  return replay.steps.flatMap(({ before, after }, step) =>
    after.paper.findings
      .filter(({ id }) => standing.has(id) && !before.paper.findings.some((old) => old.id === id))
      .map((finding) => judgeOne(replay, step, after, finding, causes)),
  );
};
