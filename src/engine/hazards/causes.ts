/**
 * Causes by counterfactual: the Worlds without a laid fault, or without two of them where one alone changes nothing,
 * solved again. A fault is a cause when without it the hazard is gone, or its measure, at the credible worst or now,
 * is less by a fifth (20 %: our own choice, above rounding and load changes). What others might do to the part that
 * bore the fault is then not counted: somebody who never ran the cable in will not run it in again. Faults that
 * cannot bear on circuit, mechanics or tools change nothing and cost nothing. All this is asked without operating devices, whose time
 * no other fault changes much; a fault that changes a device itself, a link too large, is asked with devices stepped, and
 * is a cause where without it the harm with its time counted (dose, energy) is less by a fifth. Left out: three faults
 * that hide each other.
 */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { branchesOf } from '../circuit/elementsOf.ts';

import { endsAt, hasFallen, tiesOf } from '../mechanics/looseRuns.ts';
import { liftAt } from '../mechanics/spanEnds.ts';
import { faultsOf, findPart, toolById, withoutFault } from '../world/edit.ts';
import type { LaidFault, Part, World } from '../world/types.ts';
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

/** Meets the same reaches in other Worlds. */
export type Again = (worlds: Worlds, trusted: ReadonlySet<string>) => readonly Meeting[];

/** What protects a part in any of its positions, as text: an open cutout has its link all the same. */
function protection(part: Part): string {
  const states = Object.entries(componentKind(part.kind).states).reduce<readonly Part['state'][]>(
    (all, [name, positions]) => all.flatMap((state) => positions.map((position) => ({ ...state, [name]: position }))),
    [part.state],
  );
  const branches = states.flatMap((state) => branchesOf({ ...part, state }));
  return JSON.stringify(branches.map((branch) => (branch.type === 'series' ? branch.protects : undefined)));
}

/** Whether a fault changes the device that it lies on, and not only its position. */
const changesDevice = (world: World, { on, fault }: Laid): boolean => {
  const part = findPart(world, on);
  if (part === null || faultKind(fault.kind).words === undefined) return false;
  return protection(part) !== protection({ ...part, faults: part.faults.filter(({ id }) => id !== fault.id) });
};

type Laid = ReturnType<typeof faultsOf>[number];

const lessened = (now: Meeting | undefined, before: Meeting): boolean =>
  now === undefined ||
  now.measure < LESSENED * before.measure ||
  now.measureNow < LESSENED * before.measureNow ||
  (before.potentiallyFatal && !now.potentiallyFatal);

const lessInTime = (now: Meeting | undefined, { timed = 0 }: Meeting): boolean =>
  timed > 0 && (now?.timed ?? 0) < LESSENED * timed;

/** Metal bears on whatever metal does; a tool only on what is told of that tool. */
const couldBear = (world: World, on: string, asked: readonly Meeting[]): boolean =>
  asked.some(({ mechanism, part }) => (mechanism === 'barrier-loss' ? part === on : toolById(world, on) === null));

const byHazard = (meetings: readonly Meeting[]): ReadonlyMap<string, Meeting> =>
  new Map(meetings.map((meeting) => [meeting.hazard, meeting]));

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

/**
 * Causes of each hazard met, sorted; `again` meets the same reaches in other Worlds, `stepped` with devices operated. `only`:
 * no other fault is asked about.
 */
export function causesBy(
  worlds: Worlds,
  met: readonly Meeting[],
  again: Again,
  stepped: Again,
  only?: string,
): ReadonlyMap<string, readonly string[]> {
  const laid = [...new Map(faultsOf(worlds[0]).map((each) => [each.fault.id, each])).values()].filter(
    ({ fault }) => bears(fault) && (only === undefined || fault.id === only),
  );
  const leftBy = (group: readonly Laid[]): Worlds => {
    const left = worlds.map((world) => group.reduce((w, { fault }) => without(w, fault), world));
    return [left[0] ?? worlds[0], worlds[0] === worlds[1] ? (left[0] ?? worlds[0]) : (left[1] ?? worlds[1])];
  };
  const lessWithout = (group: readonly Laid[], asked: readonly Meeting[]): readonly string[] => {
    const trusted = new Set(group.map(({ on }) => on));
    const remaining = byHazard(again(leftBy(group), trusted));
    return asked.filter((meeting) => lessened(remaining.get(meeting.hazard), meeting)).map(({ hazard }) => hazard);
  };
  const causes = new Map<string, Set<string>>(met.map(({ hazard }) => [hazard, new Set()]));
  const note = (group: readonly Laid[], asked: readonly Meeting[]): void => {
    for (const hazard of lessWithout(group, asked)) for (const { fault } of group) causes.get(hazard)?.add(fault.id);
  };
  // What only looks wrong, a set behind its switch, changes a circuit too and is the cause of nothing.
  const harmful = laid.filter(({ fault }) => !faultKind(fault.kind).benign);
  const devices = harmful.filter((laid) => changesDevice(worlds[0], laid));
  const others = harmful.filter((laid) => !devices.includes(laid));
  for (const each of others) note([each], met);
  // A device with the right link stands where it stood, and others may still work it: nothing is trusted for that.
  const timed = devices.length === 0 ? [] : stepped(worlds, new Set());
  for (const each of devices) {
    const remaining = byHazard(stepped(leftBy([each]), new Set()));
    for (const meeting of timed) {
      if (lessInTime(remaining.get(meeting.hazard), meeting)) causes.get(meeting.hazard)?.add(each.fault.id);
    }
  }
  for (const asked of bySameCauses(met, causes)) {
    const found = causes.get(asked[0]?.hazard ?? '') ?? new Set();
    const rest = others.filter(({ on, fault }) => !found.has(fault.id) && couldBear(worlds[0], on, asked));
    // What stays when all the rest is gone cannot hang on two of them that hide each other.
    const hidden = rest.length < 2 ? [] : lessWithout(rest, asked);
    const open = asked.filter(({ hazard }) => hidden.includes(hazard));
    if (open.length > 0) for (const pair of pairsOf(rest)) note(pair, open);
  }
  return new Map([...causes].map(([hazard, ids]) => [hazard, [...ids].sort()]));
}
