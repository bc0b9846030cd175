/**
 * Spans and drops. Series impedance per metre and stray capacitance are written into the part's values by the builder from
 * standards/conductors.ts; the defaults are a small ACSR. Capacitance stands half at each end.
 */
import { complex } from '../../math/complex.ts';
import type { Branch, ComponentKind, PartView } from '../types.ts';
import { isIn, joint, leakage, plain, shunt, valueIn } from './shared.ts';

const lineValues = {
  lengthM: { default: 50, dimension: 'length', doc: 'Length along the ground' },
  sagM: { default: 0.5, dimension: 'length', doc: 'Sag at mid-span' },
  ohmsPerM: { default: 1.7e-3, dimension: 'ratio', doc: 'Resistance, ohm per metre' },
  reactancePerM: { default: 0.55e-3, dimension: 'ratio', doc: 'Reactance, ohm per metre' },
  faradsPerM: { default: 7e-12, dimension: 'ratio', doc: 'Capacitance to earth, farad per metre' },
} as const;

const seriesOf = (kind: Pick<ComponentKind, 'values'>, part: PartView) => {
  const length = valueIn(kind, part, 'lengthM');
  return complex(valueIn(kind, part, 'ohmsPerM') * length, valueIn(kind, part, 'reactancePerM') * length);
};

const strayOf = (kind: Pick<ComponentKind, 'values'>, part: PartView) =>
  leakage((valueIn(kind, part, 'faradsPerM') * valueIn(kind, part, 'lengthM')) / 2, 1e11);

const ends = ['held', 'low', 'ground'] as const;

/** Conductors that may come off a tie: held at each end, hanging low there, or on the ground. */
const mayFall = {
  states: { 'a-end': ends, 'b-end': ends },
  trueWhen: (['a-end', 'b-end'] as const).flatMap((end) =>
    ['low', 'ground'].map((position) => ({ condition: 'off-insulator', when: { [end]: position } })),
  ),
};

const groundOhms = {
  groundOhms: { default: 150, dimension: 'resistance', doc: 'To remote earth where it lies on the ground' },
} as const;

/** What an end on the ground leads into it. */
export const lyingEnds = (part: PartView): readonly Branch[] => {
  const y = complex(1 / (part.values.groundOhms ?? groundOhms.groundOhms.default));
  return [
    ...(isIn(part, 'a-end', 'ground') ? [shunt('electrode', 'a', 'earth', y)] : []),
    ...(isIn(part, 'b-end', 'ground') ? [shunt('electrode-b', 'b', 'earth', y)] : []),
  ];
};

const fallenWords = (['a-end', 'b-end'] as const).flatMap((end) => [
  { when: { [end]: 'ground' }, words: 'conductor: strands off the insulator, running down to the ground and along it' },
  { when: { [end]: 'low' }, words: 'conductor: strands off the insulator, hanging in one long curve beside the pole' },
]);

const phaseSpan: ComponentKind = {
  ...plain,
  id: 'phase-span',
  name: 'phase conductor',
  terminals: ['a', 'b'],
  points: { a: [0.6, 0, 0], b: [-0.6, 0, 0] },
  endPoints: ['b'],
  ...mayFall,
  values: { ...lineValues, ...groundOhms },
  words: { conductor: { default: 'Swan', doc: 'Code word of the conductor' } },
  branches: (part) => [
    joint('line', 'a', 'b', seriesOf(phaseSpan, part)),
    shunt('stray-a', 'a', 'earth', strayOf(phaseSpan, part)),
    shunt('stray-b', 'b', 'earth', strayOf(phaseSpan, part)),
    ...lyingEnds(part),
  ],
  solids: () => [],
  features: [
    {
      id: 'strands',
      healthy: 'conductor: strands lying smooth along the span, nothing resting on it',
      size: 0.02,
      offset: [0, 0, 0],
      along: 2,
      side: 'any',
      byState: fallenWords,
    },
  ],
  conditions: [
    'sound',
    'broken-strands',
    'limb-on-line',
    'low-sag',
    'slack',
    'off-insulator',
    'live-by-backfeed',
    'foreign-contact',
    'overheated',
    'armor-rods',
    'splice-tight',
  ],
  source: 'standards/conductors.ts',
};

const neutralSpan: ComponentKind = {
  ...phaseSpan,
  id: 'neutral-span',
  name: 'neutral conductor',
  branches: (part) => [
    joint('line', 'a', 'b', seriesOf(neutralSpan, part)),
    shunt('stray-a', 'a', 'earth', strayOf(neutralSpan, part)),
    shunt('stray-b', 'b', 'earth', strayOf(neutralSpan, part)),
    ...lyingEnds(part),
  ],
  conditions: ['sound', 'broken-strands', 'limb-on-line', 'low-sag', 'open-neutral', 'off-insulator'],
};

/** Triplex: two insulated legs round the bare messenger that is the neutral; the legs leave the pole at x1 and x3. */
const serviceDrop: ComponentKind = {
  ...plain,
  id: 'service-drop',
  name: 'service drop',
  terminals: ['x1', 'x2', 'x3', 'l1', 'n', 'l2'],
  nets: { x1: 'x1', x2: 'x2', x3: 'x3', l1: 'l1', n: 'n', l2: 'l2' },
  points: { x2: [0, 0.2, 0], n: [0, 0, 0] },
  endPoints: ['n'],
  states: { legs: ['straight', 'crossed'] },
  values: {
    ...lineValues,
    ohmsPerM: { ...lineValues.ohmsPerM, default: 0.9e-3 },
    reactancePerM: { ...lineValues.reactancePerM, default: 0.1e-3 },
  },
  branches: (part) => {
    const z = seriesOf(serviceDrop, part);
    const [one, two] = isIn(part, 'legs', 'crossed') ? (['n', 'l1'] as const) : (['l1', 'n'] as const);
    return [
      joint('leg-1', 'x1', one, z),
      joint('messenger', 'x2', two, z),
      joint('leg-2', 'x3', 'l2', z),
      shunt('stray-1', 'l1', 'n', leakage(1e-9, 1e8)),
      shunt('stray-2', 'l2', 'n', leakage(1e-9, 1e8)),
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
  conditions: [
    'sound',
    'insulation-worn',
    'broken-strands',
    'low-sag',
    'open-neutral',
    'slipping',
    'miswired',
    'foreign-contact',
    'taped',
  ],
  source: 'common practice',
};

export const lineKinds = [phaseSpan, neutralSpan, serviceDrop];
