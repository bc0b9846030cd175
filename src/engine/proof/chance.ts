/**
 * Chance as an adversary. A draw shows in the World's chance; at each act of a route where there was one, the act is done
 * again with a chance that makes the leak flash over, and from what that leaves the crew must be able to stop: come down,
 * guard, tell, hand over, with nobody exposed.
 */
import { carryOut, act as plainAct, refusalOf } from '../acts/act.ts';
import { standHere } from '../acts/presence.ts';
import type { Act } from '../acts/types.ts';
import { nextUniform, type RandomState, seedFrom } from '../math/random.ts';
import type { World } from '../world/types.ts';
import type { Means } from './peek.ts';
import type { Claim } from './types.ts';

/** A chance whose next draw is as low as one in a thousand. */
function unlucky(): RandomState {
  for (let seed = 0; ; seed++) {
    const state = seedFrom(seed);
    if (nextUniform(state)[0] < 0.001) return state;
  }
}

/** What stopping takes from here. */
export function stoppingFrom(world: World): readonly Act[] {
  return [
    ...(standHere(world)?.aloft ? ([{ act: 'come-down' }] as const) : []),
    ...(world.guards.keepOut ? [] : ([{ act: 'guard', with: 'keep-out' }] as const)),
    ...(world.orders.reported.includes('public-danger')
      ? []
      : ([{ act: 'tell', who: 'dispatcher', what: 'public-danger' }] as const)),
    { act: 'hand-over' },
  ];
}

/** Hazards met in stopping from here. */
export function metInStopping(means: Means, start: World): readonly string[] {
  let world = start;
  const met: string[] = [];
  for (const act of stoppingFrom(start)) {
    if (refusalOf(world, act) !== null) continue;
    const peeked = means.peek(world, act);
    met.push(...peeked.obstacles.filter(({ is }) => is === 'exposed').map(({ id }) => id));
    world = peeked.world;
  }
  return met;
}

/** Whether a flashover anywhere along the route leaves a safe way to stop. */
export function chanceClaim(means: Means, start: World, acts: readonly Act[]): Claim {
  const bad = unlucky();
  let world = start;
  let draws = 0;
  for (const [i, act] of acts.entries()) {
    const next = plainAct(world, act);
    if (!next.ok) break;
    if (next.world.chance !== world.chance) {
      draws++;
      const flashed = carryOut({ ...world, chance: bad }, act).settled;
      const met = metInStopping(means, flashed);
      if (met.length > 0) {
        return {
          id: 'chance',
          outcome: 'fails',
          words: `If a leak flashes over here, stopping exposes somebody: ${met.join(', ')}.`,
          acts: acts.slice(0, i + 1),
        };
      }
    }
    world = next.world;
  }
  return {
    id: 'chance',
    outcome: 'holds',
    words:
      draws === 0
        ? 'Nothing on the proven route hangs on chance.'
        : `Wherever on the proven route a leak may flash over (${draws} acts), stopping after that exposes nobody.`,
    acts: [],
  };
}
