/**
 * What a call may end in. Restored: closed out, what the job names fed by the system again, nothing left on the line that
 * is behind a hazard that can kill, no ground, cover or arm left on, nobody aloft. Handed over: the public kept
 * out, the dispatcher told, what was moved tagged.
 */
import { acknowledged } from '../acts/acknowledge.ts';
import { premisesOut } from '../acts/customersOut.ts';
import type { Act } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { repairKinds } from '../catalogue/repairs.ts';
import type { RepairKind } from '../catalogue/types.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import type { Hazard } from '../hazards/types.ts';
import { findPart, trainee } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';

/** Laid faults behind hazards that can kill, as the scene was found. */
export const deadlyFaults = (hazards: readonly Hazard[]): ReadonlySet<string> =>
  new Set(hazards.flatMap(({ potentiallyFatal, causes }) => (potentiallyFatal ? causes : [])));

const repairFor = (kind: string, fault: string): RepairKind | null =>
  repairKinds.find(({ on, mends }) => on.includes(kind) && mends.includes(fault)) ?? null;

/** Repairs that are still to be done: those that mend something harmful. */
export const repairsLeft = (world: World): readonly Extract<Act, { act: 'repair' }>[] =>
  world.parts.flatMap((part) => {
    const repairs = part.faults
      .filter(({ kind }) => !faultKind(kind).benign)
      .flatMap(({ kind }) => repairFor(part.kind, kind) ?? []);
    return [...new Set(repairs)].map(({ id }) => ({ act: 'repair', part: part.id, repair: id }) as const);
  });

/** Harmful faults on what is the line's, and on what of a customer's the crew can mend: they may not stay. */
export const mustGo = (world: World): readonly string[] =>
  world.parts.flatMap(({ kind: of, premises, faults }) =>
    faults
      .filter(({ kind }) => !faultKind(kind).benign && (premises === null || repairFor(of, kind) !== null))
      .map(({ id }) => id),
  );

/** Whether the system feeds the part: a meter's load side at service volts, other parts live from the system. */
function isFed(world: World, id: string): boolean {
  const part = findPart(world, id);
  if (part === null) return false;
  if (part.premises !== null && componentKind(part.kind).terminals.includes('load1')) {
    return !premisesOut(world).includes(part.premises);
  }
  return Object.keys(componentKind(part.kind).points).some((terminal) => {
    const { live, sources } = solveCircuit(world).point(`${id}/${terminal}`);
    return live && sources.includes('system');
  });
}

/** Parts named by the job that the system does not feed yet. */
export const unfed = (world: World): readonly string[] => world.given.job.restores.filter((id) => !isFed(world, id));

/** Whether nothing of the crew's is left on the line and nobody is aloft. */
const isCleared = (world: World): boolean =>
  world.jumpers.length === 0 &&
  world.covers.length === 0 &&
  world.parts.every(({ supported }) => !supported) &&
  trainee(world).aloftBy === null;

const told: readonly string[] = ['backfeed', 'public-danger', 'cause-found', 'stays-out'];

/** Whether something that can kill is still there, if only in a house. */
export const isLeft = (world: World, deadly: ReadonlySet<string>): boolean =>
  world.parts.some(({ faults }) => faults.some(({ id }) => deadly.has(id)));

/** Whether the line is as it has to be for a call to count as restored. */
export const isWhole = (world: World, deadly: ReadonlySet<string>): boolean =>
  isCleared(world) && mustGo(world).every((id) => !deadly.has(id)) && unfed(world).length === 0;

/** What keeps a World from counting as restored, apart from the closing out. */
export const isRestored = (world: World, deadly: ReadonlySet<string>): boolean =>
  isWhole(world, deadly) && (!isLeft(world, deadly) || world.orders.reported.some((what) => told.includes(what)));

/** Devices that stand otherwise than the crew found them, without a tag. */
export const untagged = (start: World, world: World): readonly Part[] =>
  world.parts.filter((part) => {
    const first = findPart(start, part.id);
    const byCrew = componentKind(part.kind).operations.some(
      ({ by, to }) => by !== 'owner' && to.position !== undefined && to.position === part.state.position,
    );
    return byCrew && first?.state.position !== part.state.position && part.tags.length === 0;
  });

/** Whether those who come after are told and kept safe. */
export const isHandedOver = (start: World, world: World, holdsSource: boolean): boolean =>
  world.guards.keepOut &&
  (holdsSource
    ? world.orders.reported.includes('backfeed')
    : world.orders.reported.some(
        (what) => what === 'backfeed' || what === 'public-danger' || what === 'cause-found',
      )) &&
  trainee(world).aloftBy === null &&
  untagged(start, world).length === 0;

/** Whether the call has been taken. */
export const isAcknowledged = (world: World): boolean => world.orders.reported.includes(acknowledged);
