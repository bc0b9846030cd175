/** The busiest World of the fog scene: night and rain, everybody there, everything put out. */
import { withPart, withPerson } from '../../src/engine/world/edit.ts';
import type { World } from '../../src/engine/world/types.ts';
import { laid } from './everyKind.ts';
import { fogWorld } from './fogWorld.ts';

export const busyWorld = (): World => {
  const world = withPerson(fogWorld(), 'second', { at: 'p2.road' });
  const weather = {
    precipitation: 'rain',
    light: 'night',
    skyLux: 0.5,
    visibilityM: 4000,
    wetness: 1,
    windMs: 9,
    traffic: 'heavy',
  };
  return {
    ...world,
    site: { ...world.site, ...weather } as World['site'],
    truck: { ...world.truck, place: 'under-line', engine: true },
    guards: { ...world.guards, chocks: true, cones: true, keepOut: true },
    jumpers: [{ id: 'j1', tool: 'ground-1', points: ['p2.neutral-spool/neutral', 'p2.clamp/line'] }],
  };
};

/** The same with one more fault on its insulator or tie, or with none. */
export const withFault = (world: World, kind: string | null): World => {
  const id = kind === 'tie-broken' ? 'p2.tie' : 'p2.insulator';
  return withPart(world, id, { faults: kind === null ? [] : [laid(kind, 'road')] });
};
