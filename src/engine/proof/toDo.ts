/**
 * Minutes still to come at least until service is restored, of a World as it stands, each counted once and by acts that no
 * other does instead:
 *
 * - The repairs without which a fault that can kill stays: on each part that which takes longest of the shortest for each
 *   fault, for one repair may mend two.
 * - For each device of the line without which something that the job names is not fed, though everything else is whole and
 *   closed: the shortest way to where it joins more than at the start. Closing only adds to what is fed. Devices that the
 *   dispatcher or the clock works are left out.
 * - Telling of what can kill and stays, for there is no repair for it.
 *
 * No act takes more off their sum than its own minutes.
 */
import { minutesOf, refusalOf } from '../acts/act.ts';
import { remoteOf } from '../acts/dispatcher.ts';
import type { Act } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import { repairKind, repairKinds } from '../catalogue/repairs.ts';
import { findPart } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';
import { isLeft, unfed } from './goals.ts';
import { allClosed, joined } from './impossible.ts';
import { liftOf, placedAt, standsOf } from './places.ts';
import { minutesUntil } from './toService.ts';

export type Repair = Extract<Act, { act: 'repair' }>;

export interface Needed {
  readonly fault: string;
  /** Any of which mends it. */
  readonly by: readonly Repair[];
}

/** Faults that can kill and that repairs mend, on each part. */
export const needed = (world: World, deadly: ReadonlySet<string>): readonly (readonly Needed[])[] =>
  world.parts
    .map((part) =>
      part.faults
        .filter(({ id, kind }) => deadly.has(id) && !faultKind(kind).benign)
        .map(({ id, kind }) => ({
          fault: id,
          by: repairKinds
            .filter(({ on, mends }) => on.includes(part.kind) && mends.includes(kind))
            .map((repair): Repair => ({ act: 'repair', part: part.id, repair: repair.id })),
        }))
        .filter(({ by }) => by.length > 0),
    )
    .filter((faults) => faults.length > 0);

const shortest = (world: World, repairs: readonly Repair[]): number =>
  Math.min(...repairs.map((repair) => minutesOf(world, repair)));

/** Minutes of the repairs that are needed. */
export const repairingMinutes = (world: World, deadly: ReadonlySet<string>): number =>
  needed(world, deadly)
    .map((faults) => Math.max(...faults.map(({ by }) => shortest(world, by))))
    .reduce((sum, each) => sum + each, 0);

/** Refusals that come of where one stands. */
export const ofPlace: readonly string[] = [
  'it is out of reach of the hand from here',
  'that is not here',
  'that is not at this pole',
];

/** Whether it can be done from no place on the ground, whatever state things are in. */
export const isAloft = (world: World, repair: Repair): boolean =>
  standsOf(world)
    .filter(({ aloft }) => aloft === null)
    .every((stand) => ofPlace.includes(refusalOf(placedAt(world, stand), repair) ?? ''));

/**
 * Tells the repairs that do anything in a drill: mend what is laid, set something or take a tie off or on, from where the
 * crew gets to. Any other changes nothing, or is never possible.
 */
export function repairsThatDo(start: World): (repair: Repair) => boolean {
  const parked: World = { ...start, truck: { ...start.truck, place: 'clear' } };
  return (repair) => {
    const { mends, sets, tie } = repairKind(repair.repair);
    const laid = findPart(start, repair.part)?.faults.some(({ kind }) => mends.includes(kind)) ?? false;
    return (laid || sets !== undefined || tie !== undefined) && (liftOf(start) !== null || !isAloft(parked, repair));
  };
}

/** Devices to be brought in by the crew, as they stand at the start; those that are mended are counted with that. */
export function devicesToDo(start: World, deadly: ReadonlySet<string>): readonly Part[] {
  const mended = new Set(needed(start, deadly).flatMap((faults) => faults.flatMap(({ by }) => by.map((r) => r.part))));
  const byItself = new Set(start.given.events.flatMap(({ part }) => part ?? []));
  const closed = allClosed(start).parts;
  const whole: World = { ...allClosed(start), parts: closed.map((part) => ({ ...part, faults: [] })) };
  if (unfed(whole).length > 0) return [];
  return start.parts.filter((part) => {
    if (part.pole === null || part.premises !== null || mended.has(part.id) || byItself.has(part.id)) return false;
    const parts = whole.parts.map((each) => (each.id === part.id ? { ...part, faults: [] } : each));
    const most = joined(findPart(whole, part.id) ?? part);
    return remoteOf(part).length === 0 && joined(part) < most && unfed({ ...whole, parts }).length > 0;
  });
}

/** Whether a device joins more than it did at the start. */
export const isIn = (world: World, first: Part): boolean => joined(findPart(world, first.id) ?? first) > joined(first);

/** Minutes of bringing them in from where they stand now. */
export const devicesMinutes = (devices: readonly Part[], now: World): number =>
  devices
    .map((first) => minutesUntil(findPart(now, first.id) ?? first, (part) => joined(part) > joined(first)))
    .reduce((sum, each) => sum + (Number.isFinite(each) ? each : 0), 0);

/** Whether something that can kill stays whatever is mended: somebody has to be told. */
export function staysDeadly(world: World, deadly: ReadonlySet<string>): boolean {
  const mended = new Set(needed(world, deadly).flatMap((faults) => faults.map(({ fault }) => fault)));
  const parts = world.parts.map((part) => ({ ...part, faults: part.faults.filter(({ id }) => !mended.has(id)) }));
  return isLeft({ ...world, parts }, deadly);
}
