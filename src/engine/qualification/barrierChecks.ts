/** Shocks through gloves and tools as a scene computes them: ratings and intervals of the rule, and that what fails counts as none. */
import type { Tool } from '../world/types.ts';
import { asPrinted, checkWriter, relative } from './checkWriter.ts';
import { leastFor } from './leastFor.ts';
import { bodyOhms, hand, one, SOURCE, shocked, table } from './shockScenes.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const tool = (kind: string, more: Partial<Tool>): Tool => ({
  id: 'held',
  kind,
  name: kind,
  ratedVolts: null,
  tested: '2026-01-01',
  wet: false,
  checks: { wipe: { minute: 0, ok: true }, 'air-test': { minute: 0, ok: true } },
  faults: [],
  words: {},
  ...more,
});

const holding = (held: Tool, volts: number, today = '2026-01-01'): boolean => {
  const world = one(volts);
  const { given } = world;
  const through = held.kind === 'stick' ? { stick: held.id, gloves: null } : { stick: null, gloves: held.id };
  const crewed = { ...world, tools: [held], given: { ...given, crew: { ...given.crew, today } } };
  return shocked(crewed, ['c/top'], through).length === 0;
};
/** Phase-to-phase volts up to which it keeps a touch to one phase from being a shock. */
const heldTo = (held: Tool): number => Math.sqrt(3) * leastFor(100, 1e6, (volts) => !holding(held, volts));
/** Months after its test for which it counts, by the first of each. */
const heldFor = (kind: string): number =>
  [...Array(60).keys()].filter((months) => {
    const month = String((months % 12) + 1).padStart(2, '0');
    return holding(tool(kind, {}), 2000, `${2026 + Math.floor(months / 12)}-${month}-01`);
  }).length - 1;

const i4 = checkWriter('through gloves', 'published value', `${sources.rule137}, Table I-4`);
const i5 = checkWriter('through gloves', 'published value', `${sources.rule137}, Table I-5`);
const gloves: readonly Check[] = [
  ...([1000, 7500, 17000] as const).map((reference) =>
    i4({
      id: `class-${reference}`,
      quantity: 'phase-to-phase volts from which a gloved touch is a shock',
      input: `gloves of ${reference} V maximum use, in test, air-tested`,
      ours: () => heldTo(tool('rubber-gloves', { ratedVolts: reference })),
      reference,
      unit: 'V',
      tolerance: relative(0.001),
    }),
  ),
  i5({
    id: 'months',
    quantity: 'months after their test for which they count',
    input: '2000 V to ground',
    ours: () => heldFor('rubber-gloves'),
    reference: 6,
    unit: 'months',
    tolerance: asPrinted,
  }),
  table('through gloves')({
    id: 'as-none',
    quantity: 'resistance in the way when they were not air-tested: they count as none',
    input: '7200 V behind 3 ohm',
    ours: () => {
      const held = tool('rubber-gloves', { checks: {} });
      const world = { ...one(7200), tools: [held] };
      return bodyOhms(shocked(world, ['c/top'], { stick: null, gloves: held.id }), SOURCE);
    },
    reference: 650,
    unit: 'ohm',
    tolerance: relative(0.001),
  }),
];

const j2 = checkWriter('through tools', 'published value', `${sources.rule269}, (j)(2)(iii)`);
const tools: readonly Check[] = [
  j2({
    id: 'months',
    quantity: 'months after its examination for which a stick counts',
    input: 'wiped, dry, 2000 V to ground',
    ours: () => heldFor('stick'),
    reference: 24,
    unit: 'months',
    tolerance: asPrinted,
  }),
  hand(
    'through tools',
    'label of the stick, phase to phase',
  )({
    id: 'rated',
    quantity: 'phase-to-phase volts from which a touch by stick is a shock',
    input: 'a stick marked 25 kV, in test, wiped and dry',
    ours: () => heldTo(tool('stick', { ratedVolts: 25000 })),
    reference: 25000,
    unit: 'V',
    tolerance: relative(0.001),
  }),
  ...(
    [
      ['unwiped', { checks: {} }],
      ['wet', { wet: true }],
    ] as const
  ).map(([id, state]) =>
    table('through tools')({
      id,
      quantity: `resistance in the way of a stick that is ${id}: it counts as none`,
      input: '7200 V behind 3 ohm',
      ours: () => {
        const held = tool('stick', state);
        const world = { ...one(7200), tools: [held] };
        return bodyOhms(shocked(world, ['c/top'], { stick: held.id, gloves: null }), SOURCE);
      },
      reference: 650,
      unit: 'ohm',
      tolerance: relative(0.001),
    }),
  ),
];

/** Checks of touches through gloves and through tools. */
export const barrierChecks: readonly Check[] = [...gloves, ...tools];
