/**
 * Every precondition that controls name: those of readiness.ts, and distance kept, which asks the mechanisms
 * themselves whether working hands would be inside the minimum approach distance of anything alive.
 */

import { personById, standById, trainee } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { approach } from './approach.ts';
import { momentOf } from './moment.ts';
import { type About, failing as failingReady, precondition as isReady, preconditions as ready } from './readiness.ts';

export type { About } from './readiness.ts';

const DISTANCE = 'keep-distance';

/** Names of all preconditions. */
export const preconditions: readonly string[] = [...ready, DISTANCE].sort();

function keepsDistance(world: World, { who }: About): boolean {
  const person = who === undefined ? trainee(world) : personById(world, who);
  const stand = person?.at == null ? null : standById(world, person.at);
  if (person === null || stand === null) return true;
  const reach = {
    who: person.id,
    stand: stand.id,
    at: stand.feet,
    aloft: stand.aloft !== null,
    touches: [],
    switches: null,
    disturbs: null,
    climbs: null,
    works: true,
    seconds: 0,
  };
  return approach(reach, momentOf(world, false)).length === 0;
}

/** Whether it holds now; throws on an unknown name. */
export const precondition = (world: World, id: string, about: About = {}): boolean =>
  id === DISTANCE ? keepsDistance(world, about) : isReady(world, id, about);

/** Those that do not hold now, in the order given. */
export const failing = (world: World, ids: readonly string[], about: About = {}): readonly string[] => [
  ...failingReady(
    world,
    ids.filter((id) => id !== DISTANCE),
    about,
  ),
  ...(ids.includes(DISTANCE) && !keepsDistance(world, about) ? [DISTANCE] : []),
];
