import { describe, expect, test } from 'vitest';
import {
  abs,
  add,
  arg,
  type Complex,
  complex,
  conj,
  div,
  mul,
  polar,
  scale,
  sub,
} from '../../../src/engine/math/complex.ts';
import type { NetworkElement } from '../../../src/engine/network/types.ts';
import { admittance, impedance, solved, source, transformer, winding } from './elements.ts';

const degrees = (z: Complex): number => (arg(z) * 180) / Math.PI;
const off = (z: Complex, magnitude: number, angle: number): number =>
  abs(sub(z, polar(magnitude, (angle * Math.PI) / 180)));

/** Interlaced windings (GridLAB-D powerflow/transformer.cpp; Kersting 2009): Z0 = 0.5R + j0.8X, Z1 = Z2 = R + j0.4X. */
function centreTapped(
  kva: number,
  r: number,
  x: number,
  ends: { h: string; tank: string },
  y?: Complex,
): NetworkElement {
  const high = (7200 * 7200) / (kva * 1000);
  const low = (120 * 120) / (kva * 1000);
  return transformer(
    't',
    [
      winding(ends.h, ends.tank, 7200, 0.5 * r * high, 0.8 * x * high),
      winding('x1', ends.tank, 120, r * low, 0.4 * x * low),
      winding(ends.tank, 'x3', 120, r * low, 0.4 * x * low),
    ],
    y,
  );
}

/**
 * Kersting, Distribution System Modeling and Analysis, Example 11.1, as asserted by GridLAB-D's
 * powerflow/autotest/test_center_tapped_basic.glm (within 0.05 V, 0.1 A, 0.32 A for the neutral).
 */
describe('Kersting example 11.1, 50 kVA centre-tapped transformer', () => {
  const s = solved([
    source('s', 'h', 'earth', complex(7200)),
    centreTapped(50, 0.011, 0.018, { h: 'h', tank: 'earth' }),
    impedance('l1', 'x1', 'earth', 1.4, 0.5),
    impedance('l2', 'earth', 'x3', 0.9, 0.4),
    impedance('l12', 'x1', 'x3', 2, 1.2),
  ]);

  test.each([
    ['x1', 'earth', 118, -0.6131],
    ['earth', 'x3', 117.9, -0.61421],
    ['x1', 'x3', 235.9, -0.6147],
  ])('volts from %s to %s are %d at %d degrees', (a, b, volts, angle) => {
    const between = s.voltageBetween(a, b);
    expect(Math.abs(abs(between) - volts)).toBeLessThan(0.05);
    expect(degrees(between)).toBeCloseTo(angle, 2);
  });

  test('line currents are 179.6 and 220.4 A, the neutral carries 40.94 A', () => {
    const i1 = scale(s.current('t', 1), -1);
    const i2 = s.current('t', 2);
    expect(off(i1, 179.6, -26.6)).toBeLessThan(0.1);
    expect(off(i2, 220.4, 152.2)).toBeLessThan(0.1);
    expect(Math.abs(abs(add(i1, i2)) - 40.94)).toBeLessThan(0.32);
  });

  test('leg one delivers 21 199 VA at 25.9925 degrees, leg two 23 106.6 + j11 859.2 VA', () => {
    const i1 = scale(s.current('t', 1), -1);
    const s1 = mul(s.voltage('x1'), conj(i1));
    expect(Math.abs(abs(s1) - 21199)).toBeLessThan(1);
    expect(Math.abs(degrees(s1) - 25.9925)).toBeLessThan(0.001);
    const s2 = mul(s.voltage('x3'), conj(s.current('t', 2)));
    expect(abs(sub(s2, complex(23106.6, 11859.2)))).toBeLessThan(1);
  });
});

/** Coupled conductors as a lattice of admittances, exactly the nodal stamp of the inverse impedance matrix. */
function coupledLine(
  id: string,
  from: readonly string[],
  to: readonly string[],
  z: readonly Complex[][],
): NetworkElement[] {
  const y = inverse(z);
  const elements: NetworkElement[] = [];
  for (let i = 0; i < from.length; i++) {
    for (let j = i; j < from.length; j++) {
      const [p, q, r, t] = [from[i], to[i], from[j], to[j]] as [string, string, string, string];
      const { re, im } = (y[i] as Complex[])[j] as Complex;
      if (i === j) elements.push(admittance(`${id}${i}${j}`, p, q, re, im));
      else {
        elements.push(admittance(`${id}${i}${j}a`, p, r, -re, -im), admittance(`${id}${i}${j}b`, q, t, -re, -im));
        elements.push(admittance(`${id}${i}${j}c`, p, t, re, im), admittance(`${id}${i}${j}d`, q, r, re, im));
      }
    }
  }
  return elements;
}

