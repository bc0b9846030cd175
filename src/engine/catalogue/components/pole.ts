/**
 * The pole and what holds conductors on it. Dimensions: typical of a 40 ft class 4 pole and its pole-top pin, common
 * practice. Wood and healthy porcelain carry a little current; the ohms are scenario choices, from memory.
 */
import type { ComponentKind } from '../types.ts';
import { leakage, plain, shunt, upright, valueIn } from './shared.ts';

const pole: ComponentKind = {
  ...plain,
  id: 'pole',
  name: 'pole',
  terminals: ['pin'],
  nets: { pin: 'pin' },
  values: {
    heightM: { default: 10.36, dimension: 'length', doc: 'Height of the roof above ground' },
    topRadiusM: { default: 0.1, dimension: 'length', doc: 'Radius at the roof' },
    buttRadiusM: { default: 0.14, dimension: 'length', doc: 'Radius at the groundline' },
    strength: { default: 1, dimension: 'ratio', doc: 'Bending strength left, of a new pole' },
  },
  words: { class: { default: '4', doc: 'Pole class' } },
  solids: ({ values }) => [
    { ...upright(0, values.heightM ?? 10.36, values.buttRadiusM ?? 0.14), tip: values.topRadiusM ?? 0.1 },
  ],
  features: [
    {
      id: 'upper-body',
      healthy: 'upper body: grey wood with fine lengthwise checks, colour even as far as made out',
      size: 0.02,
      offset: [0, 0, -1.15],
      fromTop: true,
      side: 'any',
    },
    {
      id: 'body',
      healthy: 'body: grey-brown wood, checks running lengthwise, surface wet in places',
      size: 0.02,
      offset: [0, 0, 5],
      side: 'any',
    },
    {
      id: 'butt',
      healthy: 'butt: wood dark near the ground, grass up to it, no opening made out',
      size: 0.02,
      offset: [0, 0, 0.3],
      side: 'any',
    },
  ],
  conditions: [
    'sound',
    'burn-track',
    'water-stain',
    'old-scar',
    'season-checks',
    'groundline-decay',
    'shell-rot',
    'woodpecker-holes',
    'split-top',
    'leaning',
    'heart-rot',
    'set-shallow',
    'spare-hole',
    'old-staples',
    'old-stub',
    'growth',
    'shadow',
  ],
  source: 'common practice',
};

const pinInsulator: ComponentKind = {
  ...plain,
  id: 'pin-insulator',
  name: 'pin insulator',
  holds: 'through',
  terminals: ['conductor', 'pin'],
  nets: { conductor: 'phase', pin: 'pin' },
  points: { conductor: [0, 0, 0.3], pin: [0, 0, 0.06] },
  values: {
    bodyOhms: { default: 2e9, dimension: 'resistance', doc: 'Leakage over the healthy wet body' },
    woodOhms: { default: 2e6, dimension: 'resistance', doc: 'Wet wood from the pin to the ground, from memory' },
  },
  branches: (part) => [
    shunt('body', 'conductor', 'pin', leakage(10e-12, valueIn(pinInsulator, part, 'bodyOhms'))),
    shunt('wood', 'pin', 'earth', leakage(5e-12, valueIn(pinInsulator, part, 'woodOhms'))),
  ],
  solids: () => [
    { ...upright(0.18, 0.25, 0.08), shedded: 'skirts' },
    upright(0.25, 0.305, 0.045),
    upright(0, 0.18, 0.013),
  ],
  features: [
    {
      id: 'skirts',
      healthy: 'skirts: brown glaze, wet, shine unbroken as far as made out',
      size: 0.01,
      offset: [0, 0, 0.215],
      side: 'any',
    },
    {
      id: 'head',
      healthy: 'head: conductor lying in the groove, glaze wet',
      size: 0.01,
      offset: [0, 0, 0.28],
      side: 'any',
    },
    {
      id: 'pin',
      healthy: 'pin: galvanised steel into the wood, straight, grey',
      size: 0.01,
      offset: [0, 0, 0.05],
      side: 'any',
    },
  ],
  conditions: [
    'broken',
    'sound',
    'cracked',
    'chipped',
    'contaminated',
    'tracking',
    'flashed-over',
    'loose-pin',
    'split-top',
    'glaze-variation',
    'factory-seam',
    'droppings',
  ],
  source: 'common practice',
};

