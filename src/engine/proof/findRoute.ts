/**
 * A route from the call to its end that exposes nobody and owes nothing: survey, then what is to be mended, stand by
 * stand, then everything off the line again, then the devices back into service, then closing out. Each step by means
 * and ends (achieve.ts). Where that leads nowhere it says at what act and what stands against it.
 */
import { refusalOf } from '../acts/act.ts';
import { standHere } from '../acts/presence.ts';
import type { Act } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import { repairKind } from '../catalogue/repairs.ts';
import { findPart } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { type Achieved, achieve, achieveAct, perform, type Route } from './achieve.ts';
import { isLeft, isRestored, mustGo, repairsLeft, unfed } from './goals.ts';
import { impossibleAtOnce, impossibleFor } from './impossible.ts';
import { type Measure, plainMeasures, stickOf } from './measures.ts';
import type { Means, Obstacle } from './peek.ts';
import { type Deed, deedsOf, placedAt, standsOf } from './places.ts';
import { harmful, surveyOf, vantagesOf } from './survey.ts';
import { wayToService } from './toService.ts';
import { atStart, perceivedOf } from './walkThrough.ts';

/** The call acknowledged, the truck parked clear, its engine off. */
export const arrive = (means: Means, start: World): Route | null => {
  const acts: readonly Act[] = [{ act: 'acknowledge' }, { act: 'park', at: 'clear' }, { act: 'engine', on: false }];
  return acts.reduce<Route | null>((route, act) => route && perform(means, route, { act, at: null }), {
    stage: atStart(start),
    deeds: [],
  });
};

/** A scene looked over: the route so far, what it had to show, how much was explored for it. */
export interface Surveyed {
  readonly route: Route;
  readonly wanted: readonly string[];
  readonly minutes: number;
  readonly states: number;
  readonly transitions: number;
}

/** Waiting for the last of those who are still to come; null where nobody is. */
function untilAllAreHere({ people, clock }: World): Act | null {
  const due = people.flatMap(({ at, arrivesAt }) => (at === null && arrivesAt !== null ? [arrivesAt] : []));
  const minutes = Math.max(0, ...due) - clock.minute;
  return minutes > 0 ? { act: 'wait', minutes } : null;
}

/** The surveyed scene: arrived, every cause perceived that can be, each called. */
export function surveyed(means: Means, start: World): Surveyed | null {
  const arrived = arrive(means, start);
  const here = arrived && standHere(arrived.stage.world);
  if (!arrived || !here) return null;
  const laid = harmful(arrived.stage.world);
  const { deeds, ...explored } = surveyOf(arrived.stage.world, vantagesOf(arrived.stage.world, laid), here);
  // A look that would expose somebody is left out; who is waited for comes last, for the time that is left by then.
  const waits = deeds.findIndex(({ act }) => act.act === 'wait');
  const inOrder =
    waits < 0 ? deeds : [...deeds.slice(0, waits), ...deeds.slice(waits + 2), ...deeds.slice(waits, waits + 2)];
  const looked = inOrder.reduce<Route>((route, deed) => {
    const due = deed.act.act === 'wait' ? untilAllAreHere(route.stage.world) : deed.act;
    return due === null ? route : (perform(means, route, { ...deed, act: due }) ?? route);
  }, arrived);
  const wanted = perceivedOf(
    looked.stage.world,
    laid.map(({ fault }) => fault.id),
  );
  const route = callsOf(looked.stage.world, wanted).reduce<Route | null>(
    (now, act) => now && perform(means, now, { act, at: null }),
    looked,
  );
  return route && { route, wanted, ...explored };
}

/** Findings that name each cause of which a sign was perceived. */
function callsOf(world: World, perceived: readonly string[]): readonly Act[] {
  return harmful(world).flatMap(({ on, fault }): readonly Act[] => {
    const [condition] = faultKind(fault.kind).conditions;
    return perceived.includes(fault.id) && condition !== undefined ? [{ act: 'call-finding', on, condition }] : [];
  });
}

