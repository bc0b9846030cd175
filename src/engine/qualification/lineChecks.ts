/** Overhead lines: Carson's impedances against a published feeder, capacitance and what it induces. */
import { type Complex, div, mul, scale, sub } from '../math/complex.ts';
import { hypot } from '../math/elementary.ts';
import { inducedTouch, inducedVolts, potentialCoefficient } from '../standards/inducedVoltage.ts';
import { capacitanceToEarth, mutualImpedance, selfImpedance } from '../standards/lineImpedance.ts';
import { checkWriter, relative, within } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const foot = 0.3048;
const mile = 1609.344;
/** Wire positions in feet, resistance in ohm per mile, GMR in feet, of the feeder's line. */
const wires = {
  a: { x: -4, y: 28, r: 0.306, gmr: 0.0244 },
  b: { x: -1.5, y: 28, r: 0.306, gmr: 0.0244 },
  c: { x: 3, y: 28, r: 0.306, gmr: 0.0244 },
  n: { x: 0, y: 24, r: 0.592, gmr: 0.00814 },
} as const;
type WireName = keyof typeof wires;

const primitive = (i: WireName, j: WireName): Complex => {
  const [one, two] = [wires[i], wires[j]];
  const perMetre =
    i === j ? selfImpedance(one.r / mile, one.gmr * foot) : mutualImpedance(hypot(one.x - two.x, one.y - two.y) * foot);
  return scale(perMetre, mile);
};
const reduced = (i: WireName, j: WireName): Complex =>
  sub(primitive(i, j), div(mul(primitive(i, 'n'), primitive('n', j)), primitive('n', 'n')));

/** Entry, R and X in ohm per mile as printed. */
type Entry = readonly [WireName, WireName, number, number];
const fourWire: readonly Entry[] = [
  ['a', 'a', 0.4576, 1.078],
  ['a', 'b', 0.1559, 0.5017],
  ['a', 'c', 0.1535, 0.3849],
  ['b', 'b', 0.4666, 1.0482],
  ['b', 'c', 0.158, 0.4236],
  ['c', 'c', 0.4615, 1.0651],
];
const threeWire: readonly Entry[] = [
  ['a', 'a', 0.4013, 1.4133],
  ['a', 'b', 0.0953, 0.8515],
  ['a', 'c', 0.0953, 0.7266],
  ['b', 'c', 0.0953, 0.7802],
];

const published = checkWriter('line impedance', 'published value', sources.kersting41);
const entries = (name: string, table: readonly Entry[], z: (i: WireName, j: WireName) => Complex): Check[] =>
  table.flatMap(([i, j, r, x]) =>
    (
      [
        ['resistance', r, (value: Complex) => value.re],
        ['reactance', x, (value: Complex) => value.im],
      ] as const
    ).map(([quantity, reference, read]) =>
      published({
        id: `${name}-${i}${j}-${quantity}`,
        quantity: `${quantity} ${i}${j}, ${name}`,
        input: '336.4 and 4/0 ACSR, 100 ohm m, 60 Hz',
        ours: () => read(z(i, j)),
        reference,
        unit: 'ohm/mile',
        tolerance: within(0.0001),
      }),
    ),
  );

const remembered = checkWriter(
  'induced voltage',
  'from memory',
  'Kersting, Example 5.1, potential coefficients, from memory',
);
const hand = checkWriter('induced voltage', 'common practice', 'charge and image charge, worked by hand');
const milesPerMicrofarad = 1 / (mile * 1e6);
// The book's line hangs a foot higher than the feeder's.
const place = (name: WireName, diameter: number) => ({
  offset: wires[name].x * foot,
  height: (wires[name].y + 1) * foot,
  radius: (diameter / 24) * foot,
});
const phase = place('a', 0.721);
const coefficients = (
  [
    ['aa', () => potentialCoefficient(phase, phase), 84.56],
    ['ab', () => potentialCoefficient(phase, place('b', 0.721)), 35.1522],
    ['an', () => potentialCoefficient(phase, place('n', 0.563)), 25.2469],
  ] as const
).map(([id, ours, reference]) =>
  remembered({
    id: `coefficient-${id}`,
    quantity: `potential coefficient ${id}`,
    input: '336.4 and 4/0 ACSR, phases 29 ft and neutral 25 ft up',
    ours: () => ours() * milesPerMicrofarad,
    reference,
    unit: 'mile/uF',
    tolerance: relative(0.001),
  }),
);
const live = { offset: 0, height: 10, radius: 0.005 };
const beside = { offset: 1, height: 10, radius: 0.005 };
// ln(sqrt(401)/1) / ln(20/0.005) = 2.99698 / 8.29405
const induced = [
  hand({
    id: 'volts',
    quantity: 'volts on an isolated wire 1 m beside a live one',
    input: '7200 V, both 10 m up, radius 5 mm',
    ours: () => inducedVolts(live, 7200, beside),
    reference: 2601.66,
    unit: 'V',
    tolerance: relative(1e-5),
  }),
  hand({
    id: 'touch',
    quantity: 'current of a touch of 100 m of it',
    input: 'the same, 1000 ohm: w V P12 / (P11 P22 - P12 P12), the body hardly counts',
    ours: () => inducedTouch(live, 7200, beside, 100, 1000) * 1000,
    reference: 0.7567,
    unit: 'mA',
    tolerance: relative(0.001),
  }),
  hand({
    id: 'capacitance',
    quantity: 'capacitance to earth of one wire',
    input: '10 m up, radius 5 mm: 55.63 pF/m over ln 4000',
    ours: () => capacitanceToEarth(10, 0.005) * 1e12,
    reference: 6.7075,
    unit: 'pF/m',
    tolerance: relative(0.0002),
  }),
];

/** Checks of line constants. */
export const lineChecks: readonly Check[] = [
  ...entries('four-wire', fourWire, reduced),
  ...entries('three-wire', threeWire, primitive),
  ...coefficients,
  ...induced,
];
