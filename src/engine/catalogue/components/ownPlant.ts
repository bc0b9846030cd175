/**
 * Customers' own plant beyond the plain engine set, and what stands between it and the line.
 * Inverter (photovoltaic or battery), across both legs: while the line or another set gives voltage it follows in step,
 * a constant negative conductance of its output. When that voltage is gone it trips within 2 s, or, islanding wrongly, it
 * holds its voltage as a source of its own, up to 1.2 times rated amperes, and trips when it cannot hold half of it or
 * when the line comes back against it (trip points, limit: standards/inverter.ts). While following it feeds a fault in
 * proportion to what voltage is left; the first cycle, ride-through and reactive power are left out.
 * Governed set: subtransient source as the engine set, but its engine gives no more watts than its rating (volts then fall,
 * speed is left out), its field no more than three times rated amperes (with forcing, from memory), and it stalls below
 * half its volts (estimate). Transfer switch that takes the neutral along, interlocked main and inlet: common practice.
 */
import { complex, scale } from '../../math/complex.ts';
import { generatorRated, governorLimit } from '../../standards/generator.ts';
import { inverterFault, islandTime, voltageTrip } from '../../standards/inverter.ts';
import type { Branch, ComponentKind, PartView, Watch } from '../types.ts';
import { ownSetKinds } from './ownSet.ts';
import { premisesKinds } from './premises.ts';
import { isIn, joint, leakage, plain, shunt, valueIn } from './shared.ts';

const kindOf = (id: string): ComponentKind => {
  const kind = [...premisesKinds, ...ownSetKinds].find((known) => known.id === id);
  if (kind === undefined) throw new Error(`no premises kind ${id}`);
  return kind;
};

const LEGS = 240;
/** Impedance of an inverter that holds its voltage, per unit: next to none (assumed). */
const HOLDING = complex(0.01, 0.02);
/** Seconds below half its volts until a set stalls (estimate). */
const STALL = 5;

const breaker = (
  name: string,
  from: string,
  to: string,
  rating: number,
  opens: Readonly<Record<string, string>>,
): Branch => ({
  type: 'series',
  name,
  between: [from, to],
  z: complex(2e-3, 3e-4),
  protects: { curve: 'breaker', rating, opens },
});

