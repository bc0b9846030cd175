/** Protective grounds: cable ratings and the worker's voltage beside them. */
import { groundingCables, meltingCurrent, withstandCurrent } from '../standards/groundingCable.ts';
import { equipotential, groundsBeyondWorker, groundsTowardSource, remoteEarth } from '../standards/workerVoltage.ts';
import { asPrinted, checkWriter, relative, within } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const rated = checkWriter('grounding cable', 'published value', sources.f855);
const remote = checkWriter('worker voltage', 'published value', sources.handbook);
const solved = checkWriter('worker voltage', 'independent program', sources.ngspice);

/** kA by cable: withstand 15 and 30 cycles, ultimate 15, 30 and 60 cycles, as printed. */
const table: readonly (readonly [number, number, number, number, number])[] = [
  [14, 10, 18, 13, 9],
  [21, 15, 29, 21, 14],
  [27, 20, 37, 26, 18],
  [34, 25, 47, 33, 23],
  [43, 30, 59, 42, 29],
  [54, 39, 70, 49, 35],
  [74, 54, 98, 69, 48],
];

const idOf = (cable: string): string => cable.replace('#', 'awg-').replace('/', '-').replace(' ', '-');

const withstand = groundingCables.flatMap((cable, row) =>
  [15, 30].map((cycles, k) =>
    rated({
      id: `withstand-${idOf(cable)}-${cycles}`,
      quantity: 'withstand current',
      input: `${cable} copper, ${cycles} cycles`,
      ours: () => (withstandCurrent(cable, cycles / 60) ?? Number.NaN) / 1000,
      reference: table[row]?.[k] ?? Number.NaN,
      unit: 'kA',
      tolerance: asPrinted,
    }),
  ),
);

// The column is printed in whole kA, cut off; its middle is half a kA higher.
const cutOff = within(0.51, 'printed in whole kA, cut off, so that half a kA is the print’s own width');
const ultimate = groundingCables.flatMap((cable, row) =>
  [15, 30, 60]
    .map((cycles, k) => ({ cycles, printed: table[row]?.[2 + k] ?? Number.NaN }))
    .filter(({ printed }) => printed !== 48)
    .map(({ cycles, printed }) =>
      rated({
        id: `ultimate-${idOf(cable)}-${cycles}`,
        quantity: 'melting current (middle of the printed whole kA)',
        input: `${cable} copper, ${cycles} cycles`,
        ours: () => meltingCurrent(cable, cycles / 60) / 1000,
        reference: printed + 0.5,
        unit: 'kA',
        tolerance: cutOff,
      }),
    ),
);
// 350 kcmil at 60 cycles is printed a kA lower than the formula behind the other 20 cells gives.
const oddCell = rated({
  id: 'ultimate-350-kcmil-60',
  quantity: 'melting current (the cell that does not follow the formula)',
  input: '350 kcmil copper, 60 cycles',
  ours: () => meltingCurrent('350 kcmil', 1) / 1000,
  reference: 48,
  unit: 'kA',
  tolerance: relative(0.05),
});

const set = { grounds: 0.001, phase: 0.024, neutral: 0.024, ownJumper: 0.001 };
const worker = [
  remote({
    id: 'toward-source-current',
    quantity: 'current through the worker, grounds toward the source',
    input: '10 kA, set 1 milliohm, span 24 milliohm each, worker 1000 ohm',
    ours: () => groundsTowardSource(10000, set, 1000).amperes * 1000,
    reference: 10,
    unit: 'mA',
    tolerance: relative(0.001),
  }),
  remote({
    id: 'toward-source-volts',
    quantity: 'volts across the worker, grounds toward the source',
    input: 'the same',
    ours: () => groundsTowardSource(10000, set, 1000).volts,
    reference: 10,
    unit: 'V',
    tolerance: relative(0.001),
  }),
  remote({
    id: 'beyond-current',
    quantity: 'current through the worker, grounds beyond',
    input: 'the same',
    ours: () => groundsBeyondWorker(10000, set, 1000).amperes * 1000,
    reference: 490,
    unit: 'mA',
    tolerance: relative(0.001),
  }),
  remote({
    id: 'beyond-volts',
    quantity: 'volts across the worker, grounds beyond',
    input: 'the same',
    ours: () => groundsBeyondWorker(10000, set, 1000).volts,
    reference: 490,
    unit: 'V',
    tolerance: relative(0.001),
  }),
  solved({
    id: 'equipotential',
    quantity: 'current through the worker beside a jumper',
    input: '2339 A, 1 milliohm, 1000 ohm',
    ours: () => equipotential(2339, 0.001, 1000).amperes * 1000,
    reference: 2.339,
    unit: 'mA',
    tolerance: relative(0.001),
  }),
  solved({
    id: 'remote-rod',
    quantity: 'current through the worker, line on a rod alone',
    input: '289.18 A in 25 ohm and the worker, footing 0.5 + j0.6 ohm taken as 0.78 ohm',
    ours: () => remoteEarth(289.1807, 25, 1000, 0.78).amperes,
    reference: 7.049746,
    unit: 'A',
    tolerance: relative(0.001),
  }),
];

/** Checks of protective grounds. */
export const groundingChecks: readonly Check[] = [...withstand, ...ultimate, oddCell, ...worker];