/** Repairs grouped by the one stand that most of them can be done from. */
function repairsByStand(world: World): readonly (readonly Deed[])[] {
  let left = [...repairsLeft(world)];
  const groups: Deed[][] = [];
  while (left.length > 0) {
    const able = standsOf(world).map((stand) => ({
      stand,
      acts: left.filter((act) => isReachable(placedAt(world, stand), act)),
    }));
    const best = able.reduce((a, b) => (b.acts.length > a.acts.length ? b : a));
    const [first] = left;
    if (best.acts.length === 0) {
      // Not possible as things stand now; its place shows once its needs are met.
      groups.push(first === undefined ? [] : [{ act: first, at: null }]);
      left = left.slice(1);
      continue;
    }
    groups.push(best.acts.map((act) => ({ act, at: best.stand.id })));
    left = left.filter((act) => !best.acts.includes(act));
  }
  return groups;
}

const isReachable = (world: World, act: Act): boolean => refusalOf(world, act) === null;

/** Everything the crew put on, in the order in which it had best come off: the arm, then grounds, last first, then covers. */
const offs = (world: World): readonly (readonly Act[])[] => [
  ...world.parts.filter(({ supported }) => supported).map(({ id }): Act[] => [{ act: 'support', part: id, on: false }]),
  ...[...world.jumpers].reverse().map(({ id }): Act[] => [
    { act: 'unground', jumper: id, stick: stickOf(world) },
    { act: 'unground', jumper: id, stick: null },
  ]),
  ...world.covers.map(({ part, tool }): Act[] => [{ act: 'cover', part, tool, on: false }]),
];

/** Does whichever of the acts nothing stands against; else the first of them with the measures that it needs. */
function easiestOf(
  means: Means,
  route: Route,
  choices: readonly (readonly Act[])[],
  without: readonly Measure[],
): Achieved {
  let failed: Achieved | null = null;
  const free = choices
    .flat()
    .flatMap((act) => deedsOf(route.stage.world, act))
    .find((deed) => means.peekChain(route.stage.world, [deed]).obstacles.length === 0);
  if (free !== undefined) return achieve(means, route, [free]);
  for (const act of choices.flat()) {
    const done = achieveAct(means, route, act, 0, without);
    if (done.ok) return done;
    failed ??= done;
  }
  return failed ?? { ok: true, route };
}

/** Taking out devices of the line: no measure while they are being brought back. */
const linesOut = (world: World): readonly Measure[] =>
  plainMeasures(world).filter(({ acts }) =>
    acts.some((act) => act.act === 'operate' && findPart(world, act.part)?.pole != null),
  );

/** Rounds of taking off and bringing back; each does one thing. */
const MOST = 60;

/** Repeats one thing after the other until there is none left. */
function untilNone(means: Means, start: Route, choicesOf: (world: World) => readonly (readonly Act[])[]): Achieved {
  let route = start;
  for (let round = 0; round < MOST; round++) {
    const choices = choicesOf(route.stage.world);
    if (choices.length === 0) break;
    const done = easiestOf(means, route, choices, linesOut(route.stage.world));
    if (!done.ok) return done;
    route = done.route;
  }
  return { ok: true, route };
}

/** Devices of the line and meters of premises to be fed that are not in service, each with what comes next. */
const backIn = (world: World): readonly (readonly Act[])[] => {
  if (unfed(world).length === 0) return [];
  const homes = new Set(world.given.job.restores.map((id) => findPart(world, id)?.premises ?? null));
  return world.parts
    .filter(({ premises }) => premises === null || homes.has(premises))
    .flatMap((part) => wayToService(part, stickOf(world)).slice(0, 1))
    .map((act) => [act]);
};

/** The clearance given back and the tags off what is in service again. */
const released = (world: World): readonly (readonly Act[])[] => {
  const { clearance } = world.orders;
  if (clearance === null || clearance.state === 'released') return [];
  return [[{ act: 'clearance', step: 'release', device: clearance.device }]];
};

/** What could not be done, and what stands against it. */
export interface Blocked {
  readonly act: Act;
  readonly obstacles: readonly Obstacle[];
  /** Why it can never be done by this crew, where that is shown and the job cannot end well without it. */
  readonly never?: string;
}

