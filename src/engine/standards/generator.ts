/**
 * A small engine set in its first cycles: subtransient source behind R + jX''d on its own rating, current in rated
 * currents, and what its engine can carry for longer. X''d 0.10 to 0.25, X'd 0.15 to 0.40, Xd 1.5 to 3 per unit (a published
 * note on generator reactance, which gives 7.1 times rated for X''d 0.14). Sustained short circuit without field
 * forcing 1/Xd; household sets often collapse (from memory). Left out: offset of the first peak, saturation, speed.
 */
import { abs, type Complex, complex, scale } from '../math/complex.ts';
import type { Amperes, Ohms, VoltAmperes, Volts } from '../units/quantities.ts';

/** A set. */
export interface GeneratorSet {
  readonly rating: VoltAmperes;
  readonly volts: Volts;
  /** Per unit on its own rating. */
  readonly resistance: number;
  readonly subtransient: number;
  readonly synchronous: number;
}

/** Rated amperes. */
export const generatorRated = ({ rating, volts }: Pick<GeneratorSet, 'rating' | 'volts'>): Amperes => rating / volts;

/** One per unit in ohms. */
export const generatorBase = ({ rating, volts }: Pick<GeneratorSet, 'rating' | 'volts'>): Ohms =>
  (volts * volts) / rating;

/** Impedance of the first cycles. */
export const subtransientImpedance = (set: Omit<GeneratorSet, 'synchronous'>): Complex =>
  scale(complex(set.resistance, set.subtransient), generatorBase(set));

/** Amperes of the first cycles into a bolted fault. */
export const firstCycleFault = (set: Omit<GeneratorSet, 'synchronous'>): Amperes =>
  set.volts / abs(subtransientImpedance(set));

/** Amperes that last into a bolted fault without field forcing. */
export const sustainedFault = (set: GeneratorSet): Amperes => generatorRated(set) / set.synchronous;

/** Watts at which the governor has no more to give; beyond them the speed falls. */
export const governorLimit = ({ rating }: Pick<GeneratorSet, 'rating'>, powerFactor = 1): number =>
  rating * powerFactor;

/**
 * Speed of a small engine set against its rated speed, at a share of its rated load. Model: mechanical governor with straight droop,
 * set 3 % fast at no load (62 Hz), 5 % lower at full load; both from memory of handbooks of household sets, not read. Beyond its
 * rating it goes on down the same line, to the nine tenths at which such a set stalls (estimate).
 */
export const speedUnderLoad = (share: number): number => Math.max(0.9, 1.03 - 0.05 * share);
