/**
 * Who is without service: the premises whose meter does not bring the system's voltage to the load side. A customer's
 * own set lights the house, it is no service. Within 10 % below nominal counts as served (service range, ANSI C84.1,
 * from memory, rounded to the wider side).
 */
import { componentKind } from '../catalogue/components.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import type { Part, World } from '../world/types.ts';
import type { Replay } from './types.ts';

const served = 0.9 * 120;
/** Terminals of a meter's load side. */
const loadSide = ['load1', 'load2'] as const;

const meters = (world: World): readonly Part[] =>
  world.parts.filter(
    (part) =>
      part.premises !== null && loadSide.every((terminal) => componentKind(part.kind).terminals.includes(terminal)),
  );

const isServed = (world: World, meter: Part): boolean =>
  loadSide.every((terminal) => {
    const { volts, sources } = solveCircuit(world).point(`${meter.id}/${terminal}`);
    return volts >= served && sources.includes('system');
  });

/** Premises without service now, sorted by id. */
export const premisesOut = (world: World): readonly string[] =>
  meters(world)
    .filter((meter) => !isServed(world, meter))
    .map(({ premises }) => premises ?? '')
    .sort();

/** How many customers are without service now. */
export const customersOut = (world: World): number => premisesOut(world).length;

/** Customer-minutes from the first act to the last, by premises; each step counts with how it stood before. */
export function minutesOut(replay: Replay): Readonly<Record<string, number>> {
  const sums: Record<string, number> = Object.fromEntries(
    meters(replay.start).map(({ premises }) => [premises ?? '', 0]),
  );
  for (const { before, after } of replay.steps) {
    const minutes = after.clock.minute - before.clock.minute;
    if (minutes === 0) continue;
    for (const premises of premisesOut(before)) sums[premises] = (sums[premises] ?? 0) + minutes;
  }
  return sums;
}