/** Mends what can be mended; what cannot is named. */
function mended(means: Means, start: Route): { readonly route: Route; readonly blocked: readonly Blocked[] } {
  let route = start;
  const blocked: Blocked[] = [];
  const isOpen = ({ act }: Deed): boolean => !blocked.some((each) => JSON.stringify(each.act) === JSON.stringify(act));
  for (;;) {
    const groups = repairsByStand(route.stage.world).map((group) => group.filter(isOpen));
    const group = groups.find((each) => each.length > 0);
    const [first] = group ?? [];
    if (group === undefined || first === undefined) return { route, blocked };
    const together = first.at === null ? achieveAct(means, route, first.act) : achieve(means, route, group);
    const done = together.ok || group.length === 1 ? together : achieve(means, route, [first]);
    if (done.ok) route = done.route;
    else blocked.push({ act: first.act, obstacles: done.obstacles });
  }
}

export interface Found {
  readonly route: Route | null;
  readonly blocked: readonly Blocked[];
}

/** A repair that the job hangs on and that is shown to be impossible before any measure is looked for. */
function neverMended(means: Means, world: World, deadly: ReadonlySet<string>): Blocked | null {
  const stay = new Set(mustGo(world));
  for (const act of repairsLeft(world)) {
    const { mends } = repairKind(act.repair);
    const hangs = findPart(world, act.part)?.faults.some(
      ({ id, kind }) => deadly.has(id) && stay.has(id) && mends.includes(kind),
    );
    const never = hangs ? impossibleAtOnce(means, world, act) : null;
    if (never !== null) return { act, obstacles: [], never };
  }
  return null;
}

/** A repair that the job hangs on, with the reason why it cannot be done, where there is one. */
function withReason(means: Means, world: World, blocked: Blocked, deadly: ReadonlySet<string>): Blocked {
  const { act, obstacles } = blocked;
  const part = act.act === 'repair' ? findPart(world, act.part) : null;
  const stay = new Set(mustGo(world));
  if (!part?.faults.some(({ id }) => deadly.has(id) && stay.has(id))) return blocked;
  const never = impossibleFor(means, world, act, obstacles);
  return never === null ? blocked : { ...blocked, never };
}

/**
 * From the surveyed scene to the call closed out; null with what is in the way. `inShort`: nothing is tried where one
 * repair that it hangs on is shown to be impossible beforehand, and only that one is named.
 */
export function restored(means: Means, start: Route, deadly: ReadonlySet<string>, inShort = false): Found {
  const first = inShort ? neverMended(means, start.stage.world, deadly) : null;
  if (first !== null) return { route: null, blocked: [first] };
  const { route, blocked } = mended(means, start);
  if (mustGo(route.stage.world).some((id) => deadly.has(id))) {
    return { route: null, blocked: blocked.map((each) => withReason(means, route.stage.world, each, deadly)) };
  }
  let now = route;
  for (const choices of [offs, released, backIn]) {
    const done = untilNone(means, now, choices);
    if (!done.ok) return { route: null, blocked: [...blocked, done] };
    now = done.route;
  }
  if (isLeft(now.stage.world, deadly)) {
    const spoken = achieve(means, now, [{ act: { act: 'tell', who: 'dispatcher', what: 'stays-out' }, at: null }]);
    if (!spoken.ok) return { route: null, blocked: [...blocked, spoken] };
    now = spoken.route;
  }
  if (!isRestored(now.stage.world, deadly)) {
    const obstacles = unfed(now.stage.world).map(
      (id): Obstacle => ({ is: 'refused', id: `${id} is not fed`, failed: [] }),
    );
    return { route: null, blocked: [...blocked, { act: { act: 'close-out' }, obstacles }] };
  }
  const done = achieve(means, now, [{ act: { act: 'close-out' }, at: null }]);
  return done.ok ? { route: done.route, blocked } : { route: null, blocked: [...blocked, done] };
}

/** The shortest way to stop: guard, tell, tag what was moved, hand over. From the surveyed scene as found. */
export function handedOver(means: Means, start: Route, holdsSource: boolean): Route | null {
  const acts: readonly Act[] = [
    { act: 'guard', with: 'keep-out' },
    { act: 'tell', who: 'dispatcher', what: holdsSource ? 'backfeed' : 'public-danger' },
    { act: 'hand-over' },
  ];
  return acts.reduce<Route | null>((route, act) => route && perform(means, route, { act, at: null }), start);
}
