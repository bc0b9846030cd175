/**
 * What holds a pole against its conductors: strand, the insulator in it, its guard, its anchor. A guy of a scenario that says no
 * more has an insulator and an anchor of its own; either listed as equipment takes its place. Anchor in soil: 60 ohm, of the range
 * 10 to 500 ohm, from memory.
 */
import { complex } from '../../math/complex.ts';
import type { ComponentKind } from '../types.ts';
import { joint, leakage, plain, shunt, valueIn } from './shared.ts';

const anchorOhms = { default: 60, dimension: 'resistance', doc: 'Anchor to remote earth, from memory' } as const;
/** Porcelain between two pieces of strand, wet. */
const heldApart = leakage(8e-12, 1e9);
const HAND = 1.5;
/** Slope of the strand as framed: lead over height. */
const LEAD = 0.6;

const guy: ComponentKind = {
  ...plain,
  id: 'guy',
  name: 'guy and anchor',
  terminals: ['top', 'low'],
  nets: { top: 'guy-top', low: 'guy-low' },
  points: { top: [LEAD * 0.8, 0, -0.8], low: [-LEAD * HAND, 0, HAND] },
  endPoints: ['low'],
  values: { anchorOhms },
  words: {
    insulator: {
      default: 'in it',
      doc: 'Whether the strand has its own insulator',
      allowed: ['in it', 'apart', 'none'],
    },
    anchor: { default: 'in it', doc: 'Whether its anchor counts with it', allowed: ['in it', 'apart'] },
  },
  branches: (part) => [
    ...(part.words.insulator === 'none' ? [joint('strand', 'top', 'low')] : []),
    ...(part.words.insulator === 'in it' ? [shunt('insulator', 'top', 'low', heldApart)] : []),
    ...(part.words.anchor === 'in it'
      ? [shunt('anchor', 'low', 'earth', complex(1 / valueIn(guy, part, 'anchorOhms')))]
      : []),
    shunt('wood', 'top', 'earth', leakage(5e-12, 5e6)),
  ],
  solids: () => [],
  features: [
    {
      id: 'strand',
      healthy: 'strand: grey, taut, guard at the foot upright',
      size: 0.008,
      offset: [0, 0, 0],
      along: 3,
      side: 'any',
    },
  ],
  conditions: [
    'sound',
    'slack',
    'broken',
    'anchor-pulled',
    'guard-missing',
    'insulator-missing',
    'foreign-contact',
    'rusted',
    'rust-bloom',
    'within-tolerance',
  ],
  source: 'common practice',
};

const strainInsulator: ComponentKind = {
  ...plain,
  id: 'strain-insulator',
  name: 'strain insulator in the guy',
  equipment: true,
  terminals: ['upper', 'lower'],
  nets: { upper: 'guy-top', lower: 'guy-low' },
  points: { upper: [0, 0, 0.12], lower: [0, 0, -0.12] },
  words: { material: { default: 'porcelain', doc: 'Ball or rod', allowed: ['porcelain', 'fibreglass'] } },
  alters: { name: 'guy', words: { insulator: 'apart' } },
  branches: () => [shunt('body', 'upper', 'lower', heldApart)],
  solids: () => [{ shape: 'cylinder', from: [0, 0, -0.08], to: [0, 0, 0.08], radius: 0.05 }],
  features: [
    {
      id: 'body',
      healthy: 'body: brown ball between two eyes of the strand, whole as far as made out',
      size: 0.01,
      offset: [0, 0, 0],
      side: 'any',
      byState: [
        {
          when: { material: 'fibreglass' },
          words: 'body: grey rod between two eyes of the strand, whole as far as made out',
        },
      ],
    },
  ],
  conditions: ['sound', 'cracked', 'insulator-missing', 'contaminated'],
  mounting: { along: 'guy', share: 0.22 },
  source: 'common practice',
};

const guard: ComponentKind = {
  ...plain,
  id: 'guy-guard',
  name: 'guy guard',
  equipment: true,
  solids: () => [{ shape: 'cylinder', from: [-0.7, 0, 1.1], to: [0, 0, 0], radius: 0.03 }],
  features: [
    {
      id: 'guard',
      healthy: 'guard: yellow half tube up the foot of the strand, upright',
      size: 0.03,
      offset: [-0.35, 0, 0.6],
      side: 'any',
    },
  ],
  conditions: ['sound', 'guard-missing', 'damaged', 'loose'],
  mounting: { along: 'guy', share: 0.97 },
  source: 'common practice',
};

const anchor: ComponentKind = {
  ...plain,
  id: 'anchor',
  name: 'anchor',
  equipment: true,
  terminals: ['rod'],
  nets: { rod: 'guy-low' },
  points: { rod: [0, 0, 0.2] },
  values: { ohms: anchorOhms },
  alters: { name: 'guy', words: { anchor: 'apart' } },
  branches: (part) => [shunt('electrode', 'rod', 'earth', complex(1 / valueIn(anchor, part, 'ohms')))],
  solids: () => [{ shape: 'cylinder', from: [0, 0, -0.1], to: [-0.12, 0, 0.25], radius: 0.012 }],
  features: [
    {
      id: 'rod',
      healthy: 'rod: eye a hand above the grass, soil lying close round it',
      size: 0.015,
      offset: [0, 0, 0.15],
      side: 'any',
    },
  ],
  conditions: ['sound', 'anchor-pulled', 'rusted', 'loose', 'rust-bloom'],
  mounting: { along: 'guy', share: 1 },
  source: 'common practice; resistance from memory',
};

export const guyKinds = [guy, strainInsulator, guard, anchor];
