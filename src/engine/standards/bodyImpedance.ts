/**
 * Resistance of a human body, hand to hand, dry, large contact areas, by touch voltage and by the part of people whose
 * resistance is not exceeded. IEC 479-1:1994, Table 1, straight lines between its points; below 25 V the 25 V value
 * holds, above 1000 V the table's asymptote. Wet skin lowers it by 10 to 25 % up to 50 V (same document). The 2005
 * edition gives lower values above 50 V. For step and touch IEEE Std 80 and 1910.269 Appendix C take a plain 1000 ohm.
 * Left out: small or wet contact areas, direct current, skin that burns through.
 */
import type { Ohms, Volts } from '../units/quantities.ts';
import { interpolate, type Point } from './interpolate.ts';

/** Per cent of people at or below the resistance. */
export type BodyPercentile = 5 | 50 | 95;

const volts = [25, 50, 75, 100, 125, 220, 700, 1000] as const;
const columns: Readonly<Record<BodyPercentile, { readonly ohms: readonly Ohms[]; readonly asymptote: Ohms }>> = {
  5: { ohms: [1750, 1450, 1250, 1200, 1125, 1000, 750, 700], asymptote: 650 },
  50: { ohms: [3250, 2625, 2200, 1875, 1625, 1350, 1100, 1050], asymptote: 750 },
  95: { ohms: [6100, 4375, 3500, 3200, 2875, 2125, 1550, 1500], asymptote: 850 },
};

/** Total body resistance in ohms at `touch` volts (IEC 479-1:1994 Table 1). */
export const bodyImpedance = (touch: Volts, percentile: BodyPercentile = 50): Ohms => {
  const { ohms, asymptote } = columns[percentile];
  if (touch > 1000) return asymptote;
  const points = volts.map((at, row): Point => [at, ohms[row] ?? asymptote]);
  return interpolate(points, touch);
};

/** Body resistance usually taken for step and touch: IEEE Std 80; 1910.269 Appendix C, III.D.1 (after IEEE Std 1048-2003). */
export const usualBodyResistance: Ohms = 1000;

/** Resistance without skin (broken or wet): 1910.269 Appendix C, III.D.1. */
export const internalBodyResistance: Ohms = 500;
