/** A line that runs beside x = 0, y = 0 is drawn as it would be there, moved. */
import { type Mesh, Vector3 } from 'three';
import { expect, it } from 'vitest';
import type { World } from '../../../src/engine/world/types.ts';
import { drawingOf } from '../../../src/scene/pictures/drawWorld.ts';
import { fogWorld } from '../fogWorld.ts';
import { bare } from '../hardware/parts.ts';

const aside = -4.6;
const moved = (world: World): World => ({
  ...world,
  parts: world.parts.map((part) =>
    part.pole === null && part.premises !== null
      ? part
      : {
          ...part,
          at: [part.at[0], part.at[1] + aside, part.at[2]] as const,
          end: part.end && ([part.end[0], part.end[1] + aside, part.end[2]] as const),
        },
  ),
});

type Drawing = ReturnType<typeof drawingOf>;

const drawn = (world: World): Drawing => {
  const drawing = drawingOf(bare);
  drawing.follow(world);
  return drawing;
};

/** How far across the line reaches what is drawn for a part. */
function reachOf(drawing: Drawing, id: string): { readonly low: number; readonly high: number } {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const object of drawing.of(id)) {
    object.updateMatrixWorld();
    object.traverse((o) => {
      const p = (o as Mesh).geometry?.getAttribute('position');
      for (let i = 0; p && i < p.count; i++) {
        const { y } = new Vector3().fromBufferAttribute(p, i).applyMatrix4(o.matrixWorld);
        [low, high] = [Math.min(low, y), Math.max(high, y)];
      }
    });
  }
  return { low, high };
}

const world = fogWorld();
const [straight, beside] = [drawn(world), drawn(moved(world))];
const onPoles = world.parts.filter(({ pole }) => pole === 'p1' || pole === 'p2' || pole === 'p3').map(({ id }) => id);

it.each(onPoles)('%s moves with its pole', (id) => {
  const [here, there] = [reachOf(straight, id), reachOf(beside, id)];
  if (here.low > here.high) return;
  expect(there.low).toBeCloseTo(here.low + aside, 3);
  expect(there.high).toBeCloseTo(here.high + aside, 3);
});
