/**
 * Causes by counterfactual: the Worlds without a laid fault, or without two of them where one alone changes nothing,
 * solved again. A fault is a cause when without it the hazard is gone, or its measure, at the credible worst or now,
 * is less by a fifth (20 %: our own choice, above rounding and load changes). What others might do to the part that
 * bore the fault is then not counted: somebody who never ran the cable in will not run it in again. Faults that
 * cannot bear on circuit, mechanics or tools change nothing and cost nothing. Left out: three faults that hide each
 * other.
 */
import { faultKind } from '../catalogue/faults.ts';
import { endsAt, hasFallen, tiesOf } from '../mechanics/looseRuns.ts';
import { liftAt } from '../mechanics/spanEnds.ts';
import { faultsOf, toolById, withoutFault } from '../world/edit.ts';
import type { LaidFault, World } from '../world/types.ts';
import type { Meeting } from './meeting.ts';
import { listKept } from './partsWith.ts';
import { isOfTag } from './readiness.ts';

const LESSENED = 0.8;

/** The Worlds of a moment: one, or before and after an act. */
type Worlds = readonly [World, World];

/** A tie that had not let go would still hold what has come down off it. */
function tiedAgain(world: World, fault: LaidFault): World {
  if (faultKind(fault.kind).mechanical?.supports === undefined) return world;
  const on = world.parts.find(({ faults }) => faults.some(({ id }) => id === fault.id));
  if (on === undefined) return world;
  return tiesOf(world, on)
    .filter((tie) => endsAt(world, tie).some(hasFallen))
    .reduce(liftAt, world);
}

function without(world: World, fault: LaidFault): World {
  const without = withoutFault(tiedAgain(world, fault), fault.id);
  // A tool's fault leaves the parts the very same, and what was derived from them stands.
  const parts = listKept(world.parts, `without ${fault.id}`, () =>
    without.parts.every((part, i) => part === world.parts[i]) ? world.parts : without.parts,
  );
  const cleared = { ...without, parts };
  if (!isOfTag(fault)) return cleared;
  // Without that fault the tool was tested today.
  const today = world.given.crew.today;
  const tools = cleared.tools.map((tool, i) => (tool === world.tools[i] ? tool : { ...tool, tested: today }));
  return { ...cleared, tools };
}

const bears = (fault: LaidFault): boolean => {
  const { opens, leaks, sets, words, mechanical, person, site, on } = faultKind(fault.kind);
  return (
    opens.length > 0 ||
    leaks.length > 0 ||
    sets !== undefined ||
    words !== undefined ||
    mechanical !== undefined ||
    person !== undefined ||
    site !== undefined ||
    on.some((where) => where.startsWith('tool:'))
  );
};

type Laid = ReturnType<typeof faultsOf>[number];

const lessened = (now: Meeting | undefined, before: Meeting): boolean =>
  now === undefined ||
  now.measure < LESSENED * before.measure ||
  now.measureNow < LESSENED * before.measureNow ||
  (before.potentiallyFatal && !now.potentiallyFatal);

/** Metal bears on whatever metal does; a tool only on what is told of that tool. */
const couldBear = (world: World, on: string, asked: readonly Meeting[]): boolean =>
  asked.some(({ mechanism, part }) => (mechanism === 'barrier-loss' ? part === on : toolById(world, on) === null));

const pairsOf = <T>(list: readonly T[]): readonly (readonly T[])[] =>
  list.flatMap((one, i) => list.slice(i + 1).map((other) => [one, other]));

/** Hazards in groups that share the causes found so far. */
function bySameCauses(
  met: readonly Meeting[],
  causes: ReadonlyMap<string, ReadonlySet<string>>,
): readonly (readonly Meeting[])[] {
  const groups = new Map<string, Meeting[]>();
  for (const meeting of met) {
    const found = [...(causes.get(meeting.hazard) ?? [])].sort().join(' ');
    const key = meeting.mechanism === 'barrier-loss' ? `${meeting.hazard} ${found}` : found;
    groups.set(key, [...(groups.get(key) ?? []), meeting]);
  }
  return [...groups.values()];
}

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
  // What only looks wrong, a set behind its switch, changes a circuit too and is the cause of nothing.
  const harmful = laid.filter(({ fault }) => !faultKind(fault.kind).benign);
  for (const each of harmful) note([each], met);
  for (const asked of bySameCauses(met, causes)) {
    const found = causes.get(asked[0]?.hazard ?? '') ?? new Set();
    const rest = harmful.filter(({ on, fault }) => !found.has(fault.id) && couldBear(worlds[0], on, asked));
    // What stays when all the rest is gone cannot hang on two of them that hide each other.
    const hidden = rest.length < 2 ? [] : lessWithout(rest, asked);
    const open = asked.filter(({ hazard }) => hidden.includes(hazard));
    if (open.length > 0) for (const pair of pairsOf(rest)) note(pair, open);
  }
  return new Map([...causes].map(([hazard, ids]) => [hazard, [...ids].sort()]));
}
