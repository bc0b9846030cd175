/** A leaning pole as drawn: the upright drawing, each point of it moved aside as the engine moves its parts. */
import { Box3, type Mesh, type Object3D, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { partById } from '../../../src/engine/world/edit.ts';
import { leaningAgain } from '../../../src/engine/world/lean.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { materials } from '../../../src/scene/materials/materials.ts';
import { drawingOf } from '../../../src/scene/pictures/drawWorld.ts';
import { joinedOf } from '../../../src/scene/pictures/joined.ts';
import { laid } from '../everyKind.ts';
import { fogWorld } from '../fogWorld.ts';

const SLOPE = 0.07;
const upright = fogWorld();
const faults = [laid('pole-leaning', 'any')];
const world: World = {
  ...upright,
  parts: leaningAgain(
    upright.parts.map((part) => (part.id === 'p2.pole' ? { ...part, faults } : part)),
    { ...partById(upright, 'p2.pole'), faults },
  ),
};
const set = materials();
const drawn = (of: World) => {
  const drawing = drawingOf(set);
  drawing.follow(of);
  return drawing;
};
const sound = drawn(upright);
const leaning = drawn(world);

/** All points of meshes that are no marks, where they stand. */
const pointsOf = (roots: readonly Object3D[]): readonly Vector3[] => {
  const out: Vector3[] = [];
  for (const root of roots) {
    root.updateWorldMatrix(true, true);
    root.traverse((o) => {
      const { geometry } = o as Mesh;
      if (geometry === undefined || o.name.startsWith('mark-')) return;
      const p = geometry.getAttribute('position');
      for (let i = 0; i < p.count; i++) out.push(new Vector3().fromBufferAttribute(p, i).applyMatrix4(o.matrixWorld));
    });
  }
  return out;
};

describe('a leaning pole as drawn', () => {
  it.each(upright.parts.filter(({ pole, end }) => pole === 'p2' && end === null).map(({ id }) => id))(
    'has %s as it is when plumb, moved aside by its height',
    (id) => {
      const [was, is] = [pointsOf(sound.of(id)), pointsOf(leaning.of(id))];
      expect(is).toHaveLength(was.length);
      for (const [i, p] of was.entries()) {
        const q = is[i] as Vector3;
        expect(q.distanceTo(new Vector3(p.x, p.y + SLOPE * p.z, p.z))).toBeLessThan(1e-4);
      }
    },
  );

  it('holds its spans where they are tied', () => {
    const box = new Box3().setFromPoints([...pointsOf(leaning.of('s1.phase'))]);
    const tie = partById(world, 'p2.tie').at;
    expect(box.distanceToPoint(new Vector3(...tie))).toBeLessThan(0.05);
    expect(box.max.y).toBeGreaterThan(0.5);
  });

  it('is joined where it leans', () => {
    const joined = joinedOf();
    joined.follow(leaning.groups());
    const heap = (points: readonly Vector3[]): Vector3 =>
      points.reduce((sum, p) => sum.add(p), new Vector3()).divideScalar(points.length);
    const shown = pointsOf(joined.root.children.filter(({ name }) => name === 'joined'));
    const members = pointsOf(leaning.groups().flatMap(({ children }) => children.filter(({ visible }) => !visible)));
    expect(shown).toHaveLength(members.length);
    expect(heap([...shown]).distanceTo(heap([...members]))).toBeLessThan(1e-4);
  });
});
