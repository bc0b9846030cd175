/**
 * Small metal and plastic on conductors and poles: shoes, stirrups, connectors, covers. A connector is a joint of a milliohm
 * (common practice, order of magnitude); covers carry nothing.
 */
import type { ComponentKind } from '../types.ts';
import { joint, leakage, plain, shunt } from './shared.ts';

const shoe: ComponentKind = {
  ...plain,
  id: 'deadend-shoe',
  name: 'dead-end shoe',
  equipment: true,
  terminals: ['conductor'],
  nets: { conductor: 'phase' },
  points: { conductor: [0, 0, 0] },
  solids: () => [{ shape: 'box', centre: [0, 0, 0], half: [0.14, 0.03, 0.05] }],
  features: [
    {
      id: 'keeper',
      healthy: 'keeper: conductor bent through the groove, bolts drawn up, tail even, as far as made out',
      size: 0.008,
      offset: [0, 0, 0],
      side: 'any',
    },
  ],
  conditions: ['sound', 'slipping', 'cracked', 'loose', 'rusted'],
  mounting: { belowM: 0.15, outM: 0.45 },
  source: 'common practice',
};

const stirrup: ComponentKind = {
  ...plain,
  id: 'stirrup',
  name: 'stirrup',
  equipment: true,
  terminals: ['line', 'loop'],
  nets: { line: 'phase', loop: 'stirrup' },
  points: { line: [0, 0, 0], loop: [0, 0, -0.12] },
  branches: () => [joint('grip', 'line', 'loop'), shunt('stray', 'loop', 'earth', leakage(3e-12, 1e12))],
  solids: () => [{ shape: 'box', centre: [0, 0, -0.06], half: [0.08, 0.015, 0.06] }],
  features: [
    {
      id: 'loop',
      healthy: 'loop: copper bail under two grips, metal dull, strands beside it even, as far as made out',
      size: 0.008,
      offset: [0, 0, -0.06],
      side: 'any',
    },
  ],
  conditions: ['sound', 'burned', 'loose', 'corroded', 'overheated', 'patina'],
  mounting: { belowM: -0.28, outM: 0.6 },
  source: 'common practice',
};

const splitBolt: ComponentKind = {
  ...plain,
  id: 'split-bolt',
  name: 'split-bolt connector',
  equipment: true,
  terminals: ['a', 'b'],
  nets: { a: 'neutral', b: 'x2' },
  points: { a: [-0.06, 0, 0], b: [0.06, 0, 0] },
  branches: () => [joint('bolt', 'a', 'b'), shunt('stray', 'b', 'earth', leakage(3e-12, 1e12))],
  solids: () => [{ shape: 'box', centre: [0, 0, 0.005], half: [0.05, 0.01, 0.015] }],
  features: [
    {
      id: 'bolt',
      healthy: 'bolt: bronze, nut run down on two wires side by side, brown, as far as made out',
      size: 0.006,
      offset: [0, 0, 0],
      side: 'any',
    },
  ],
  conditions: ['sound', 'overheated', 'loose', 'corroded', 'burned', 'patina'],
  mounting: { belowM: 2.45, outM: 0.3 },
  source: 'common practice',
};

const moulding: ComponentKind = {
  ...plain,
  id: 'moulding',
  name: 'ground wire moulding',
  equipment: true,
  solids: () => [{ shape: 'box', centre: [0, 0, 1.25], half: [0.02, 0.015, 1.2] }],
  features: [
    {
      id: 'strip',
      healthy: 'strip: grey plastic over the wire from the grass up past head height, strapped',
      size: 0.02,
      offset: [0, -0.02, 1.3],
      side: 'any',
    },
  ],
  conditions: ['sound', 'moulding-missing', 'damaged', 'loose'],
  mounting: { aboveM: 0, outM: 0.16 },
  source: 'common practice',
};

const birdGuard: ComponentKind = {
  ...plain,
  id: 'bird-guard',
  name: 'bird guard',
  equipment: true,
  solids: () => [{ shape: 'cylinder', from: [0, 0, -0.05], to: [0, 0, 0.12], radius: 0.06 }],
  features: [
    {
      id: 'cap',
      healthy: 'cap: grey plastic over the bushing, snapped round its lead, as far as made out',
      size: 0.02,
      offset: [0, 0, 0.04],
      side: 'any',
    },
  ],
  conditions: ['sound', 'missing', 'damaged', 'loose'],
  mounting: { belowM: 1.2, outM: 0.42 },
  source: 'common practice',
};

export const fittingKinds = [shoe, stirrup, splitBolt, moulding, birdGuard];
