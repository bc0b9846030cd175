/**
 * A customer's own set and how it is connected: cabled into the panel, or behind a transfer switch. A stopped set keeps its windings
 * in the circuit when it stays connected. Generator: standards/generator.ts with X''d 0.14 per unit (read) and R 0.03 per unit
 * (assumed), two half windings; loudness 72 dB(A) at 7 m, a manufacturer-like figure (see standards/hearing.ts).
 */
import { complex } from '../../math/complex.ts';
import { subtransientImpedance } from '../../standards/generator.ts';
import type { Branch, ComponentKind } from '../types.ts';
import { breaker } from './breaker.ts';
import { isIn, joint, leakage, plain, shunt, valueIn } from './shared.ts';

const generator: ComponentKind = {
  ...plain,
  id: 'generator',
  name: 'engine set',
  terminals: ['g1', 'g2', 'n', 'w1', 'w2'],
  nets: { g1: 'g1', g2: 'g2', n: 'n', w1: '$id.w1', w2: '$id.w2' },
  points: { n: [0, 0, 0.5] },
  states: { run: ['running', 'stopped'], breaker: ['closed', 'open'] },
  values: {
    va: { default: 6500, dimension: 'apparentPower', doc: 'Rating' },
    ratingA: { default: 30, dimension: 'current', doc: 'Rating of its breaker' },
    xPu: { default: 0.14, dimension: 'ratio', doc: 'Subtransient reactance, per unit' },
    rPu: { default: 0.03, dimension: 'ratio', doc: 'Resistance, per unit' },
  },
  branches: (part) => {
    const z = subtransientImpedance({
      rating: valueIn(generator, part, 'va') / 2,
      volts: 120,
      resistance: valueIn(generator, part, 'rPu'),
      subtransient: valueIn(generator, part, 'xPu'),
    });
    const emf = complex(isIn(part, 'run', 'running') ? 120 : 0);
    const closed = isIn(part, 'breaker', 'closed');
    const winding = (name: string, from: string, to: string): Branch => ({
      type: 'source',
      name,
      between: [from, to],
      emf,
      z,
      group: part.id,
    });
    return [
      winding('half-1', 'w1', 'n'),
      winding('half-2', 'n', 'w2'),
      ...(closed
        ? [
            breaker(part, generator, 'breaker-1', 'w1', 'g1', { breaker: 'open' }),
            breaker(part, generator, 'breaker-2', 'w2', 'g2', { breaker: 'open' }),
          ]
        : []),
      shunt('stray-1', 'g1', 'n', leakage(1e-9, 1e8)),
      shunt('stray-2', 'g2', 'n', leakage(1e-9, 1e8)),
    ];
  },
  solids: () => [{ shape: 'box', centre: [0, 0, 0.3], half: [0.35, 0.28, 0.28] }],
  features: [
    {
      id: 'set',
      healthy: 'set: engine and alternator in a tube frame, cable to the wall, exhaust moving the air',
      size: 0.05,
      offset: [0, 0, 0.3],
      side: 'any',
      byState: [
        {
          when: { run: 'stopped' },
          words: 'set: engine and alternator in a tube frame, cable to the wall, exhaust still',
        },
      ],
    },
  ],
  conditions: ['sound', 'feeding-panel', 'feeding-transfer-switch', 'feeding-cords'],
  sound: (part) =>
    isIn(part, 'run', 'running')
      ? {
          sound: 'generator',
          level: 72,
          atM: 7,
          caption: 'steady engine',
          load: { branches: ['half-1', 'half-2'], volts: 120, rating: valueIn(generator, part, 'va') },
        }
      : null,
  othersMay: [
    {
      when: { run: 'stopped' },
      becomes: { run: 'running', breaker: 'closed' },
      unless: [],
      who: 'the owner starts the set again',
    },
    {
      when: { breaker: 'open' },
      becomes: { breaker: 'closed' },
      unless: [],
      who: 'the owner closes the breaker of the set again',
    },
  ],
  operations: [
    {
      id: 'stop',
      label: 'stop the set',
      by: 'owner',
      from: { run: ['running'] },
      to: { run: 'stopped' },
      minutes: 2,
      touches: [],
    },
    {
      id: 'start',
      label: 'start the set',
      by: 'owner',
      from: { run: ['stopped'] },
      to: { run: 'running' },
      minutes: 2,
      touches: [],
    },
  ],
  source: "X''d: published generator article; household sizes from memory",
};

