/** Arm framings and coupled spans: everything hangs where something holds it, each phase on its own net. */
import { describe, expect, test } from 'vitest';
import { distance } from '../../../src/engine/math/vec3.ts';
import { looseRuns } from '../../../src/engine/mechanics/looseRuns.ts';
import { partById, pointAt } from '../../../src/engine/world/edit.ts';
import type { Part, World } from '../../../src/engine/world/types.ts';
import { textOf } from '../catalogue/bench.ts';
import { model, modelNames } from '../circuit/models/scenes.ts';
import { built } from './shuffled.ts';

const spansOf = (world: World): readonly Part[] => world.parts.filter(({ kind }) => kind === 'coupled-span');

describe.each(modelNames)('in the scene %s', (name) => {
  const world = model(name);

  test('each end of a coupled conductor lies at the metal that holds it, on the same net', () => {
    for (const span of spansOf(world)) {
      for (const [net, place] of [
        [span.nets.a, span.at],
        [span.nets.b, span.end ?? span.at],
      ] as const) {
        const holders = world.parts.filter(({ nets, kind }) => nets.conductor === net && kind !== 'coupled-span');
        expect(holders.length).toBeGreaterThan(0);
        const gaps = holders.map(({ id }) => distance(pointAt(world, `${id}/conductor`) ?? [0, 0, 0], place));
        expect(Math.min(...gaps)).toBeLessThan(0.4);
      }
    }
  });

  test('ids of parts are used once, and every part has a net on each terminal', () => {
    expect(new Set(world.parts.map(({ id }) => id)).size).toBe(world.parts.length);
    for (const { nets } of world.parts)
      for (const net of Object.values(nets)) expect(net).toMatch(/^(earth|[a-z].*\..+)$/);
  });
});

test('phases on an arm are a metre apart at least and stand above the neutral', () => {
  const world = model('wye-bank');
  const at = (letter: string) => partById(world, `s1.phase-${letter}`).at;
  for (const [a, b] of [
    ['a', 'b'],
    ['b', 'c'],
    ['a', 'c'],
  ] as const)
    expect(distance(at(a), at(b))).toBeGreaterThan(1);
  const neutral = partById(world, 's1.neutral').at;
  for (const letter of ['a', 'b', 'c']) expect(at(letter)[2]).toBeGreaterThan(neutral[2] + 0.9);
});

test('a conductor beside others brings a pin and a tie on each pole', () => {
  const world = model('wye-bank');
  for (const pole of ['p1', 'p2']) {
    expect(partById(world, `${pole}.insulator-idle`).nets).toEqual({
      conductor: `${pole}.idle`,
      pin: `${pole}.pin-idle`,
    });
    expect(partById(world, `${pole}.tie-idle`).kind).toBe('tie');
  }
});

test('the phases of a part are told in its name', () => {
  expect(partById(model('wye-bank'), 'p2.insulator-b').name).toBe('pin insulator, phase b, pole W-2');
  expect(partById(model('delta'), 's1.phase-c').name).toBe('phase conductor, phase c, span D-1 to D-2');
});

test('a transformer is rated for its system unless it says otherwise', () => {
  expect(partById(model('island'), 'p2.transformer').values.primaryVolts).toBe(14_400);
  expect(partById(model('delta'), 'p3.transformer').values.primaryVolts).toBe(4800);
  expect(partById(model('wye-bank'), 'p2.unit-a').values.primaryVolts).toBe(7620);
});

describe('on an arm with suspension strings', () => {
  const text = textOf({ kind: 'suspension-clamp-open', on: 'p2.seat-a', arm: 'arm-suspension' });
  const world = built(text);

  test.each(['a', 'c'])('phase %s hangs under the arm, in a clamp at the foot of its string', (letter) => {
    const arm = partById(world, 'p2.crossarm').at;
    const held = pointAt(world, `p2.string-${letter}/conductor`);
    expect(partById(world, `p2.seat-${letter}`).at).toEqual(held);
    expect(partById(world, `s1.phase-${letter}`).end).toEqual(held);
    expect((held ?? arm)[2]).toBeLessThan(arm[2] - 0.4);
    expect(world.parts.some(({ id }) => id === `p2.insulator-${letter}`)).toBe(false);
  });

  test('the middle phase stays on its pole-top pin', () => {
    expect(partById(world, 'p2.insulator-b').kind).toBe('pin-insulator');
  });

  test('a clamp whose keeper is off lets its conductor lie loose, a sound one does not', () => {
    expect(looseRuns(world).map(({ tie }) => tie.id)).toEqual(['p2.seat-a']);
    const sound = { ...world, parts: world.parts.map((part) => ({ ...part, faults: [] })) };
    expect(looseRuns(sound)).toEqual([]);
  });

  test.each([
    ['porcelain', ''],
    ['polymer', ', strings: polymer'],
    ['glass', ', strings: glass'],
  ])('strings are of %s when the pole says so', (material, says) => {
    const made = built(text.replaceAll('framing: arm-suspension }', `framing: arm-suspension${says} }`));
    expect(partById(made, 'p2.string-c').words.material).toBe(material);
  });
});
