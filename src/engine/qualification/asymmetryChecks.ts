/** Protective grounds at high X/R: the H ratings as printed, and melting with an offset fault against IEEE Std 80. */
import {
  asymmetricRating,
  decrementFactor,
  groundingCables,
  meltingCurrent,
  withstandCurrent,
} from '../standards/groundingCable.ts';
import { asPrinted, checkWriter, within } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const rated = checkWriter('grounding cable', 'published value', sources.f855h);
const ultimate = checkWriter('grounding cable', 'published value', sources.ieee80Tables);
const offset = checkWriter('grounding cable', 'published value', sources.ieee80);

const idOf = (cable: string): string => cable.replace('#', 'awg-').replace('/', '-').replace(' ', '-');

/** kA rated and first peak, by rising grade. */
const printedH = [
  [15, 41],
  [25, 65],
  [31, 84],
  [39, 105],
  [47, 126],
  [55, 148],
  [68, 183],
] as const;

const ratings = groundingCables.flatMap((cable, row) => {
  const [amperes, peak] = printedH[row] ?? [Number.NaN, Number.NaN];
  return [
    rated({
      id: `h-${idOf(cable)}`,
      quantity: 'rating at high asymmetry',
      input: `${cable} copper, X/R 30, 15 cycles`,
      ours: () => asymmetricRating(cable).amperes / 1000,
      reference: amperes,
      unit: 'kA',
      tolerance: asPrinted,
    }),
    rated({
      id: `h-peak-${idOf(cable)}`,
      quantity: 'first peak of that rating',
      input: `${cable} copper, X/R 30`,
      ours: () => asymmetricRating(cable).firstPeak / 1000,
      reference: peak,
      unit: 'kA',
      tolerance: asPrinted,
    }),
  ];
});

// 350 kcmil is the one cable whose H rating is below its withstand of Table 1.
const smaller = rated({
  id: 'h-governs-350-kcmil',
  quantity: 'withstand current where X/R is above 1.8',
  input: '350 kcmil copper, X/R 12, 15 cycles: 68 of the H table before 74 of Table 1',
  ours: () => (withstandCurrent('350 kcmil', 0.25, 12) ?? Number.NaN) / 1000,
  reference: 68,
  unit: 'kA',
  tolerance: asPrinted,
});

/** X/R, cycles, kA by rising size as printed. */
const tables: readonly (readonly [number, number, readonly number[]])[] = [
  [40, 15, [16, 26, 33, 42, 53, 62, 87]],
  [40, 30, [12, 20, 25, 32, 40, 47, 67]],
  [20, 15, [18, 28, 36, 45, 57, 67, 94]],
  [20, 30, [13, 21, 26, 33, 42, 50, 70]],
];
const melting = tables.flatMap(([xOverR, cycles, printed]) =>
  groundingCables.map((cable, row) => {
    const reference = printed[row] ?? Number.NaN;
    return ultimate({
      id: `melts-${idOf(cable)}-${xOverR}-${cycles}`,
      quantity: 'melting current of an offset fault',
      input: `${cable} copper, X/R ${xOverR}, ${cycles} cycles`,
      ours: () => meltingCurrent(cable, cycles / 60, xOverR) / 1000,
      reference,
      unit: 'kA',
      tolerance: within(
        0.5 + 0.05 * reference,
        'printed in whole kA; the standard takes the whole nominal area and its own constant, we 98 % of the area',
      ),
    });
  }),
);

const factors = (
  [
    [10, 1.026],
    [20, 1.052],
    [30, 1.078],
    [40, 1.103],
  ] as const
).map(([xOverR, reference]) =>
  offset({
    id: `decrement-${xOverR}`,
    quantity: 'decrement factor',
    input: `X/R ${xOverR}, 0.5 s`,
    ours: () => decrementFactor(xOverR, 0.5),
    reference,
    unit: '1',
    tolerance: within(0.0025),
  }),
);

/** Checks of protective grounds at high X/R. */
export const asymmetryChecks: readonly Check[] = [...ratings, smaller, ...melting, ...factors];
