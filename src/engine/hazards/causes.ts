/**
 * Causes by counterfactual: the Worlds without a laid fault, or without two of them where one alone changes nothing, solved again. A fault is a
 * cause when without it the hazard is gone, or its measure, at the credible worst or now, is less by a fifth (20 %: our own
 * choice, above rounding and load changes). What others might do to the part that bore the fault is then not counted: somebody who
 * never ran the cable in will not run it in again. Faults that cannot bear on circuit, mechanics or tools change nothing and
 * cost nothing. Left out: three faults that hide each other.
 */
import { faultKind } from '../catalogue/faults.ts';
import { faultsOf, withoutFault } from '../world/edit.ts';
import type { LaidFault, World } from '../world/types.ts';
import type { Meeting } from './meeting.ts';

const LESSENED = 0.8;

/** The Worlds of a moment: one, or before and after an act. */
type Worlds = readonly [World, World];

/** A fault that a tag alone tells is the date on it: without the fault the tool was tested today. */
const isDate = ({ kind }: LaidFault): boolean =>
  faultKind(kind).signs.some(({ sense, by }) => sense === 'read' && by === 'read-tag');

function without(world: World, fault: LaidFault): World {
  const cleared = withoutFault(world, fault.id);
  if (!isDate(fault)) return cleared;
  const today = world.given.crew.today;
  const tools = cleared.tools.map((tool, i) => (tool === world.tools[i] ? tool : { ...tool, tested: today }));
  return { ...cleared, tools };
}

const bears = (fault: LaidFault): boolean => {
  const { opens, leaks, sets, mechanical, on } = faultKind(fault.kind);
  return (
    opens.length > 0 ||
    leaks.length > 0 ||
    sets !== undefined ||
    mechanical !== undefined ||
    on.some((where) => where.startsWith('tool:'))
  );
};

type Laid = ReturnType<typeof faultsOf>[number];

const lessened = (now: Meeting | undefined, before: Meeting): boolean =>
  now === undefined ||
  now.measure < LESSENED * before.measure ||
  now.measureNow < LESSENED * before.measureNow ||
  (before.potentiallyFatal && !now.potentiallyFatal);

/** Causes of each hazard met, sorted; `again` meets the same reaches in other Worlds. */
export function causesBy(
  worlds: Worlds,
  met: readonly Meeting[],
  again: (worlds: Worlds, trusted: ReadonlySet<string>) => readonly Meeting[],
): ReadonlyMap<string, readonly string[]> {
  const laid = [...new Map(faultsOf(worlds[0]).map((each) => [each.fault.id, each])).values()].filter(({ fault }) =>
    bears(fault),
  );
  const lessWithout = (group: readonly Laid[], asked: readonly Meeting[]): readonly string[] => {
    const trusted = new Set(group.map(({ on }) => on));
    const left = worlds.map((world) => group.reduce((w, { fault }) => without(w, fault), world));
    const [before, after] = [
      left[0] ?? worlds[0],
      worlds[0] === worlds[1] ? (left[0] ?? worlds[0]) : (left[1] ?? worlds[1]),
    ];
    const remaining = new Map(again([before, after], trusted).map((meeting) => [meeting.hazard, meeting]));
    return asked.filter((meeting) => lessened(remaining.get(meeting.hazard), meeting)).map(({ hazard }) => hazard);
  };
  const causes = new Map<string, Set<string>>(met.map(({ hazard }) => [hazard, new Set()]));
  const note = (group: readonly Laid[], asked: readonly Meeting[]): void => {
    for (const hazard of lessWithout(group, asked)) for (const { fault } of group) causes.get(hazard)?.add(fault.id);
  };
  for (const each of laid) note([each], met);
  const open = met.filter(({ hazard }) => causes.get(hazard)?.size === 0);
  const harmful = laid.filter(({ fault }) => !faultKind(fault.kind).benign);
  // What stays when all of them are gone cannot be two that hide each other.
  const hidden = open.length === 0 ? [] : lessWithout(harmful, open);
  const asked = open.filter(({ hazard }) => hidden.includes(hazard));
  const pairs = harmful.flatMap((one, i) => harmful.slice(i + 1).map((other) => [one, other]));
  if (asked.length > 0) for (const pair of pairs) note(pair, asked);
  return new Map([...causes].map(([hazard, ids]) => [hazard, [...ids].sort()]));
}
