/** Spans and poles. */
import { looseConductor } from '../mechanics/looseConductor.ts';
import { conductorById } from '../standards/conductors.ts';
import { climberMoment, momentOf, poleUse, poleWindMoment, windPressure } from '../standards/poleLoad.ts';
import {
  fibreStrength,
  heartRotLeaves,
  momentCapacity,
  poleDimensions,
  rejectBelow,
  shellRotLeaves,
} from '../standards/poles.ts';
import { catenarySag, gravity, parabolicLength, parabolicSag, rulingSpan } from '../standards/sag.ts';
import { tensionAfter } from '../standards/sagTension.ts';
import { checkWriter, relative, within } from './checkWriter.ts';
import type { Check } from './types.ts';

const foot = 0.3048;
const inch = 0.0254;
const pound = 4.4482216152605;
const footPound = foot * pound;

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

const pole = checkWriter('pole strength', 'published value', 'published pole strength worked example');
const classes = checkWriter('pole strength', 'published value', 'public page on ANSI O5.1 classes');
const fibre = checkWriter('pole strength', 'published value', 'published feeder library, pole types');
const twoThirds = checkWriter('pole strength', 'published value', 'California PUC GO 64-A, rule 44.2');
const ring = checkWriter('pole decay', 'common practice', 'section modulus of a ring, worked by hand');
const psi = pound / (inch * inch);
const strengthPoles = [
  ...(
    [
      [37.5, 111315],
      [36.5, 102645],
    ] as const
  ).map(([circumference, reference]) =>
    pole({
      id: `moment-${circumference}`,
      quantity: 'moment that the groundline withstands',
      input: `circumference ${circumference} in, 8000 psi`,
      ours: () => momentCapacity(circumference * inch, 8000 * psi) / footPound,
      reference,
      unit: 'ft lb',
      tolerance: relative(1e-5),
    }),
  ),
  pole({
    id: 'used',
    quantity: 'part of that strength used',
    input: '600 lb at 38 ft',
    ours: () =>
      (100 * momentOf([{ newtons: 600 * pound, height: 38 * foot }])) / momentCapacity(37.5 * inch, 8000 * psi),
    reference: 20.5,
    unit: '%',
    tolerance: within(0.05),
  }),
  ...(
    [
      [1, 4500],
      [5, 1900],
      [6, 1500],
    ] as const
  ).map(([poleClass, reference]) =>
    classes({
      id: `class-${poleClass}`,
      quantity: 'load 2 ft from the top',
      input: `class ${poleClass}`,
      ours: () => (poleDimensions(45 * foot, poleClass)?.classLoad ?? Number.NaN) / pound,
      reference,
      unit: 'lb',
      tolerance: relative(1e-9),
    }),
  ),
  ...(
    [
      ['southern pine', 8000],
      ['western red cedar', 6000],
      ['northern white cedar', 4000],
    ] as const
  ).map(([species, reference]) =>
    fibre({
      id: `fibre-${species.replaceAll(' ', '-')}`,
      quantity: 'fibre strength',
      input: species,
      ours: () => fibreStrength[species] / psi,
      reference,
      unit: 'psi',
      tolerance: relative(1e-9),
    }),
  ),
  twoThirds({
    id: 'reject',
    quantity: 'strength below which a pole is replaced or reinforced',
    input: 'grades A and B',
    ours: () => rejectBelow,
    reference: 2 / 3,
    unit: '1',
    tolerance: relative(1e-9),
  }),
  ring({
    id: 'shell-rot',
    quantity: 'strength left by shell rot',
    input: '0.5 in all round on 35 in of circumference',
    ours: () => shellRotLeaves(35, 35 - Math.PI),
    reference: 0.7542,
    unit: '1',
    tolerance: within(0.0001),
  }),
  ring({
    id: 'heart-rot',
    quantity: 'strength left by heart rot',
    input: '8 in across in a 12 in pole',
    ours: () => heartRotLeaves(12, 8),
    reference: 0.8025,
    unit: '1',
    tolerance: within(0.0001),
  }),
];

const nesc = checkWriter('pole load', 'from memory', 'NESC 250C wind pressures, from memory');
const trapezoid = checkWriter(
  'pole load',
  'common practice',
  'first moment of a trapezoid and of a weight, worked by hand',
);
const cylinder = {
  length: 12,
  setting: 2,
  topCircumference: Math.PI * 0.25,
  buttCircumference: Math.PI * 0.25,
  classLoad: 0,
};
const loads = [
  nesc({
    id: 'wind-90',
    quantity: 'wind pressure on a round pole',
    input: '90 mph',
    ours: () => windPressure(90 * 0.44704) / (pound / (foot * foot)),
    reference: 20.7,
    unit: 'lb/ft2',
    tolerance: within(0.05),
  }),
  trapezoid({
    id: 'wind-moment',
    quantity: 'wind moment of a cylinder at the groundline',
    input: '10 m by 0.25 m, 400 Pa: 1000 N at 5 m',
    ours: () => poleWindMoment(cylinder, 400),
    reference: 5000,
    unit: 'N m',
    tolerance: relative(1e-9),
  }),
  trapezoid({
    id: 'climber',
    quantity: 'moment of a climber who slips into the belt',
    input: '120 kg, 0.6 m out, twice',
    ours: () => climberMoment(120 * gravity, 0.6, 2),
    reference: 1412.16,
    unit: 'N m',
    tolerance: relative(1e-5),
  }),
  trapezoid({
    id: 'use',
    quantity: 'part used of a pole at three quarters of its strength',
    input: 'circumference 0.7854 m, 50 MPa, 28 763 N m',
    ours: () => poleUse(cylinder, 50e6, 0.75, 28763).used,
    reference: 0.5,
    unit: '1',
    tolerance: relative(0.001),
  }),
];

/** Checks of spans and poles. */
export const mechanicsChecks: readonly Check[] = [
  ...sags,
  ...temperature,
  ...ties,
  ...conductors,
  ...strengthPoles,
  ...loads,
];
