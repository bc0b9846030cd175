/**
 * A dog that nothing holds, at whoever has hands or eyes elsewhere: works, reaches, switches, strikes, or sets foot on the
 * pole on the ground where it runs. It bites, or it is between the legs of somebody who looks up (no rule names dogs; common
 * practice: knock, have it shut in). Who looks, listens and walks sees it coming and is not counted. Left out: what it does to stick, rope and cones, who runs after it, that it may be at hand elsewhere
 * in the scene by then.
 */
import { distance } from '../math/vec3.ts';
import type { Metres } from '../units/quantities.ts';
import { standById } from '../world/edit.ts';
import type { Person, World } from '../world/types.ts';
import type { Meeting } from './meeting.ts';
import type { Moment } from './moment.ts';
import { failing, isLoose } from './readiness.ts';
import type { Reach } from './types.ts';

/** How far a dog is off the place where it was seen when nothing holds it (estimate). */
const ROAMS: Metres = 15;
/** Running, m/s (estimate). */
const PACE = 8;
/** Chance that one that nobody knows bites in such a stay (estimate). */
const BITES = 0.01;

const busy = (reach: Reach): boolean =>
  reach.works ||
  reach.touches.length > 0 ||
  reach.switches !== null ||
  reach.disturbs !== null ||
  reach.climbs?.by === 'hooks';

/** How far the dog is off; null when it is not here. */
function awayOf(world: World, { at }: Person, reach: Reach): Metres | null {
  const stand = at === null ? null : standById(world, at);
  return stand === null ? null : distance(stand.feet, [reach.at[0], reach.at[1], 0]);
}

/** Dogs that can be at whoever reaches there. */
export function animals(reach: Reach, { world }: Moment): readonly Meeting[] {
  if (reach.aloft || !busy(reach)) return [];
  return world.people.flatMap((dog) => {
    const away = isLoose(dog) ? awayOf(world, dog, reach) : null;
    if (away === null || away > ROAMS) return [];
    const quantities = [
      { name: 'distance', value: away, unit: 'm' },
      { name: 'time in which it is there, estimate', value: away / PACE, unit: 's' },
      { name: 'chance that it bites, estimate', value: BITES, unit: '' },
    ];
    return [
      {
        hazard: `struck-by:${dog.id}`,
        mechanism: 'struck-by',
        part: dog.id,
        point: null,
        who: reach.who,
        severity: 'serious',
        potentiallyFatal: false,
        quantities,
        now: quantities,
        strikes: false,
        failed: failing(world, ['dog-in']),
        limit: 'no hands on anything while it runs free',
        source: 'common practice; reach and chance are estimates',
        measure: 1,
        measureNow: 1,
        words: 'It is at whoever has the hands full before they look round.',
      },
    ];
  });
}
