/** What feeds a line: transformers, engine sets, inverters, and a service whose neutral is open. */
import { abs, complex } from '../math/complex.ts';
import { firstCycleFault, generatorRated, sustainedFault } from '../standards/generator.ts';
import { equivalentSource, inverterFault, inverterInto, timeOnIsland, voltageTrip } from '../standards/inverter.ts';
import { legVolts } from '../standards/openNeutral.ts';
import { interlacedSplit, magnetisingAdmittance, transformerRatings } from '../standards/transformer.ts';
import { asPrinted, checkWriter, relative, within } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const split = checkWriter('centre-tapped transformer', 'published value', sources.kersting111);
const table = checkWriter(
  'centre-tapped transformer',
  'published value',
  'single-phase transformer table of published US feeder-model scripts',
);
const kersting = interlacedSplit(50000, 7200, 120, { percentR: 1.1, percentX: 1.8 });
const magnetising = magnetisingAdmittance(25000, 7200, { percentNoLoadLoss: 0.52, percentExciting: 1.93 });
const windings: readonly (readonly [string, number, number])[] = [
  ['z0 resistance', kersting.z0.re, 5.7024],
  ['z0 reactance', kersting.z0.im, 14.92992],
  ['z1 resistance', kersting.z1.re, 0.003168],
  ['z1 reactance', kersting.z1.im, 0.0020736],
];
const transformers = [
  ...windings.map(([quantity, , reference], k) =>
    split({
      id: `split-${quantity.replace(' ', '-')}`,
      quantity,
      input: '50 kVA, 7200-240/120 V, R 0.011, X 0.018 per unit',
      ours: () => {
        const { z0, z1 } = interlacedSplit(50000, 7200, 120, { percentR: 1.1, percentX: 1.8 });
        return [z0.re, z0.im, z1.re, z1.im][k] ?? Number.NaN;
      },
      reference,
      unit: 'ohm',
      tolerance: relative(1e-6),
    }),
  ),
  ...(
    [
      [10, 1.9, 1.3],
      [25, 1.6, 1.51],
      [50, 1.3, 1.77],
    ] as const
  ).flatMap(([kva, r, x]) => [
    table({
      id: `r-${kva}`,
      quantity: 'resistance',
      input: `${kva} kVA`,
      ours: () => transformerRatings(kva * 1000)?.percentR ?? Number.NaN,
      reference: r,
      unit: '%',
      tolerance: asPrinted,
    }),
    table({
      id: `x-${kva}`,
      quantity: 'reactance',
      input: `${kva} kVA`,
      ours: () => transformerRatings(kva * 1000)?.percentX ?? Number.NaN,
      reference: x,
      unit: '%',
      tolerance: asPrinted,
    }),
  ]),
  checkWriter(
    'centre-tapped transformer',
    'independent program',
    sources.ngspice,
  )({
    id: 'exciting',
    quantity: 'exciting current at 7200 V',
    input: '25 kVA, 1.93 %',
    ours: () => 7200 * abs(magnetising),
    reference: 0.0670139,
    unit: 'A',
    tolerance: relative(1e-5),
  }),
];

const note = checkWriter('generator', 'published value', 'published application note on generator reactances');
const solved = checkWriter('generator', 'independent program', sources.ngspice);
const derived = checkWriter('generator', 'common practice', '1/Xd without field forcing');
const set = { rating: 6500, volts: 240, resistance: 0, subtransient: 0.14, synchronous: 1.5 };
const generators = [
  note({
    id: 'first-cycle',
    quantity: 'first-cycle short circuit over rated current',
    input: 'X”d 0.14 per unit',
    ours: () => firstCycleFault(set) / generatorRated(set),
    reference: 7.1,
    unit: '1',
    tolerance: within(0.05),
  }),
  solved({
    id: 'first-cycle-amperes',
    quantity: 'first-cycle short circuit',
    input: '6.5 kVA, 240 V, X”d 0.14',
    ours: () => firstCycleFault(set),
    reference: 193.5,
    unit: 'A',
    tolerance: within(0.06),
  }),
  derived({
    id: 'sustained',
    quantity: 'sustained short circuit over rated current',
    input: 'Xd 1.5',
    ours: () => sustainedFault(set) / generatorRated(set),
    reference: 0.67,
    unit: '1',
    tolerance: within(0.005),
  }),
];