const inverter = (id: string, name: string, healthy: string, stopped: string): ComponentKind => {
  const volts = (part: PartView): number => valueIn(kind, part, 'volts');
  const watches = (part: PartView): readonly Watch[] => {
    const low = (name: string, seconds: number, becomes: Watch['becomes']): Watch => ({
      name,
      between: ['w1', 'w2'],
      below: volts(part) / 2,
      seconds,
      becomes,
    });
    if (isIn(part, 'run', 'following')) {
      return [low('line-lost', islandTime, { run: isIn(part, 'islanding', 'holds') ? 'holding' : 'tripped' })];
    }
    if (!isIn(part, 'run', 'holding')) return [];
    return [
      low('overloaded', voltageTrip(0.5), { run: 'tripped' }),
      {
        name: 'line-back',
        between: ['w1', 'w2'],
        group: 'system',
        above: volts(part) / 2,
        seconds: voltageTrip(0.5),
        becomes: { run: 'tripped' },
      },
    ];
  };
  const kind: ComponentKind = {
    ...plain,
    id,
    name,
    terminals: ['w1', 'w2', 'bus1', 'bus2'],
    nets: { w1: '$id.w1', w2: '$id.w2', bus1: 'b1', bus2: 'b2' },
    states: {
      run: ['following', 'holding', 'tripped', 'stopped'],
      breaker: ['closed', 'open'],
      islanding: ['trips', 'holds'],
    },
    values: {
      va: { default: 7600, dimension: 'apparentPower', doc: 'Rating of its inverter' },
      output: { default: 0.6, dimension: 'ratio', doc: 'Output now, of its rating' },
      volts: { default: LEGS, dimension: 'voltage', doc: 'Rated volts across both legs' },
      ratingA: { default: 40, dimension: 'current', doc: 'Rating of its breaker in the panel' },
    },
    branches: (part) => {
      const rating = valueIn(kind, part, 'va');
      const base = (volts(part) * volts(part)) / rating;
      const amps = valueIn(kind, part, 'ratingA');
      return [
        ...(isIn(part, 'run', 'following')
          ? [shunt('output', 'w1', 'w2', complex(-valueIn(kind, part, 'output') / base))]
          : []),
        ...(isIn(part, 'run', 'holding')
          ? [
              {
                type: 'source' as const,
                name: 'inverter',
                between: ['w1', 'w2'] as const,
                emf: complex(volts(part)),
                z: scale(HOLDING, base),
                group: part.id,
                limit: { amperes: inverterFault({ rating, volts: volts(part) }) },
              },
            ]
          : []),
        ...(isIn(part, 'breaker', 'closed')
          ? [
              breaker('breaker-1', 'w1', 'bus1', amps, { breaker: 'open' }),
              breaker('breaker-2', 'w2', 'bus2', amps, { breaker: 'open' }),
            ]
          : []),
        shunt('filter', 'w1', 'w2', leakage(5e-6, 1e6)),
        shunt('stray-1', 'w1', 'earth', leakage(1e-9, 1e8)),
        shunt('stray-2', 'w2', 'earth', leakage(1e-9, 1e8)),
      ];
    },
    watches,
    solids: () => [{ shape: 'box', centre: [0, 0, 0], half: [0.25, 0.1, 0.35] }],
    features: [
      {
        id: 'display',
        healthy,
        size: 0.012,
        offset: [0, 0, 0],
        side: 'any',
        byState: [
          { when: { run: 'tripped' }, words: stopped },
          { when: { run: 'stopped' }, words: stopped },
        ],
      },
    ],
    conditions: ['sound', 'tripped', 'backfed', 'live-by-backfeed', 'feeding-panel'],
    trueWhen: [{ condition: 'tripped', when: { run: 'tripped' } }],
    othersMay: [
      { when: { run: 'stopped' }, becomes: { run: 'following' }, unless: [], who: 'the owner starts the plant again' },
      {
        when: { breaker: 'open' },
        becomes: { breaker: 'closed' },
        unless: [],
        who: 'the owner closes its breaker again',
      },
    ],
    operations: [
      {
        id: 'stop',
        label: 'shut the plant down',
        by: 'owner',
        from: { run: ['following', 'holding', 'tripped'] },
        to: { run: 'stopped' },
        minutes: 2,
        touches: [],
      },
      {
        id: 'start',
        label: 'start the plant',
        by: 'owner',
        from: { run: ['tripped', 'stopped'] },
        to: { run: 'following' },
        minutes: 2,
        touches: [],
      },
      {
        id: 'breaker-open',
        label: 'open the breaker of the plant',
        by: 'owner',
        from: { breaker: ['closed'] },
        to: { breaker: 'open' },
        minutes: 1,
        breaks: ['w1', 'bus1'],
        touches: [],
      },
    ],
    source: 'standards/inverter.ts',
  };
  return kind;
};

const base = kindOf('generator');

const governed: ComponentKind = {
  ...base,
  id: 'governed-generator',
  states: { run: ['running', 'stopped'], breaker: ['closed', 'open'] },
  values: {
    ...base.values,
    sustainedPu: {
      default: 3,
      dimension: 'ratio',
      doc: 'Longest-lasting amperes, of rated (with field forcing, from memory)',
    },
  },
  branches: (part) =>
    base.branches(part).map((branch) =>
      branch.type === 'source'
        ? {
            ...branch,
            limit: {
              amperes:
                valueIn(governed, part, 'sustainedPu') *
                generatorRated({ rating: valueIn(governed, part, 'va'), volts: LEGS }),
              watts: governorLimit({ rating: valueIn(governed, part, 'va') }),
            },
          }
        : branch,
    ),
  watches: (part) =>
    isIn(part, 'run', 'running')
      ? [
          {
            name: 'stalls',
            between: ['w1', 'w2'],
            group: part.id,
            below: LEGS / 2,
            seconds: STALL,
            becomes: { run: 'stopped' },
          },
        ]
      : [],
  source: 'standards/generator.ts; governor limit and stall: estimate',
};

const lever = kindOf('transfer-switch');

