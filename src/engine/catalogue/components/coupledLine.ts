/**
 * Conductors that hang side by side and act on each other. Each conductor keeps its own impedance less the mutual one;
 * a coupling part behind them carries what all share: one core with a winding in each conductor, whose magnetising
 * impedance is the mutual impedance, so that V = (Zs - Zm) I + Zm (sum of I) exactly; and the capacitances between the
 * wires, half at each end (Kersting, series impedance and shunt admittance of overhead lines). The mutual impedance is
 * one value for all pairs, taken at the geometric mean spacing, as of a line transposed; values per metre come from the
 * builder (standards/lineImpedance.ts, lineCapacitance.ts). Left out: untransposed asymmetry, currents in guys.
 */
import { complex, div, ONE } from '../../math/complex.ts';
import type { Branch, ComponentKind } from '../types.ts';
import { lineKinds, lyingEnds } from './line.ts';
import { joint, leakage, OMEGA, plain, shunt, valueIn } from './shared.ts';

const kindOf = (id: string): ComponentKind => {
  const kind = lineKinds.find((known) => known.id === id);
  if (kind === undefined) throw new Error(`no line kind ${id}`);
  return kind;
};

/** A single conductor of a line, with the net between it and the coupling. */
const coupled = (id: string, of: ComponentKind, name: string): ComponentKind => {
  const kind: ComponentKind = {
    ...of,
    id,
    name,
    terminals: [...of.terminals, 'm'],
    branches: (part) => {
      const length = valueIn(kind, part, 'lengthM');
      const stray = leakage((valueIn(kind, part, 'faradsPerM') * length) / 2, 1e11);
      const z = complex(valueIn(kind, part, 'ohmsPerM') * length, valueIn(kind, part, 'reactancePerM') * length);
      return [
        joint('line', 'a', 'm', z),
        shunt('stray-a', 'a', 'earth', stray),
        shunt('stray-b', 'b', 'earth', stray),
        ...lyingEnds(part),
      ];
    },
    source: 'standards/lineImpedance.ts, standards/lineCapacitance.ts',
  };
  return kind;
};

/** Most conductors that the builder couples between two poles. */
export const mostCoupled = 5;

const pairsOf = (count: number): readonly (readonly [number, number])[] =>
  Array.from({ length: count }, (_, i) => i + 1).flatMap((i) =>
    Array.from({ length: count - i }, (_, k): readonly [number, number] => [i, i + k + 1]),
  );

const coupling = (count: number): ComponentKind => {
  const places = Array.from({ length: count }, (_, i) => i + 1);
  const ratio = (doc: string, value: number) => ({ default: value, dimension: 'ratio', doc });
  const kind: ComponentKind = {
    ...plain,
    id: `line-coupling-${count}`,
    name: 'field between the conductors',
    terminals: places.flatMap((i) => [`a${i}`, `m${i}`, `b${i}`]),
    values: {
      lengthM: { default: 50, dimension: 'length', doc: 'Length along the ground' },
      mutualOhms: ratio('Mutual resistance, ohm per metre', 5.9e-5),
      mutualReactance: ratio('Mutual reactance, ohm per metre', 4.9e-4),
      ...Object.fromEntries(
        pairsOf(count).map(([i, j]) => [
          `farads${i}${j}`,
          ratio(`Capacitance of ${i} and ${j}, farad per metre`, 1e-12),
        ]),
      ),
    },
    branches: (part) => {
      const length = valueIn(kind, part, 'lengthM');
      const mutual = complex(
        valueIn(kind, part, 'mutualOhms') * length,
        valueIn(kind, part, 'mutualReactance') * length,
      );
      const core: Branch = {
        type: 'transformer',
        name: 'mutual',
        windings: places.map((i) => ({ between: [`m${i}`, `b${i}`] as const, turns: 1, z: complex(0) })),
        magnetising: div(ONE, mutual),
        wires: true,
      };
      const fields = pairsOf(count).flatMap(([i, j]) => {
        const y = complex(0, (OMEGA * valueIn(kind, part, `farads${i}${j}`) * length) / 2);
        return [shunt(`field-${i}${j}-a`, `a${i}`, `a${j}`, y), shunt(`field-${i}${j}-b`, `b${i}`, `b${j}`, y)];
      });
      return [core, ...fields];
    },
    solids: () => [],
    features: [],
    conditions: [],
    source: 'Kersting, Distribution System Modeling and Analysis, series impedance and shunt admittance',
  };
  return kind;
};

/** Triplex or three open wires along the poles, from one transformer's secondary to the next. */
const secondarySpan: ComponentKind = {
  ...plain,
  id: 'secondary-span',
  name: 'secondary conductors',
  terminals: ['a1', 'a2', 'a3', 'b1', 'b2', 'b3'],
  points: { a2: [0.4, 0, 0], b2: [-0.4, 0, 0] },
  endPoints: ['b2'],
  values: {
    lengthM: { default: 40, dimension: 'length', doc: 'Length along the ground' },
    sagM: { default: 0.6, dimension: 'length', doc: 'Sag at mid-span' },
    ohmsPerM: { default: 0.9e-3, dimension: 'ratio', doc: 'Resistance, ohm per metre' },
    reactancePerM: { default: 0.1e-3, dimension: 'ratio', doc: 'Reactance, ohm per metre' },
  },
  branches: (part) => {
    const length = valueIn(secondarySpan, part, 'lengthM');
    const of = (name: string): number => valueIn(secondarySpan, part, name) * length;
    const z = complex(of('ohmsPerM'), of('reactancePerM'));
    return [
      joint('leg-1', 'a1', 'b1', z),
      joint('messenger', 'a2', 'b2', z),
      joint('leg-2', 'a3', 'b3', z),
      shunt('stray-1', 'b1', 'b2', leakage(1e-9, 1e8)),
      shunt('stray-2', 'b3', 'b2', leakage(1e-9, 1e8)),
    ];
  },
  solids: () => [],
  features: [
    {
      id: 'triplex',
      healthy: 'triplex: two dark legs round the bare messenger, lay even, jacket whole',
      size: 0.015,
      offset: [0, 0, -0.02],
      along: 0.65,
      side: 'any',
    },
  ],
  conditions: ['sound', 'insulation-worn', 'broken-strands', 'low-sag', 'open-neutral'],
  source: 'common practice',
};

export const coupledLineKinds = [
  coupled('coupled-span', kindOf('phase-span'), 'phase conductor'),
  coupled('coupled-neutral', kindOf('neutral-span'), 'neutral conductor'),
  ...Array.from({ length: mostCoupled - 1 }, (_, i) => coupling(i + 2)),
  secondarySpan,
];
