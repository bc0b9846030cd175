/** Spans: sag, tension with temperature, a lost tie, the conductor itself. */
import { looseConductor } from '../mechanics/looseConductor.ts';
import { conductorById } from '../standards/conductors.ts';
import { catenarySag, gravity, parabolicLength, parabolicSag, rulingSpan } from '../standards/sag.ts';
import { tensionAfter } from '../standards/sagTension.ts';
import { checkWriter, relative, within } from './checkWriter.ts';
import type { Check } from './types.ts';

const foot = 0.3048;
const pound = 4.4482216152605;

const article = checkWriter('sag', 'published value', 'published sag article, 500 m example');
const hand = checkWriter('sag', 'common practice', 'catenary and ruling span worked by hand');
const sags = [
  article({
    id: '500-m',
    quantity: 'sag of a parabola',
    input: '500 m, 1 kg/m, 10 000 kg',
    ours: () => parabolicSag(gravity, 500, 10000 * gravity),
    reference: 3.125,
    unit: 'm',
    tolerance: relative(1e-9),
  }),
  article({
    id: '500-m-catenary',
    quantity: 'sag of a catenary against the printed parabola',
    input: 'the same',
    ours: () => catenarySag(gravity, 500, 10000 * gravity),
    reference: 3.125,
    unit: 'm',
    tolerance: within(0.0005),
  }),
  hand({
    id: 'raven',
    quantity: 'catenary sag of 1/0 ACSR at 20 % of its strength',
    input: '600 ft, 0.1453 lb/ft, 876 lb',
    ours: () => catenarySag((0.1453 * pound) / foot, 600 * foot, 876 * pound) / foot,
    reference: 7.4656,
    unit: 'ft',
    tolerance: within(0.0001),
  }),
  hand({
    id: 'ruling-span',
    quantity: 'ruling span',
    input: 'spans of 40, 50 and 60 m: sqrt(405 000 / 150)',
    ours: () => rulingSpan([40, 50, 60]),
    reference: 51.96152,
    unit: 'm',
    tolerance: relative(1e-6),
  }),
];

const sheet = checkWriter(
  'sag and temperature',
  'published value',
  'published sagging calculation, 243 mm2, 350 m, 27 to 80 C',
);
const linnet = checkWriter(
  'sag and temperature',
  'published value',
  'published sag template computation, 336.4 kcmil, 120 m, 32.2 to 90 C',
);
const elastic = { stiffness: 7700 * 243 * gravity, expansion: 18.9e-6 };
const hot = () =>
  tensionAfter(
    350,
    { weight: 0.987 * gravity, tension: 1762.069616 * gravity, celsius: 27 },
    { weight: 0.987 * gravity, celsius: 80 },
    elastic,
  );
const temperature = [
  sheet({
    id: 'tension-80',
    quantity: 'tension at 80 C',
    input: '0.987 kg/m, 1762.07 kg at 27 C, 7700 kg/mm2, 18.9e-6 per C',
    ours: () => hot() / gravity,
    reference: 1431.500233,
    unit: 'kg',
    tolerance: relative(1e-6),
  }),
  sheet({
    id: 'sag-80',
    quantity: 'sag at 80 C',
    input: 'the same',
    ours: () => parabolicSag(0.987 * gravity, 350, hot()),
    reference: 10.55776112,
    unit: 'm',
    tolerance: relative(1e-6),
  }),
  linnet({
    id: 'tension-90',
    quantity: 'tension at 90 C in still air after wind at 32.2 C',
    input: '2.1261 kg/m at 2558 kg, then 0.688 kg/m; 7720 kg/mm2, 262.677 mm2, 20.5e-6 per C',
    ours: () =>
      tensionAfter(
        120,
        { weight: 2.1261 * gravity, tension: 2558 * gravity, celsius: 32.2 },
        { weight: 0.688 * gravity, celsius: 90 },
        { stiffness: 7720 * 262.677 * gravity, expansion: 2.05e-5 },
      ) / gravity,
    reference: 655.41,
    unit: 'kg',
    tolerance: relative(0.001),
  }),
];

const tie = checkWriter('lost tie', 'common practice', 'geometry of two equal parabolas that become one');
const hung = { far: [-50, 0, 10], near: [0, 0, 10], sag: 0.5 } as const;
const loose = looseConductor(hung, { far: [50, 0, 10], near: [0, 0, 10], sag: 0.5 });
const ties = [
  tie({
    id: 'double-sag',
    quantity: 'sag of the double span',
    input: 'two spans of 50 m with 0.5 m: twice the sag',
    ours: () => loose.sag,
    reference: 1,
    unit: 'm',
    tolerance: relative(1e-6),
  }),
  tie({
    id: 'length',
    quantity: 'length of the double span',
    input: 'the same: 100 + 2 times 8 d2/3S',
    ours: () => looseConductor(hung, { far: [50, 0, 10], near: [0, 0, 10], sag: 0.5 }).length,
    reference: 100.026667,
    unit: 'm',
    tolerance: relative(1e-8),
  }),
  tie({
    id: 'one-span',
    quantity: 'length of one span',
    input: '50 m, 0.5 m',
    ours: () => parabolicLength(50, 0.5),
    reference: 50.013333,
    unit: 'm',
    tolerance: relative(1e-8),
  }),
];

const strength = checkWriter('conductor', 'published value', 'published ACSR strength table, third source');
const conductors = (
  [
    ['acsr-4', 1865],
    ['acsr-2', 2842],
    ['acsr-1/0', 4381],
  ] as const
).map(([id, reference]) =>
  strength({
    id: `strength-${id.replace('/', '-')}`,
    quantity: 'rated strength',
    input: id,
    ours: () => (conductorById(id)?.strength ?? Number.NaN) / pound,
    reference,
    unit: 'lb',
    tolerance: relative(0.005),
  }),
);

/** Checks of spans. */
export const spanChecks: readonly Check[] = [...sags, ...temperature, ...ties, ...conductors];
