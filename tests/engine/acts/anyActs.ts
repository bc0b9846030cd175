import fc from 'fast-check';
import { looksFrom, possibleActs } from '../../../src/engine/acts/possibleActs.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import { aids } from '../../../src/engine/senses/types.ts';
import { pointsOf } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';

/** Ids that exist and ids that cannot, names that every object has among them. */
const ids = (world: World): readonly string[] => [
  ...world.parts.map(({ id }) => id),
  ...world.tools.map(({ id }) => id),
  ...world.stands.map(({ id }) => id),
  ...world.people.map(({ id }) => id),
  ...[
    'p1',
    'p2',
    'p3',
    'j1',
    'f1',
    'c1',
    'site',
    'cracked',
    'isolate-source',
    'open',
    'close',
    'pull',
    'stop',
    'tie-in',
  ],
  ...[
    'hazards',
    'history',
    'backfeed',
    '',
    '__proto__',
    'constructor',
    'toString',
    'p2.cutout/constructor',
    '/',
    'x/y/z',
  ],
];

/** Any act of the right shape, sense or nonsense. */
export function anyAct(world: World): fc.Arbitrary<Act> {
  const id = fc.constantFrom(...ids(world));
  const point = fc.constantFrom(...pointsOf(world), ...ids(world));
  const stick = fc.constantFrom('stick-1', 'stick-2', 'arm-1', 'nonsense', null);
  const on = fc.boolean();
  const shape = <N extends Act['act']>(act: N, rest: Record<string, fc.Arbitrary<unknown>> = {}): fc.Arbitrary<Act> =>
    fc.record({ act: fc.constant(act), ...rest }) as unknown as fc.Arbitrary<Act>;
  return fc.oneof(
    shape('acknowledge'),
    shape('go', { to: id }),
    shape('park', { at: fc.constantFrom('clear', 'under-line') }),
    shape('engine', { on }),
    shape('look', { part: id, aid: fc.constantFrom(...aids) }),
    shape('listen'),
    shape('ask', { who: id, about: id }),
    shape('tell', { who: id, what: id }),
    shape('guard', { with: fc.constantFrom('chocks', 'cones', 'keep-out') }),
    shape('check-tool', { tool: id, check: fc.constantFrom('read-tag', 'inspect', 'wipe', 'air-test', 'self-test') }),
    shape('wear', { tool: id, on }),
    shape('test', { point, tool: id, stick }),
    shape('sound', { pole: id }),
    shape('prod', { pole: id }),
    shape('call-finding', { on: id, condition: id, confidence: fc.constantFrom(0, 0.5, 1, 2, Number.NaN) }),
    shape('withdraw-finding', { finding: id }),
    shape('plan', { finding: fc.oneof(id, fc.constant(null)), control: id, by: id }),
    shape('withdraw-plan', { plan: id }),
    shape('brief', { topics: fc.array(id, { maxLength: 5 }), rescue: on }),
    shape('clearance', { step: fc.constantFrom('request', 'release'), device: id }),
    shape('operate', { part: id, operation: id, stick }),
    shape('tag', { part: id, on }),
    shape('owner', { part: id, operation: id }),
    shape('cover', { part: id, tool: id, on }),
    shape('support', { part: id, on }),
    shape('ground', { tool: id, points: fc.array(point, { maxLength: 4 }), stick }),
    shape('unground', { jumper: id, stick }),
    shape('count-grounds'),
    shape('aloft', { pole: id, by: fc.constantFrom('hooks', 'bucket'), zone: fc.constantFrom('below', 'work') }),
    shape('come-down'),
    shape('repair', { part: id, repair: id }),
    shape('touch', { point }),
    shape('everyone-clear'),
    shape('wait', { minutes: fc.constantFrom(-1, 0, 0.5, 1, 7, 60, 61, Number.NaN, Number.POSITIVE_INFINITY) }),
  );
}

/** A choice that is made in the World as it is then: one of what is on offer there, or any act at all. */
export type Choice = { readonly pick: number } | { readonly act: Act };

export const choices = (world: World, length: number): fc.Arbitrary<readonly Choice[]> =>
  fc.array(
    fc.oneof(
      { weight: 4, arbitrary: fc.record({ pick: fc.nat() }) },
      { weight: 1, arbitrary: fc.record({ act: anyAct(world) }) },
    ),
    { minLength: 1, maxLength: length },
  );

/** The act chosen: offers are drawn by kind of act first, so that the many tests do not crowd out the few closings. */
export function chosen(world: World, choice: Choice): Act | null {
  if ('act' in choice) return choice.act;
  const offers = [...possibleActs(world), ...looksFrom(world)].filter(
    ({ act }) => act.act !== 'hand-over' && act.act !== 'close-out',
  );
  const names = [...new Set(offers.map(({ act }) => act.act))];
  const name = names[choice.pick % names.length];
  const same = offers.filter(({ act }) => act.act === name);
  return same[Math.floor(choice.pick / 64) % same.length]?.act ?? null;
}
