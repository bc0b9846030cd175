/**
 * What joins and parts the primary: hot-line clamp, cutout with its fuse tube, arrester. A plain cutout carries its link in
 * the tube; a melted link lets the tube drop open. Dimensions and stray capacitances: typical, common practice.
 */
import { complex } from '../../math/complex.ts';
import type { Vec3 } from '../../math/vec3.ts';
import { linkSizes } from '../../standards/fuseLinks.ts';
import type { ComponentKind, Solid } from '../types.ts';
import { isIn, joint, leakage, plain, shunt, upright, valueIn } from './shared.ts';

const clamp: ComponentKind = {
  ...plain,
  id: 'hot-line-clamp',
  name: 'hot-line clamp and lead',
  equipment: true,
  terminals: ['line', 'lead'],
  nets: { line: 'phase', lead: 'top' },
  points: { line: [0, 0, 0], lead: [0.12, 0, -0.75] },
  states: { position: ['on', 'off'] },
  branches: (part) => [
    ...(isIn(part, 'position', 'on') ? [joint('clamp', 'line', 'lead')] : []),
    shunt('lead-stray', 'lead', 'earth', leakage(8e-12, 1e12)),
  ],
  solids: () => [upright(-0.2, 0.02, 0.02)],
  features: [
    {
      id: 'clamp',
      healthy: 'clamp: bronze jaw on the stirrup, eye hanging down, lead whole',
      size: 0.01,
      offset: [0, 0, -0.04],
      side: 'any',
      byState: [{ when: { position: 'off' }, words: 'clamp: off the stirrup, lead hanging on the cutout, eye free' }],
    },
  ],
  conditions: ['sound', 'burned', 'loose'],
  mounting: { belowM: -0.3, outM: 0.6 },
  operations: [
    {
      id: 'take-off',
      label: 'Take the hot-line clamp off',
      by: 'stick',
      from: { position: ['on'] },
      to: { position: 'off' },
      minutes: 2,
      breaks: ['line', 'lead'],
      touches: ['line', 'lead'],
    },
    {
      id: 'put-on',
      label: 'Put the hot-line clamp on',
      by: 'stick',
      from: { position: ['off'] },
      to: { position: 'on' },
      minutes: 2,
      makes: ['line', 'lead'],
      touches: ['line', 'lead'],
    },
  ],
  source: 'common practice',
};

const links = linkSizes.flatMap((size) => [`${size}K`, `${size}T`]);

/** The tube between hinge and contact, or hanging from its hinge; the body leans out at its top. */
const tubeOf = (position: string | undefined): readonly Solid[] => {
  const hinge: Vec3 = [0, -0.037, -0.215];
  const to: Vec3 | null = position === 'closed' ? [0, -0.145, 0.133] : position === 'open' ? [0, 0.01, -0.57] : null;
  return to === null ? [] : [{ shape: 'cylinder', from: hinge, to, radius: 0.018 }];
};

