/** Electrodes, step and touch voltage, and a neutral grounded many times. */
import { abs, complex } from '../math/complex.ts';
import {
  rodPotential,
  rodResistance,
  rodStepFromRod,
  surfaceDerating,
  tolerableStep,
  tolerableTouch,
} from '../standards/electrode.ts';
import { endlessLadder, ladderOf, midLine } from '../standards/neutralLadder.ts';
import { checkWriter, relative, within } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const foot = 0.3048;
const inch = 0.0254;
const rod = checkWriter('ground electrode', 'published value', 'published ground-rod calculator page, worked example');
const handbook = checkWriter('step voltage', 'published value', `${sources.mil419}, Table 2-7`);
const handbookExample = checkWriter('step voltage', 'published value', `${sources.mil419}.2.1, example`);
const ieee80 = checkWriter('step and touch limits', 'published value', sources.ieee80);
const ladder = checkWriter('multigrounded neutral', 'independent program', sources.ngspice);
const textbook = checkWriter('multigrounded neutral', 'common practice', 'parallel resistances, worked by hand');
const far = checkWriter('ground electrode', 'common practice', 'point source far away: rho I/(2 pi x)');

const dwight = rod({
  id: 'dwight',
  quantity: 'resistance of one rod',
  input: '100 ohm m, 3 m, 16 mm',
  ours: () => rodResistance(100, 3, 0.016),
  reference: 33.49,
  unit: 'ohm',
  tolerance: within(0.005),
});

const farAway = far({
  id: 'far',
  quantity: 'surface potential 100 m from a rod',
  input: '100 ohm m, 10 A, 3 m',
  ours: () => rodPotential(100, 10, 3, 100),
  reference: 1.59155,
  unit: 'V',
  tolerance: relative(0.001),
});

const ratios: readonly (readonly [number, number])[] = [
  [5, 0.75],
  [10, 0.68],
  [20, 0.61],
  [50, 0.53],
  [100, 0.48],
];
const steps = ratios.map(([feet, reference]) =>
  handbook({
    id: `ratio-${feet}`,
    quantity: 'step from the rod over the rod’s potential',
    input: `rod ${feet} ft by 1 in, pace 3 ft`,
    ours: () => rodStepFromRod(100, 1, feet * foot, inch, 3 * foot) / rodResistance(100, feet * foot, inch),
    reference,
    unit: '1',
    tolerance: within(0.01),
  }),
);

const example = handbookExample({
  id: 'example',
  quantity: 'step from the rod',
  input: 'rod 10 ft by 1 in, 10 ohm m, 20 kA, pace 3 ft',
  ours: () => rodStepFromRod(10, 20000, 10 * foot, inch, 3 * foot),
  reference: 41400,
  unit: 'V',
  tolerance: relative(0.002),
});

const footing = { soil: 400, surface: { resistivity: 2500, depth: 0.102 } };
const tolerable = [
  ieee80({
    id: 'derating',
    quantity: 'surface layer derating Cs',
    input: '400 ohm m under 0.102 m of 2500 ohm m',
    ours: () => surfaceDerating(footing),
    reference: 0.74,
    unit: '1',
    tolerance: within(0.005),
  }),
  ieee80({
    id: 'touch',
    quantity: 'tolerable touch voltage, 70 kg',
    input: 'the same, 0.5 s',
    ours: () => tolerableTouch(footing, 0.5, 70),
    reference: 838.2,
    unit: 'V',
    tolerance: relative(0.005),
  }),
  ieee80({
    id: 'step',
    quantity: 'tolerable step voltage, 70 kg',
    input: 'the same, 0.5 s',
    ours: () => tolerableStep(footing, 0.5, 70),
    reference: 2686.6,
    unit: 'V',
    tolerance: relative(0.005),
  }),
];

const section = complex(0.032, 0.1);
const neutral = [
  ladder({
    id: 'endless-r',
    quantity: 'resistance of an endless neutral',
    input: '0.032 + j0.100 ohm a section, 25 ohm a ground',
    ours: () => endlessLadder(section, 25).re,
    reference: 1.3243,
    unit: 'ohm',
    tolerance: within(0.0001),
  }),
  ladder({
    id: 'endless-x',
    quantity: 'reactance of an endless neutral',
    input: 'the same',
    ours: () => endlessLadder(section, 25).im,
    reference: 1.006,
    unit: 'ohm',
    tolerance: within(0.0001),
  }),
  ladder({
    id: 'long-x',
    quantity: 'reactance of a neutral of 200 sections',
    input: 'the same',
    ours: () => ladderOf(200, section, 25).im,
    reference: 1.006,
    unit: 'ohm',
    tolerance: within(0.0001),
  }),
  textbook({
    id: 'mid-line',
    quantity: 'a pole ground between two endless neutrals',
    input: '2 ohm each way, 25 ohm at the pole',
    ours: () => abs(midLine(complex(2), 25)),
    reference: 0.96154,
    unit: 'ohm',
    tolerance: within(0.00001),
  }),
];

/** Checks of what current does in the ground. */
export const groundChecks: readonly Check[] = [dwight, farAway, ...steps, example, ...tolerable, ...neutral];
