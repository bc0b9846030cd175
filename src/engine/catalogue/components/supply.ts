/**
 * The line from the substation with more than one phase, and the recloser that feeds it. Wye: three phases 120 degrees
 * apart, in step, each behind Z1, and a return (Z0 - Z1)/3 that they share, so that a fault to the neutral meets
 * (2 Z1 + Z0)/3 and one of three phases Z1 (sequence networks, textbook; standards/systems.ts); the neutral ladder as
 * in the kind system-source, and its neutral open as there: the star point then hangs on the ladder alone. Delta: the same behind a star point that nothing grounds; only the capacitance of the rest of
 * the circuit ties it to earth, so a fault to ground draws three times one phase's charging current and lifts the others
 * to line volts. Z2 is taken equal to Z1. Left out: load of the circuit, regulators, arcing ground faults that pump the
 * charge up. Recloser: standards/recloser.ts, a single-phase unit in each phase; ground trips are left out.
 */
import { add, type Complex, complex, polar, sub } from '../../math/complex.ts';
import { usualSequence } from '../../standards/recloser.ts';
import { sourceImpedance } from '../../standards/systems.ts';
import type { Branch, ComponentKind, Operation, PartView } from '../types.ts';
import { isIn, joint, leakage, plain, returnsByEarth, shunt, sourceConditions, upright, valueIn } from './shared.ts';

/** Phases and their angles, sequence a-b-c. */
export const phaseTurns: Readonly<Record<'a' | 'b' | 'c', number>> = {
  a: 0,
  b: (-2 * Math.PI) / 3,
  c: (2 * Math.PI) / 3,
};

const phases = ['a', 'b', 'c'] as const;

const emfs = (kind: ComponentKind, part: PartView, star: string): readonly Branch[] =>
  phases.map((phase) => ({
    type: 'source',
    name: `thevenin-${phase}`,
    between: [phase, star],
    emf: polar(valueIn(kind, part, 'volts'), phaseTurns[phase]),
    z: complex(valueIn(kind, part, 'ohms'), valueIn(kind, part, 'reactance')),
    group: 'system',
  }));

const loop = {
  volts: { default: 7200, dimension: 'voltage', doc: 'Phase to neutral' },
  ohms: { default: 0.5, dimension: 'resistance', doc: 'Positive-sequence resistance' },
  reactance: { default: 3, dimension: 'resistance', doc: 'Positive-sequence reactance' },
} as const;

const wye: ComponentKind = {
  ...plain,
  id: 'system-source-wye',
  name: 'the line from the substation',
  terminals: ['a', 'b', 'c', 'neutral', 'star'],
  nets: { neutral: 'neutral', star: '$id.star' },
  values: {
    ...loop,
    returnOhms: { default: 0, dimension: 'resistance', doc: 'Shared return, (R0 - R1)/3' },
    returnReactance: { default: 0, dimension: 'resistance', doc: 'Shared return, (X0 - X1)/3' },
    ladderOhms: { default: 1.3243, dimension: 'resistance', doc: 'Neutral ladder, resistance' },
    ladderReactance: { default: 1.006, dimension: 'resistance', doc: 'Neutral ladder, reactance' },
  },
  branches: (part) => {
    const of = (name: string): number => valueIn(wye, part, name);
    const back: Complex = complex(of('returnOhms'), of('returnReactance'));
    const ladder = complex(of('ladderOhms'), of('ladderReactance'));
    const isShared = back.re !== 0 || back.im !== 0;
    const home = returnsByEarth(part)
      ? [joint('return', 'star', 'earth', add(back, ladder))]
      : [...(isShared ? [joint('return', 'star', 'neutral', back)] : []), joint('ladder', 'neutral', 'earth', ladder)];
    return [
      ...emfs(wye, part, isShared || returnsByEarth(part) ? 'star' : 'neutral'),
      ...home,
      ...phases.map((phase) => shunt(`stray-${phase}`, phase, 'earth', leakage(2e-9, 1e9))),
    ];
  },
  solids: () => [],
  features: [],
  conditions: sourceConditions,
  source: 'sequence networks (textbook); ladder as in system-source',
};

const delta: ComponentKind = {
  ...plain,
  id: 'system-source-delta',
  name: 'the line from the substation',
  terminals: ['a', 'b', 'c', 'star'],
  nets: { star: '$id.star' },
  values: {
    ...loop,
    farads: {
      default: 35e-9,
      dimension: 'ratio',
      doc: 'Capacitance of each phase of the circuit to earth, farad (5 km)',
    },
    leakOhms: {
      default: 2e6,
      dimension: 'resistance',
      doc: 'Leakage of each phase of the circuit to earth, from memory',
    },
  },
  branches: (part) => [
    ...emfs(delta, part, 'star'),
    ...phases.map((phase) =>
      shunt(
        `charging-${phase}`,
        phase,
        'earth',
        leakage(valueIn(delta, part, 'farads'), valueIn(delta, part, 'leakOhms')),
      ),
    ),
  ],
  solids: () => [],
  features: [],
  conditions: [],
  source: 'ungrounded systems (textbook); capacitance: 7 pF a metre, standards/lineCapacitance.ts',
};

const { waits } = usualSequence;

