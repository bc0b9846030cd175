/**
 * What flows into a bolted fault at a part: the network seen from two points is a Thevenin source, and amperes are its
 * volts over its impedance (textbook). Sources that are not in step count at the worst angle. Steady state of the network
 * as solved: limited sources at their limit before the fault, first-cycle offset, motors and arc resistance left out.
 */
import { abs, type Complex } from '../math/complex.ts';
import { EARTH } from '../network/types.ts';
import type { PointId, World } from '../world/types.ts';
import { netAt } from './elementsOf.ts';
import { solveCircuit } from './solveCircuit.ts';

/** A bolted fault. */
export interface FaultCurrent {
  readonly volts: number;
  readonly amperes: number;
  /** Thevenin impedance, ohms. */
  readonly z: Complex;
  readonly xOverR: number;
}

/** Fault between two points, or a point and remote earth; null where both are one net. */
export function faultCurrent(world: World, from: PointId, to: PointId | 'earth'): FaultCurrent | null {
  const [a, b] = [netAt(world, from), to === EARTH ? EARTH : netAt(world, to)];
  if (a === b) return null;
  const { worst, zth } = solveCircuit(world).network.theveninBetween(a, b);
  return {
    volts: worst,
    amperes: worst / abs(zth),
    z: zth,
    xOverR: zth.re === 0 ? Number.POSITIVE_INFINITY : zth.im / zth.re,
  };
}
