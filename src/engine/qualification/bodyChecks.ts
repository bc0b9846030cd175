/** The body: resistance by percentile, thresholds of effect, and the current that they give. */

import { effectBand, fibrillationThreshold, letGo } from '../standards/bodyCurrent.ts';
import { bodyImpedance, internalBodyResistance, usualBodyResistance } from '../standards/bodyImpedance.ts';
import { asPrinted, checkWriter, relative, within } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const iec = checkWriter('body resistance', 'published value', sources.iec479);
const appendix = checkWriter('body resistance', 'published value', `${sources.rule269}, Appendix C, III.D.1`);
const dalziel = checkWriter('body current', 'published value', sources.dalziel);
const bands = checkWriter('body current', 'published value', `${sources.rule269}, Appendix C, III.D.1`);
const ieee80 = checkWriter('body current', 'published value', 'IEEE Std 80-2013, tolerable current k/sqrt(t), k 0.116');
const worked = checkWriter('body current', 'common practice', 'Ohm’s law over IEC 479-1:1994 Table 1, worked by hand');

/** Touch volts; ohms not exceeded by 5, 50 and 95 % of people. */
const table: readonly (readonly [number, number, number, number])[] = [
  [25, 1750, 3250, 6100],
  [50, 1450, 2625, 4375],
  [75, 1250, 2200, 3500],
  [100, 1200, 1875, 3200],
  [125, 1125, 1625, 2875],
  [220, 1000, 1350, 2125],
  [700, 750, 1100, 1550],
  [1000, 700, 1050, 1500],
];
const resistances = table.flatMap(([volts, ...ohms]) =>
  ([5, 50, 95] as const).map((percentile, k) =>
    iec({
      id: `${volts}-${percentile}`,
      quantity: `total body resistance, ${percentile} %`,
      input: `${volts} V hand to hand, dry, large contact`,
      ours: () => bodyImpedance(volts, percentile),
      reference: ohms[k] ?? Number.NaN,
      unit: 'ohm',
      tolerance: asPrinted,
    }),
  ),
);

const usual = appendix({
  id: 'usual',
  quantity: 'resistance usually taken',
  input: 'none',
  ours: () => usualBodyResistance,
  reference: 1000,
  unit: 'ohm',
  tolerance: asPrinted,
});
const internal = appendix({
  id: 'internal',
  quantity: 'resistance with skin broken or wet',
  input: 'none',
  ours: () => internalBodyResistance,
  reference: 500,
  unit: 'ohm',
  tolerance: asPrinted,
});

const letGoChecks = [
  dalziel({
    id: 'let-go-men',
    quantity: 'current that 99.5 % of men let go',
    input: '60 Hz',
    ours: () => letGo.men * 1000,
    reference: 9,
    unit: 'mA',
    tolerance: asPrinted,
  }),
  dalziel({
    id: 'let-go-women',
    quantity: 'current that 99.5 % of women let go',
    input: '60 Hz',
    ours: () => letGo.women * 1000,
    reference: 6,
    unit: 'mA',
    tolerance: asPrinted,
  }),
  dalziel({
    id: 'fibrillation-1s',
    quantity: 'fibrillation threshold 116/sqrt(t)',
    input: '1 s, 50 kg',
    ours: () => fibrillationThreshold(1) * 1000,
    reference: 116,
    unit: 'mA',
    tolerance: relative(1e-6),
  }),
];

const tolerable = (
  [
    [0.1, 366.8],
    [0.5, 164],
    [3, 67],
  ] as const
).map(([seconds, reference]) =>
  ieee80({
    id: `tolerable-${seconds}`,
    quantity: 'current tolerated by 50 kg',
    input: `${seconds} s`,
    ours: () => fibrillationThreshold(seconds) * 1000,
    reference,
    unit: 'mA',
    tolerance: within(0.06),
  }),
);

const threshold = (band: string): number =>
  1000 * (effectBand(0, 1).thresholds.find((entry) => entry.band === band)?.amperes ?? Number.NaN);
const limits = [
  bands({
    id: 'startle',
    quantity: 'hazard where reactions are not guarded against',
    input: 'none',
    ours: () => threshold('startle'),
    reference: 1,
    unit: 'mA',
    tolerance: asPrinted,
  }),
  bands({
    id: 'startle-volts',
    quantity: 'volts of that hazard over 500 ohm',
    input: '500 ohm',
    ours: () => (threshold('startle') / 1000) * internalBodyResistance,
    reference: 0.5,
    unit: 'V',
    tolerance: asPrinted,
  }),
  bands({
    id: 'cannot-let-go',
    quantity: 'hazard where reactions are guarded against',
    input: 'unlimited time',
    ours: () => threshold('cannot-let-go'),
    reference: 6,
    unit: 'mA',
    tolerance: asPrinted,
  }),
];

const currents = (
  [
    [120, 71.6],
    [240, 179.2],
    [480, 395.2],
  ] as const
).map(([volts, reference]) =>
  worked({
    id: `median-${volts}`,
    quantity: 'median current hand to hand',
    input: `${volts} V`,
    ours: () => (1000 * volts) / bodyImpedance(volts),
    reference,
    unit: 'mA',
    tolerance: within(0.06),
  }),
);

/** Checks of the body's resistance and of what a current does. */
export const bodyChecks: readonly Check[] = [
  ...resistances,
  usual,
  internal,
  ...letGoChecks,
  ...tolerable,
  ...limits,
  ...currents,
];
