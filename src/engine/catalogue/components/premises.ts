/** What stands at every customer's: meter, main, loads, ground, and the house that one sees. Common practice. */
import { complex } from '../../math/complex.ts';
import type { ComponentKind } from '../types.ts';
import { breaker } from './breaker.ts';
import { isIn, joint, leakage, plain, shunt, valueIn } from './shared.ts';

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
  solids: () => [
    { shape: 'box', centre: [0, -0.056, -0.02], half: [0.11, 0.054, 0.17] },
    { shape: 'cylinder', from: [0, -0.11, 0], to: [0, -0.215, 0], radius: 0.08 },
  ],
  features: [
    {
      id: 'meter',
      healthy: 'meter: glass in its socket, ring and seal on',
      size: 0.01,
      offset: [0, -0.21, 0],
      faces: [0, -1, 0],
      side: 'any',
      byState: [
        { when: { position: 'pulled' }, words: 'meter: socket empty, four jaws showing' },
        { when: { position: 'blanked' }, words: 'meter: blank cover in the socket, ring and seal on' },
      ],
    },
  ],
  conditions: ['sound', 'jaws-burned', 'seal-missing', 'live-by-backfeed', 'damaged', 'fogged-glass'],
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
  solids: () => [{ shape: 'box', centre: [0, -0.051, 0], half: [0.18, 0.049, 0.38] }],
  features: [
    {
      id: 'handle',
      healthy: 'panel: door open, main handle standing at ON',
      size: 0.01,
      offset: [0, -0.11, 0.2],
      faces: [0, -1, 0],
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
const house: ComponentKind = {
  ...plain,
  id: 'house',
  name: 'house',
  terminals: ['bus1', 'n'],
  nets: { bus1: 'b1', n: 'n' },
  solids: () => [{ shape: 'box', centre: [-0.95, 0, 1.6], half: [4, 3.04, 1.6] }],
  features: [
    {
      id: 'windows',
      healthy: 'windows: dark behind the glass, curtains half drawn',
      size: 0.5,
      offset: [0, 0, 1.5],
      side: 'any',
      live: { between: ['bus1', 'n'], minVolts: 90, words: 'windows: lit from inside, curtains half drawn' },
    },
    {
      id: 'wall',
      healthy: 'wall: boards down to the grass, a coiled garden hose on its hook',
      size: 0.02,
      offset: [-3, -3.05, 1],
      faces: [0, -1, 0],
      side: 'any',
    },
  ],
  conditions: ['dark', 'lit', 'feeding-panel', 'foreign-source'],
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

export const premisesKinds = [meter, main, load, houseGround, house, outbuilding];
