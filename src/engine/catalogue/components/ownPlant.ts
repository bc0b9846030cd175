/**
 * Customers' own sets beyond the plain engine set, and what stands between them and the line.
 * Governed set: subtransient source as the engine set, but its engine gives no more watts than its rating (volts then fall,
 * speed is left out), its field no more than three times rated amperes (with forcing, from memory), and it stalls below
 * half its volts (estimate). Transfer switch that takes the neutral along, interlocked main and inlet: common practice.
 */
import { generatorRated, governorLimit } from '../../standards/generator.ts';
import type { ComponentKind } from '../types.ts';
import { breakerOf } from './breaker.ts';
import { ownSetKinds } from './ownSet.ts';
import { premisesKinds } from './premises.ts';
import { isIn, joint, leakage, plain, shunt, valueIn } from './shared.ts';

const kindOf = (id: string): ComponentKind => {
  const kind = [...premisesKinds, ...ownSetKinds].find((known) => known.id === id);
  if (kind === undefined) throw new Error(`no premises kind ${id}`);
  return kind;
};

/** Rated volts across both legs. */
const LEGS = 240;
/** Seconds below half its volts until a set stalls (estimate). */
const STALL = 5;

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
        ? [breakerOf(RATING, 'pole-1', 'line1', 'bus1', opens), breakerOf(RATING, 'pole-2', 'line2', 'bus2', opens)]
        : []),
      ...(isOn('inlet')
        ? [breakerOf(amps, 'inlet-1', 'g1', 'bus1', opens), breakerOf(amps, 'inlet-2', 'g2', 'bus2', opens)]
        : []),
      shunt('stray-1', 'bus1', 'earth', leakage(1e-9, 1e8)),
      shunt('stray-2', 'bus2', 'earth', leakage(1e-9, 1e8)),
    ];
  },
  solids: () => [{ shape: 'box', centre: [0, -0.051, 0], half: [0.18, 0.049, 0.38] }],
  features: [
    {
      id: 'slide',
      healthy: 'slide: plate between two handles, main at ON, inlet at OFF',
      size: 0.01,
      offset: [0.02, -0.11, 0.135],
      faces: [0, -1, 0],
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

export const ownPlantKinds = [governed, neutralSwitch, interlock];
