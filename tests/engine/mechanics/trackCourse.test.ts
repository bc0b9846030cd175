/** The course of a burn between two places: where it begins and ends, that it branches, and that it is always the same. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Spot, type TrackStep, trackCourse, trackEnd } from '../../../src/engine/mechanics/trackCourse.ts';
import { partById, pointAt } from '../../../src/engine/world/edit.ts';
import { fogScene } from '../circuit/scene.ts';

const from: Spot = [1.57, 9.9];
const to: Spot = [0.8, 8.6];
const course = trackCourse(from, to, 0.1, 'a burn');
const keyOf = ([a, z]: Spot): string => `${a} ${z}`;

/** Steps from the end back to the start. */
function wayBack(steps: readonly TrackStep[]): readonly TrackStep[] {
  const into = new Map(steps.map((step) => [keyOf(step[1]), step]));
  const way: TrackStep[] = [];
  for (let step = steps.at(-1); step !== undefined; step = into.get(keyOf(step[0]))) way.push(step);
  return way;
}

describe('a course', () => {
  test('leads without a gap from where the metal meets the wood to where the leak ends', () => {
    const way = wayBack(course);
    expect(way[0]?.[1]).toEqual(to);
    expect(way.at(-1)?.[0]).toEqual(from);
    const length = way.reduce((sum, [[a, z], [b, y]]) => sum + Math.hypot((b - a) * 0.1, y - z), 0);
    expect(length).toBeGreaterThan(1.3);
    expect(length).toBeLessThan(4);
  });

  test('branches: more grows than leads to the end', () => {
    expect(course.length).toBeGreaterThan(1.5 * wayBack(course).length);
    const starts = course.map(([a]) => keyOf(a));
    expect(new Set(starts).size).toBeLessThan(starts.length);
  });

  test('tells each place after the one that it grew from', () => {
    const known = new Set([keyOf(from)]);
    for (const [a, b] of course) {
      expect(known.has(keyOf(a))).toBe(true);
      known.add(keyOf(b));
    }
  });

  test('is the same for the same seed and another for another', () => {
    expect(trackCourse(from, to, 0.1, 'a burn')).toEqual(course);
    expect(trackCourse(from, to, 0.1, 'another burn')).not.toEqual(course);
  });

  test('comes to its end wherever that is, and stays beside the way', () => {
    const place = fc.tuple(fc.double({ min: -3, max: 3, noNaN: true }), fc.double({ min: 9, max: 9.9, noNaN: true }));
    fc.assert(
      fc.property(place, (end) => {
        const steps = trackCourse(from, end, 0.1, 'any');
        expect(steps.at(-1)?.[1]).toEqual(end);
        const low = Math.min(end[1], from[1]) - 0.1;
        for (const [, [, z]] of steps) expect(z > low && z < 10).toBe(true);
      }),
      { numRuns: 12, seed: 2 },
    );
  });
});

test('a burn ends where its fault says that the leak ends, seen from the axis of the pole', () => {
  const world = fogScene();
  const pole = partById(world, 'p2.pole');
  const [burn] = pole.faults.filter(({ id }) => id === 'burn');
  if (!burn) throw new Error('no burn');
  const place = pointAt(world, burn.to ?? '') ?? [0, 0, 0];
  expect(trackEnd(world, pole, burn)).toEqual([Math.atan2(place[1] - pole.at[1], place[0] - pole.at[0]), place[2]]);
  expect(trackEnd(world, pole, { ...burn, to: null })).toBeNull();
});
