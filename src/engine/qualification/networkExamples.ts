/**
 * Published and independently solved circuits as elements for our solver. Kersting's Example 11.1: a 50 kVA centre-tapped
 * transformer. IEEE 4-node feeder, grounded wye to grounded wye, its line as the lattice of admittances that the inverse
 * of the published impedance matrix gives, constant-power loads by repeated solution. Small circuits of the kind
 * that a pole makes: backfeed, a leaking insulator, a line grounded elsewhere.
 */
import { abs, add, type Complex, complex, conj, div, mul, polar, scale, sub } from '../math/complex.ts';
import { acos, tan } from '../math/elementary.ts';
import { solveNetwork } from '../network/solveNetwork.ts';
import { EARTH, type NetworkElement, type NetworkSolution, type Winding } from '../network/types.ts';
import { interlacedSplit, magnetisingAdmittance, type TransformerRatings } from '../standards/transformer.ts';

/** A circuit solved; throws when it has no solution, which none of these lacks. */
export const solved = (elements: readonly NetworkElement[]): NetworkSolution => {
  const solution = solveNetwork(elements);
  if (!solution.ok) throw new RangeError(`no solution: ${JSON.stringify(solution)}`);
  return solution;
};

const impedance = (id: string, from: string, to: string, re: number, im = 0): NetworkElement => ({
  kind: 'impedance',
  id,
  from,
  to,
  z: complex(re, im),
});
const admittance = (id: string, from: string, to: string, y: Complex): NetworkElement => ({
  kind: 'admittance',
  id,
  from,
  to,
  y,
});
const source = (id: string, from: string, to: string, emf: Complex, z = complex(0)): NetworkElement => ({
  kind: 'source',
  id,
  from,
  to,
  emf,
  z,
  group: 'system',
});
const winding = (from: string, to: string, turns: number, z = complex(0)): Winding => ({ from, to, turns, z });

const centreTapped = (
  rating: number,
  { percentR, percentX }: Pick<TransformerRatings, 'percentR' | 'percentX'>,
  tank: string,
  magnetising?: Complex,
): NetworkElement => {
  const { z0, z1, z2 } = interlacedSplit(rating, 7200, 120, { percentR, percentX });
  const windings = [winding('h', tank, 7200, z0), winding('x1', tank, 120, z1), winding(tank, 'x3', 120, z2)];
  return { kind: 'transformer', id: 't', windings, ...(magnetising ? { magnetising } : {}) };
};

/** Example 11.1: legs x1 and x3 against earth, three loads. */
export const kersting111 = (): NetworkSolution =>
  solved([
    source('s', 'h', EARTH, complex(7200)),
    centreTapped(50000, { percentR: 1.1, percentX: 1.8 }, EARTH),
    impedance('l1', 'x1', EARTH, 1.4, 0.5),
    impedance('l2', EARTH, 'x3', 0.9, 0.4),
    impedance('l12', 'x1', 'x3', 2, 1.2),
  ]);

const perMile: readonly (readonly Complex[])[] = [
  [complex(0.4576, 1.078), complex(0.1559, 0.5017), complex(0.1535, 0.3849)],
  [complex(0.1559, 0.5017), complex(0.4666, 1.0482), complex(0.158, 0.4236)],
  [complex(0.1535, 0.3849), complex(0.158, 0.4236), complex(0.4615, 1.0651)],
];
const phases = ['a', 'b', 'c'] as const;

/** Adjugate over determinant of a 3 by 3 matrix. */
const inverse = (m: readonly (readonly Complex[])[]): Complex[][] => {
  const entry = (i: number, j: number): Complex => m[i % 3]?.[j % 3] ?? complex(0);
  const cofactor = (i: number, j: number): Complex =>
    sub(mul(entry(i + 1, j + 1), entry(i + 2, j + 2)), mul(entry(i + 1, j + 2), entry(i + 2, j + 1)));
  const determinant = [0, 1, 2].map((j) => mul(entry(0, j), cofactor(0, j))).reduce(add);
  return [0, 1, 2].map((i) => [0, 1, 2].map((j) => div(cofactor(j, i), determinant)));
};

const coupledLine = (id: string, from: number, to: number, feet: number): NetworkElement[] => {
  const y = inverse(perMile.map((row) => row.map((z) => scale(z, feet / 5280))));
  return phases.flatMap((p, i) =>
    phases.slice(i).flatMap((q) => {
      const value = y[i]?.[phases.indexOf(q)] ?? complex(0);
      const less = scale(value, -1);
      if (p === q) return [admittance(`${id}${p}${q}`, `${p}${from}`, `${p}${to}`, value)];
      return [
        admittance(`${id}${p}${q}1`, `${p}${from}`, `${q}${from}`, less),
        admittance(`${id}${p}${q}2`, `${p}${to}`, `${q}${to}`, less),
        admittance(`${id}${p}${q}3`, `${p}${from}`, `${q}${to}`, value),
        admittance(`${id}${p}${q}4`, `${p}${to}`, `${q}${from}`, value),
      ];
    }),
  );
};

/** Kilowatts and power factor of one phase's load. */
export type PhaseLoad = readonly [kilowatts: number, powerFactor: number];