const ieee1547 = checkWriter('inverter', 'published value', sources.opendss);
const application = checkWriter(
  'inverter',
  'published value',
  'published application note on inverter fault current and IEEE 1547',
);
const closed = checkWriter('inverter', 'common practice', 'Ohm’s law at the current limit, worked by hand');
const inverter = { rating: 6000, volts: 240 };
const inverters = [
  ...(
    [
      [0.5, 0.166],
      [0.9, 2],
      [1.1, 2],
      [1.2, 0.166],
    ] as const
  ).map(([perUnit, reference]) =>
    ieee1547({
      id: `trip-${perUnit}`,
      quantity: 'trip on volts',
      input: `${perUnit} per unit`,
      ours: () => voltageTrip(perUnit),
      reference,
      unit: 's',
      tolerance: asPrinted,
    }),
  ),
  application({
    id: 'limit',
    quantity: 'fault current over rated current',
    input: '6 kVA, 240 V; the note gives 1.1 to 1.2',
    ours: () => inverterFault(inverter) / 25,
    reference: 1.2,
    unit: '1',
    tolerance: relative(1e-9),
  }),
  application({
    id: 'island',
    quantity: 'longest stay on an island',
    input: 'a load that it carries at full volts',
    ours: () => timeOnIsland(inverter, complex(9.6)),
    reference: 2,
    unit: 's',
    tolerance: asPrinted,
  }),
  closed({
    id: 'limited-volts',
    quantity: 'volts held over 2 ohm at the limit of 30 A',
    input: '6 kVA, 240 V',
    ours: () => inverterInto(inverter, complex(2)).volts,
    reference: 60,
    unit: 'V',
    tolerance: relative(1e-9),
  }),
  closed({
    id: 'equivalent',
    quantity: 'current of the equivalent source into 1.6 + j1.2 ohm',
    input: '6 kVA, 240 V',
    ours: () => {
      const { emf, z: inner } = equivalentSource(inverter, complex(1.6, 1.2));
      return emf / abs(complex(inner.re + 1.6, inner.im + 1.2));
    },
    reference: 30,
    unit: 'A',
    tolerance: relative(1e-9),
  }),
];

const lost = checkWriter('open neutral', 'independent program', sources.ngspice);
const course = checkWriter(
  'open neutral',
  'common practice',
  'electricians’ course example, 100 W and 200 W, divided by hand',
);
const legs = (load1: number, load2: number) => legVolts(120, complex(load1), complex(load2), Number.POSITIVE_INFINITY);
const neutrals = [
  lost({
    id: 'leg-1',
    quantity: 'volts on the leg of 20 ohm',
    input: '120/240 V, 20 and 5 ohm, neutral open',
    ours: () => abs(legs(20, 5).leg1),
    reference: 192,
    unit: 'V',
    tolerance: relative(1e-6),
  }),
  lost({
    id: 'leg-2',
    quantity: 'volts on the leg of 5 ohm',
    input: 'the same',
    ours: () => abs(legs(20, 5).leg2),
    reference: 48,
    unit: 'V',
    tolerance: relative(1e-6),
  }),
  lost({
    id: 'neutral',
    quantity: 'volts of the neutral',
    input: 'the same',
    ours: () => abs(legs(20, 5).neutral),
    reference: 72,
    unit: 'V',
    tolerance: relative(1e-6),
  }),
  course({
    id: 'course',
    quantity: 'volts on the leg of 144 ohm',
    input: '120/240 V, 144 and 72 ohm, neutral open',
    ours: () => abs(legs(144, 72).leg1),
    reference: 160,
    unit: 'V',
    tolerance: relative(1e-9),
  }),
];

/** Checks of sources. */
export const sourceChecks: readonly Check[] = [...transformers, ...generators, ...inverters, ...neutrals];
