/**
 * Which measures an act needs. All that a crew could do is done at once, as if each stand were a step away; if something
 * still stands against the act, that is what no measure removes. Otherwise measures are left out again, the longest
 * first and by halves, as long as nothing stands against it: what is left is a set of which none can be missed.
 */
import { minutesOf } from '../acts/act.ts';
import { withTraineeAt } from '../acts/go.ts';
import { netAt } from '../circuit/elementsOf.ts';
import { sectionOf } from '../hazards/section.ts';
import { findPart, splitPoint, trainee } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import {
  assignments,
  coverings,
  groundings,
  joinings,
  type Measure,
  plainMeasures,
  supportings,
  testsOf,
} from './measures.ts';
import type { Means, Obstacle, Peeked } from './peek.ts';
import { type Deed, placedAt } from './places.ts';

// Lists of measures are tried again with one more or one less, so most of what is asked was asked before.
const takenKept = new WeakMap<World, WeakMap<Measure, World | 'impossible'>>();

/** The World after a measure, done from the first stand that allows it; null when none of its acts is possible. */
function taken(means: Means, world: World, measure: Measure): World | null {
  const ofWorld = takenKept.get(world) ?? new WeakMap<Measure, World | 'impossible'>();
  takenKept.set(world, ofWorld);
  const known = ofWorld.get(measure) ?? take(means, world, measure) ?? 'impossible';
  ofWorld.set(measure, known);
  return known === 'impossible' ? null : known;
}

function take(means: Means, world: World, { acts, at: where }: Measure): World | null {
  const { at, aloftBy } = trainee(world);
  let now = world;
  for (const act of acts) {
    const stand = means.firstStand(now, act, where);
    if (stand !== null) now = means.carried(placedAt(now, stand), act);
  }
  if (now === world) return null;
  return at === null ? now : withTraineeAt(now, at, aloftBy);
}

/** Operations follow one another, so what is not possible yet is tried again. */
const PASSES = 3;

/** The World after all measures that are possible, in their order. */
export function withMeasures(means: Means, world: World, measures: readonly Measure[]): World {
  let now = world;
  let left = measures;
  for (let pass = 0; pass < PASSES && left.length > 0; pass++) {
    const later: Measure[] = [];
    for (const measure of left) {
      const next = taken(means, now, measure);
      if (next === null) later.push(measure);
      else now = next;
    }
    if (later.length === left.length) break;
    left = later;
  }
  return now;
}

export type Needs =
  | { readonly ok: true; readonly measures: readonly Measure[] }
  | { readonly ok: false; readonly obstacles: readonly Obstacle[] };

const minutes = (world: World, { acts }: Measure): number => acts.reduce((sum, act) => sum + minutesOf(world, act), 0);

/** Tests before grounds, grounds before covers: in the order of being added. */
class Chosen {
  plain: readonly Measure[];
  tests: readonly Measure[] = [];
  others: readonly Measure[] = [];

  constructor(plain: readonly Measure[]) {
    this.plain = plain;
  }

  all(): readonly Measure[] {
    return [...this.plain, ...this.tests, ...this.others];
  }
}

/** Rounds in which tests, grounds and covers are added one by one. */
const ROUNDS = 80;

/** Measures without any of which something stands against the deeds. */
export function needsOf(means: Means, world: World, deeds: readonly Deed[], without: readonly Measure[] = []): Needs {
  const against = (measures: readonly Measure[], upTo: 'first' | 'all' = 'all'): Peeked =>
    means.peekChain(withMeasures(means, world, measures), deeds, upTo);
  const worked = deeds.flatMap(({ act }) => (act.act === 'operate' || act.act === 'owner' ? [act.part] : []));
  const left = new Set(without.map(({ acts, at }) => JSON.stringify([acts, at])));
  const isApart = ({ acts, at }: Measure): boolean =>
    !left.has(JSON.stringify([acts, at])) &&
    acts.every((act) => !((act.act === 'operate' || act.act === 'owner') && worked.includes(act.part)));
  const chosen = new Chosen(plainMeasures(world).filter(isApart));
  let { obstacles } = against(chosen.all());
  for (let round = 0; obstacles.length > 0; round++) {
    if (
      round === ROUNDS ||
      means.isSpent ||
      !addOne(means, world, chosen, obstacles, isApart, (more) => against(more).obstacles)
    ) {
      return { ok: false, obstacles };
    }
    obstacles = against(chosen.all()).obstacles;
  }
  const stands = (measures: readonly Measure[]): boolean => against(measures, 'first').obstacles.length === 0;
  return { ok: true, measures: leastOf(chosen.all(), (measure) => minutes(world, measure), stands) };
}

