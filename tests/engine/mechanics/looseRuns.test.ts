/** Which ties have let go in a scene, over which run, and what an arm or a break does to that. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/engine/math/vec3.ts';
import { distanceToLoose, restHeight } from '../../../src/engine/mechanics/looseConductor.ts';
import { endsAt, looseRuns, runWithout, tiesOf } from '../../../src/engine/mechanics/looseRuns.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { model, only } from '../circuit/models/scenes.ts';
import { laid } from '../circuit/scene.ts';

const scene = model('loose');
const one = only(scene, 'one');
const both = only(scene, 'one', 'two');
const held = (world: World, ...spans: readonly string[]): World =>
  spans.reduce((w, id) => withPart(w, id, { supported: true }), world);
const sagged = (world: World, sagM: number): World =>
  ['s1.phase', 's2.phase', 's3.phase'].reduce(
    (w, id) => withPart(w, id, { values: { ...partById(w, id).values, sagM } }),
    world,
  );
const names = (world: World): readonly string[] => looseRuns(world).map(({ tie }) => tie.id);

describe('a lost tie', () => {
  test('lets the two spans beside it lie loose, between the ties that hold', () => {
    const [run] = looseRuns(one);
    expect(run?.tie.id).toBe('p2.tie');
    expect(run?.spans.map(({ id }) => id).sort()).toEqual(['s1.phase', 's2.phase']);
    expect([run?.over.conductor.from[0], run?.over.conductor.to[0], run?.at]).toEqual([-60, 60, 60]);
  });

  test('beside another one lets three spans lie loose, told once for each tie', () => {
    const runs = looseRuns(both);
    expect(runs.map(({ tie }) => tie.id)).toEqual(['p2.tie', 'p3.tie']);
    for (const { over, spans } of runs) {
      expect(spans.map(({ id }) => id).sort()).toEqual(['s1.phase', 's2.phase', 's3.phase']);
      expect([over.conductor.from[0], over.conductor.to[0]]).toEqual([-60, 119.65].map((x) => expect.closeTo(x, 0)));
    }
    expect(runs.map(({ at }) => at)).toEqual([60, 120]);
    // Three equal spans of sag D sag 3 D as one, and at a third of the way 8/9 of that.
    const [first] = runs;
    if (!first) throw new Error('no run');
    const chord = first.tie.at[2] + ((first.over.conductor.to[2] - first.over.conductor.from[2]) * 60) / 180;
    expect(chord - restHeight(first.over.conductor, 60)).toBeCloseTo((8 / 9) * 3 * 0.9144, 1);
  });

  test('counts as held while an arm carries both its spans, and no longer', () => {
    expect(names(held(one, 's1.phase', 's2.phase'))).toEqual([]);
    expect(names(held(one, 's1.phase'))).toEqual(['p2.tie']);
    expect(names(held(both, 's1.phase', 's2.phase'))).toEqual(['p3.tie']);
    expect(looseRuns(held(both, 's1.phase', 's2.phase'))[0]?.spans.map(({ id }) => id)).toEqual([
      's2.phase',
      's3.phase',
    ]);
  });

  test('lets no double span lie loose when one of the two has parted', () => {
    expect(names(only(scene, 'two', 'parted'))).toEqual([]);
  });
});

test('an insulator whose head is gone loses the tie that lies on it', () => {
  const gone = withPart(only(scene), 'p3.insulator', { faults: [laid('pin-insulator-parted', {}, null, 'head')] });
  expect(names(gone)).toEqual(['p3.tie']);
  expect(tiesOf(gone, partById(gone, 'p3.insulator')).map(({ id }) => id)).toEqual(['p3.tie']);
  expect(tiesOf(gone, partById(gone, 'p3.pole'))).toEqual([]);
});

test('a sound tie can be taken off, unless its conductor is held', () => {
  const sound = only(scene);
  const tie = partById(sound, 'p3.tie');
  expect(looseRuns(sound)).toEqual([]);
  expect(endsAt(sound, tie).map(({ part, end }) => `${part.id} ${end}`)).toEqual(['s2.phase b', 's3.phase a']);
  expect(runWithout(sound, tie)?.spans.map(({ id }) => id)).toEqual(['s2.phase', 's3.phase']);
  expect(runWithout(held(sound, 's2.phase', 's3.phase'), tie)).toBeNull();
});

test('more sag or another lost tie never takes a place out of reach that was within it', () => {
  const within = (world: World, place: Vec3): boolean =>
    looseRuns(world).some(({ over }) => distanceToLoose(over.conductor, place) <= 1e-9);
  const sag = fc.double({ min: 0.2, max: 4, noNaN: true });
  const place = fc.tuple(
    fc.double({ min: -60, max: 60, noNaN: true }),
    fc.double({ min: -8, max: 8, noNaN: true }),
    fc.double({ min: 0, max: 9, noNaN: true }),
  );
  fc.assert(
    fc.property(sag, sag, place, (a, b, at) => {
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      if (!within(sagged(one, less), at)) return;
      expect(within(sagged(one, more), at)).toBe(true);
      expect(within(sagged(both, less), at)).toBe(true);
    }),
    { numRuns: 120, seed: 5 },
  );
});