/** The neutral goes through the switch too, so that the set's own neutral is joined to the house only by it. */
const neutralSwitch: ComponentKind = {
  ...lever,
  id: 'neutral-transfer-switch',
  terminals: [...lever.terminals, 'g0', 'n'],
  nets: { ...lever.nets, g0: 'g0', n: 'n' },
  branches: (part) => [
    ...lever.branches(part),
    ...(isIn(part, 'position', 'generator') ? [joint('set-neutral', 'g0', 'n')] : []),
    shunt('neutral-stray', 'g0', 'n', leakage(1e-9, 1e6)),
  ],
};

const RATING = 100;

/** Main and inlet breaker under one slide: never both, unless somebody took the slide off. */
const interlock: ComponentKind = {
  ...plain,
  id: 'interlocked-main',
  name: 'main and inlet breaker in the panel',
  terminals: ['line1', 'line2', 'g1', 'g2', 'bus1', 'bus2'],
  nets: { line1: 'm1', line2: 'm2', g1: 'g1', g2: 'g2', bus1: 'b1', bus2: 'b2' },
  states: { position: ['main', 'inlet', 'off', 'both', 'tripped'] },
  values: { inletA: { default: 30, dimension: 'current', doc: 'Rating of the inlet breaker' } },
  branches: (part) => {
    const opens = { position: 'tripped' };
    const amps = valueIn(interlock, part, 'inletA');
    const isOn = (which: string): boolean => isIn(part, 'position', which) || isIn(part, 'position', 'both');
    return [
      ...(isOn('main')
        ? [breaker('pole-1', 'line1', 'bus1', RATING, opens), breaker('pole-2', 'line2', 'bus2', RATING, opens)]
        : []),
      ...(isOn('inlet')
        ? [breaker('inlet-1', 'g1', 'bus1', amps, opens), breaker('inlet-2', 'g2', 'bus2', amps, opens)]
        : []),
      shunt('stray-1', 'bus1', 'earth', leakage(1e-9, 1e8)),
      shunt('stray-2', 'bus2', 'earth', leakage(1e-9, 1e8)),
    ];
  },
  solids: () => [{ shape: 'box', centre: [0, 0, 0], half: [0.18, 0.06, 0.3] }],
  features: [
    {
      id: 'slide',
      healthy: 'slide: plate between two handles, main at ON, inlet at OFF',
      size: 0.01,
      offset: [0, 0, 0.2],
      side: 'any',
      byState: [
        { when: { position: 'inlet' }, words: 'slide: plate between two handles, main at OFF, inlet at ON' },
        { when: { position: 'off' }, words: 'slide: plate between two handles, both of them at OFF' },
        { when: { position: 'both' }, words: 'slide: no plate between two handles, both of them at ON' },
        { when: { position: 'tripped' }, words: 'slide: plate, one handle standing between the marks' },
      ],
    },
  ],
  trueWhen: [
    { condition: 'tripped', when: { position: 'tripped' } },
    { condition: 'main-closed-on-set', when: { position: 'both' } },
  ],
  conditions: ['sound', 'main-closed-on-set', 'feeding-panel', 'tripped', 'missing'],
  operations: [
    {
      id: 'to-inlet',
      label: 'open the main and close the inlet',
      by: 'owner',
      from: { position: ['main', 'off', 'tripped'] },
      to: { position: 'inlet' },
      minutes: 1,
      touches: [],
    },
    {
      id: 'to-main',
      label: 'open the inlet and close the main',
      by: 'owner',
      from: { position: ['inlet', 'off', 'tripped'] },
      to: { position: 'main' },
      minutes: 1,
      touches: [],
    },
    {
      id: 'open',
      label: 'open main and inlet',
      by: 'owner',
      from: { position: ['main', 'inlet', 'both', 'tripped'] },
      to: { position: 'off' },
      minutes: 1,
      touches: [],
    },
  ],
  source: 'common practice',
};

export const ownPlantKinds = [
  inverter(
    'photovoltaic-plant',
    'inverter on the wall',
    'display: grey box under the roof edge, green lamp, figures changing',
    'display: grey box under the roof edge, red lamp, no figures on it',
  ),
  inverter(
    'battery-plant',
    'battery cabinet',
    'display: white cabinet by the panel, green lamp, figures changing',
    'display: white cabinet by the panel, red lamp, no figures on it',
  ),
  governed,
  neutralSwitch,
  interlock,
];