const deadendInsulator: ComponentKind = {
  ...plain,
  id: 'deadend-insulator',
  name: 'dead-end insulator',
  holds: 'end',
  terminals: ['conductor', 'yoke'],
  nets: { conductor: 'phase', yoke: 'yoke' },
  points: { conductor: [-0.35, 0, 0], yoke: [-0.05, 0, 0] },
  values: {
    bodyOhms: { default: 5e9, dimension: 'resistance', doc: 'Leakage over the healthy wet body' },
    woodOhms: { default: 2e6, dimension: 'resistance', doc: 'Wet wood from the yoke to the ground, from memory' },
  },
  branches: (part) => [
    shunt('body', 'conductor', 'yoke', leakage(8e-12, valueIn(deadendInsulator, part, 'bodyOhms'))),
    shunt('wood', 'yoke', 'earth', leakage(5e-12, valueIn(deadendInsulator, part, 'woodOhms'))),
  ],
  solids: () => [
    { shape: 'cylinder', from: [-0.46, 0, 0], to: [-0.19, 0, 0], radius: 0.045, shedded: 'sheds' },
    { shape: 'cylinder', from: [-0.19, 0, 0], to: [-0.08, 0, 0], radius: 0.015 },
    { shape: 'box', centre: [-0.62, 0, -0.01], half: [0.1, 0.022, 0.028] },
  ],
  features: [
    {
      id: 'body',
      healthy: 'body: grey sheds, wet, rims whole as far as made out',
      size: 0.01,
      offset: [-0.325, 0, 0],
      side: 'any',
    },
    {
      id: 'shoe',
      healthy: 'shoe: conductor held in the clamp, bolts in place',
      size: 0.01,
      offset: [-0.6, 0, 0],
      side: 'any',
    },
  ],
  conditions: ['sound', 'cracked', 'chipped', 'contaminated', 'tracking', 'flashed-over', 'polymer-cut', 'chalking'],
  source: 'common practice',
};

const tie: ComponentKind = {
  ...plain,
  id: 'tie',
  name: 'conductor tie',
  ties: true,
  words: { form: { default: 'preformed', doc: 'How it is made', allowed: ['preformed', 'hand'] } },
  solids: () => [{ shape: 'cylinder', from: [-0.3, 0, 0], to: [0.3, 0, 0], radius: 0.02 }],
  features: [
    {
      id: 'legs',
      healthy: 'legs: formed wire laid along the conductor each way from the groove',
      size: 0.006,
      offset: [0.2, 0, 0],
      runs: [1, 0, 0],
      side: 'any',
      byState: [
        { when: { form: 'hand' }, words: 'legs: soft wire wrapped round the conductor each way from the groove' },
      ],
    },
  ],
  conditions: ['sound', 'tie-broken', 'rusted', 'loose', 'long-tails'],
  source: 'common practice',
};

const neutralSpool: ComponentKind = {
  ...plain,
  id: 'neutral-spool',
  name: 'neutral on its spool',
  terminals: ['neutral'],
  nets: { neutral: 'neutral' },
  points: { neutral: [0, 0, 0] },
  solids: () => [{ shape: 'cylinder', from: [0, -0.01, -0.042], to: [0, -0.01, 0.042], radius: 0.04 }],
  features: [
    {
      id: 'spool',
      healthy: 'spool: small white porcelain in its clevis, neutral lying against it',
      size: 0.01,
      offset: [0, 0, 0],
      side: 'any',
    },
  ],
  conditions: ['sound', 'cracked', 'loose', 'open-neutral', 'broken', 'off-insulator'],
  source: 'common practice',
};

const tag: ComponentKind = {
  ...plain,
  id: 'tag',
  name: 'number tag',
  solids: () => [{ shape: 'box', centre: [0, 0, 0], half: [0.06, 0.01, 0.09] }],
  features: [
    { id: 'number', healthy: 'number: as on the ticket for this pole', size: 0.008, offset: [0, 0, 0], side: 'road' },
  ],
  conditions: ['sound', 'wrong-number', 'missing'],
  source: 'common practice',
};

export const poleKinds = [pole, pinInsulator, deadendInsulator, tie, neutralSpool, tag];
