/**
 * What stands at a customer's: meter, main, loads, ground, a set and how it is connected, and the house that one sees. A stopped
 * set keeps its windings in the circuit when it stays connected. Generator: X''d 0.14 per unit (read), R 0.03 per unit
 * (assumed), two half windings; loudness 72 dB(A) at 7 m, a manufacturer-like figure (see standards/hearing.ts).
 */
import { complex, scale } from '../../math/complex.ts';
import type { Branch, ComponentKind, PartView } from '../types.ts';
import { isIn, joint, leakage, plain, shunt, valueIn } from './shared.ts';

const breaker = (
  part: PartView,
  kind: ComponentKind,
  name: string,
  from: string,
  to: string,
  opens: Record<string, string>,
): Branch => ({
  type: 'series',
  name,
  between: [from, to],
  z: complex(2e-3, 3e-4),
  protects: { curve: 'breaker', rating: valueIn(kind, part, 'ratingA'), opens },
});

const meter: ComponentKind = {
  ...plain,
  id: 'meter',
  name: 'meter',
  terminals: ['line1', 'line2', 'load1', 'load2', 'n'],
  nets: { line1: 'l1', line2: 'l2', load1: 'm1', load2: 'm2', n: 'n' },
  points: {
    line1: [-0.03, 0, 0.06],
    line2: [0.03, 0, 0.06],
    load1: [-0.03, 0, -0.06],
    load2: [0.03, 0, -0.06],
    n: [0, 0, 0],
  },
  states: { position: ['in', 'pulled', 'blanked'] },
  branches: (part) => [
    ...(isIn(part, 'position', 'in') ? [joint('jaw-1', 'line1', 'load1'), joint('jaw-2', 'line2', 'load2')] : []),
    shunt('stray-1', 'load1', 'n', leakage(1e-9, 1e8)),
    shunt('stray-2', 'load2', 'n', leakage(1e-9, 1e8)),
  ],
  solids: () => [{ shape: 'box', centre: [0, 0, 0], half: [0.15, 0.08, 0.2] }],
  features: [
    {
      id: 'meter',
      healthy: 'meter: glass in its socket, ring and seal on',
      size: 0.01,
      offset: [0, 0, 0],
      side: 'any',
      byState: [
        { when: { position: 'pulled' }, words: 'meter: socket empty, four jaws showing' },
        { when: { position: 'blanked' }, words: 'meter: blank cover in the socket, ring and seal on' },
      ],
    },
  ],
  conditions: ['sound', 'jaws-burned', 'seal-missing', 'live-by-backfeed'],
  othersMay: [
    {
      when: { position: 'pulled' },
      becomes: { position: 'in' },
      unless: ['tagged'],
      who: 'somebody else sets the meter',
    },
  ],
  operations: [
    {
      id: 'pull',
      label: 'Pull the meter',
      by: 'hand',
      from: { position: ['in'] },
      to: { position: 'pulled' },
      minutes: 2,
      breaks: ['line1', 'load1'],
      touches: ['line1', 'load1'],
    },
    {
      id: 'blank',
      label: 'Blank and seal the socket',
      by: 'hand',
      from: { position: ['pulled'] },
      to: { position: 'blanked' },
      minutes: 2,
      touches: ['line1'],
    },
    {
      id: 'set',
      label: 'Set the meter',
      by: 'hand',
      from: { position: ['pulled', 'blanked'] },
      to: { position: 'in' },
      minutes: 2,
      makes: ['line1', 'load1'],
      touches: ['line1', 'load1'],
    },
  ],
  source: 'common practice',
};

const main: ComponentKind = {
  ...plain,
  id: 'main-breaker',
  name: 'main breaker in the panel',
  terminals: ['line1', 'line2', 'bus1', 'bus2'],
  nets: { line1: 'm1', line2: 'm2', bus1: 'b1', bus2: 'b2' },
  states: { position: ['closed', 'open', 'tripped'] },
  values: { ratingA: { default: 100, dimension: 'current', doc: 'Rating' } },
  branches: (part) => [
    ...(isIn(part, 'position', 'closed')
      ? [
          breaker(part, main, 'pole-1', 'line1', 'bus1', { position: 'tripped' }),
          breaker(part, main, 'pole-2', 'line2', 'bus2', { position: 'tripped' }),
        ]
      : []),
    shunt('stray-1', 'bus1', 'earth', leakage(1e-9, 1e8)),
    shunt('stray-2', 'bus2', 'earth', leakage(1e-9, 1e8)),
  ],
  solids: () => [{ shape: 'box', centre: [0, 0, 0], half: [0.18, 0.06, 0.3] }],
  features: [
    {
      id: 'handle',
      healthy: 'panel: door open, main handle standing at ON',
      size: 0.01,
      offset: [0, 0, 0.2],
      side: 'any',
      byState: [
        { when: { position: 'open' }, words: 'panel: door open, main handle standing at OFF' },
        { when: { position: 'tripped' }, words: 'panel: door open, main handle standing between the marks' },
      ],
    },
  ],
  trueWhen: [{ condition: 'tripped', when: { position: 'tripped' } }],
  conditions: ['sound', 'main-closed-on-set', 'tripped', 'overheated'],
  othersMay: [
    { when: { position: 'open' }, becomes: { position: 'closed' }, unless: [], who: 'the owner closes the main again' },
    {
      when: { position: 'tripped' },
      becomes: { position: 'closed' },
      unless: [],
      who: 'the owner closes the main again',
    },
  ],
  operations: [
    {
      id: 'open',
      label: 'open the main',
      by: 'owner',
      from: { position: ['closed', 'tripped'] },
      to: { position: 'open' },
      minutes: 2,
      breaks: ['line1', 'bus1'],
      touches: [],
    },
    {
      id: 'close',
      label: 'close the main',
      by: 'owner',
      from: { position: ['open', 'tripped'] },
      to: { position: 'closed' },
      minutes: 2,
      makes: ['line1', 'bus1'],
      touches: [],
    },
  ],
  source: 'common practice',
};