/** Adjugate over determinant. */
function inverse(m: readonly Complex[][]): Complex[][] {
  const entry = (i: number, j: number): Complex => m[i % 3]?.[j % 3] as Complex;
  const cofactor = (i: number, j: number): Complex =>
    sub(mul(entry(i + 1, j + 1), entry(i + 2, j + 2)), mul(entry(i + 1, j + 2), entry(i + 2, j + 1)));
  const determinant = [0, 1, 2].map((j) => mul(entry(0, j), cofactor(0, j))).reduce(add);
  return [0, 1, 2].map((i) => [0, 1, 2].map((j) => div(cofactor(j, i), determinant)));
}

/**
 * IEEE PES 4-node test feeder, grounded wye to grounded wye step-down. Inputs: GridLAB-D models/powerflow_IEEE_4node.glm
 * (impedance matrix of the four-wire line after Kron reduction, ohm per mile); results: 'IEEE results' as tabulated in
 * lbl-srg/modelica-buildings, Validation/IEEETests. Constant-power loads are found by repeated solution.
 */
describe('IEEE 4-node feeder', () => {
  const perMile: readonly Complex[][] = [
    [complex(0.4576, 1.078), complex(0.1559, 0.5017), complex(0.1535, 0.3849)],
    [complex(0.1559, 0.5017), complex(0.4666, 1.0482), complex(0.158, 0.4236)],
    [complex(0.1535, 0.3849), complex(0.158, 0.4236), complex(0.4615, 1.0651)],
  ];
  const miles = (feet: number): Complex[][] => perMile.map((row) => row.map((z) => scale(z, feet / 5280)));
  const phases = ['a', 'b', 'c'] as const;
  const at = (bus: number): string[] => phases.map((p) => `${p}${bus}`);

  function feeder(loads: readonly Complex[]) {
    const base = (4160 * 4160) / 6e6;
    const fixed = [
      ...phases.map((p, k) => source(`s${p}`, `${p}1`, 'earth', polar(12470 / Math.sqrt(3), (-k * 2 * Math.PI) / 3))),
      ...coupledLine('m', at(1), at(2), miles(2000)),
      ...phases.map((p) =>
        transformer(`t${p}`, [
          winding(`${p}2`, 'earth', 12.47),
          winding(`${p}3`, 'earth', 4.16, 0.01 * base, 0.06 * base),
        ]),
      ),
      ...coupledLine('n', at(3), at(4), miles(2500)),
    ];
    let y = loads.map((s) => div(conj(s), complex(2400 * 2400)));
    for (let round = 0; ; round++) {
      const s = solved([
        ...fixed,
        ...phases.map((p, k) => admittance(`l${p}`, `${p}4`, 'earth', y[k]?.re ?? 0, y[k]?.im)),
      ]);
      const volts = at(4).map((node) => abs(s.voltage(node)));
      const next = loads.map((load, k) => scale(conj(load), 1 / ((volts[k] as number) * (volts[k] as number))));
      if (next.every((value, k) => abs(sub(value, y[k] as Complex)) < 1e-12)) return s;
      if (round > 200) throw new Error('the loads do not settle');
      y = next;
    }
  }
  const load = (kw: number, pf: number): Complex => complex(kw * 1000, kw * 1000 * Math.tan(Math.acos(pf)));

  test.each([
    [
      'balanced',
      [load(1800, 0.9), load(1800, 0.9), load(1800, 0.9)],
      {
        2: [7107, -0.3, 7140, -120.3, 7121, 119.6],
        3: [2247, -3.7, 2269, -123.5, 2256, 116.4],
        4: [1918, -9.1, 2061, -128.3, 1981, 110.9],
      },
    ],
    [
      'unbalanced',
      [load(1275, 0.85), load(1800, 0.9), load(2375, 0.95)],
      {
        2: [7164, -0.1, 7110, -120.2, 7082, 119.3],
        3: [2305, -2.3, 2255, -123.6, 2203, 114.8],
        4: [2175, -4.1, 1930, -126.8, 1833, 102.8],
      },
    ],
  ] as const)('%s load: every published volt and angle to the last printed digit', (_, loads, published) => {
    const s = feeder(loads);
    for (const bus of [2, 3, 4] as const) {
      for (const [k, node] of at(bus).entries()) {
        expect(Math.abs(abs(s.voltage(node)) - (published[bus][2 * k] as number)), node).toBeLessThanOrEqual(0.51);
        expect(Math.abs(degrees(s.voltage(node)) - (published[bus][2 * k + 1] as number)), node).toBeLessThanOrEqual(
          0.051,
        );
      }
    }
  });
});

