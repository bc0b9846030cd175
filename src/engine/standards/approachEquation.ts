/**
 * Minimum approach distance by the equations of 29 CFR 1910.269 Table R-3 (text as amended through 85 FR 8732, Feb. 18,
 * 2020): to 5 kV M + D; to 72.5 kV M + A D with D of Table R-4; above, 0.3048 (C + a) V T A + M, V the highest
 * phase-to-ground kV of the range, T the default overvoltage of Table R-9 (phase-to-phase 1.35 T + 0.45), C 0.011, or 0.01
 * phase-to-phase, where the gap is taken as air with no tool in it. Only the electrical part is scaled with altitude; Table
 * R-6 scales the whole distance and asks for more. Left out: an employer's own overvoltage study, ranges above 800 kV.
 */
import type { Metres, Volts } from '../units/quantities.ts';
import { type ApproachExposure, altitudeFactor } from './approachDistance.ts';

/** Highest kV, D phase-to-ground, D phase-to-phase: Table R-4. */
const tableR4: readonly (readonly [number, Metres, Metres])[] = [
  [15, 0.04, 0.07],
  [36, 0.16, 0.28],
  [46, 0.23, 0.37],
  [72.5, 0.39, 0.59],
];
/** Highest kV of the ranges of Table R-7, whose distances are worked out at their upper end. */
const rangesAbove = [121, 145, 169, 242, 362, 420, 550, 800];

/** From which peak kV, offset, divisor: saturation factor a of Table R-3. */
type Saturation = readonly (readonly [number, number, number])[];
const saturationToGround: Saturation = [
  [635, 635, 140000],
  [915, 645, 135000],
  [1050, 675, 125000],
];
const saturationBetween: Saturation = [
  [630, 630, 155000],
  [848, 633.6, 152207],
  [1131, 628, 153846],
  [1485, 350.5, 203666],
];

const saturation = (peak: number, rows: Saturation): number => {
  const row = rows.filter(([from]) => peak > from).at(-1);
  return row ? (peak - row[1]) / row[2] : 0;
};

/** Default overvoltage to ground: Table R-9. */
const overvoltage = (kilovolts: number): number => (kilovolts <= 420 ? 3.5 : kilovolts <= 550 ? 3 : 2.5);

const above = (kilovolts: number, exposure: ApproachExposure, factor: number): Metres => {
  const t = overvoltage(kilovolts);
  const toGround = exposure === 'phase-to-ground';
  const perUnit = toGround ? t : 1.35 * t + 0.45;
  const volts = kilovolts / Math.sqrt(3);
  const a = saturation(perUnit * volts * Math.sqrt(2), toGround ? saturationToGround : saturationBetween);
  return 0.3048 * ((toGround ? 0.011 : 0.01) + a) * volts * perUnit * factor + 0.31;
};

/** As the tables print a distance worked out by equation: up to the next centimetre. */
export const roundedUp = (distance: Metres): Metres => Math.ceil(distance * 100 - 1e-6) / 100;

/** Distance by equation, not rounded. Throws outside 301 V to 800 kV and above 6000 m. */
export const equationApproach = (phaseToPhase: Volts, exposure: ApproachExposure, altitude: Metres = 0): Metres => {
  const kilovolts = phaseToPhase / 1000;
  if (!(kilovolts > 0.3)) throw new RangeError(`Table R-3 has no equation for ${phaseToPhase} V`);
  if (kilovolts <= 0.75) return 0.33;
  if (kilovolts <= 5) return 0.63;
  const factor = altitudeFactor(altitude);
  const row = tableR4.find(([highest]) => kilovolts <= highest);
  if (row) return 0.61 + factor * (exposure === 'phase-to-ground' ? row[1] : row[2]);
  const highest = rangesAbove.find((limit) => kilovolts <= limit);
  if (highest === undefined) throw new RangeError(`Table R-3 has no equation for ${phaseToPhase} V`);
  return above(highest, exposure, factor);
};
