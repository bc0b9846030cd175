/**
 * Means and ends: to do an act, see what stands against it where it is done, take the measures that it needs (needs.ts),
 * each of them in the same way, then do it. Every act of the route is done by `act` and must expose nobody. What is
 * found is a route, not the shortest one (shorten.ts).
 */
import type { Act } from '../acts/types.ts';
import type { World } from '../world/types.ts';
import type { Measure } from './measures.ts';
import { needsOf } from './needs.ts';
import type { Means, Obstacle } from './peek.ts';
import { type Deed, deedsOf, firstStandFor } from './places.ts';
import { deedFurther, type Stage } from './walkThrough.ts';

/** How far a route has come. */
export interface Route {
  readonly stage: Stage;
  readonly deeds: readonly Deed[];
}

export type Achieved =
  | { readonly ok: true; readonly route: Route }
  | { readonly ok: false; readonly act: Act; readonly obstacles: readonly Obstacle[] };

/** Measures that need measures that need measures. */
const DEPTH = 6;
/** Measures wear off: a stick gets wet again. */
const TRIES = 4;

/** Does a deed against which nothing stands; null when it turns out otherwise. */
export function perform(means: Means, { stage, deeds }: Route, deed: Deed): Route | null {
  const next = deedFurther(means, stage, deed, []);
  return next === null ? null : { stage: next, deeds: [...deeds, deed] };
}

/** The deed among several places against which least stands. */
function easiest(means: Means, world: World, deeds: readonly Deed[]): Deed | null {
  let best: { readonly deed: Deed; readonly against: number } | null = null;
  for (const deed of deeds) {
    const against = means.peekChain(world, [deed]).obstacles.length;
    if (best === null || against < best.against) best = { deed, against };
    if (against === 0) break;
  }
  return best?.deed ?? null;
}

const refused = (act: Act, id: string): Achieved => ({
  ok: false,
  act,
  obstacles: [{ is: 'refused', id, failed: [] }],
});

/** Does the act from wherever it can be done. */
export function achieveAct(
  means: Means,
  route: Route,
  act: Act,
  depth = 0,
  without: readonly Measure[] = [],
): Achieved {
  const deed = easiest(means, route.stage.world, deedsOf(route.stage.world, act));
  return deed === null
    ? refused(act, 'it cannot be done from anywhere')
    : achieve(means, route, [deed], depth, without);
}

/** Does deeds one after the other; the measures that they need together come first. One that leads nowhere is done without. */
export function achieve(
  means: Means,
  start: Route,
  deeds: readonly Deed[],
  depth = 0,
  without: readonly Measure[] = [],
): Achieved {
  let route = start;
  const given = [...without];
  const first = deeds[0]?.act ?? { act: 'hand-over' };
  for (let tries = 0; tries < TRIES; tries++) {
    const { obstacles } = means.peekChain(route.stage.world, deeds);
    if (obstacles.length === 0) return inOrder(means, route, deeds, depth);
    if (depth === DEPTH || means.isSpent) return { ok: false, act: first, obstacles };
    const needs = needsOf(means, route.stage.world, deeds, given);
    if (!needs.ok) return { ok: false, act: first, obstacles: needs.obstacles };
    const done = measuresDone(means, route, needs.measures, depth);
    if (done.ok) route = done.route;
    else if (depth > 1) return { ok: false, act: first, obstacles };
    else given.push(done.measure);
  }
  return { ok: false, act: first, obstacles: means.peekChain(route.stage.world, deeds).obstacles };
}

type Taken = { readonly ok: true; readonly route: Route } | { readonly ok: false; readonly measure: Measure };

function measuresDone(means: Means, start: Route, measures: readonly Measure[], depth: number): Taken {
  let route = start;
  for (const measure of measures) {
    const { acts, at } = measure;
    for (const act of acts) {
      // What a measure before it has brought about already is not done twice.
      if (firstStandFor(route.stage.world, act, at) === null) continue;
      const done =
        at === undefined ? achieveAct(means, route, act, depth + 1) : achieve(means, route, [{ act, at }], depth + 1);
      if (!done.ok) return { ok: false, measure };
      route = done.route;
    }
  }
  return { ok: true, route };
}

function inOrder(means: Means, start: Route, deeds: readonly Deed[], depth: number): Achieved {
  let route = start;
  for (const [i, deed] of deeds.entries()) {
    const done = perform(means, route, deed);
    if (done !== null) {
      route = done;
      continue;
    }
    if (i === 0) {
      return { ok: false, act: deed.act, obstacles: means.peekChain(route.stage.world, [deed]).obstacles };
    }
    const again = achieve(means, route, deeds.slice(i), depth + 1);
    return again;
  }
  return { ok: true, route };
}
