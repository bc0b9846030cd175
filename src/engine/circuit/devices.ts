/**
 * What may operate by itself in a World: fuses, breakers and reclosers by current, relays by voltage; the next to do
 * so. Left out: relays for frequency, rate and negative sequence.
 */
import { componentKind } from '../catalogue/components.ts';
import type { Protection, Watch } from '../catalogue/types.ts';
import { abs } from '../math/complex.ts';
import type { Part, World } from '../world/types.ts';
import { branchesOf, netOf, partsById } from './elementsOf.ts';
import { operatingTime } from './operatingTime.ts';
import type { SolvedCircuit } from './solveCircuit.ts';
import type { Operation } from './types.ts';

/** A device that needs longer than this has not operated when the next thing happens, seconds. */
export const HORIZON = 60;

/** A protective branch, or a voltage relay, of a part. */
export type Device =
  | { readonly part: Part; readonly branch: string; readonly protection: Protection }
  | { readonly part: Part; readonly branch: string; readonly watch: Watch };

const devicesKept = new WeakMap<Part, readonly Device[]>();

function devicesOn(part: Part): readonly Device[] {
  const kept = devicesKept.get(part);
  if (kept !== undefined) return kept;
  const devices: Device[] = [
    ...branchesOf(part).flatMap((branch) =>
      branch.type === 'series' && branch.protects !== undefined
        ? [{ part, branch: branch.name, protection: branch.protects }]
        : [],
    ),
    ...(componentKind(part.kind).watches?.(part) ?? []).map((watch) => ({ part, branch: watch.name, watch })),
  ];
  devicesKept.set(part, devices);
  return devices;
}

/** Protective branches and relays as they stand, by part. */
export const devicesOf = (world: World): Device[] => partsById(world).flatMap(devicesOn);

/** Trips that each recloser has made since the last rest. */
export type Shots = ReadonlyMap<string, number>;

function voltsOf({ network }: SolvedCircuit, part: Part, { between: [a, b], group }: Watch): number {
  const [from, to] = [netOf(part, a), netOf(part, b)];
  if (group === undefined) return network.worstBetween(from, to);
  return network.groups.includes(group) ? abs(network.contribution(group).voltageBetween(from, to)) : 0;
}

function operationOf(device: Device, solution: SolvedCircuit, shots: Shots): Operation {
  const { part, branch } = device;
  if ('watch' in device) {
    const { below = 0, above = Number.POSITIVE_INFINITY, seconds } = device.watch;
    const volts = voltsOf(solution, part, device.watch);
    const isOut = volts < below || volts > above;
    return { part: part.id, branch, amperes: 0, seconds: isOut ? seconds : Number.POSITIVE_INFINITY, volts };
  }
  const amperes = solution.branchCurrent(part.id, branch);
  const seconds = operatingTime(part.id, device.protection, amperes, shots.get(part.id) ?? 0);
  return { part: part.id, branch, amperes, seconds };
}

/** The device that operates first, or null when none does within the horizon; equal times go by the devices' order. */
export function fastest(
  devices: readonly Device[],
  solution: SolvedCircuit,
  shots: Shots,
): { readonly device: Device; readonly operation: Operation } | null {
  let first: { device: Device; operation: Operation } | null = null;
  for (const device of devices) {
    const operation = operationOf(device, solution, shots);
    if (operation.seconds > HORIZON || (first !== null && operation.seconds >= first.operation.seconds)) continue;
    first = { device, operation };
  }
  return first;
}
