import { DoubleSide, type Material, type Mesh, type Object3D, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { withPart } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { CASTERS } from '../../../src/scene/look/casters.ts';
import { materials } from '../../../src/scene/materials/materials.ts';
import { drawingOf } from '../../../src/scene/pictures/drawWorld.ts';
import { joinedOf } from '../../../src/scene/pictures/joined.ts';
import { fogWorld } from '../fogWorld.ts';

const world = fogWorld();
const set = materials();
const meshesIn = (root: Object3D): Mesh[] => {
  const out: Mesh[] = [];
  root.traverseVisible((o) => {
    if ((o as Mesh).isMesh) out.push(o as Mesh);
  });
  return out;
};
const onLayer = (meshes: readonly Mesh[], layer: number): readonly Mesh[] =>
  meshes.filter(({ layers }) => (layers.mask & (1 << layer)) !== 0);
const points = (meshes: readonly Mesh[]): number =>
  meshes.reduce((sum, mesh) => sum + mesh.geometry.getAttribute('position').count, 0);
const open = (of: World): World => withPart(of, 'p2.cutout', { state: { position: 'open', link: 'sound' } });

describe('a joined drawing', () => {
  const apart = drawingOf(set);
  apart.follow(world);
  const whole = meshesIn(apart.root);
  const drawing = drawingOf(set);
  drawing.follow(world);
  const joined = joinedOf();
  joined.follow(drawing.groups());
  const shown = () => [...onLayer(meshesIn(joined.root), 0), ...meshesIn(drawing.root)];

  it('draws all that is there once, in few meshes', () => {
    expect(points(shown())).toBe(points(whole));
    expect(shown().length).toBeLessThan(0.25 * whole.length);
  });

  it('throws the shadow of all that throws one, in a mesh for each way of facing', () => {
    const casters = onLayer(meshesIn(joined.root), CASTERS).filter(({ castShadow }) => castShadow);
    expect(points(casters)).toBe(points(whole.filter(({ castShadow }) => castShadow)));
    const pierced = casters.filter(({ material }) => (material as Material).alphaTest > 0);
    expect(casters.length - pierced.length).toBe(2);
    expect(casters.map(({ material }) => (material as Material).side)).toContain(DoubleSide);
    expect(onLayer(shown(), CASTERS).length).toBe(pierced.length);
  });

  it('has every vertex where it stood', () => {
    const corner = (meshes: readonly Mesh[], pick: 'min' | 'max'): Vector3 =>
      meshes.reduce((out, mesh) => {
        const { x, y, z } = mesh.parent?.position ?? new Vector3();
        const p = mesh.geometry.getAttribute('position');
        for (let i = 0; i < p.count; i++) out[pick](new Vector3(p.getX(i) + x, p.getY(i) + y, p.getZ(i) + z));
        return out;
      }, new Vector3());
    for (const pick of ['min', 'max'] as const)
      expect(corner(shown(), pick).distanceTo(corner(whole, pick))).toBeLessThan(1e-4);
  });

  it('makes anew only the piles in which something has changed', () => {
    const before = new Set(joined.root.children);
    drawing.follow(open(world));
    joined.follow(drawing.groups());
    const anew = joined.root.children.filter((mesh) => !before.has(mesh));
    expect(anew.length).toBeGreaterThan(0);
    expect(anew.length).toBeLessThan(0.5 * joined.root.children.length);
    const again = new Set(joined.root.children);
    joined.follow(drawing.groups());
    expect(new Set(joined.root.children)).toEqual(again);
  });

  it('is empty when taken down', () => {
    joined.dispose();
    expect(joined.root.children).toEqual([]);
  });
});
