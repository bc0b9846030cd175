/**
 * Single-phase units for banks and for systems without a neutral. Two bushings: primary across two phases, secondary
 * centre-tapped. Lighting unit of a wye-wye bank: one 120 V winding from a phase of the secondary to its neutral, three of
 * them make 120/208 V. Power unit of an open-wye bank: one 240 V winding that stands on a leg of the lighting unit and
 * makes the wild leg, 208 V to the neutral. R and X of the size (standards/transformer.ts), halved between primary and
 * secondary where there is one winding each (textbook equal split); magnetising branch behind the primary. Taps: the
 * primary volts as set. Polarity: by what its terminals are connected to. Tank strap to the neutral is a branch
 * of its own. Left out: saturation and ferroresonance, third harmonics, the common core of three-phase units.
 */
import { type Complex, complex, scale } from '../../math/complex.ts';
import {
  interlacedSplit,
  magnetisingAdmittance,
  transformerRatings,
  transformerSizes,
} from '../../standards/transformer.ts';
import { tankSolids } from '../tankSizes.ts';
import type { Branch, ComponentKind, PartView } from '../types.ts';
import { joint, leakage, plain, shunt, valueIn } from './shared.ts';
import { transformerKinds } from './transformer.ts';

const features = transformerKinds.flatMap((kind) => kind.features);
const conditions = transformerKinds.flatMap((kind) => kind.conditions);

const va = { default: 25000, dimension: 'apparentPower', doc: 'Rating', allowed: transformerSizes } as const;
const primaryVolts = {
  default: 7200,
  dimension: 'voltage',
  doc: 'Rated volts of the primary winding at the tap that is set',
} as const;

const ratingsOf = (kind: ComponentKind, part: PartView) => {
  const rating = valueIn(kind, part, 'va');
  const ratings = transformerRatings(rating);
  if (ratings === undefined) throw new Error(`${part.id}: no transformer of ${rating} VA in the table`);
  return { rating, ratings, primary: valueIn(kind, part, 'primaryVolts') };
};

/** They hang closer to the pole than a single one. */
const BACK = 0.145;

const tankForm = {
  ...plain,
  equipment: true,
  solids: (part: PartView) => tankSolids(part, [0], BACK),
  features,
  conditions,
  sound: () => null,
  source: 'standards/transformer.ts',
} as const;

const lowPoints = { x1: [-0.12, -0.25, 0.28], x2: [0, -0.25, 0.28], x3: [0.12, -0.25, 0.28] } as const;

const twoBushing: ComponentKind = {
  ...tankForm,
  id: 'transformer-two-bushing',
  solids: (part) => tankSolids(part, [-0.1, 0.1], BACK),
  name: 'transformer with two bushings',
  terminals: ['h1', 'h2', 'tank', 'neutral', 'x1', 'x2', 'x3'],
  nets: { h1: 'h1', h2: 'h2', tank: 'tank', neutral: 'neutral', x1: 'x1', x2: 'x2', x3: 'x3' },
  points: { h1: [-0.12, 0.05, 0.62], h2: [0.12, 0.05, 0.62], tank: [0.22, 0, 0], ...lowPoints },
  values: {
    va,
    primaryVolts: { ...primaryVolts, default: 4800 },
    halfVolts: { default: 120, dimension: 'voltage', doc: 'Rated volts of each half of the secondary' },
  },
  branches: (part) => {
    const { rating, ratings, primary } = ratingsOf(twoBushing, part);
    const half = valueIn(twoBushing, part, 'halfVolts');
    const { z0, z1, z2 } = interlacedSplit(rating, primary, half, ratings);
    return [
      {
        type: 'transformer',
        name: 'core',
        windings: [
          { between: ['h1', 'h2'], turns: primary, z: z0 },
          { between: ['x1', 'x2'], turns: half, z: z1 },
          { between: ['x2', 'x3'], turns: half, z: z2 },
        ],
        magnetising: magnetisingAdmittance(rating, primary, ratings),
      },
      joint('x2-bond', 'tank', 'x2'),
      joint('strap', 'tank', 'neutral'),
      shunt('h1-stray', 'h1', 'tank', leakage(200e-12, 1e10)),
      shunt('h2-stray', 'h2', 'tank', leakage(200e-12, 1e10)),
      shunt('x1-stray', 'x1', 'tank', leakage(2e-9, 1e8)),
      shunt('x3-stray', 'x3', 'tank', leakage(2e-9, 1e8)),
    ];
  },
};

/** One winding on each side. */
const unit = (id: string, name: string, volts: number, more: readonly Branch[]): ComponentKind => {
  const kind: ComponentKind = {
    ...tankForm,
    id,
    name,
    terminals: ['h1', 'tank', 'neutral', 'x1', 'x2'],
    nets: { h1: 'h1', tank: '$id.tank', neutral: 'neutral', x1: 'x1', x2: 'x2' },
    points: { h1: [0, 0.05, 0.62], tank: [0.22, 0, 0], x1: lowPoints.x1, x2: lowPoints.x2 },
    values: {
      va,
      primaryVolts,
      secondaryVolts: { default: volts, dimension: 'voltage', doc: 'Rated volts of the secondary winding' },
    },
    branches: (part) => {
      const { rating, ratings, primary } = ratingsOf(kind, part);
      const secondary = valueIn(kind, part, 'secondaryVolts');
      const half: Complex = scale(complex(ratings.percentR, ratings.percentX), 1 / 200);
      return [
        {
          type: 'transformer',
          name: 'core',
          windings: [
            { between: ['h1', 'tank'], turns: primary, z: scale(half, (primary * primary) / rating) },
            { between: ['x1', 'x2'], turns: secondary, z: scale(half, (secondary * secondary) / rating) },
          ],
          magnetising: magnetisingAdmittance(rating, primary, ratings),
        },
        joint('strap', 'tank', 'neutral'),
        shunt('h1-stray', 'h1', 'tank', leakage(200e-12, 1e10)),
        shunt('x1-stray', 'x1', 'tank', leakage(2e-9, 1e8)),
        ...more,
      ];
    },
  };
  return kind;
};

export const bankKinds = [
  twoBushing,
  unit('bank-unit-120', 'transformer of a bank', 120, [joint('x2-bond', 'tank', 'x2')]),
  unit('bank-unit-240', 'power transformer of a bank', 240, [shunt('x2-stray', 'x2', 'tank', leakage(2e-9, 1e8))]),
];