const recloserBranches = (part: PartView): readonly Branch[] => [
  ...(isIn(part, 'position', 'closed')
    ? [
        {
          type: 'series' as const,
          name: 'contacts',
          between: ['source', 'load'] as const,
          z: complex(0.02, 0.002),
          protects: {
            curve: 'recloser' as const,
            rating: valueIn(upstreamRecloser, part, 'pickUpA'),
            opens: { position: 'locked-out' },
            sequence: {
              fast: Math.round(valueIn(upstreamRecloser, part, 'fast')),
              waits: isIn(part, 'reclosing', 'automatic') ? waits : [],
              waiting: { position: 'open' },
            },
          },
        },
      ]
    : []),
  shunt('across', 'source', 'load', leakage(10e-12, 1e10)),
];

const recloserForm = {
  ...plain,
  terminals: ['source', 'load'],
  states: { position: ['closed', 'open', 'locked-out'], reclosing: ['automatic', 'blocked'] },
  values: {
    pickUpA: { default: 100, dimension: 'current', doc: 'Pick-up of its phase trip' },
    fast: { default: 1, dimension: 'ratio', doc: 'Fast trips before the slow ones' },
  },
  branches: recloserBranches,
} as const;

/** Whoever holds no clearance may find it open and close it. */
const byOthers: ComponentKind['othersMay'] = ['open', 'locked-out'].map((position) => ({
  when: { position },
  becomes: { position: 'closed' },
  unless: ['tagged', 'clearance-held'],
  who: 'somebody else closes it',
}));

const byDispatcher = (id: string, label: string, from: Operation['from'], to: Operation['to']): Operation => ({
  id,
  label,
  by: 'dispatcher',
  from,
  to,
  minutes: 1,
  touches: [],
});

/** Out of sight toward the source; worked at the dispatcher's word. */
const upstreamRecloser: ComponentKind = {
  ...recloserForm,
  id: 'upstream-recloser',
  name: 'recloser toward the source',
  solids: () => [],
  features: [],
  conditions: ['sound', 'recloses'],
  othersMay: byOthers,
  operations: [
    byDispatcher('open', 'Open', { position: ['closed'] }, { position: 'locked-out' }),
    byDispatcher('close', 'Close', { position: ['open', 'locked-out'] }, { position: 'closed' }),
    byDispatcher('block', 'Block the reclosing of', { reclosing: ['automatic'] }, { reclosing: 'blocked' }),
    byDispatcher('unblock', 'Restore the reclosing of', { reclosing: ['blocked'] }, { reclosing: 'automatic' }),
  ],
  source: 'standards/recloser.ts',
};

const recloser: ComponentKind = {
  ...recloserForm,
  id: 'recloser',
  name: 'recloser',
  equipment: true,
  nets: { source: 'main', load: 'load' },
  points: { source: [-0.15, -0.1, 0.55], load: [0.15, -0.1, 0.55] },
  solids: () => [upright(-0.4, 0.3, 0.22)],
  features: [
    {
      id: 'target',
      healthy: 'target: small window under the hood, red flag showing behind it',
      size: 0.03,
      offset: [0, -0.2, -0.3],
      side: 'any',
      byState: [
        { when: { position: 'open' }, words: 'target: small window under the hood, green flag showing behind it' },
        { when: { position: 'locked-out' }, words: 'target: window under the hood, green flag, yellow lever hanging' },
      ],
    },
    {
      id: 'bushings',
      healthy: 'bushings: two of grey porcelain on the lid, wet, a lead on each of them',
      size: 0.02,
      offset: [0, -0.1, 0.5],
      side: 'any',
    },
  ],
  trueWhen: [{ condition: 'tripped', when: { position: 'locked-out' } }],
  conditions: ['sound', 'tripped', 'recloses', 'bushing-cracked', 'leaking'],
  othersMay: byOthers,
  operations: [
    {
      id: 'open',
      label: 'Pull the yellow lever of the recloser',
      by: 'stick',
      from: { position: ['closed'] },
      to: { position: 'locked-out' },
      minutes: 1,
      breaks: ['source', 'load'],
      touches: [],
    },
    {
      id: 'close',
      label: 'Close the recloser',
      by: 'stick',
      from: { position: ['open', 'locked-out'] },
      to: { position: 'closed' },
      minutes: 1,
      makes: ['source', 'load'],
      touches: [],
    },
    {
      id: 'block',
      label: 'Set the recloser to one shot',
      by: 'stick',
      from: { reclosing: ['automatic'] },
      to: { reclosing: 'blocked' },
      minutes: 1,
      touches: [],
    },
    {
      id: 'unblock',
      label: 'Set the recloser to reclose again',
      by: 'stick',
      from: { reclosing: ['blocked'] },
      to: { reclosing: 'automatic' },
      minutes: 1,
      touches: [],
    },
  ],
  source: 'standards/recloser.ts; form: common practice',
};

/** Z1 and the shared return in ohms, from volts to the neutral and the fault currents of one phase and of three. */
export const sequenceLoop = (
  volts: number,
  ground: number,
  three: number,
  xOverR: number,
): { readonly z1: Complex; readonly back: Complex } => {
  const z1 = sourceImpedance(volts, three, xOverR);
  return { z1, back: sub(sourceImpedance(volts, ground, xOverR), z1) };
};

export const supplyKinds = [wye, delta, upstreamRecloser, recloser];
