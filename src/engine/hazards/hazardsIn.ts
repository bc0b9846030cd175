/**
 * The hazards of a World: what probing it without controls meets (probes.ts), the tools that would fail whoever
 * trusts them, each with its causes by counterfactual (causes.ts). A line in ordinary service is a hazard without
 * causes. The same for any order of lists.
 */
import { circuitKey } from '../circuit/circuitKey.ts';
import { Memo } from '../circuit/memo.ts';
import { shortHash } from '../math/hash.ts';
import type { World } from '../world/types.ts';
import { approach } from './approach.ts';
import { barrierLosses } from './barrier.ts';
import { causesBy } from './causes.ts';
import { contact } from './contact.ts';
import { drop } from './drop.ts';
import { fall } from './fall.ts';
import { flash } from './flash.ts';
import { type Meeting, worstOf } from './meeting.ts';
import { momentOf } from './moment.ts';
import { type Probes, probesOf, unprotected } from './probes.ts';
import type { Hazard } from './types.ts';

/** What a World without controls meets; tools that fail are asked apart. */
function physical(
  world: World,
  { touching, being, switching }: Probes,
  trusted?: ReadonlySet<string>,
): readonly Meeting[] {
  const moment = momentOf(unprotected(world), false, trusted);
  return worstOf([
    ...touching.flatMap((reach) => contact(reach, moment)),
    ...being.flatMap((reach) => [...approach(reach, moment), ...drop(reach, moment), ...fall(reach, moment)]),
    ...switching.flatMap((reach) => flash(reach, moment)),
  ]);
}

const hazardOf = (meeting: Meeting, causes: readonly string[]): Hazard => ({
  id: meeting.hazard,
  mechanism: meeting.mechanism,
  part: meeting.part,
  point: meeting.point,
  severity: meeting.severity,
  potentiallyFatal: meeting.potentiallyFatal,
  quantities: meeting.quantities,
  causes,
  words: meeting.words,
});

function derive(world: World): readonly Hazard[] {
  // Faults move no metal, so the same reaches are asked in every World that is compared.
  const probes = probesOf(unprotected(world));
  const known = new Map<World['parts'], readonly Meeting[]>();
  const meetings = (each: World, trusted?: ReadonlySet<string>): readonly Meeting[] => {
    const found = known.get(each.parts) ?? physical(each, probes, trusted);
    known.set(each.parts, found);
    return worstOf([...found, ...barrierLosses(each)]);
  };
  const met = meetings(world);
  const causes = causesBy([world, world], met, ([each], trusted) => meetings(each, trusted));
  return met.map((meeting) => hazardOf(meeting, causes.get(meeting.hazard) ?? []));
}

/** What else than the circuit hazards depend on. */
const keyOf = (world: World): string =>
  `${circuitKey(world)}|${shortHash({
    parts: world.parts.map(({ id, faults, tags, supported }) => ({ id, faults, tags, supported })),
    tools: world.tools,
    stands: world.stands,
    clearance: world.orders.clearance,
    people: world.people.map(({ id, role, at }) => ({ id, role, at })),
    altitude: world.site.altitudeM,
    today: world.given.crew.today,
  })}`;

const derived = new Memo<readonly Hazard[]>(64);

/** Hazards sorted by id. */
export const hazardsIn = (world: World): readonly Hazard[] => derived.get(keyOf(world), () => derive(world));
