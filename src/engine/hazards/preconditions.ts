/**
 * Every precondition that controls name: those of readiness.ts, and distance kept, which asks the mechanisms
 * themselves whether working hands would be inside the minimum approach distance of anything alive.
 */

import { personById, standById, trainee } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { approach } from './approach.ts';
import { momentOf } from './moment.ts';
import { others } from './others.ts';
import { type About, failing as failingReady, precondition as isReady, preconditions as ready } from './readiness.ts';
import { isTruckHeld } from './truckTouch.ts';
import type { Reach } from './types.ts';

export type { About } from './readiness.ts';

const DISTANCE = 'keep-distance';
const ZONE = 'zone-clear';
const TRUCK = 'truck-held';

/** Names of all preconditions. */
export const preconditions: readonly string[] = [...ready, DISTANCE, TRUCK, ZONE].sort();

function reachOf(world: World, { who }: About): Reach | null {
  const person = who === undefined ? trainee(world) : personById(world, who);
  const stand = person?.at == null ? null : standById(world, person.at);
  if (person === null || stand === null) return null;
  return {
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
}

/** Those that ask the mechanisms: nothing met by working hands here. */
const asked: Readonly<Record<string, (world: World, about: About) => boolean>> = {
  [DISTANCE]: (world, about) => {
    const reach = reachOf(world, about);
    return reach === null || approach(reach, momentOf(world, false)).length === 0;
  },
  [ZONE]: (world, about) => {
    const reach = reachOf(world, about);
    return reach === null || others(reach, momentOf(world, false)).length === 0;
  },
  [TRUCK]: isTruckHeld,
};

/** Whether it holds now; throws on an unknown name. */
export const precondition = (world: World, id: string, about: About = {}): boolean =>
  asked[id]?.(world, about) ?? isReady(world, id, about);

/** Those that do not hold now, in the order given. */
export const failing = (world: World, ids: readonly string[], about: About = {}): readonly string[] => [
  ...failingReady(
    world,
    ids.filter((id) => !Object.hasOwn(asked, id)),
    about,
  ),
  ...ids.filter((id) => asked[id]?.(world, about) === false),
];
