/**
 * What belongs to others: communication cable on its strand with its power supply, a line that crosses, another circuit on the
 * same poles. The strand is grounded at other poles, 50 ohm in all (from memory), and bonded to the pole ground of each pole.
 * Power supply: 600 W at 120 V behind 2 ohm, an estimate. The other circuit comes from another substation: its own
 * synchronism group, behind 20 ohm, an estimate.
 */
import { complex } from '../../math/complex.ts';
import type { ComponentKind } from '../types.ts';
import { isIn, joint, leakage, plain, shunt, valueIn } from './shared.ts';

const cable: ComponentKind = {
  ...plain,
  id: 'telecom-cable',
  name: 'communication cable',
  terminals: ['a', 'b', 'ground-a', 'ground-b'],
  points: { a: [0.7, 0, 0], b: [-0.7, 0, 0] },
  endPoints: ['b'],
  values: {
    lengthM: { default: 50, dimension: 'length', doc: 'Length along the ground' },
    sagM: { default: 0.6, dimension: 'length', doc: 'Sag at mid-span' },
    groundOhms: { default: 50, dimension: 'resistance', doc: 'Its grounds at other poles, from memory' },
  },
  branches: (part) => [
    joint('strand', 'a', 'b', complex(1.7e-3 * valueIn(cable, part, 'lengthM'), 0)),
    joint('bond-a', 'a', 'ground-a'),
    joint('bond-b', 'b', 'ground-b'),
    shunt('far-grounds', 'b', 'earth', complex(1 / valueIn(cable, part, 'groundOhms'))),
    shunt('stray', 'a', 'earth', leakage(400e-12, 1e8)),
  ],
  solids: () => [],
  features: [
    {
      id: 'strand',
      healthy: 'strand: steel above a black cable lashed to it, clamp at the pole, a green wire down from it',
      size: 0.01,
      offset: [0, 0, 0],
      along: 0.3,
      side: 'any',
    },
    {
      id: 'cable',
      healthy: 'cable: black under its strand, lashing wire even, a loop at the pole',
      size: 0.02,
      offset: [0, 0, -0.05],
      along: 1.5,
      side: 'any',
    },
  ],
  conditions: ['sound', 'bond-missing', 'low-sag', 'too-close', 'loose', 'foreign-contact'],
  source: 'common practice',
};

const enclosure: ComponentKind = {
  ...plain,
  id: 'telecom-enclosure',
  name: 'communication power supply',
  equipment: true,
  terminals: ['line', 'n', 'case'],
  nets: { line: 'x1', n: 'x2', case: '$id.case' },
  points: { case: [0, -0.2, 0] },
  states: { transfer: ['line', 'reserve', 'both'] },
  values: { watts: { default: 600, dimension: 'power', doc: 'What its inverter can give' } },
  branches: (part) => [
    joint('bond', 'case', 'n'),
    ...(isIn(part, 'transfer', 'line') ? [shunt('charger', 'line', 'n', complex(300 / (120 * 120)))] : []),
    ...(isIn(part, 'transfer', 'both')
      ? [
          {
            type: 'source' as const,
            name: 'inverter',
            between: ['line', 'n'] as const,
            emf: complex(120),
            z: complex(2),
            group: part.id,
            limit: { watts: valueIn(enclosure, part, 'watts') },
          },
        ]
      : []),
    shunt('stray', 'case', 'earth', leakage(50e-12, 1e8)),
  ],
  solids: () => [{ shape: 'box', centre: [0, -0.035, 0.01], half: [0.18, 0.115, 0.32] }],
  features: [
    {
      id: 'cabinet',
      healthy: 'cabinet: grey steel with vents, breaker box below, conduit up to the secondary',
      size: 0.03,
      offset: [0, -0.15, 0],
      side: 'any',
    },
    {
      id: 'lamp',
      healthy: 'lamp: small window in the door, green behind it, steady',
      size: 0.012,
      offset: [0, -0.165, 0.2],
      faces: [0, -1, 0],
      side: 'any',
      byState: [
        { when: { transfer: 'reserve' }, words: 'lamp: small window in the door, amber behind it, steady' },
        { when: { transfer: 'both' }, words: 'lamp: small window in the door, amber behind it, steady' },
      ],
    },
  ],
  conditions: ['sound', 'foreign-source', 'backfed', 'bond-missing', 'damaged'],
  operations: [
    {
      id: 'open-breaker',
      label: 'have its owner open the breaker of the power supply',
      by: 'owner',
      from: { transfer: ['line', 'both'] },
      to: { transfer: 'reserve' },
      minutes: 20,
      touches: [],
    },
  ],
  mounting: { aboveM: 3.2, outM: 0.2 },
  source: 'common practice; ratings estimated',
};

const otherCircuit: ComponentKind = {
  ...plain,
  id: 'other-circuit',
  name: 'other circuit on the pole',
  equipment: true,
  terminals: ['line'],
  nets: { line: 'other' },
  states: { supply: ['on', 'off'] },
  values: { volts: { default: 7200, dimension: 'voltage', doc: 'Phase to ground' } },
  branches: (part) => [
    ...(isIn(part, 'supply', 'on')
      ? [
          {
            type: 'source' as const,
            name: 'thevenin',
            between: ['line', 'earth'] as const,
            emf: complex(valueIn(otherCircuit, part, 'volts')),
            z: complex(4, 20),
            group: part.id,
          },
        ]
      : []),
    shunt('stray', 'line', 'earth', leakage(2e-9, 1e9)),
  ],
  solids: () => [],
  features: [],
  conditions: [],
  source: 'estimate',
};

const crossing: ComponentKind = {
  ...otherCircuit,
  id: 'crossing-line',
  name: 'line that crosses',
  terminals: ['a', 'b'],
  nets: { a: '$id.a', b: '$id.b' },
  points: { a: [0, -14, 0], b: [0, 14, 0] },
  branches: (part) => [
    ...(isIn(part, 'supply', 'on')
      ? [
          {
            type: 'source' as const,
            name: 'thevenin',
            between: ['a', 'earth'] as const,
            emf: complex(valueIn(crossing, part, 'volts')),
            z: complex(4, 20),
            group: part.id,
          },
        ]
      : []),
    joint('line', 'a', 'b', complex(0.05, 0.02)),
    shunt('stray', 'a', 'earth', leakage(2e-9, 1e9)),
  ],
  features: [
    {
      id: 'wire',
      healthy: 'wire: bare conductor across ours from beyond the road to beyond the field, clear of it',
      size: 0.01,
      offset: [0, 0, 0],
      runs: [1, 0, 0],
      side: 'any',
    },
  ],
  conditions: ['sound', 'foreign-contact', 'too-close', 'low-sag', 'other-circuit', 'crossing-clear'],
  mounting: { belowM: -1.8, outM: 8 },
};

export const jointUseKinds = [cable, enclosure, otherCircuit, crossing];
