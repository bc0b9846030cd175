/**
 * Incident energy of an arc. Compliance figure: 29 CFR 1910.269 Appendix E Table 6 (rubber-glove work, single-phase
 * arc to ground in open air, 380 mm from the arc, 4 to 46 kV phase-to-phase, to 20 kA): next-higher row, lowest column
 * whose clearing time is not exceeded. Beyond the table another method is required, and the answer is undefined.
 * Estimates, always flagged: energy in proportion to time from the 12 cal/cm2 entry, log-log in current, inverse square
 * of distance (Appendix E, III.A); and the Lee equation for open air to 600 V (E = 2.142e6 V I t/D2 J/cm2 with kV, kA,
 * s, mm, from memory), which Appendix E Table 3 calls acceptable and conservative there for a single-phase arc. Left
 * out: arcs in a box, arcs between phases, the direction in which an arc is blown, molten metal, pressure.
 */
import type { Amperes, CaloriesPerCm2, Metres, Seconds, Volts } from '../units/quantities.ts';
import { interpolateLogLog, type Point } from './interpolate.ts';

const columns = [4, 5, 8, 12] as const;

/** Highest kV of the range, kA of the row, cycles allowed for 4, 5, 8, 12 cal/cm2. */
const table6: readonly (readonly [number, number, readonly [number, number, number, number]])[] = [
  [15, 5, [46, 58, 92, 138]],
  [15, 10, [18, 22, 36, 54]],
  [15, 15, [10, 12, 20, 30]],
  [15, 20, [6, 8, 13, 19]],
  [25, 5, [28, 34, 55, 83]],
  [25, 10, [11, 14, 23, 34]],
  [25, 15, [7, 8, 13, 20]],
  [25, 20, [4, 5, 9, 13]],
  [36, 5, [21, 26, 42, 62]],
  [36, 10, [9, 11, 18, 26]],
  [36, 15, [5, 6, 10, 16]],
  [36, 20, [4, 4, 7, 11]],
  [46, 5, [16, 20, 32, 48]],
  [46, 10, [7, 9, 14, 21]],
  [46, 15, [4, 5, 8, 13]],
  [46, 20, [3, 4, 6, 9]],
];

const tableDistance: Metres = 0.38;
const cycles = (duration: Seconds): number => duration * 60;

const rowsFor = (
  phaseToPhase: Volts,
): readonly (readonly [number, number, readonly [number, number, number, number]])[] => {
  const kilovolts = phaseToPhase / 1000;
  const range = kilovolts < 4 ? undefined : table6.find(([highest]) => kilovolts <= highest)?.[0];
  return table6.filter(([highest]) => highest === range);
};

/** Table 6 answer: the column, and the row it was read from. */
export interface TabledArc {
  readonly calories: (typeof columns)[number];
  readonly rowAmperes: Amperes;
  readonly source: string;
}

/** Lowest Table 6 column for a fault; undefined where the table gives no answer. */
export const tabledArcEnergy = (phaseToPhase: Volts, fault: Amperes, clearing: Seconds): TabledArc | undefined => {
  const row = rowsFor(phaseToPhase).find(([, kiloamperes]) => fault <= kiloamperes * 1000);
  if (!row) return undefined;
  const column = row[2].findIndex((allowed) => cycles(clearing) <= allowed + 1e-9);
  const calories = columns[column];
  return calories && { calories, rowAmperes: row[1] * 1000, source: '29 CFR 1910.269 Appendix E Table 6' };
};

/** An estimate, never a rating; `extrapolated` when the current lies outside the table's rows. */
export interface ArcEstimate {
  readonly calories: CaloriesPerCm2;
  readonly estimate: true;
  readonly extrapolated: boolean;
  readonly source: string;
}

/** Continuous estimate from Table 6, 4 to 46 kV phase-to-phase; undefined outside. */
export const estimateArcEnergy = (
  phaseToPhase: Volts,
  fault: Amperes,
  clearing: Seconds,
  distance: Metres = tableDistance,
): ArcEstimate | undefined => {
  const rows = rowsFor(phaseToPhase);
  if (rows.length === 0 || !(fault > 0)) return undefined;
  const allowed = rows.map(([, kiloamperes, times]): Point => [kiloamperes * 1000, times[3]]);
  const nearness = (tableDistance / distance) * (tableDistance / distance);
  const calories = (12 * cycles(clearing) * nearness) / interpolateLogLog(allowed, fault);
  return {
    calories,
    estimate: true,
    extrapolated: fault < 5000 || fault > 20000,
    source: 'estimate from 29 CFR 1910.269 Appendix E Table 6',
  };
};

/** Lee estimate for an open-air arc to 600 V. */
export const leeArcEnergy = (volts: Volts, fault: Amperes, clearing: Seconds, distance: Metres): ArcEstimate => {
  const millimetres = distance * 1000;
  const joules = (2.142e6 * (volts / 1000) * (fault / 1000) * clearing) / (millimetres * millimetres);
  return { calories: joules / 4.184, estimate: true, extrapolated: volts > 600, source: 'Lee equation (from memory)' };
};

/** Energy above which the outer layer is flame resistant and arc rated: (l)(8)(iv)(D), (l)(8)(v). */
export const arcClothingFrom: CaloriesPerCm2 = 2;

/** Least energy that burns bare skin: Appendix E, III.B (1.2 to 1.5 cal/cm2). */
export const burnFrom: CaloriesPerCm2 = 1.2;
