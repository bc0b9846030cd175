/**
 * What bends a wood pole at the groundline: wind on pole and conductors, unbalanced tension, a climber. Wind pressure
 * 0.613 v2 Pa times a shape factor, 1.0 for round things (metric form of 0.00256 V2 lb/ft2; factors from memory of NESC
 * 250C). The pole is a straight taper seen from the side. Sum of moments against f C3/(32 pi2) with the
 * strength that decay leaves (poles.ts). Left out: gust response, pole deflection (P-delta), foundation, guys other
 * than as a tension that balances, and where along the pole it is weakest.
 */
import type { Fraction, Metres, MetresPerSecond, NewtonMetres, Newtons, Pascals } from '../units/quantities.ts';
import { circumferenceAt, momentCapacity, mustReplace, type PoleDimensions } from './poles.ts';

/** Wind pressure on a flat square metre; times the shape factor of what it meets. */
export const windPressure = (speed: MetresPerSecond, shape = 1): Pascals => 0.613 * speed * speed * shape;

/** Moment at the groundline of wind on the pole itself: pressure times the first moment of a trapezoid. */
export const poleWindMoment = (pole: PoleDimensions, pressure: Pascals): NewtonMetres => {
  const height = pole.length - pole.setting;
  const butt = circumferenceAt(pole, 0) / Math.PI;
  const top = circumferenceAt(pole, height) / Math.PI;
  return (pressure * height * height * (butt + 2 * top)) / 6;
};

/** A force on the pole and how high it acts. */
export interface PoleForce {
  readonly newtons: Newtons;
  readonly height: Metres;
}

/** Wind on one conductor over its wind span. */
export const conductorWind = (pressure: Pascals, diameter: Metres, windSpan: Metres, height: Metres): PoleForce => ({
  newtons: pressure * diameter * windSpan,
  height,
});

/** Moment of forces in one direction. */
export const momentOf = (forces: readonly PoleForce[]): NewtonMetres =>
  forces.reduce((sum, { newtons, height }) => sum + newtons * height, 0);

/** Moment of a climber's weight hung `lean` out; `sudden` 2 for a slip into the belt. */
export const climberMoment = (weight: Newtons, lean: Metres, sudden = 1): NewtonMetres => sudden * weight * lean;

/** How much of a pole's strength is used. */
export interface PoleUse {
  readonly capacity: NewtonMetres;
  readonly demand: NewtonMetres;
  readonly used: Fraction;
  /** Under two thirds of required strength: replaced or reinforced whatever it carries. */
  readonly rejected: boolean;
  readonly holds: boolean;
}

/** Use of a pole with `left` of its strength under `demand`; the part used is of what is left. */
export const poleUse = (pole: PoleDimensions, fibre: Pascals, left: Fraction, demand: NewtonMetres): PoleUse => {
  const capacity = left * momentCapacity(circumferenceAt(pole, 0), fibre);
  const used = demand / capacity;
  const rejected = mustReplace(left);
  return { capacity, demand, used, rejected, holds: !rejected && used <= 1 };
};
