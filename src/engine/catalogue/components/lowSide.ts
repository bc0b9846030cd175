/** Low-side hardware on the pole: the rack that holds open secondary wires, the streetlight. Common practice; ohms from memory. */
import { complex } from '../../math/complex.ts';
import type { ComponentKind, Solid } from '../types.ts';
import { isIn, joint, leakage, plain, shunt, valueIn } from './shared.ts';

const rack: ComponentKind = {
  ...plain,
  id: 'secondary-rack',
  name: 'secondary rack',
  equipment: true,
  terminals: ['x1', 'x2', 'x3', 'rack'],
  nets: { x1: 'x1', x2: 'x2', x3: 'x3', rack: '$id.rack' },
  points: { x1: [0, -0.08, 0.2], x2: [0, -0.08, 0], x3: [0, -0.08, -0.2], rack: [0.05, 0, 0] },
  values: { spoolOhms: { default: 1e9, dimension: 'resistance', doc: 'Leakage over a healthy wet spool' } },
  branches: (part) => [
    ...(['x1', 'x2', 'x3'] as const).map((wire) =>
      shunt(`spool-${wire}`, wire, 'rack', leakage(4e-12, valueIn(rack, part, 'spoolOhms'))),
    ),
    shunt('wood', 'rack', 'earth', leakage(5e-12, 2e6)),
  ],
  solids: () => [
    { shape: 'box', centre: [0, 0.032, 0], half: [0.025, 0.01, 0.27] },
    ...[-0.2, 0, 0.2].map(
      (z): Solid => ({ shape: 'cylinder', from: [0, -0.012, z - 0.035], to: [0, -0.012, z + 0.035], radius: 0.032 }),
    ),
  ],
  features: [
    {
      id: 'spools',
      healthy: 'spools: three of white porcelain on one rod, a wire tied to each, whole as far as made out',
      size: 0.01,
      offset: [0, -0.012, 0],
      side: 'any',
    },
    {
      id: 'back',
      healthy: 'back: galvanised channel up the pole, two bolts, rod through its ears',
      size: 0.01,
      offset: [0, 0.032, 0.1],
      side: 'any',
    },
  ],
  conditions: ['sound', 'cracked', 'broken', 'loose', 'chipped', 'rust-bloom'],
  mounting: { belowM: 2.5, outM: 0.14 },
  source: 'common practice',
};

const streetlight: ComponentKind = {
  ...plain,
  id: 'streetlight',
  name: 'streetlight',
  equipment: true,
  terminals: ['line', 'n', 'bracket'],
  nets: { line: 'x1', n: 'x2', bracket: '$id.bracket' },
  points: { bracket: [0, 0, 0] },
  states: { lamp: ['off', 'on'] },
  values: { watts: { default: 100, dimension: 'power', doc: 'Load at 120 V' } },
  branches: (part) => [
    ...(isIn(part, 'lamp', 'on')
      ? [shunt('lamp', 'line', 'n', complex(valueIn(streetlight, part, 'watts') / (120 * 120)))]
      : []),
    joint('bond', 'bracket', 'n'),
    shunt('wiring', 'line', 'n', leakage(1e-9, 1e7)),
    shunt('wood', 'bracket', 'earth', leakage(20e-12, 2e6)),
  ],
  solids: () => [
    { shape: 'cylinder', from: [0, 0, 0], to: [0, -1.8, 0.5], radius: 0.02 },
    { shape: 'box', centre: [0, -2.1, 0.54], half: [0.15, 0.32, 0.09] },
  ],
  features: [
    {
      id: 'bracket',
      healthy: 'bracket: steel arm bolted to the pole, its wire and a bonding strap going in at the foot',
      size: 0.01,
      offset: [0, -0.1, 0.05],
      side: 'any',
    },
    {
      id: 'lamp',
      healthy: 'lamp: glass bowl at the end of the arm, dark, eye on its top',
      size: 0.05,
      offset: [0, -2.1, 0.44],
      side: 'any',
      byState: [{ when: { lamp: 'on' }, words: 'lamp: glass bowl at the end of the arm, lit, eye on its top' }],
    },
  ],
  conditions: [
    'sound',
    'bracket-live',
    'bracket-loose',
    'bond-missing',
    'other-circuit',
    'lit',
    'rust-bloom',
    'foreign-source',
  ],
  othersMay: [{ when: { lamp: 'off' }, becomes: { lamp: 'on' }, unless: [], who: 'its eye switches it on at dusk' }],
  mounting: { aboveM: 7.4, outM: 0.13 },
  source: 'common practice',
};

export const lowSideKinds = [rack, streetlight];