/** The 4-node feeder: nodes a1 to c4. */
export const ieeeFourNode = (loads: readonly [PhaseLoad, PhaseLoad, PhaseLoad]): NetworkSolution => {
  const base = (4160 * 4160) / 6e6;
  const fixed = [
    ...phases.map((p, k) => source(`s${p}`, `${p}1`, EARTH, polar(12470 / Math.sqrt(3), (-k * 2 * Math.PI) / 3))),
    ...coupledLine('m', 1, 2, 2000),
    ...phases.map((p): NetworkElement => {
      const windings = [
        winding(`${p}2`, EARTH, 12.47),
        winding(`${p}3`, EARTH, 4.16, complex(0.01 * base, 0.06 * base)),
      ];
      return { kind: 'transformer', id: `t${p}`, windings };
    }),
    ...coupledLine('n', 3, 4, 2500),
  ];
  const powers = loads.map(([kilowatts, factor]) => complex(kilowatts * 1000, -kilowatts * 1000 * tan(acos(factor))));
  let volts = phases.map(() => 2400);
  for (let round = 0; round < 200; round++) {
    const taken = phases.map((p, k) => {
      const held = volts[k] ?? 2400;
      return admittance(`l${p}`, `${p}4`, EARTH, scale(powers[k] ?? complex(0), 1 / (held * held)));
    });
    const solution = solved([...fixed, ...taken]);
    const next = phases.map((p) => abs(solution.voltage(`${p}4`)));
    if (next.every((value, k) => Math.abs(value - (volts[k] ?? 0)) < 1e-7)) return solution;
    volts = next;
  }
  throw new RangeError('the loads do not settle');
};

const small = { percentR: 1.6, percentX: 1.51 };
const magnetising = magnetisingAdmittance(25000, 7200, { percentNoLoadLoss: 0.52, percentExciting: 1.93 });
const half = complex(0.13292307692307692, 0.6203076923076924);
const backfeed = (...more: readonly NetworkElement[]): NetworkSolution =>
  solved([
    source('g1', 'x1', 'n', complex(120), half),
    source('g2', 'x3', 'n', complex(-120), half),
    impedance('ground', 'n', EARTH, 0.5),
    centreTapped(25000, small, 'n', magnetising),
    ...more,
  ]);

/** A 6.5 kVA set into a 25 kVA transformer, high side open but for a leak. */
export const backfeedOpen = (): NetworkSolution => backfeed(impedance('leak', 'h', EARTH, 1e6));
/** The same with three neighbours on the tap. */
export const backfeedLoaded = (): NetworkSolution => backfeed(impedance('load', 'h', 'n', 8640));
/** The same with a milliohm ground and a body beside it. */
export const backfeedGrounded = (): NetworkSolution =>
  backfeed(impedance('jumper', 'h', 'n', 0.001), impedance('body', 'h', 'n', 1000));

/** A 25 kVA transformer on a stiff 7200 V with a bolted fault. */
export const boltedSecondary = (from: 'x1', to: 'x3' | 'earth'): NetworkSolution =>
  solved([
    source('s', 'h', EARTH, complex(7200)),
    centreTapped(25000, small, EARTH),
    impedance('fault', from, to, 1e-9),
  ]);

/** High-side neutral on nothing but a body. */
export const openHighNeutral = (): NetworkSolution =>
  solved([
    source('s', 'h', EARTH, complex(7200)),
    centreTapped(25000, small, 'tank', magnetising),
    impedance('load', 'x1', 'x3', 11.52),
    impedance('body', 'tank', EARTH, 1000),
  ]);

/** A cracked insulator that leaks into a wet pole, with what touches it. */
export const leakingPole = (touch: 'nothing' | 'pole' | 'neutral'): NetworkSolution =>
  solved([
    source('s', 'ph', EARTH, complex(7200)),
    impedance('insulator', 'ph', 'p9', 2e5),
    impedance('w1', 'p9', 'p7', 4e4),
    impedance('w2', 'p7', 'p5', 4e4),
    impedance('w3', 'p5', 'gl', 1e5),
    impedance('foot', 'gl', EARTH, 25),
    ...(touch === 'nothing' ? [] : [impedance('body', 'p7', touch === 'pole' ? 'p5' : 'neutral', 1000)]),
    ...(touch === 'neutral' ? [impedance('down', 'neutral', EARTH, 0.5)] : []),
  ]);

const station = source('s', 'ph', EARTH, complex(7200), complex(0.3945575695328575, 2.3673454171971446));

/** Line grounded a span away, a body to a rod that is not bonded. */
export const bracketed = (): NetworkSolution =>
  solved([
    station,
    impedance('jumper', 'ph', 'cluster', 0.001),
    impedance('return', 'cluster', EARTH, 0.5, 0.6),
    impedance('body', 'ph', 'pole', 1000),
    impedance('rod', 'pole', EARTH, 25),
  ]);

/** Line on a rod alone, a body to the neutral. */
export const rodAlone = (): NetworkSolution =>
  solved([
    station,
    impedance('rod', 'ph', EARTH, 25),
    impedance('body', 'ph', 'pole', 1000),
    impedance('return', 'pole', EARTH, 0.5, 0.6),
  ]);

/** Volt-amperes that a branch takes at a voltage. */
export const power = (volts: Complex, amperes: Complex): Complex => mul(volts, conj(amperes));
