/**
 * Insulators beside the usual pin and polymer dead end: posts, strings of bells, and the pins under them. Dimensions typical of
 * 15 kV class hardware, common practice; ohms of healthy wet surfaces are scenario choices, from memory.
 */
import type { ComponentKind } from '../types.ts';
import { leakage, plain, shunt, upright, valueIn } from './shared.ts';

const ohms = (value: number, doc: string) => ({ default: value, dimension: 'resistance', doc }) as const;
const wood = ohms(2e6, 'Wet wood from its foot to the ground, from memory');

const post: ComponentKind = {
  ...plain,
  id: 'post-insulator',
  name: 'post insulator',
  holds: 'through',
  equipment: true,
  terminals: ['conductor', 'pin'],
  nets: { conductor: 'phase', pin: 'pin' },
  points: { conductor: [0, 0, 0.3], pin: [0, 0, 0.03] },
  values: { bodyOhms: ohms(3e9, 'Leakage over the healthy wet body'), woodOhms: wood },
  words: { material: { default: 'porcelain', doc: 'What its body is made of', allowed: ['porcelain', 'polymer'] } },
  branches: (part) => [
    shunt('body', 'conductor', 'pin', leakage(9e-12, valueIn(post, part, 'bodyOhms'))),
    shunt('wood', 'pin', 'earth', leakage(5e-12, valueIn(post, part, 'woodOhms'))),
  ],
  solids: () => [{ ...upright(0.03, 0.27, 0.066), shedded: 'sheds' }, upright(0, 0.03, 0.05)],
  features: [
    {
      id: 'body',
      healthy: 'body: grey glaze ribbed all the way up, wet, ribs whole as far as made out',
      size: 0.01,
      offset: [0, 0, 0.17],
      side: 'any',
      byState: [
        {
          when: { material: 'polymer' },
          words: 'body: grey rubber sheds all the way up, wet, rims whole as far as made out',
        },
      ],
    },
    {
      id: 'top',
      healthy: 'top: conductor lying in the saddle, tied down on both sides, as far as made out',
      size: 0.01,
      offset: [0, 0, 0.3],
      side: 'any',
    },
    {
      id: 'base',
      healthy: 'base: galvanised foot flat on its seat, stud drawn up, as far as made out',
      size: 0.01,
      offset: [0, 0, 0.03],
      side: 'any',
    },
  ],
  conditions: [
    'sound',
    'cracked',
    'chipped',
    'contaminated',
    'tracking',
    'flashed-over',
    'polymer-cut',
    'loose',
    'factory-seam',
  ],
  mounting: { belowM: 0, outM: 0 },
  source: 'common practice',
};

export const suspension: ComponentKind = {
  ...plain,
  id: 'suspension-insulator',
  name: 'string of insulators',
  holds: 'end',
  equipment: true,
  terminals: ['conductor', 'yoke'],
  nets: { conductor: 'phase', yoke: 'yoke' },
  points: { conductor: [-0.35, 0, 0], yoke: [-0.05, 0, 0] },
  values: { bodyOhms: ohms(5e9, 'Leakage over the healthy wet string'), woodOhms: wood },
  words: {
    material: { default: 'porcelain', doc: 'What it is made of', allowed: ['porcelain', 'polymer', 'glass'] },
  },
  branches: (part) => [
    shunt('body', 'conductor', 'yoke', leakage(12e-12, valueIn(suspension, part, 'bodyOhms'))),
    shunt('wood', 'yoke', 'earth', leakage(5e-12, valueIn(suspension, part, 'woodOhms'))),
  ],
  solids: () => [
    { shape: 'cylinder', from: [-0.39, 0, 0], to: [-0.2, 0, 0], radius: 0.08 },
    { shape: 'cylinder', from: [-0.2, 0, 0], to: [-0.08, 0, 0], radius: 0.015 },
    { shape: 'box', centre: [-0.55, 0, -0.01], half: [0.1, 0.022, 0.028] },
  ],
  features: [
    {
      id: 'body',
      healthy: 'string: brown bells in line, wet, rims whole as far as made out',
      size: 0.01,
      offset: [-0.36, 0, 0],
      side: 'any',
      byState: [
        { when: { material: 'glass' }, words: 'string: green glass in line, wet, rims whole as far as made out' },
        { when: { material: 'polymer' }, words: 'string: grey rod with sheds, wet, rims whole as far as made out' },
      ],
    },
    {
      id: 'hardware',
      healthy: 'hardware: eye, ball and socket seated, cotter in each joint, as far as made out',
      size: 0.008,
      offset: [-0.17, 0, -0.01],
      side: 'any',
    },
  ],
  conditions: [
    'sound',
    'cracked',
    'chipped',
    'contaminated',
    'tracking',
    'flashed-over',
    'polymer-cut',
    'broken',
    'cotter-missing',
  ],
  mounting: { belowM: 0.15, outM: 0.1 },
  source: 'common practice',
};

const ridgePin: ComponentKind = {
  ...plain,
  id: 'ridge-pin',
  name: 'ridge pin',
  equipment: true,
  terminals: ['pin'],
  nets: { pin: 'pin' },
  points: { pin: [0, -0.06, 0.1] },
  solids: () => [
    { shape: 'box', centre: [0, 0.008, -0.03], half: [0.027, 0.012, 0.21] },
    { shape: 'cylinder', from: [0, 0.01, 0.18], to: [0, 0.1, 0.33], radius: 0.015 },
  ],
  features: [
    {
      id: 'bolts',
      healthy: 'bolts: two through the pole, washers flat, nuts drawn up, as far as made out',
      size: 0.01,
      offset: [0, -0.01, -0.1],
      side: 'any',
    },
    {
      id: 'shank',
      healthy: 'shank: galvanised steel up past the roof of the pole, straight, as far as made out',
      size: 0.01,
      offset: [0, 0.055, 0.255],
      side: 'any',
    },
  ],
  conditions: ['sound', 'loose-pin', 'loose', 'rusted', 'rust-bloom'],
  mounting: { belowM: 0.2, outM: 0.11 },
  source: 'common practice',
};

export const insulatorKinds = [post, suspension, ridgePin];
