/** The solver against published feeders and against an independent program. */
import { abs, add, arg, scale } from '../math/complex.ts';
import type { NetworkSolution } from '../network/types.ts';
import { checkWriter, relative, within } from './checkWriter.ts';
import {
  backfeedGrounded,
  backfeedLoaded,
  backfeedOpen,
  boltedSecondary,
  bracketed,
  ieeeFourNode,
  kersting111,
  leakingPole,
  openHighNeutral,
  type PhaseLoad,
  power,
  rodAlone,
} from './networkExamples.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Computed when first asked for. */
const once = <T>(make: () => T): (() => T) => {
  let kept: { readonly value: T } | undefined;
  return () => {
    kept ??= { value: make() };
    return kept.value;
  };
};

const kersting = checkWriter('centre-tapped circuit', 'published value', sources.kersting111);
const example = once(kersting111);
const leg1 = () => scale(example().current('t', 1), -1);
const leg2 = () => example().current('t', 2);
const inputs = '50 kVA 7200-240/120 V, loads 1.4 + j0.5, 0.9 + j0.4, 2.0 + j1.2 ohm';
const volts = [
  ['V1', 'x1', 'earth', 118, -0.6131],
  ['V2', 'earth', 'x3', 117.9, -0.61421],
  ['V12', 'x1', 'x3', 235.9, -0.6147],
] as const;
const centreTapped = [
  ...volts.flatMap(([name, a, b, magnitude, angle]) => [
    kersting({
      id: name.toLowerCase(),
      quantity: name,
      input: inputs,
      ours: () => abs(example().voltageBetween(a, b)),
      reference: magnitude,
      unit: 'V',
      tolerance: within(0.05),
    }),
    kersting({
      id: `${name.toLowerCase()}-angle`,
      quantity: `angle of ${name}`,
      input: inputs,
      ours: () => degrees(arg(example().voltageBetween(a, b))),
      reference: angle,
      unit: 'deg',
      tolerance: within(0.0015),
    }),
  ]),
  ...(
    [
      ['I1', () => abs(leg1()), 179.6, 'A', 0.1],
      ['I2', () => abs(leg2()), 220.4, 'A', 0.1],
      ['IN', () => abs(add(leg1(), leg2())), 40.94, 'A', 0.01],
      ['angle of I1', () => degrees(arg(leg1())), -26.6, 'deg', 0.05],
      ['angle of I2', () => degrees(arg(leg2())), 152.2, 'deg', 0.05],
      ['S1', () => abs(power(example().voltage('x1'), leg1())), 21199, 'VA', 1],
      ['angle of S1', () => degrees(arg(power(example().voltage('x1'), leg1()))), 25.9925, 'deg', 0.001],
      ['P2', () => power(example().voltage('x3'), leg2()).re, 23106.6, 'W', 1],
      ['Q2', () => power(example().voltage('x3'), leg2()).im, 11859.2, 'var', 1],
    ] as const
  ).map(([quantity, ours, reference, unit, tolerance]) =>
    kersting({
      id: quantity.toLowerCase().replaceAll(' ', '-'),
      quantity,
      input: inputs,
      ours,
      reference,
      unit,
      tolerance: within(tolerance),
    }),
  ),
];

const feeder = checkWriter('4-node feeder', 'published value', sources.ieee4);
/** Volts and degrees of phases a, b, c at a node, as printed. */
type Printed = readonly [number, number, number, number, number, number];
const cases: readonly {
  readonly name: string;
  readonly loads: readonly [PhaseLoad, PhaseLoad, PhaseLoad];
  readonly nodes: Readonly<Record<2 | 3 | 4, Printed>>;
}[] = [
  {
    name: 'balanced',
    loads: [
      [1800, 0.9],
      [1800, 0.9],
      [1800, 0.9],
    ],
    nodes: {
      2: [7107, -0.3, 7140, -120.3, 7121, 119.6],
      3: [2247, -3.7, 2269, -123.5, 2256, 116.4],
      4: [1918, -9.1, 2061, -128.3, 1981, 110.9],
    },
  },
  {
    name: 'unbalanced',
    loads: [
      [1275, 0.85],
      [1800, 0.9],
      [2375, 0.95],
    ],
    nodes: {
      2: [7164, -0.1, 7110, -120.2, 7082, 119.3],
      3: [2305, -2.3, 2255, -123.6, 2203, 114.8],
      4: [2175, -4.1, 1930, -126.8, 1833, 102.8],
    },
  },
];
const fourNode = cases.flatMap(({ name, loads, nodes }) => {
  const solution = once(() => ieeeFourNode(loads));
  return ([2, 3, 4] as const).flatMap((bus) =>
    (['a', 'b', 'c'] as const).flatMap((phase, k) => [
      feeder({
        id: `${name}-${phase}${bus}`,
        quantity: `volts of phase ${phase} at node ${bus}`,
        input: `${name} load, grounded wye to grounded wye step-down`,
        ours: () => abs(solution().voltage(`${phase}${bus}`)),
        reference: nodes[bus][2 * k] ?? Number.NaN,
        unit: 'V',
        tolerance: within(0.51),
      }),
      feeder({
        id: `${name}-${phase}${bus}-angle`,
        quantity: `angle of phase ${phase} at node ${bus}`,
        input: `${name} load, grounded wye to grounded wye step-down`,
        ours: () => degrees(arg(solution().voltage(`${phase}${bus}`))),
        reference: nodes[bus][2 * k + 1] ?? Number.NaN,
        unit: 'deg',
        tolerance:
          Math.abs(nodes[bus][2 * k + 1] ?? 0) < 1.1
            ? within(0.051, 'angle printed to a tenth of a degree')
            : within(0.051),
      }),
    ]),
  );
});

