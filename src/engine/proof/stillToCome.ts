/**
 * Minutes still to come at least in a drill's double (doings.ts), for A*: what is still to be done (toDo.ts), sets taken
 * off, the truck parked and the walk to the farthest place of the devices to be brought in, closing out. Walking is what
 * those others are not, and a way by another place is no shorter. Kept by the members of the World that each hangs on.
 */
import { minutesOf, act as plainAct, refusalOf } from '../acts/act.ts';
import { perClamp } from '../acts/ground.ts';
import { standHere } from '../acts/presence.ts';
import { sticksOf } from '../acts/toolsFor.ts';
import type { Act } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { repairKinds } from '../catalogue/repairs.ts';
import type { Part, Stand, World } from '../world/types.ts';
import { kept } from './learned/books.ts';
import { at, type MemberName } from './learned/members.ts';
import type { Transitions } from './learned/transitions.ts';
import type { Tuple } from './learned/tuples.ts';
import { liftOf, placedAt, standsOf } from './places.ts';
import { devicesMinutes, devicesToDo, isIn, repairingMinutes } from './toDo.ts';

/** Refusals that come of how a thing stands, not of where one does. */
const ofState: readonly (string | null)[] = [
  null,
  'it stands so already',
  'it cannot be done as it stands now',
  'there is no such thing on it',
];

export const closingOut: Act = { act: 'close-out' };

/** Ground stands from which the device can be worked or set, whatever state it is in. */
function standsOfWork(world: World, part: Part): readonly Stand[] {
  const sticks = [null, ...sticksOf(world).map(({ id }) => id)];
  const acts: readonly Act[] = [
    ...componentKind(part.kind).operations.flatMap(({ id }) =>
      sticks.map((stick): Act => ({ act: 'operate', part: part.id, operation: id, stick })),
    ),
    ...repairKinds
      .filter(({ on, sets }) => on.includes(part.kind) && sets !== undefined)
      .map(({ id }): Act => ({ act: 'repair', part: part.id, repair: id })),
  ];
  return standsOf(world).filter(
    (stand) => stand.aloft === null && acts.some((act) => ofState.includes(refusalOf(placedAt(world, stand), act))),
  );
}

/** By stand: minutes of the walk to the farthest of the devices that are not in. */
function walksOf(world: World, devices: readonly Part[]): (now: World, stand: Stand) => number {
  const parked: World = { ...world, truck: { ...world.truck, place: 'clear' } };
  const places = devices.map((first) => ({ first, to: standsOfWork(parked, first) }));
  const walk = (from: Stand, to: Stand): number =>
    from.id === to.id ? 0 : minutesOf(placedAt(parked, from), { act: 'go', to: to.id });
  return (now, stand) =>
    places
      .filter(({ first, to }) => to.length > 0 && !isIn(now, first))
      .map(({ to }) => Math.min(...to.map((each) => walk(stand, each))))
      .reduce((most, each) => Math.max(most, each), 0);
}

/** Of the double's World and its transitions; zero once it has ended. */
export function stillToCome(
  world: World,
  transitions: Transitions,
  deadly: ReadonlySet<string>,
): (tuple: Tuple) => number {
  const devices = devicesToDo(world, deadly);
  const walks = walksOf(world, devices);
  const parkings = (['clear', 'under-line'] as const).map((place): Act => ({ act: 'park', at: place }));
  const starts = parkings.flatMap((act) => standHere(plainAct(world, act).world) ?? []);
  const parking = Math.min(...parkings.map((act) => minutesOf(world, act)));
  const ending = minutesOf(world, closingOut);
  const onFoot = liftOf(world) === null;
  const walking = (now: World): number => {
    const here = standHere(now);
    if (here !== null) return onFoot ? walks(now, here) : 0;
    return parking + (onFoot ? Math.min(...starts.map((stand) => walks(now, stand))) : 0);
  };
  const byMembers = (names: readonly MemberName[], of: (now: World) => number): ((tuple: Tuple) => number) => {
    const known = new Map<string, number>();
    const slots = names.map((name) => at[name]);
    return (tuple) => kept(known, slots.map((slot) => tuple[slot]).join(' '), () => of(transitions.worldOf(tuple)));
  };
  const todo = byMembers(['parts'], (now) => repairingMinutes(now, deadly) + devicesMinutes(devices, now));
  const sets = byMembers(['jumpers'], ({ jumpers }) =>
    jumpers.reduce((sum, { points }) => sum + perClamp * points.length, 0),
  );
  const way = byMembers(['parts', 'people'], walking);
  const over = byMembers(['ended'], ({ ended }) => (ended === null ? 1 : 0));
  return (tuple) => over(tuple) * (todo(tuple) + sets(tuple) + way(tuple) + ending);
}
