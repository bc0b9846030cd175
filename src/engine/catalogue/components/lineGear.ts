/**
 * Switched equipment of the line: single-phase capacitor, step regulator, disconnect. Capacitor: C = Q/(omega V2); what is left on
 * it after opening is a source of the crest of the phase volts behind its reactance at 60 Hz, an estimate that stands for a
 * charge which a hand would take at once. Regulator: an autotransformer of 32 steps of 5/8 % (ANSI/IEEE C57.15, from memory); off its middle step a
 * closed bypass shorts the series winding. Left out: inrush, harmonics, the control.
 */
import { complex, scale } from '../../math/complex.ts';
import type { Branch, ComponentKind } from '../types.ts';
import { isIn, joint, leakage, OMEGA, plain, shunt, valueIn } from './shared.ts';

const stick = { by: 'stick', minutes: 1 } as const;

const farads = (part: Parameters<ComponentKind['branches']>[0]): number => {
  const volts = valueIn(capacitor, part, 'primaryVolts');
  return valueIn(capacitor, part, 'vars') / (OMEGA * volts * volts);
};

const capacitor: ComponentKind = {
  ...plain,
  id: 'capacitor',
  name: 'capacitor',
  equipment: true,
  terminals: ['line', 'can', 'case'],
  nets: { line: 'phase', can: '$id.can', case: 'neutral' },
  points: { line: [0, -0.1, 0.6], can: [0, -0.1, 0.32], case: [0.2, 0, -0.2] },
  states: { position: ['closed', 'open'], charge: ['none', 'held'] },
  values: {
    vars: { default: 100e3, dimension: 'apparentPower', doc: 'Rating' },
    primaryVolts: { default: 7200, dimension: 'voltage', doc: 'Rated volts' },
  },
  branches: (part) => {
    const c = farads(part);
    const held: Branch = {
      type: 'source',
      name: 'charge',
      between: ['can', 'case'],
      emf: complex(Math.sqrt(2) * valueIn(capacitor, part, 'primaryVolts')),
      z: complex(0, -1 / (OMEGA * c)),
      group: part.id,
    };
    const isOpen = isIn(part, 'position', 'open');
    return [
      ...(isOpen ? [] : [joint('switch', 'line', 'can', complex(0.02, 0.001))]),
      ...(isOpen && isIn(part, 'charge', 'held') ? [held] : [shunt('can', 'can', 'case', complex(0, OMEGA * c))]),
      shunt('gap', 'line', 'can', leakage(4e-12, 1e10)),
    ];
  },
  solids: () => [
    { shape: 'box', centre: [0, 0.1, 0], half: [0.17, 0.065, 0.3] },
    { shape: 'cylinder', from: [-0.095, 0.1, 0.3], to: [-0.125, 0.1, 0.55], radius: 0.042 },
    { shape: 'cylinder', from: [0.095, 0.1, 0.3], to: [0.125, 0.1, 0.55], radius: 0.042 },
  ],
  features: [
    {
      id: 'can',
      healthy: 'can: grey steel box, sides flat, seams dry, plate on its front',
      size: 0.03,
      offset: [0, 0.035, 0],
      side: 'any',
    },
    {
      id: 'bushing',
      healthy: 'bushing: grey porcelain on the lid, wet, rims whole as far as made out',
      size: 0.01,
      offset: [0.11, 0.1, 0.43],
      side: 'any',
    },
    {
      id: 'switch',
      healthy: 'switch: pointer on the tank beside the can standing at CLOSED',
      size: 0.015,
      offset: [0, -0.1, 0.5],
      side: 'any',
      byState: [{ when: { position: 'open' }, words: 'switch: pointer on the tank beside the can standing at OPEN' }],
    },
  ],
  conditions: ['sound', 'bulged', 'leaking', 'bushing-cracked', 'charge-held', 'failed', 'factory-seam'],
  operations: [
    {
      ...stick,
      id: 'open',
      label: 'Open the switch of the capacitor',
      from: { position: ['closed'] },
      to: { position: 'open', charge: 'held' },
      touches: [],
    },
    {
      ...stick,
      id: 'close',
      label: 'Close the switch of the capacitor',
      from: { position: ['open'] },
      to: { position: 'closed', charge: 'none' },
      makes: ['line', 'can'],
      touches: [],
    },
    {
      ...stick,
      id: 'drain',
      label: 'Wait five minutes, then short the capacitor by stick',
      minutes: 6,
      from: { position: ['open'], charge: ['held'] },
      to: { charge: 'none' },
      touches: ['can', 'case'],
    },
  ],
  mounting: { belowM: 2.2, outM: 0.4 },
  source: 'textbook; discharge to 50 V in five minutes IEEE Std 18, from memory',
};

