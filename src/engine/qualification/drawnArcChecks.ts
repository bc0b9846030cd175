/** The arc of opening under load: Warrington's formula, where it goes out, and what a plain contact is used for. */
import { arcResistance, drawnArc, plainBreak } from '../standards/drawnArc.ts';
import { fullLoadCurrent, transformerRatings } from '../standards/transformer.ts';
import { checkWriter, relative } from './checkWriter.ts';
import type { Check } from './types.ts';

const warrington = checkWriter(
  'drawn arc',
  'from memory',
  'Warrington, R = 28710 L / I^1.4, exponent from memory; worked by hand',
);
const balance = checkWriter(
  'drawn arc',
  'common practice',
  'arc and load in series; the longest found by trying 200 000 currents in another program',
);
const exciting = checkWriter(
  'drawn arc',
  'published value',
  'single-phase transformer table of published US feeder-model scripts',
);

const drawn = (
  [
    [7200, 3.47, 0.17852],
    [7200, 100, 0.68477],
    [14400, 10, 0.54522],
  ] as const
).map(([volts, load, reference]) =>
  balance({
    id: `length-${volts}-${load}`,
    quantity: 'longest arc that is held up',
    input: `${load} A at ${volts} V`,
    ours: () => drawnArc(volts, load),
    reference,
    unit: 'm',
    tolerance: relative(1e-4),
  }),
);

/** Exciting amperes at 7200 V of per cent values as printed: 25 kVA 1.93, 50 kVA 1.54, 100 kVA 1.45. */
const currents = (
  [
    [25000, 0.06701],
    [50000, 0.10694],
    [100000, 0.20139],
  ] as const
).map(([rating, reference]) =>
  exciting({
    id: `exciting-${rating / 1000}`,
    quantity: 'exciting current, which a plain contact is used to break',
    input: `${rating / 1000} kVA at 7200 V`,
    ours: () => ((transformerRatings(rating)?.percentExciting ?? Number.NaN) / 100) * fullLoadCurrent(rating, 7200),
    reference,
    unit: 'A',
    tolerance: relative(0.001),
  }),
);

/** Checks of the drawn arc. */
export const drawnArcChecks: readonly Check[] = [
  warrington({
    id: 'resistance-1m-1000a',
    quantity: 'arc resistance',
    input: '1 m, 1000 A: 28710 / 15849',
    ours: () => arcResistance(1, 1000),
    reference: 1.81147,
    unit: 'ohm',
    tolerance: relative(1e-4),
  }),
  warrington({
    id: 'resistance-3m-100a',
    quantity: 'arc resistance',
    input: '3 m, 100 A: 86130 / 630.96',
    ours: () => arcResistance(3, 100),
    reference: 136.506,
    unit: 'ohm',
    tolerance: relative(1e-4),
  }),
  ...drawn,
  ...currents,
  balance({
    id: 'plain-break',
    quantity: 'arc at the limit of a plain contact',
    input: '0.3 A at 7200 V: shorter than a hand is wide',
    ours: () => drawnArc(7200, plainBreak),
    reference: 0.067,
    unit: 'm',
    tolerance: relative(0.02),
  }),
];
