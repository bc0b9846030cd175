/**
 * Crossarm of a three-phase framing: 2.4 m of wood on the pole top, a pin at each end; what leaks into an arm pin runs
 * along the wet wood to the pole-top hardware. Ohms of wet wood: scenario choices, from memory. The pins' own way down the
 * pole is in the pin insulator.
 */
import type { ComponentKind } from '../types.ts';
import { leakage, plain, shunt, valueIn } from './shared.ts';

const crossarm: ComponentKind = {
  ...plain,
  id: 'crossarm',
  name: 'crossarm',
  terminals: ['road', 'field', 'middle'],
  nets: { road: 'pin-a', field: 'pin-c', middle: 'pin' },
  values: {
    woodOhms: { default: 1e5, dimension: 'resistance', doc: 'Wet wood from an arm pin to the pole, from memory' },
  },
  branches: (part) => [
    shunt('wood-road', 'road', 'middle', leakage(5e-12, valueIn(crossarm, part, 'woodOhms'))),
    shunt('wood-field', 'field', 'middle', leakage(5e-12, valueIn(crossarm, part, 'woodOhms'))),
  ],
  solids: () => [{ shape: 'box', centre: [-0.15, 0, 0], half: [0.048, 1.22, 0.06] }],
  features: [
    {
      id: 'arm',
      healthy: 'arm: grey wood across the pole, two flat braces below it, bolts drawn up',
      size: 0.03,
      offset: [-0.15, -0.6, 0],
      runs: [0, 1, 0],
      side: 'any',
    },
  ],
  conditions: [
    'sound',
    'burn-track',
    'split-top',
    'broken',
    'loose',
    'arm-cracked',
    'decayed',
    'brace-loose',
    'season-checks',
    'growth',
    'long-bolt',
  ],
  source: 'common practice',
};

export const armKinds = [crossarm];
