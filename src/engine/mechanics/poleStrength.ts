/**
 * Whether a wood pole carries somebody on hooks. Capacity at the groundline: fibre strength and circumference
 * (standards/poles.ts), times the strength that decay leaves. Demand: a climber of 120 kg with tools, leaning 0.6 m
 * out, doubled for a sudden slip into the belt, and the difference of the conductors' tensions at the height where
 * they hang. Climber and factor are estimates. Left out: wind, the pole's own lean, guys that hold the tensions,
 * decay above the groundline. A pole with under two thirds of its strength is rejected whatever it must carry
 * (standards/poles.ts).
 */
import { fibreStrength, momentCapacity, mustReplace } from '../standards/poles.ts';
import { gravity } from '../standards/sag.ts';
import type { Fraction, Kilograms, Metres, NewtonMetres, Newtons } from '../units/quantities.ts';

/** Person, belt and tools. */
const CLIMBER: Kilograms = 120;
/** How far the weight hangs out from the pole's axis. */
const LEAN: Metres = 0.6;
/** A load put on at once deflects and strains twice as much as at rest (textbook). */
const SUDDEN = 2;

/** A pole as far as bending goes. */
export interface BendingPole {
  readonly buttRadius: Metres;
  /** Strength left of a new pole. */
  readonly left: Fraction;
  /** Sideways pull of conductors that do not balance, and its height. */
  readonly pull: Newtons;
  readonly pullHeight: Metres;
}

/** What the pole withstands and what a climber asks of it. */
export interface PoleCheck {
  readonly capacity: NewtonMetres;
  readonly demand: NewtonMetres;
  readonly rejected: boolean;
  readonly suffices: boolean;
}

/** Bending at the groundline of a southern pine pole with a climber on it. */
export function checkPole(pole: BendingPole): PoleCheck {
  const circumference = 2 * Math.PI * pole.buttRadius;
  const capacity = pole.left * momentCapacity(circumference, fibreStrength['southern pine']);
  const demand = SUDDEN * CLIMBER * gravity * LEAN + Math.abs(pole.pull) * pole.pullHeight;
  const rejected = mustReplace(pole.left);
  return { capacity, demand, rejected, suffices: !rejected && capacity >= demand };
}
