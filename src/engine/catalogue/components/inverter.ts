/**
 * Inverters of customers' own plant (photovoltaic or battery), across both legs: while the line or another set gives voltage one
 * follows in step, a constant negative conductance of its output. When that voltage is gone it trips within 2 s, or, islanding
 * wrongly, it holds its voltage as a source of its own, up to 1.2 times rated amperes, and trips when it cannot hold half of it or
 * when the line comes back against it (trip points, limit: standards/inverter.ts). While following it feeds a fault in proportion
 * to what voltage is left; the first cycle, ride-through and reactive power are left out.
 */
import { complex, scale } from '../../math/complex.ts';
import { inverterFault, islandTime, voltageTrip } from '../../standards/inverter.ts';
import type { ComponentKind, PartView, Watch } from '../types.ts';
import { breakerOf } from './breaker.ts';
import { isIn, leakage, plain, shunt, valueIn } from './shared.ts';

/** Rated volts across both legs. */
const LEGS = 240;
/** Impedance of an inverter that holds its voltage, per unit: next to none (assumed). */
const HOLDING = complex(0.01, 0.02);

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
              breakerOf(amps, 'breaker-1', 'w1', 'bus1', { breaker: 'open' }),
              breakerOf(amps, 'breaker-2', 'w2', 'bus2', { breaker: 'open' }),
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

export const inverterKinds = [
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
];