const cutout: ComponentKind = {
  ...plain,
  id: 'cutout',
  name: 'fused cutout',
  equipment: true,
  terminals: ['top', 'bottom'],
  nets: { top: 'top', bottom: 'h1' },
  points: { top: [0, -0.12, 0.2], bottom: [0, -0.16, -0.2] },
  states: { position: ['closed', 'open', 'removed'], link: ['sound', 'blown', 'none'] },
  values: {
    linkAmps: { default: 10, dimension: 'current', doc: 'Rating of the fuse link' },
    bodyOhms: { default: 5e9, dimension: 'resistance', doc: 'Leakage over the healthy wet body' },
  },
  words: {
    link: { default: '10K', doc: 'Fuse link in the tube', allowed: links },
    body: { default: 'porcelain', doc: 'What its body is made of', allowed: ['porcelain', 'polymer'] },
  },
  branches: (part) => [
    ...(isIn(part, 'position', 'closed') && isIn(part, 'link', 'sound')
      ? [
          {
            ...joint('link', 'top', 'bottom', complex(0.02, 0.001)),
            protects: {
              curve: 'fuse-link' as const,
              rating: valueIn(cutout, part, 'linkAmps'),
              link: part.words.link ?? '10K',
              opens: { position: 'open', link: 'blown' },
            },
          },
        ]
      : []),
    shunt('body', 'top', 'bottom', leakage(6e-12, valueIn(cutout, part, 'bodyOhms'))),
    shunt('bottom-stray', 'bottom', 'earth', leakage(8e-12, 1e12)),
  ],
  solids: ({ state }) => [
    { shape: 'cylinder', from: [0, 0.075, -0.17], to: [0, -0.03, 0.17], radius: 0.045 },
    ...tubeOf(state.position),
  ],
  features: [
    {
      id: 'body',
      healthy: 'body: grey porcelain on its bracket, rims whole as far as made out',
      size: 0.01,
      offset: [0, 0.022, 0],
      side: 'any',
      byState: [
        { when: { body: 'polymer' }, words: 'body: grey rubber sheds on its bracket, rims whole as far as made out' },
      ],
    },
    {
      id: 'tube',
      healthy: 'tube: latched in the upper contact, ring outward',
      size: 0.015,
      offset: [0, -0.09, -0.04],
      side: 'any',
      byState: [
        { when: { position: 'open' }, words: 'tube: out of the upper contact, hanging from the lower hinge' },
        { when: { position: 'removed' }, words: 'tube: not in the hinge, both contacts bare' },
      ],
    },
  ],
  trueWhen: [{ condition: 'fuse-operated', when: { link: 'blown' } }],
  conditions: [
    'sound',
    'fuse-operated',
    'cracked',
    'chipped',
    'hung-up',
    'contacts-burned',
    'bracket-loose',
    'oversize-link',
    'tracking',
    'factory-seam',
    'web',
  ],
  othersMay: [
    {
      when: { position: 'open' },
      becomes: { position: 'closed', link: 'sound' },
      unless: ['tagged', 'clearance-held'],
      who: 'somebody else closes it',
    },
  ],
  operations: [
    {
      id: 'open',
      label: 'Open the cutout',
      by: 'stick',
      from: { position: ['closed'] },
      to: { position: 'open' },
      minutes: 1,
      breaks: ['top', 'bottom'],
      touches: ['top'],
    },
    {
      id: 'close',
      label: 'Close the cutout',
      by: 'stick',
      from: { position: ['open'], link: ['sound'] },
      to: { position: 'closed' },
      minutes: 1,
      makes: ['top', 'bottom'],
      touches: ['bottom'],
    },
    {
      id: 'remove-tube',
      label: 'Lift the fuse tube out',
      by: 'stick',
      from: { position: ['open'] },
      to: { position: 'removed' },
      minutes: 2,
      touches: ['bottom'],
    },
    {
      id: 'hang-tube',
      label: 'Hang the fuse tube',
      by: 'stick',
      from: { position: ['removed'] },
      to: { position: 'open' },
      minutes: 2,
      touches: ['bottom'],
    },
  ],
  mounting: { belowM: 0.65, outM: 0.36 },
  brings: [
    {
      name: 'clamp',
      kind: 'hot-line-clamp',
      framings: ['tangent'],
      toward: 0,
      aside: [-0.6, 0],
      belowM: -0.3,
      faces: false,
    },
  ],
  source: 'common practice',
};

const arrester: ComponentKind = {
  ...plain,
  id: 'arrester',
  name: 'arrester',
  equipment: true,
  terminals: ['line', 'base', 'foot'],
  nets: { line: 'top', base: '$id.base', foot: 'upper' },
  points: { line: [0, 0, 0.26], base: [0, 0, -0.04], foot: [0, 0, -0.1] },
  values: { blockOhms: { default: 3e9, dimension: 'resistance', doc: 'Healthy blocks at line voltage' } },
  words: { body: { default: 'polymer', doc: 'What its housing is made of', allowed: ['porcelain', 'polymer'] } },
  branches: (part) => [
    shunt('blocks', 'line', 'base', leakage(25e-12, valueIn(arrester, part, 'blockOhms'))),
    joint('disconnector', 'base', 'foot'),
  ],
  solids: () => [upright(0, 0.22, 0.048), upright(-0.1, 0, 0.022)],
  features: [
    {
      id: 'housing',
      healthy: 'housing: grey sheds, wet, rims whole as far as made out',
      size: 0.01,
      offset: [0, 0, 0.1],
      side: 'any',
      byState: [{ when: { body: 'porcelain' }, words: 'housing: brown glaze, wet, rims whole as far as made out' }],
    },
    {
      id: 'disconnector',
      healthy: 'foot: black disconnector in place, lead bolted to it',
      size: 0.01,
      offset: [0, 0, -0.06],
      side: 'any',
    },
  ],
  conditions: ['sound', 'disconnector-operated', 'cracked', 'failed', 'lead-off', 'factory-seam'],
  mounting: { belowM: 0.65, outM: 0.34 },
  source: 'common practice',
};

export const switchingKinds = [clamp, cutout, arrester];
