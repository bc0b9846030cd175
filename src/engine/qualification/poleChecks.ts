/** Wood poles: strength, what decay leaves, what bends them. */
import { climberMoment, momentOf, poleUse, poleWindMoment, windPressure } from '../standards/poleLoad.ts';
import {
  fibreStrength,
  heartRotLeaves,
  momentCapacity,
  poleDimensions,
  rejectBelow,
  shellRotLeaves,
} from '../standards/poles.ts';
import { gravity } from '../standards/sag.ts';
import { checkWriter, relative, within } from './checkWriter.ts';
import type { Check } from './types.ts';

const foot = 0.3048;
const inch = 0.0254;
const pound = 4.4482216152605;
const footPound = foot * pound;

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

/** Checks of poles. */
export const poleChecks: readonly Check[] = [...strengthPoles, ...loads];
