/** Where the truck stands and whether its engine runs. */
import { add, type Vec3 } from '../math/vec3.ts';
import { trainee, withPerson } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { acknowledged } from './acknowledge.ts';
import { besideTruck } from './go.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot } from './presence.ts';

/** Clear of the line by more than a pole's height over the ground; beside the pole that carries most; metres from it. */
const places = { clear: [-14, -12, 0], 'under-line': [-4, -5, 0] } as const;

/** Foot of the pole that carries most parts. */
function footOfWork(world: World): Vec3 {
  const load = (pole: string | null): number => world.parts.filter((part) => part.pole === pole).length;
  const feet = world.parts.filter(({ id, pole }) => id === `${pole}.pole`);
  const [first, ...others] = feet;
  if (!first) throw new Error('a scene without a pole');
  return others.reduce((best, pole) => (load(pole.pole) > load(best.pole) ? pole : best), first).at;
}

const placeOf = (world: World, place: 'clear' | 'under-line'): Vec3 => add(footOfWork(world), places[place]);

export const park: ActKind<'park'> = {
  minutes: () => 2,
  refuse: (world, act) => {
    if (!world.orders.reported.includes(acknowledged)) return 'the call is not acknowledged yet';
    return world.truck.place === act.at ? 'the truck stands there already' : null;
  },
  apply: (world, act) => {
    const parked: World = {
      ...world,
      truck: { ...world.truck, at: placeOf(world, act.at), place: act.at },
      guards: { ...world.guards, chocks: false },
    };
    const { id, at } = trainee(parked);
    return outcome(at === null ? withPerson(parked, id, { at: besideTruck(parked) }) : parked, [
      event(
        'done',
        null,
        act.at === 'clear'
          ? 'The truck stands well off the line.'
          : 'The truck stands beside the pole, under the line.',
      ),
    ]);
  },
  offers: () => [
    { act: { act: 'park', at: 'clear' }, label: 'Park outside the fall line', by: 'truck', about: null },
    { act: { act: 'park', at: 'under-line' }, label: 'Park beside the pole, under the line', by: 'truck', about: null },
  ],
};

export const engine: ActKind<'engine'> = {
  minutes: () => 0,
  refuse: (world, act) =>
    onFoot(world) ?? (world.truck.engine === act.on ? `the engine is ${act.on ? 'on' : 'off'} already` : null),
  apply: (world, act) =>
    outcome({ ...world, truck: { ...world.truck, engine: act.on } }, [
      event('done', null, act.on ? 'The engine of the truck runs.' : 'The engine of the truck stops.'),
    ]),
  offers: () => [
    { act: { act: 'engine', on: false }, label: 'Switch the engine of the truck off', by: 'truck', about: null },
    { act: { act: 'engine', on: true }, label: 'Start the engine of the truck', by: 'truck', about: null },
  ],
};
