/**
 * Electrical values of conductors that hang side by side, per metre: self impedance with earth return less the mutual one
 * at the geometric mean of all spacings (standards/lineImpedance.ts), capacitances by Maxwell's coefficients at mean
 * heights (standards/lineCapacitance.ts).
 */
import { sub } from '../math/complex.ts';
import { exp, hypot, ln } from '../math/elementary.ts';
import { wireCapacitances } from '../standards/lineCapacitance.ts';
import { mutualImpedance, selfImpedance } from '../standards/lineImpedance.ts';
import { conductorNamed } from './conductorNames.ts';

/** A wire by its conductor, its offset across the line and its mean height, metres. */
export interface HungWire {
  readonly conductor: string;
  readonly offset: number;
  readonly height: number;
}

/** Values of each wire's part, and of the coupling between them. */
export interface CoupledValues {
  readonly wires: readonly {
    readonly ohmsPerM: number;
    readonly reactancePerM: number;
    readonly faradsPerM: number;
  }[];
  readonly coupling: Readonly<Record<string, number>>;
}

const meanSpacing = (wires: readonly HungWire[]): number => {
  const logs = wires.flatMap((a, i) =>
    wires.slice(i + 1).map((b) => ln(hypot(a.offset - b.offset, a.height - b.height))),
  );
  return exp(logs.reduce((sum, log) => sum + log, 0) / logs.length);
};

/** Ohm, ohm and farad per metre; soil in ohm metres. Throws a RangeError for two wires in one place. */
export const coupledLineValues = (wires: readonly HungWire[], resistivity: number): CoupledValues => {
  const earth = { resistivity, frequency: 60 };
  const mutual = mutualImpedance(meanSpacing(wires), earth);
  const { toEarth, between } = wireCapacitances(
    wires.map(({ conductor, offset, height }) => ({ offset, height, radius: conductorNamed(conductor).diameter / 2 })),
  );
  const farads = between.flatMap((row, i) =>
    row.flatMap((value, j) => (j > i ? [[`farads${i + 1}${j + 1}`, value] as const] : [])),
  );
  return {
    wires: wires.map(({ conductor }, i) => {
      const { ohmsPerMetre, gmr } = conductorNamed(conductor);
      const own = sub(selfImpedance(ohmsPerMetre, gmr, earth), mutual);
      return { ohmsPerM: own.re, reactancePerM: own.im, faradsPerM: toEarth[i] ?? 0 };
    }),
    coupling: { mutualOhms: mutual.re, mutualReactance: mutual.im, ...Object.fromEntries(farads) },
  };
};
