/**
 * How much one steady sound takes from the hearing of another. Critical-band rate: Traunmüller 1990, z = 26.81 f/(1960 + f) - 0.53
 * Bark. Spread of masking: Terhardt 1979, 27 dB/Bark below the masker and 24 + 230 Hz/f - 0.2 L dB/Bark above it (L: its level).
 * Each sound is taken as one line at its strongest frequency, which is an estimate; sound that has all frequencies (wind, rain, a
 * diesel near by) masks everything alike and is not spread. Left out: masking before and after a sound, two ears.
 */
import type { Decibels } from '../units/quantities.ts';

type Hertz = number;

/** Critical-band rate of a frequency, Bark. */
export const bark = (frequency: Hertz): number => (26.81 * frequency) / (1960 + frequency) - 0.53;

/** Level that a sound of `level` at `masker` has, as a mask, at `frequency`. */
export const maskAt = (level: Decibels, masker: Hertz, frequency: Hertz): Decibels => {
  const away = bark(frequency) - bark(masker);
  const slope = away < 0 ? 27 : Math.max(0, 24 + 230 / masker - 0.2 * level);
  return level - slope * Math.abs(away);
};