/** Adds a test for what is owed, else the first ground or cover after which less stands against the deeds. */
function addOne(
  means: Means,
  world: World,
  chosen: Chosen,
  obstacles: readonly Obstacle[],
  isApart: (measure: Measure) => boolean,
  against: (measures: readonly Measure[]) => readonly Obstacle[],
): boolean {
  const now = withMeasures(means, world, chosen.all());
  const untested = obstacles.find(({ is, id }) => is === 'owed' && (id.startsWith('test:') || id.startsWith('proof:')));
  if (untested !== undefined) {
    const point = untested.id.slice(untested.id.indexOf(':') + 1);
    for (const test of testsOf(now, point).filter(isApart)) {
      const tried = [...chosen.plain, ...chosen.tests, test, ...chosen.others];
      if (against(tried).every(({ id }) => id !== untested.id)) {
        chosen.tests = [...chosen.tests, test];
        return true;
      }
    }
    return false;
  }
  const isGround = ({ id }: Obstacle): boolean => id.startsWith('ground:');
  if (obstacles.every(isGround)) {
    // What is taken out of service may leave metal between two open devices that nothing holds to earth.
    for (const part of new Set(chosen.plain.flatMap(partOf))) {
      if (findPart(now, part)?.pole == null) continue;
      const plain = chosen.plain.filter((measure) => !partOf(measure).includes(part));
      const left = against([...plain, ...chosen.tests, ...chosen.others]);
      if (left.length <= obstacles.length && left.every(isGround)) {
        chosen.plain = plain;
        return true;
      }
    }
  }
  // Only what has to do with the metal that stands in the way can help.
  const metal = new Set(obstacles.flatMap(({ id }) => [...metalOf(now, id)]));
  const touches = (point: string): boolean => metal.has(netAt(now, point));
  const nearby = [...groundings(now), ...coverings(now)].filter((each) => pointsIn(now, each).some(touches));
  for (const measure of [...assignments(now), ...supportings(now), ...nearby].filter(isApart)) {
    const tried = [...chosen.all(), measure];
    if (against(tried).length < obstacles.length) {
      chosen.others = [...chosen.others, measure];
      return true;
    }
  }
  // Too few sets for what lies on both sides of an open device: it is closed while all is dead.
  for (const joining of joinings(now)) {
    const [part] = partOf(joining);
    const plain = [...chosen.plain.filter((measure) => !partOf(measure).some((id) => id === part)), joining];
    if (against([...plain, ...chosen.tests, ...chosen.others]).length < obstacles.length) {
      chosen.plain = plain;
      return true;
    }
  }
  return false;
}

/** Nets that are one metal with the point that an obstacle names. */
function metalOf(world: World, id: string): ReadonlySet<string> {
  const point = id.slice(id.indexOf(':') + 1);
  return isPoint(world, point) ? sectionOf(world, point) : new Set();
}

const isPoint = (world: World, point: string): boolean => {
  const [id = '', terminal = ''] = splitPoint(point) ?? [];
  return findPart(world, id)?.nets[terminal] !== undefined;
};

const pointsOfPart = (world: World, id: string): readonly string[] =>
  Object.keys(findPart(world, id)?.nets ?? {}).map((terminal) => `${id}/${terminal}`);

const pointsIn = (world: World, { acts }: Measure): readonly string[] =>
  acts.flatMap((act) => {
    if (act.act === 'ground') return act.points;
    return act.act === 'cover' ? pointsOfPart(world, act.part) : [];
  });

/** The device that a measure takes out or tags. */
const partOf = ({ acts }: Measure): readonly string[] =>
  acts.flatMap((act) => (act.act === 'operate' || act.act === 'owner' || act.act === 'tag' ? [act.part] : []));

/** A part of the list, in its order, that still holds, and of which nothing can be left out alone. */
export function leastOf<T>(
  list: readonly T[],
  cost: (item: T) => number,
  holds: (kept: readonly T[]) => boolean,
): readonly T[] {
  let kept = list;
  const without = (out: readonly T[]): readonly T[] => kept.filter((item) => !out.includes(item));
  const drop = (group: readonly T[]): void => {
    if (holds(without(group))) kept = without(group);
    else if (group.length > 1) {
      const half = group.length >> 1;
      drop(group.slice(0, half));
      drop(group.slice(half));
    }
  };
  const dearest = list.map((item, i) => ({ item, i, dear: cost(item) })).sort((a, b) => b.dear - a.dear || a.i - b.i);
  if (list.length > 0) drop(dearest.map(({ item }) => item));
  // What could not be missed before others were gone may be missed now.
  for (const item of dearest.map((each) => each.item)) {
    if (kept.includes(item) && holds(without([item]))) kept = without([item]);
  }
  return kept;
}