const taps = ['neutral', 'raise-8', 'raise-16', 'lower-8', 'lower-16'] as const;
const steps: Readonly<Record<string, number>> = { 'raise-8': 8, 'raise-16': 16, 'lower-8': -8, 'lower-16': -16 };
const STEP = 0.00625;

const regulator: ComponentKind = {
  ...plain,
  id: 'regulator',
  name: 'voltage regulator',
  equipment: true,
  terminals: ['source', 'load', 'tank', 'neutral'],
  nets: { source: 'main', load: 'load', tank: '$id.tank', neutral: 'neutral' },
  points: { source: [-0.2, -0.1, 0.75], load: [0.2, -0.1, 0.75], tank: [0.3, 0, 0] },
  states: { tap: taps, bypass: ['open', 'closed'] },
  values: {
    va: { default: 76200, dimension: 'apparentPower', doc: 'Rating: volts times current times a tenth' },
    primaryVolts: { default: 7200, dimension: 'voltage', doc: 'Rated volts' },
    exciting: { default: 0.5, dimension: 'ratio', doc: 'Exciting current, per cent of its rating, from memory' },
    impedance: {
      default: 0.5,
      dimension: 'ratio',
      doc: 'Series impedance, per cent of the circuit rating, from memory',
    },
  },
  branches: (part) => {
    const volts = valueIn(regulator, part, 'primaryVolts');
    const amperes = valueIn(regulator, part, 'va') / (0.1 * volts);
    const z = scale(complex(0.1, 1), (valueIn(regulator, part, 'impedance') / 100) * (volts / amperes));
    const turns = (steps[part.state.tap ?? ''] ?? 0) * STEP * volts;
    const core: Branch = {
      type: 'transformer',
      name: 'core',
      windings: [
        { between: ['source', 'tank'], turns: volts, z: scale(z, 1) },
        turns >= 0 ? { between: ['load', 'source'], turns, z } : { between: ['source', 'load'], turns: -turns, z },
      ],
      magnetising: complex(0, -((valueIn(regulator, part, 'exciting') / 100) * amperes) / volts),
    };
    return [
      ...(turns === 0 ? [joint('series', 'source', 'load', z)] : [core]),
      ...(isIn(part, 'bypass', 'closed') ? [joint('bypass', 'source', 'load', complex(0.02, 0.001))] : []),
      joint('strap', 'tank', 'neutral'),
      shunt('source-stray', 'source', 'tank', leakage(300e-12, 1e10)),
      shunt('load-stray', 'load', 'tank', leakage(300e-12, 1e10)),
    ];
  },
  solids: () => [{ shape: 'cylinder', from: [0, 0.06, -0.64], to: [0, 0.06, 0.55], radius: 0.28 }],
  features: [
    {
      id: 'indicator',
      healthy: 'indicator: dial under the lid, pointer straight up at N, as far as made out',
      size: 0.01,
      offset: [0.165, -0.24, 0.295],
      faces: [0.479, -0.878, 0],
      side: 'any',
      byState: [
        {
          when: { tap: 'raise-8' },
          words: 'indicator: dial under the lid, pointer right of N at 8, as far as made out',
        },
        {
          when: { tap: 'raise-16' },
          words: 'indicator: dial under the lid, pointer far right at 16, as far as made out',
        },
        {
          when: { tap: 'lower-8' },
          words: 'indicator: dial under the lid, pointer left of N at 8, as far as made out',
        },
        {
          when: { tap: 'lower-16' },
          words: 'indicator: dial under the lid, pointer far left at 16, as far as made out',
        },
      ],
    },
    {
      id: 'tank',
      healthy: 'tank: grey paint, fins down its sides, seams dry, lid bolted',
      size: 0.03,
      offset: [0, -0.236, 0],
      side: 'any',
    },
    {
      id: 'bypass',
      healthy: 'bypass: blade above the bushings standing open, gap clear',
      size: 0.02,
      offset: [0, -0.1, 0.9],
      side: 'any',
      byState: [{ when: { bypass: 'closed' }, words: 'bypass: blade above the bushings lying closed, jaw full' }],
    },
  ],
  conditions: ['sound', 'off-neutral', 'leaking', 'bushing-cracked', 'bulged', 'overheated', 'humming'],
  sound: () => null,
  operations: [
    {
      id: 'to-neutral',
      label: 'Run the regulator to neutral and see it on the dial',
      by: 'hand',
      from: { tap: ['raise-8', 'raise-16', 'lower-8', 'lower-16'] },
      to: { tap: 'neutral' },
      minutes: 3,
      touches: [],
    },
    {
      ...stick,
      id: 'close-bypass',
      label: 'Close the bypass of the regulator',
      from: { bypass: ['open'] },
      to: { bypass: 'closed' },
      makes: ['source', 'load'],
      touches: [],
    },
    {
      ...stick,
      id: 'open-bypass',
      label: 'Open the bypass of the regulator',
      from: { bypass: ['closed'] },
      to: { bypass: 'open' },
      breaks: ['source', 'load'],
      touches: [],
    },
  ],
  mounting: { belowM: 2.4, outM: 0.5 },
  source: 'ANSI/IEEE C57.15 steps, from memory; form: common practice',
};