/** Project check values E6 to E12, worked out with an independent hand-written nodal program and ngspice 39.3. */
describe('small circuits of the kind that a pole makes', () => {
  const bolted = (element: NetworkElement) =>
    solved([
      source('s', 'h', 'earth', complex(7200)),
      centreTapped(25, 0.016, 0.0151, { h: 'h', tank: 'earth' }),
      element,
    ]);

  test('E6 lost neutral: 192 V on the 20 ohm leg, 48 V on the 5 ohm leg', () => {
    const s = solved([
      source('p', 'x1', 'earth', complex(120)),
      source('q', 'x2', 'earth', complex(-120)),
      impedance('l1', 'x1', 'n', 20),
      impedance('l2', 'x2', 'n', 5),
      impedance('open', 'n', 'earth', 1e12),
    ]);
    expect(abs(s.voltageBetween('x1', 'n'))).toBeCloseTo(192, 6);
    expect(abs(s.voltageBetween('x2', 'n'))).toBeCloseTo(48, 6);
  });

  test('E7 bolted faults of a 25 kVA transformer: 4734.8 A at 240 V, 6927.8 A at 120 V', () => {
    expect(abs(bolted(impedance('f', 'x1', 'x3', 1e-9)).current('f'))).toBeCloseTo(4734.8, 1);
    const s = bolted(impedance('f', 'x1', 'earth', 1e-9));
    expect(abs(s.current('f'))).toBeCloseTo(6927.78, 1);
    expect(abs(s.voltage('x3'))).toBeCloseTo(68.244, 2);
    expect(abs(s.current('t', 0))).toBeCloseTo(115.463, 2);
  });

  const backfeed = (...more: NetworkElement[]) =>
    solved([
      source('g1', 'x1', 'n', complex(120), complex(0.13292307692307692, 0.6203076923076924)),
      source('g2', 'x3', 'n', complex(-120), complex(0.13292307692307692, 0.6203076923076924)),
      impedance('ground', 'n', 'earth', 0.5),
      centreTapped(25, 0.016, 0.0151, { h: 'h', tank: 'n' }, complex(1 / 398769.23076923075, -1 / 111566.13439914325)),
      ...more,
    ]);

  test('E8 backfeed: a 6.5 kVA generator holds the open high side at 7121.8 V', () => {
    const s = backfeed(impedance('leak', 'h', 'earth', 1e6));
    expect(abs(s.voltage('h'))).toBeCloseTo(7121.801, 2);
    expect(degrees(s.voltage('h'))).toBeCloseTo(-0.0947, 3);
    expect(abs(s.current('g1'))).toBeCloseTo(2.056504, 5);
  });

  test('E8 a body of 1000 ohm to the neutral takes 4.18 A at 4180 V', () => {
    const s = backfeed(impedance('body', 'h', 'n', 1000));
    expect(abs(s.current('body'))).toBeCloseTo(4.18, 2);
    expect(abs(s.voltage('h'))).toBeGreaterThan(4175);
    expect(abs(s.voltage('h'))).toBeLessThan(4185);
  });

  test('E8 a milliohm ground carries 6.10 A and leaves the body 6.1 microamperes', () => {
    const s = backfeed(impedance('jumper', 'h', 'n', 0.001), impedance('body', 'h', 'n', 1000));
    expect(abs(s.current('jumper'))).toBeCloseTo(6.101375, 5);
    expect(abs(s.current('body'))).toBeCloseTo(6.101375e-6, 11);
    expect(abs(s.current('g1'))).toBeCloseTo(183.0901, 3);
  });

  const wood = (...more: NetworkElement[]) =>
    solved([
      source('s', 'ph', 'earth', complex(7200)),
      impedance('insulator', 'ph', 'p9', 2e5),
      impedance('w1', 'p9', 'p7', 4e4),
      impedance('w2', 'p7', 'p5', 4e4),
      impedance('w3', 'p5', 'gl', 1e5),
      impedance('foot', 'gl', 'earth', 25),
      ...more,
    ]);

  test('E9 leaking insulator into wood: 18.9 mA, 20.6 mA through hands and gaffs, 29.7 mA to the neutral', () => {
    expect(abs(wood().current('w1'))).toBeCloseTo(0.018946, 6);
    expect(abs(wood(impedance('body', 'p7', 'p5', 1000)).current('body'))).toBeCloseTo(0.02059935, 8);
    const s = wood(impedance('body', 'p7', 'neutral', 1000), impedance('down', 'neutral', 'earth', 0.5));
    expect(abs(s.current('body'))).toBeCloseTo(0.02966438, 8);
    expect(abs(s.voltage('p7'))).toBeCloseTo(29.67921, 5);
  });

  const station = source('s', 'ph', 'earth', complex(7200), complex(0.3945575695328575, 2.3673454171971446));

  test('E10 3 kA source, line grounded a span away: the jumper takes 2322 A, a body to an unbonded rod 1.77 A', () => {
    const s = solved([
      station,
      impedance('jumper', 'ph', 'cluster', 0.001),
      impedance('return', 'cluster', 'earth', 0.5, 0.6),
      impedance('body', 'ph', 'pole', 1000),
      impedance('rod', 'pole', 'earth', 25),
    ]);
    expect(off(s.voltage('ph'), 1815.173, -23.0964)).toBeLessThan(0.01);
    expect(off(s.current('jumper'), 2322.186, -73.2345)).toBeLessThan(0.01);
    expect(off(s.current('body'), 1.7709, -23.0964)).toBeLessThan(1e-4);
  });

  test('E10 the same line on a 25 ohm rod alone leaves 7.05 A in a body to the neutral', () => {
    const rod = solved([
      station,
      impedance('rod', 'ph', 'earth', 25),
      impedance('body', 'ph', 'pole', 1000),
      impedance('return', 'pole', 'earth', 0.5, 0.6),
    ]);
    expect(off(rod.current('body'), 7.049746, -5.4904)).toBeLessThan(1e-4);
    expect(off(rod.current('rod'), 282.1309, -5.456)).toBeLessThan(1e-2);
    expect(off(rod.voltage('pole'), 5.506027, 44.704)).toBeLessThan(1e-3);
  });

  test('E11 high-side neutral on nothing but a body: 649 V and 0.649 A', () => {
    const s = solved([
      source('s', 'h', 'earth', complex(7200)),
      centreTapped(
        25,
        0.016,
        0.0151,
        { h: 'h', tank: 'tank' },
        complex(1 / 398769.23076923075, -1 / 111566.13439914325),
      ),
      impedance('load', 'x1', 'x3', 11.52),
      impedance('body', 'tank', 'earth', 1000),
    ]);
    expect(off(s.voltage('tank'), 649.0018, -4.8684)).toBeLessThan(0.01);
    expect(off(s.current('load'), 18.89729, 0.314)).toBeLessThan(1e-3);
    expect(off(s.current('body'), 0.6490018, -4.8684)).toBeLessThan(1e-5);
  });

  test('E12 a long multigrounded neutral looks like z/2 + sqrt(z²/4 + zR)', () => {
    const z = complex(0.032, 0.1);
    const ladder = Array.from({ length: 200 }, (_, k) => [
      impedance(`z${k}`, `l${k}`, `l${k + 1}`, z.re, z.im),
      impedance(`r${k}`, `l${k + 1}`, 'earth', 25),
    ]).flat();
    const { zth } = solved(ladder).thevenin('l0');
    const squared = add(scale(mul(z, z), 0.25), scale(z, 25));
    const root = polar(Math.sqrt(abs(squared)), arg(squared) / 2);
    const analytic = add(scale(z, 0.5), root);
    expect(abs(sub(zth, analytic))).toBeLessThan(1e-8);
    expect(abs(sub(zth, complex(1.32433, 1.00602)))).toBeLessThan(1e-5);
  });
});
