/**
 * The metal that should be one: tank strap, upper lead, the bond to the neutral, the pole ground down to its rod. Each
 * joint is a branch of its own, so that one of them can be gone. Ohms: order of magnitude, common practice; the rod's 25 ohm is
 * the usual scenario choice, from memory of the codes.
 */
import { add, complex } from '../../math/complex.ts';
import type { ComponentKind } from '../types.ts';
import { joint, leakage, plain, returnsByEarth, shunt, sourceConditions, valueIn } from './shared.ts';

const tankStrap: ComponentKind = {
  ...plain,
  id: 'tank-strap',
  name: 'tank ground strap',
  terminals: ['tank', 'neutral'],
  nets: { tank: 'tank', neutral: 'neutral' },
  points: { tank: [0, 0, 0], neutral: [0.1, 0.3, 0.1] },
  branches: () => [joint('strap', 'tank', 'neutral')],
  solids: () => [],
  features: [
    {
      id: 'strap',
      healthy: 'strap: from the tank lug to the neutral, both ends bolted',
      size: 0.008,
      offset: [0.1, 0.1, 0.05],
      side: 'any',
    },
  ],
  conditions: ['sound', 'lead-off', 'corroded'],
  source: 'common practice',
};

const upperLead: ComponentKind = {
  ...plain,
  id: 'upper-lead',
  name: 'equipment ground lead',
  terminals: ['tank', 'upper'],
  nets: { tank: 'tank', upper: 'upper' },
  points: { tank: [0, 0, 0], upper: [0, 0, -0.3] },
  branches: () => [joint('lead', 'tank', 'upper')],
  solids: () => [],
  features: [
    {
      id: 'lead',
      healthy: 'lead: copper from arrester foot and tank lug downward, stapled',
      size: 0.006,
      offset: [0, 0, -0.15],
      side: 'any',
    },
  ],
  conditions: ['sound', 'lead-off', 'corroded'],
  source: 'common practice',
};

const groundBond: ComponentKind = {
  ...plain,
  id: 'ground-bond',
  name: 'joint of pole ground and neutral',
  terminals: ['neutral', 'upper', 'lead'],
  nets: { neutral: 'neutral', upper: 'upper', lead: 'stub' },
  points: { neutral: [0, -0.05, 0.02], upper: [0, 0, 0.08], lead: [0, 0, -0.08] },
  branches: () => [joint('upper', 'neutral', 'upper'), joint('lead', 'neutral', 'lead')],
  solids: () => [],
  features: [
    {
      id: 'joint',
      healthy: 'joint: copper pressed to the neutral under a connector, leads up and down',
      size: 0.008,
      offset: [0, 0, 0],
      side: 'any',
    },
  ],
  conditions: ['sound', 'bond-missing', 'corroded', 'loose'],
  source: 'common practice',
};

const groundLead: ComponentKind = {
  ...plain,
  id: 'ground-lead',
  name: 'pole ground wire',
  terminals: ['top', 'low', 'foot'],
  nets: { top: 'stub', low: 'stub-low', foot: 'rod' },
  points: { top: [0, 0, 8.7], low: [0, 0, 1.7], foot: [0, 0, 0.05] },
  values: {
    woodOhms: { default: 1e6, dimension: 'resistance', doc: 'Wet wood from the wire to the ground, from memory' },
  },
  branches: (part) => [
    joint('wire', 'top', 'low', complex(7e-3, 1e-3)),
    joint('butt', 'low', 'foot', complex(2e-3, 3e-4)),
    shunt('wood', 'low', 'earth', leakage(60e-12, valueIn(groundLead, part, 'woodOhms'))),
  ],
  solids: () => [],
  features: [
    {
      id: 'wire',
      healthy: 'wire: copper stapled down the pole, dull, no gap made out',
      size: 0.006,
      offset: [0, 0, 5],
      runs: [0, 0, 1],
      side: 'any',
    },
    {
      id: 'foot',
      healthy: 'foot: wire under its moulding to the ground line',
      size: 0.006,
      offset: [0, 0, 0.8],
      runs: [0, 0, 1],
      side: 'any',
    },
  ],
  conditions: ['sound', 'cut', 'corroded', 'moulding-missing', 'patina'],
  source: 'common practice',
};

const groundRod: ComponentKind = {
  ...plain,
  id: 'ground-rod',
  name: 'ground rod',
  terminals: ['rod'],
  nets: { rod: 'rod' },
  points: { rod: [0, 0, 0.05] },
  values: { ohms: { default: 25, dimension: 'resistance', doc: 'Resistance to remote earth' } },
  branches: (part) => [shunt('electrode', 'rod', 'earth', complex(1 / valueIn(groundRod, part, 'ohms')))],
  solids: () => [],
  features: [
    {
      id: 'rod',
      healthy: 'rod: head just above the ground, clamp on it',
      size: 0.01,
      offset: [0, 0, 0.05],
      side: 'any',
    },
  ],
  conditions: ['sound', 'clamp-off', 'missing', 'loose', 'buried'],
  source: 'from memory',
};

/**
 * The neutral of the line beyond the scene, as a ladder of grounds seen from here, and the source behind it. With the neutral
 * open between here and there (fault source-neutral-open) the source is left with its own ladder, the scene with its own
 * grounds, and the current goes home through the earth between the two: emf and Z then stand in series with the ladder, from
 * the line to earth. Left out then: that Z still counts the neutral conductor, and that grounds near each other help.
 */
const systemSource: ComponentKind = {
  ...plain,
  id: 'system-source',
  name: 'the line from the substation',
  terminals: ['line', 'neutral'],
  nets: { line: 'main', neutral: 'neutral' },
  values: {
    volts: { default: 7200, dimension: 'voltage', doc: 'Phase to neutral' },
    ohms: { default: 0.5, dimension: 'resistance', doc: 'Loop resistance of source, phase and neutral' },
    reactance: { default: 3, dimension: 'resistance', doc: 'Loop reactance' },
    ladderOhms: { default: 1.3243, dimension: 'resistance', doc: 'Neutral ladder, resistance' },
    ladderReactance: { default: 1.006, dimension: 'resistance', doc: 'Neutral ladder, reactance' },
  },
  branches: (part) => {
    const of = (name: string): number => valueIn(systemSource, part, name);
    const loop = complex(of('ohms'), of('reactance'));
    const ladder = complex(of('ladderOhms'), of('ladderReactance'));
    const open = returnsByEarth(part);
    return [
      {
        type: 'source',
        name: 'thevenin',
        between: ['line', open ? 'earth' : 'neutral'],
        emf: complex(of('volts')),
        z: open ? add(loop, ladder) : loop,
        group: 'system',
      },
      ...(open ? [] : [joint('ladder', 'neutral', 'earth', ladder)]),
      shunt('main-stray', 'line', 'earth', leakage(2e-9, 1e9)),
    ];
  },
  solids: () => [],
  features: [],
  conditions: sourceConditions,
  source: 'ladder: worked case E12, z/2 + sqrt(z^2/4 + z R) of a uniform ladder with 25 ohm grounds',
};

export const groundingKinds = [tankStrap, upperLead, groundBond, groundLead, groundRod, systemSource];