const load: ComponentKind = {
  ...plain,
  id: 'household-load',
  name: 'what is switched on in the house',
  terminals: ['bus1', 'bus2', 'n'],
  nets: { bus1: 'b1', bus2: 'b2', n: 'n' },
  values: {
    leg1W: { default: 300, dimension: 'power', doc: 'Load from leg 1 to neutral at 120 V' },
    leg2W: { default: 300, dimension: 'power', doc: 'Load from leg 2 to neutral at 120 V' },
    bothW: { default: 0, dimension: 'power', doc: 'Load across the legs at 240 V' },
  },
  branches: (part) => [
    shunt('leg-1', 'bus1', 'n', complex(valueIn(load, part, 'leg1W') / (120 * 120))),
    shunt('leg-2', 'bus2', 'n', complex(valueIn(load, part, 'leg2W') / (120 * 120))),
    shunt('both', 'bus1', 'bus2', complex(valueIn(load, part, 'bothW') / (240 * 240))),
  ],
  solids: () => [],
  features: [],
  conditions: [],
  source: 'common practice',
};

const houseGround: ComponentKind = {
  ...plain,
  id: 'house-ground',
  name: 'ground of the house',
  terminals: ['n'],
  nets: { n: 'n' },
  values: { ohms: { default: 25, dimension: 'resistance', doc: 'Resistance to remote earth' } },
  branches: (part) => [shunt('electrode', 'n', 'earth', complex(1 / valueIn(houseGround, part, 'ohms')))],
  solids: () => [],
  features: [],
  conditions: [],
  source: 'from memory',
};

const generator: ComponentKind = {
  ...plain,
  id: 'generator',
  name: 'engine set',
  terminals: ['g1', 'g2', 'n', 'w1', 'w2'],
  nets: { g1: 'g1', g2: 'g2', n: 'n', w1: '$id.w1', w2: '$id.w2' },
  states: { run: ['running', 'stopped'], breaker: ['closed', 'open'] },
  values: {
    va: { default: 6500, dimension: 'apparentPower', doc: 'Rating' },
    ratingA: { default: 30, dimension: 'current', doc: 'Rating of its breaker' },
    xPu: { default: 0.14, dimension: 'ratio', doc: 'Subtransient reactance, per unit' },
    rPu: { default: 0.03, dimension: 'ratio', doc: 'Resistance, per unit' },
  },
  branches: (part) => {
    const half = (120 * 120) / (valueIn(generator, part, 'va') / 2);
    const z = scale(complex(valueIn(generator, part, 'rPu'), valueIn(generator, part, 'xPu')), half);
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
    isIn(part, 'run', 'running') ? { sound: 'generator', level: 72, atM: 7, caption: 'steady engine' } : null,
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
  solids: () => [{ shape: 'box', centre: [0, 0, 0], half: [0.6, 0.03, 0.03] }],
  features: [
    {
      id: 'cable',
      healthy: 'cable: thick, coiled on the ground by the wall, both of its ends in sight',
      size: 0.02,
      offset: [0, 0, 0],
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

const house: ComponentKind = {
  ...plain,
  id: 'house',
  name: 'house',
  terminals: ['bus1', 'n'],
  nets: { bus1: 'b1', n: 'n' },
  solids: () => [{ shape: 'box', centre: [0, 0, 1.6], half: [4, 3, 1.6] }],
  features: [
    {
      id: 'windows',
      healthy: 'windows: dark behind the glass, curtains half drawn',
      size: 0.5,
      offset: [0, 0, 1.5],
      side: 'any',
      live: { between: ['bus1', 'n'], minVolts: 90, words: 'windows: lit from inside, curtains half drawn' },
    },
  ],
  conditions: ['dark', 'lit', 'feeding-panel'],
  source: 'common practice',
};

const outbuilding: ComponentKind = {
  ...house,
  id: 'outbuilding',
  name: 'outbuilding',
  terminals: [],
  nets: {},
  solids: () => [{ shape: 'box', centre: [0, 0, 1.2], half: [2, 1.5, 1.2] }],
  features: [{ id: 'door', healthy: 'door: boarded, ajar, dark behind it', size: 0.3, offset: [0, 0, 1], side: 'any' }],
};

export const premisesKinds = [meter, main, load, houseGround, generator, cord, transferSwitch, house, outbuilding];