const solver = checkWriter('pole circuits', 'independent program', sources.ngspice);
const circuits: readonly (readonly [
  string,
  string,
  string,
  () => NetworkSolution,
  (s: NetworkSolution) => number,
  number,
  string,
])[] = [
  [
    'backfeed',
    'high side held by a set',
    '6.5 kVA into 25 kVA, high side open',
    backfeedOpen,
    (s) => abs(s.voltage('h')),
    7121.801,
    'V',
  ],
  ['backfeed-set', 'current of the set', 'the same', backfeedOpen, (s) => abs(s.current('g1')), 2.056504, 'A'],
  [
    'backfeed-loaded',
    'high side with three neighbours',
    '8640 ohm on the tap',
    backfeedLoaded,
    (s) => abs(s.voltage('h')),
    6852.179,
    'V',
  ],
  [
    'backfeed-ground',
    'current of a protective ground',
    '1 milliohm to the neutral',
    backfeedGrounded,
    (s) => abs(s.current('jumper')),
    6.101375,
    'A',
  ],
  [
    'backfeed-body',
    'body beside that ground',
    '1000 ohm',
    backfeedGrounded,
    (s) => 1e6 * abs(s.current('body')),
    6.101375,
    'uA',
  ],
  [
    'fault-240',
    'bolted fault at 240 V',
    '25 kVA on a stiff line',
    () => boltedSecondary('x1', 'x3'),
    (s) => abs(s.current('fault')),
    4734.8,
    'A',
  ],
  [
    'fault-120',
    'bolted fault at 120 V',
    '25 kVA on a stiff line',
    () => boltedSecondary('x1', 'earth'),
    (s) => abs(s.current('fault')),
    6927.782,
    'A',
  ],
  [
    'fault-120-high',
    'high-side current of that fault',
    'the same',
    () => boltedSecondary('x1', 'earth'),
    (s) => abs(s.current('t', 0)),
    115.463,
    'A',
  ],
  [
    'open-neutral',
    'tank with its neutral open',
    '5 kW load, body 1000 ohm',
    openHighNeutral,
    (s) => abs(s.voltage('tank')),
    649.0018,
    'V',
  ],
  [
    'pole',
    'leakage in a wet pole',
    '200 kohm insulator, 20 kohm/m',
    () => leakingPole('nothing'),
    (s) => 1000 * abs(s.current('w1')),
    18.946,
    'mA',
  ],
  [
    'pole-climber',
    'climber hands to gaffs',
    'the same, 7 m to 5 m',
    () => leakingPole('pole'),
    (s) => 1000 * abs(s.current('body')),
    20.59935,
    'mA',
  ],
  [
    'pole-neutral',
    'climber pole to neutral',
    'the same, 0.5 ohm down-lead',
    () => leakingPole('neutral'),
    (s) => 1000 * abs(s.current('body')),
    29.66438,
    'mA',
  ],
  [
    'bracket',
    'body to a rod not bonded',
    '3 kA source, grounded a span away',
    bracketed,
    (s) => abs(s.current('body')),
    1.7709,
    'A',
  ],
  [
    'rod-alone',
    'body to the neutral',
    'the same, line on a rod',
    rodAlone,
    (s) => abs(s.current('body')),
    7.049746,
    'A',
  ],
];
const poles = circuits.map(([id, quantity, input, solve, read, reference, unit]) =>
  solver({ id, quantity, input, ours: () => read(solve()), reference, unit, tolerance: relative(3e-5) }),
);

/** Checks of the network solver. */
export const networkChecks: readonly Check[] = [...centreTapped, ...fourNode, ...poles];