/** The cable from a set into the panel, with a breaker of the panel in front of the bus. */
const cord: ComponentKind = {
  ...plain,
  id: 'panel-cord',
  name: 'cable from the set',
  terminals: ['g1', 'g2', 'bus1', 'bus2'],
  nets: { g1: 'g1', g2: 'g2', bus1: 'b1', bus2: 'b2' },
  states: { position: ['unplugged', 'plugged', 'tripped'] },
  values: { ratingA: { default: 50, dimension: 'current', doc: 'Rating of the panel breaker that it lands on' } },
  branches: (part) =>
    isIn(part, 'position', 'plugged')
      ? [
          breaker(part, cord, 'inlet-1', 'g1', 'bus1', { position: 'tripped' }),
          breaker(part, cord, 'inlet-2', 'g2', 'bus2', { position: 'tripped' }),
        ]
      : [],
  solids: () => [],
  features: [
    {
      id: 'cable',
      healthy: 'cable: thick, coiled on the ground by the wall, both of its ends in sight',
      size: 0.02,
      offset: [-1.42, -0.12, -0.35],
      runs: [0, 0, 1],
      side: 'any',
      byState: [
        {
          when: { position: 'plugged' },
          words: 'cable: thick, from the outbuilding along the wall to the panel, as far as made out',
        },
      ],
    },
  ],
  conditions: ['sound', 'feeding-panel', 'damaged'],
  othersMay: [
    {
      when: { position: 'unplugged' },
      becomes: { position: 'plugged' },
      unless: [],
      who: 'the owner plugs the cable in again',
    },
  ],
  operations: [
    {
      id: 'unplug',
      label: 'unplug the cable',
      by: 'owner',
      from: { position: ['plugged', 'tripped'] },
      to: { position: 'unplugged' },
      minutes: 2,
      breaks: ['g1', 'bus1'],
      touches: [],
    },
  ],
  source: 'common practice',
};

/** Manual transfer switch, break before make: the bus hangs on the line or on the set, never on both. */
const transferSwitch: ComponentKind = {
  ...plain,
  id: 'transfer-switch',
  name: 'switch beside the meter',
  terminals: ['line1', 'line2', 'g1', 'g2', 'bus1', 'bus2'],
  nets: { line1: 't1', line2: 't2', g1: 'g1', g2: 'g2', bus1: 'b1', bus2: 'b2' },
  states: { position: ['utility', 'generator', 'off'] },
  branches: (part) => [
    ...(isIn(part, 'position', 'utility') ? [joint('line-1', 'line1', 'bus1'), joint('line-2', 'line2', 'bus2')] : []),
    ...(isIn(part, 'position', 'generator') ? [joint('set-1', 'g1', 'bus1'), joint('set-2', 'g2', 'bus2')] : []),
    shunt('stray-1', 'bus1', 'earth', leakage(1e-9, 1e8)),
    shunt('stray-2', 'bus2', 'earth', leakage(1e-9, 1e8)),
  ],
  solids: () => [{ shape: 'box', centre: [0, 0, 0], half: [0.15, 0.07, 0.22] }],
  features: [
    {
      id: 'lever',
      healthy: 'box: grey, lever at LINE of three marks, pipes above and below',
      size: 0.012,
      offset: [0, 0, 0],
      side: 'any',
      byState: [
        {
          when: { position: 'generator' },
          words: 'box: grey, lever at GENERATOR of three marks, pipes above and below',
        },
        { when: { position: 'off' }, words: 'box: grey, lever at OFF of three marks, pipes above and below' },
      ],
    },
  ],
  conditions: ['sound', 'transfer-switch-on-generator', 'miswired', 'feeding-panel'],
  operations: [
    {
      id: 'to-line',
      label: 'turn the switch to line',
      by: 'owner',
      from: { position: ['generator', 'off'] },
      to: { position: 'utility' },
      minutes: 1,
      touches: [],
    },
    {
      id: 'to-generator',
      label: 'turn the switch to generator',
      by: 'owner',
      from: { position: ['utility', 'off'] },
      to: { position: 'generator' },
      minutes: 1,
      touches: [],
    },
  ],
  source: 'common practice',
};

export const ownSetKinds = [generator, cord, transferSwitch];
