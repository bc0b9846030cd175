/** Conductors that have parted or come off their tie are drawn where the engine has them, on the ground and not under it. */
import { type Mesh, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { restHeight } from '../../../src/engine/mechanics/looseConductor.ts';
import { endsAt, runWithout } from '../../../src/engine/mechanics/looseRuns.ts';
import { withEnd, withEnds } from '../../../src/engine/mechanics/spanEnds.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import { piecesOf } from '../../../src/engine/world/lying.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { drawingOf } from '../../../src/scene/pictures/drawWorld.ts';
import { laid } from '../everyKind.ts';
import { fogWorld } from '../fogWorld.ts';
import { bare } from '../hardware/parts.ts';

const world = fogWorld();

const drawing = drawingOf(bare);
const verticesOf = (of: World, id: string): readonly Vector3[] => {
  drawing.follow(of);
  const found: Vector3[] = [];
  for (const object of drawing.of(id)) {
    object.updateMatrixWorld();
    object.traverse((o) => {
      const p = (o as Mesh).geometry?.getAttribute('position');
      if (!p) return;
      for (let i = 0; i < p.count; i++) found.push(new Vector3().fromBufferAttribute(p, i).applyMatrix4(o.matrixWorld));
    });
  }
  return found;
};
const away = (points: readonly Vector3[], place: readonly [number, number, number]): number =>
  Math.min(...points.map((p) => p.distanceTo(new Vector3(...place))));
const lowest = (points: readonly Vector3[]): number => Math.min(...points.map(({ z }) => z));

describe('a conductor that has parted', () => {
  it.each([2, 20, 40])('lies in its two pieces where the engine has them, %s m from its source end', (breakM) => {
    const fault = { ...laid('conductor-broken'), values: { ...laid('conductor-broken').values, breakM } };
    const parted = withPart(world, 's1.phase', { faults: [fault] });
    const drawn = verticesOf(parted, 's1.phase');
    const pieces = piecesOf(partById(parted, 's1.phase'));
    expect(pieces).toHaveLength(2);
    // A dead end holds its wire the length of its fittings away from the pole.
    for (const { held, foot, free } of pieces) {
      for (const place of foot === null ? [held, free] : [held, foot, free])
        expect(away(drawn, place)).toBeLessThan(0.9);
    }
    const [a, b] = [partById(parted, 's1.phase').at, partById(parted, 's1.phase').end ?? [0, 0, 0]];
    const middle = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2] as const;
    expect(away(drawn, middle)).toBeGreaterThan(3);
    expect(lowest(drawn)).toBeGreaterThan(-0.05);
  });
});

describe('a conductor off its tie', () => {
  const tie = partById(world, 'p2.tie');
  const run = runWithout(world, tie);

  it.each([
    ['low', 0],
    ['ground', 6],
  ] as const)('hangs in one curve, never under the ground (%s)', (position, more) => {
    if (run === null) throw new Error('the tie holds nothing');
    // Longer wire reaches the ground.
    const slack = more === 0 ? world : sagging(world, more);
    const over = runWithout(slack, tie)?.over.conductor ?? run.over.conductor;
    const height = Math.max(0, restHeight(over, run.at));
    expect(height === 0).toBe(position === 'ground');
    const fallen = withEnds(slack, endsAt(slack, tie), (end) => withEnd(end, height, position, 100));
    for (const id of ['s1.phase', 's2.phase']) {
      const drawn = verticesOf(fallen, id);
      const part = partById(fallen, id);
      for (const place of [part.at, part.end ?? part.at]) expect(away(drawn, [...place])).toBeLessThan(0.5);
      expect(lowest(drawn)).toBeGreaterThan(-0.05);
    }
  });
});

function sagging(of: World, sagM: number): World {
  return ['s1.phase', 's2.phase'].reduce(
    (w, id) => withPart(w, id, { values: { ...partById(w, id).values, sagM } }),
    of,
  );
}

describe('a conductor within reach', () => {
  it('hangs lowest where its fault has it', () => {
    const { at, end } = partById(world, 's2.phase');
    if (end === null) throw new Error('a span ends somewhere');
    const fault = laid('conductor-within-reach');
    const drawn = verticesOf(withPart(world, 's2.phase', { faults: [fault] }), 's2.phase');
    const along = (fault.values.alongM as number) / Math.hypot(end[0] - at[0], end[1] - at[1]);
    expect(lowest(drawn)).toBeCloseTo(2.4, 1);
    const [x, y] = [at[0] + (end[0] - at[0]) * along, at[1] + (end[1] - at[1]) * along];
    expect(away(drawn, [x, y, 2.4])).toBeLessThan(0.5);
  });
});
