/**
 * Single-phase pole-mount transformers: impedances by size, the split over a centre-tapped secondary, the magnetising
 * branch. Sizes: a table of per cent values published with US feeder models (real no-load losses of units built since
 * the 2010 and 2016 efficiency rules are lower). Split: interlaced windings, Z0 = 0.5 R + j0.8 X on the primary,
 * Z1 = Z2 = R + j0.4 X on the 120 V base (Kersting; GridLAB-D transformer.cpp). Linear: no saturation, no inrush. Left
 * out: three-phase units, tap changers, capacitance between windings.
 */
import { type Complex, complex } from '../math/complex.ts';
import type { Amperes, VoltAmperes, Volts } from '../units/quantities.ts';

/** Per cent values on the unit's own rating. */
export interface TransformerRatings {
  readonly percentR: number;
  readonly percentX: number;
  readonly percentNoLoadLoss: number;
  readonly percentExciting: number;
}

/** kVA, R %, X %, no-load loss %, exciting current %. */
const table: readonly (readonly [number, number, number, number, number])[] = [
  [5, 2.1, 1.53, 0.9, 3.38],
  [10, 1.9, 1.3, 0.68, 2.92],
  [15, 1.7, 1.47, 0.6, 2.53],
  [25, 1.6, 1.51, 0.52, 1.93],
  [37.5, 1.45, 1.65, 0.47, 1.74],
  [50, 1.3, 1.77, 0.45, 1.54],
  [75, 1.25, 1.69, 0.42, 1.49],
  [100, 1.2, 2.19, 0.4, 1.45],
  [167, 1.15, 2.77, 0.38, 1.66],
  [250, 1.1, 3.85, 0.36, 1.81],
  [333, 1.0, 4.9, 0.34, 1.97],
  [500, 1.0, 4.9, 0.29, 1.98],
];

/** Ratings in VA that the table knows. */
export const transformerSizes: readonly VoltAmperes[] = table.map(([kva]) => kva * 1000);

/** Per cent values of a listed size; undefined for a size that the table lacks. */
export const transformerRatings = (rating: VoltAmperes): TransformerRatings | undefined => {
  const row = table.find(([kva]) => Math.abs(kva * 1000 - rating) < 1);
  return row && { percentR: row[1], percentX: row[2], percentNoLoadLoss: row[3], percentExciting: row[4] };
};

/** Series impedances in ohms: z0 on the primary, z1 and z2 in the two half windings. */
export interface SplitImpedances {
  readonly z0: Complex;
  readonly z1: Complex;
  readonly z2: Complex;
}

/** Interlaced split of nameplate R and X; `half` is the voltage of one half winding (120 V). */
export const interlacedSplit = (
  rating: VoltAmperes,
  primary: Volts,
  half: Volts,
  { percentR, percentX }: Pick<TransformerRatings, 'percentR' | 'percentX'>,
): SplitImpedances => {
  const r = percentR / 100;
  const x = percentX / 100;
  const primaryBase = (primary * primary) / rating;
  const halfBase = (half * half) / rating;
  const winding = complex(r * halfBase, 0.4 * x * halfBase);
  return { z0: complex(0.5 * r * primaryBase, 0.8 * x * primaryBase), z1: winding, z2: winding };
};

/** Shunt admittance in siemens that draws the no-load loss and the exciting current at `volts`, inductive. */
export const magnetisingAdmittance = (
  rating: VoltAmperes,
  volts: Volts,
  { percentNoLoadLoss, percentExciting }: Pick<TransformerRatings, 'percentNoLoadLoss' | 'percentExciting'>,
): Complex => {
  const base = rating / (volts * volts);
  const g = (percentNoLoadLoss / 100) * base;
  const y = (percentExciting / 100) * base;
  return complex(g, -Math.sqrt(Math.max(0, y * y - g * g)));
};

/** Full-load current in amperes at `volts`. */
export const fullLoadCurrent = (rating: VoltAmperes, volts: Volts): Amperes => rating / volts;
