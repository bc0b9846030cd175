/**
 * What acts can make of metal, truck and trainee, explored from the call on by whole minutes (learned/exploreAll.ts) until
 * nothing new comes or a bound is met. Taken are only acts that move those; all others (looking, testing, talking, dress,
 * tags, guards, paper …) change nothing that these acts, their refusals or the line's being whole read, so each can be
 * replaced by as many minutes of waiting, which is taken (tests do that to drills drawn at random). Exposures stop nothing
 * here. So every drill has its double among these states, minute by minute: what none of them shows, no drill can. No
 * control is in place in them, so whoever is out of harm here is so in the drill. Chance brings nothing (chance.ts).
 *
 * Grounds are left out too, for their pairs of points are too many. What none of these states shows holds of par's routes
 * all the same: there grounds go on only what is tested dead (owed.ts), so putting one on trips nothing, closing on one
 * opens again what was closed, and at the end all are off. Of other drills it holds where the crew has no clamps (`isAll`).
 */
import { act as plainAct, refusalOf } from '../acts/act.ts';
import { standHere, standing } from '../acts/presence.ts';
import { clampSetsOf } from '../acts/toolsFor.ts';
import type { Act, ActName } from '../acts/types.ts';
import { toolKind } from '../catalogue/tools.ts';
import type { World } from '../world/types.ts';
import { isWhole } from './goals.ts';
import { exploreAll } from './learned/exploreAll.ts';
import { Transitions } from './learned/transitions.ts';
import type { Means } from './peek.ts';
import { placedAt, standsOf } from './places.ts';
import { repairsThatDo } from './toDo.ts';

/** Acts that move metal, truck or trainee, and waiting. */
export const moving: readonly ActName[] = [
  'park',
  'go',
  'operate',
  'owner',
  'tell',
  'order',
  'aloft',
  'come-down',
  'support',
  'repair',
  'wait',
];

/** What the dispatcher acts on at a word (acts/talk.ts). */
const words = ['block-reclosing', 'unblock-reclosing', 'correct-number'];

/** Of the kinds, acts that move nothing, and longer waits than a minute. */
export const movesNothing = (act: Act): boolean =>
  act.act === 'tell' ? !words.includes(act.what) : act.act === 'wait' && act.minutes > 1;

/** Somewhere from which stopping would hurt: the shortest way there, and what is met by stopping. */
export interface Stuck {
  readonly acts: readonly Act[];
  readonly hazards: readonly string[];
  /** Nobody was struck on the way there by `act`. */
  readonly isReached: boolean;
}

export interface Arrangements {
  readonly end: 'exhausted' | 'stopped';
  /** Whatever can be reached in less minutes was looked at. */
  readonly minutes: number;
  readonly states: number;
  readonly transitions: number;
  /** Nothing that a drill can do to the metal is left out. */
  readonly isAll: boolean;
  /** The least minute at which the line was found restored; null where it was not. */
  readonly wholeAt: number | null;
  readonly stuck: Stuck | null;
}

const secondsToHandOver = 120;

/** What stopping meets: nothing when there is a place on the ground where nothing reaches the trainee. */
function metByStopping(means: Means, world: World): readonly string[] {
  if (standHere(world) === null) return [];
  const met: string[] = [];
  for (const stand of standsOf(world)) {
    if (stand.aloft !== null) continue;
    const there = placedAt(world, stand);
    const hazards = means.meets(there, standing(there, secondsToHandOver));
    if (hazards.length === 0) return [];
    met.push(...hazards);
  }
  return [...new Set(met)].sort();
}

const checks = ['read-tag', 'inspect', 'wipe', 'air-test', 'self-test'] as const;

/** Every tool checked, and what can be worn put on. */
const readying = (world: World): readonly Act[] =>
  world.tools.flatMap(({ id, kind }): readonly Act[] => [
    ...checks
      .filter((check) => toolKind(kind).checks.includes(check))
      .map((check) => ({ act: 'check-tool', tool: id, check }) as const),
    { act: 'wear', tool: id, on: true },
  ]);

/** The acts, or these with all tools readied in between, so that nobody is struck on the way; null when somebody is. */
function unstruck(means: Means, start: World, acts: readonly Act[]): readonly Act[] | null {
  if (canBeDone(means, start, acts)) return acts;
  const parked = acts.findIndex(({ act }) => act === 'park') + 1;
  const before = acts.slice(0, parked);
  const there = before.reduce((world, act) => plainAct(world, act).world, start);
  const ready = readying(there).filter((act) => refusalOf(there, act) === null);
  const readied = [...before, ...ready, ...acts.slice(parked)];
  return canBeDone(means, start, readied) ? readied : null;
}

/** Whether the acts can be done with nobody struck. */
function canBeDone({ step }: Means, start: World, acts: readonly Act[]): boolean {
  let world = start;
  for (const act of acts) {
    if (step.refuse(world, act) !== null) return false;
    const { passed, settled, reach } = step.carry(world, act);
    if (reach.some((each) => step.met(each, passed, settled).some(({ strikes }) => strikes))) return false;
    world = plainAct(world, act).world;
  }
  return true;
}

/** Explores from a World fresh from `build`; `runs` bounds how often the engine is run for it. */
export function arrangementsOf(means: Means, start: World, deadly: ReadonlySet<string>, runs: number): Arrangements {
  const call: Act = { act: 'acknowledge' };
  const transitions = new Transitions(plainAct(start, call).world, null, ['knowledge', 'paper']);
  const does = repairsThatDo(start);
  let wholeAt: number | null = null;
  let stuck: Stuck | null = null;
  const { minutes, ...counts } = exploreAll(transitions, moving, {
    runs,
    leaves: (each) => movesNothing(each) || (each.act === 'repair' && !does(each)),
    enter: (state, minute, route) => {
      const world = transitions.worldOf(state);
      if (wholeAt === null && isWhole(world, deadly)) wholeAt = minute;
      // The first has the fewest minutes; one that nobody is struck before is better.
      const hazards = stuck?.isReached ? [] : metByStopping(means, world);
      if (hazards.length > 0) {
        const way = [call, ...route()];
        const acts = unstruck(means, start, way);
        if (stuck === null || acts !== null) stuck = { acts: acts ?? way, hazards, isReached: acts !== null };
      }
      return false;
    },
  });
  const isAll = clampSetsOf(start).length === 0;
  const end = counts.end === 'exhausted' ? 'exhausted' : 'stopped';
  return { end, minutes, states: counts.states, transitions: counts.transitions, isAll, wholeAt, stuck };
}
