/** What may rightly be called on the site, on somebody or on the ticket because it stands so, faults apart. */
import { isTrafficHeld } from '../hazards/traffic.ts';
import { isStormy } from '../hazards/weather.ts';
import { personById } from '../world/edit.ts';
import type { Finding, World } from '../world/types.ts';

/** Wetness from which one calls it wet (estimate). */
const wet = 0.3;

const ofSite: Readonly<Record<string, (world: World) => boolean>> = {
  flooded: ({ site }) => site.flooded,
  iced: ({ site }) => site.precipitation === 'ice',
  lightning: isStormy,
  'traffic-unguarded': (world) => world.site.traffic !== 'none' && !isTrafficHeld(world),
  wet: ({ site }) => site.wetness >= wet,
  'wind-too-strong': ({ site }) => site.windMs > site.windLimitMs,
};

/** Whether somebody of the public, or a dog, is here at all. */
const about = (world: World, id: string, roles: readonly string[]): boolean => {
  const person = personById(world, id);
  return person !== null && person.at !== null && roles.includes(person.role);
};

const ofPeople: Readonly<Record<string, (world: World, id: string) => boolean>> = {
  alone: (world, id) => personById(world, id)?.role === 'second' && personById(world, id)?.at === null,
  missing: (world, id) => personById(world, id)?.role === 'second' && personById(world, id)?.at === null,
  'child-near': (world, id) => about(world, id, ['child']),
  'dog-loose': (world, id) => about(world, id, ['dog']),
  'not-qualified': (world, id) => personById(world, id)?.qualified === false,
  recloses: ({ parts }, id) => id === 'dispatcher' && parts.some(({ state }) => state.reclosing === 'automatic'),
};

/** Whether the condition holds there now. */
export function holdsAround(world: World, { on, condition }: Finding): boolean {
  if (on === 'site') return ofSite[condition]?.(world) ?? false;
  return personById(world, on) !== null && (ofPeople[condition]?.(world, on) ?? false);
}
