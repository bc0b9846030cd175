/**
 * Centre-tapped pole-mount transformer: one bushing up to the cutout, H2 and X2 on the tank. Windings and magnetising branch
 * from standards/transformer.ts; stray capacitances are typical orders of magnitude, from memory.
 */
import {
  interlacedSplit,
  magnetisingAdmittance,
  transformerRatings,
  transformerSizes,
} from '../../standards/transformer.ts';
import { tankSolids } from '../tankSizes.ts';
import type { ComponentKind, PartView } from '../types.ts';
import { joint, leakage, plain, shunt, valueIn } from './shared.ts';

const ratingsOf = (part: PartView) => {
  const rating = valueIn(transformer, part, 'va');
  const ratings = transformerRatings(rating);
  if (ratings === undefined) throw new Error(`${part.id}: no transformer of ${rating} VA in the table`);
  return { rating, ratings };
};

/** Taps of 2.5 % and a dual-voltage switch (common practice): primary turns against those of the rated volts. */
const taps = ['rated', 'lowest', 'highest', 'half'] as const;
const ratio: Readonly<Record<string, number>> = { lowest: 0.95, highest: 1.05, half: 0.5 };

const transformer: ComponentKind = {
  ...plain,
  id: 'transformer',
  name: 'transformer',
  equipment: true,
  terminals: ['h1', 'tank', 'x1', 'x2', 'x3'],
  nets: { h1: 'h1', tank: 'tank', x1: 'x1', x2: 'x2', x3: 'x3' },
  points: {
    h1: [0, 0.05, 0.62],
    tank: [0.22, 0, 0],
    x1: [-0.12, -0.25, 0.28],
    x2: [0, -0.25, 0.28],
    x3: [0.12, -0.25, 0.28],
  },
  values: {
    va: { default: 25000, dimension: 'apparentPower', doc: 'Rating', allowed: transformerSizes },
    primaryVolts: { default: 7200, dimension: 'voltage', doc: 'Rated volts of the primary winding' },
    halfVolts: { default: 120, dimension: 'voltage', doc: 'Rated volts of each half of the secondary' },
  },
  words: { tap: { default: 'rated', doc: 'Tap that is set, or the other voltage of its switch', allowed: taps } },
  branches: (part) => {
    const { rating, ratings } = ratingsOf(part);
    const primary = valueIn(transformer, part, 'primaryVolts') * (ratio[part.words.tap ?? ''] ?? 1);
    const half = valueIn(transformer, part, 'halfVolts');
    const { z0, z1, z2 } = interlacedSplit(rating, primary, half, ratings);
    return [
      {
        type: 'transformer',
        name: 'core',
        windings: [
          { between: ['h1', 'tank'], turns: primary, z: z0 },
          { between: ['x1', 'x2'], turns: half, z: z1 },
          { between: ['x2', 'x3'], turns: half, z: z2 },
        ],
        magnetising: magnetisingAdmittance(rating, primary, ratings),
      },
      joint('x2-bond', 'tank', 'x2'),
      shunt('h1-stray', 'h1', 'tank', leakage(200e-12, 1e10)),
      shunt('x1-stray', 'x1', 'tank', leakage(2e-9, 1e8)),
      shunt('x3-stray', 'x3', 'tank', leakage(2e-9, 1e8)),
    ];
  },
  solids: (part) => tankSolids(part, [0]),
  features: [
    {
      id: 'tank',
      healthy: 'tank: grey paint, seams dry, lid band in place, size stencilled on it',
      size: 0.03,
      offset: [0, 0, 0],
      side: 'any',
    },
    {
      id: 'bushing',
      healthy: 'bushing: grey porcelain on the lid, wet, rims whole as far as made out',
      size: 0.01,
      offset: [0, 0.06, 0.58],
      side: 'any',
    },
    {
      id: 'secondary',
      healthy: 'low side: three small bushings, a lead on each',
      size: 0.01,
      offset: [0, -0.25, 0.28],
      side: 'any',
    },
    {
      id: 'plate',
      healthy:
        'plate: volts and size stamped on it, pointer of the switch at the volts of the line, as far as made out',
      size: 0.008,
      offset: [0, -0.19, -0.05],
      faces: [0, -1, 0],
      side: 'any',
    },
  ],
  conditions: [
    'sound',
    'leaking',
    'bulged',
    'bushing-cracked',
    'overheated',
    'backfed',
    'failed',
    'wrong-tap',
    'second-source',
    'humming',
    'factory-seam',
    'faded-paint',
    'water-stain',
  ],
  sound: () => null,
  mounting: { belowM: 1.85, outM: 0.42 },
  brings: [
    { name: 'tank-strap', kind: 'tank-strap', toward: 0.4, aside: [0, 0], belowM: 1.55, faces: true },
    { name: 'upper-lead', kind: 'upper-lead', toward: 0, aside: [0.1, 0.1], belowM: 1, faces: false },
  ],
  source: 'standards/transformer.ts',
};

export const transformerKinds = [transformer];
