/**
 * Minimum approach distance: how near a qualified person's body or conductive object may come to an energized
 * part. Rule: 29 CFR 1910.269 Tables R-5, R-6, R-7 (text as amended through 85 FR 8732, Feb. 18, 2020), distances
 * tabled by nominal phase-to-phase voltage and valid to 900 m; above, the whole distance times factor A.
 * Limits: AC; Table R-7 assumes the default transient overvoltage; single-phase systems up to 750 V are entered
 * with their voltage to ground (footnote 2). Employers' own established distances may be larger and then govern. Left
 * out: what an employer’s own study of overvoltages allows, work from helicopters, altitudes beyond the table of
 * factor A.
 */
import type { Metres, Volts } from '../units/quantities.ts';
import { interpolate, type Point } from './interpolate.ts';

/** Worker at ground potential, or at the potential of another energized part. */
export type ApproachExposure = 'phase-to-ground' | 'phase-to-phase';

/** The distance to keep, or no distance but no contact either (50 V to 300 V). */
export interface MinimumApproach {
  readonly metres: Metres;
  readonly avoidContact: boolean;
  readonly altitudeFactor: number;
  readonly source: string;
}

/** Highest kV of the row, phase-to-ground metres, phase-to-phase metres. */
type Row = readonly [number, Metres, Metres];

const tableR6: readonly Row[] = [
  [0.75, 0.33, 0.33],
  [5, 0.63, 0.63],
  [15, 0.65, 0.68],
  [36, 0.77, 0.89],
  [46, 0.84, 0.98],
  [72.5, 1, 1.2],
];
const tableR7: readonly Row[] = [
  [121, 1.13, 1.42],
  [145, 1.3, 1.64],
  [169, 1.46, 1.94],
  [242, 2.01, 3.08],
  [362, 3.41, 5.52],
  [420, 4.25, 6.81],
  [550, 5.07, 8.24],
  [800, 6.88, 11.38],
];
/** Highest altitude in metres, factor A. */
const tableR5: readonly (readonly [Metres, number])[] = [
  [900, 1],
  [1200, 1.02],
  [1500, 1.05],
  [1800, 1.08],
  [2100, 1.11],
  [2400, 1.14],
  [2700, 1.17],
  [3000, 1.2],
  [3600, 1.25],
  [4200, 1.3],
  [4800, 1.35],
  [5400, 1.39],
  [6000, 1.44],
];

/** Factor A of Table R-5. Throws above 6000 m, where the table ends. */
export const altitudeFactor = (altitude: Metres): number => {
  const row = tableR5.find(([highest]) => altitude <= highest);
  if (!row) throw new RangeError(`Table R-5 has no factor for ${altitude} m`);
  return row[1];
};

/** Distance of Table times factor A of Table R-5. Throws outside 0 to 800 kV and above 6000 m. */
export const minimumApproach = (
  phaseToPhase: Volts,
  exposure: ApproachExposure,
  altitude: Metres = 0,
): MinimumApproach => {
  if (!(phaseToPhase >= 0)) throw new RangeError(`no approach distance for ${phaseToPhase} V`);
  const factor = altitudeFactor(altitude);
  const kilovolts = phaseToPhase / 1000;
  if (kilovolts <= 0.3) {
    const avoidContact = phaseToPhase >= 50;
    return { metres: 0, avoidContact, altitudeFactor: factor, source: '29 CFR 1910.269 Table R-6' };
  }
  const inR6 = tableR6.find(([highest]) => kilovolts <= highest);
  const row = inR6 ?? tableR7.find(([highest]) => kilovolts <= highest);
  if (!row) throw new RangeError(`Table R-7 has no distance for ${phaseToPhase} V`);
  const tabled = exposure === 'phase-to-ground' ? row[1] : row[2];
  const source = `29 CFR 1910.269 Table ${inR6 ? 'R-6' : 'R-7'}${factor > 1 ? ' with Table R-5' : ''}`;
  return { metres: tabled * factor, avoidContact: false, altitudeFactor: factor, source };
};

/** 60 Hz rod-to-rod sparkover, kV peak against gap in cm: 1910.269 Appendix B Table 1. */
const sparkover: readonly Point[] = [
  [25, 2],
  [36, 3],
  [46, 4],
  [53, 5],
  [60, 6],
  [70, 8],
  [79, 10],
  [86, 12],
  [95, 14],
  [104, 16],
  [112, 18],
  [120, 20],
  [143, 25],
  [167, 30],
  [192, 35],
  [218, 40],
  [243, 45],
  [270, 50],
  [322, 60],
];

/**
 * Electrical component D in metres by the method of 1910.269 Appendix B, III.B: peak phase-to-ground voltage times
 * the transient overvoltage (3.0; phase-to-phase 1.35 T + 0.45 = 4.5), over 0.85, looked up in Table 1, not rounded.
 * For comparison with Table R-4, which rounds up. Undefined outside 5.1 to 72.5 kV.
 */
export const electricalComponent = (phaseToPhase: Volts, exposure: ApproachExposure): Metres | undefined => {
  const kilovolts = phaseToPhase / 1000;
  if (!(kilovolts > 5 && kilovolts <= 72.5)) return undefined;
  const overvoltage = exposure === 'phase-to-ground' ? 3 : 4.5;
  const critical = ((kilovolts / Math.sqrt(3)) * Math.sqrt(2) * overvoltage) / 0.85;
  return interpolate(sparkover, critical) / 100;
};

/**
 * Distance for anybody who is not a qualified person, and for what they hold: 10 ft to 50 kV to ground and 4 in more
 * for each 10 kV above, by 29 CFR 1910.333(c)(3)(i). A part of 10 kV counts in proportion.
 */
export const unqualifiedApproach = (toGround: Volts): Metres => 3.05 + (Math.max(0, toGround / 1000 - 50) / 10) * 0.1;