const disconnect: ComponentKind = {
  ...plain,
  id: 'disconnect',
  name: 'disconnect switch',
  equipment: true,
  terminals: ['source', 'load'],
  nets: { source: 'main', load: 'load' },
  points: { source: [0, -0.15, 0.2], load: [0, -0.15, -0.2] },
  states: { position: ['closed', 'open'] },
  values: { bodyOhms: { default: 5e9, dimension: 'resistance', doc: 'Leakage over the healthy wet stacks' } },
  branches: (part) => [
    ...(isIn(part, 'position', 'closed') ? [joint('blade', 'source', 'load')] : []),
    shunt('gap', 'source', 'load', leakage(3e-12, valueIn(disconnect, part, 'bodyOhms'))),
    shunt('stack', 'load', 'earth', leakage(6e-12, valueIn(disconnect, part, 'bodyOhms'))),
  ],
  solids: () => [
    { shape: 'cylinder', from: [0, 0.08, 0.19], to: [0, -0.174, 0.19], radius: 0.046 },
    { shape: 'cylinder', from: [0, 0.08, -0.19], to: [0, -0.174, -0.19], radius: 0.046 },
  ],
  features: [
    {
      id: 'blade',
      healthy: 'blade: lying in its jaw, latch over it, ring outward',
      size: 0.015,
      offset: [0, -0.22, 0],
      side: 'any',
      byState: [{ when: { position: 'open' }, words: 'blade: swung down from its jaw, the gap clear' }],
    },
    {
      id: 'stacks',
      healthy: 'stacks: two of grey porcelain on a steel base, rims whole as far as made out',
      size: 0.01,
      offset: [0, -0.045, 0.19],
      side: 'any',
    },
  ],
  conditions: ['sound', 'cracked', 'contacts-burned', 'bracket-loose', 'chipped', 'contaminated'],
  othersMay: [
    {
      when: { position: 'open' },
      becomes: { position: 'closed' },
      unless: ['tagged', 'clearance-held'],
      who: 'somebody else closes it',
    },
  ],
  operations: [
    {
      ...stick,
      id: 'open',
      label: 'Open the disconnect',
      from: { position: ['closed'] },
      to: { position: 'open' },
      breaks: ['source', 'load'],
      touches: ['source'],
    },
    {
      ...stick,
      id: 'close',
      label: 'Close the disconnect',
      from: { position: ['open'] },
      to: { position: 'closed' },
      makes: ['source', 'load'],
      touches: ['load'],
    },
  ],
  mounting: { belowM: 0.7, outM: 0.3 },
  source: 'common practice',
};

export const lineGearKinds = [capacitor, regulator, disconnect];
