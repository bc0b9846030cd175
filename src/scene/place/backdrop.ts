/** Builds what stands about in a setting, and joins it to one mesh a material: many walls, few draws. */
import { type BufferGeometry, type Group, Mesh } from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import type { MaterialName, Materials } from '../materials/materials.ts';
import { groundAt } from './lie.ts';
import type { Standing } from './types.ts';

/** Builds into a group, a piece at a time. */
export const backdropSteps = function* (standing: readonly Standing[], set: Materials, into: Group): Generator<void> {
  const shapes = new Map<string, BufferGeometry[]>();
  for (const { build, spec, at } of standing) {
    const made = build(spec, set);
    for (const child of made.children as Mesh[]) {
      const moved = child.geometry.translate(at[0], at[1], at[2] + Math.max(0, groundAt(at[0], at[1])));
      shapes.set(child.name, [...(shapes.get(child.name) ?? []), moved]);
    }
    yield;
  }
  for (const [name, list] of shapes) {
    const material = set[name as MaterialName];
    const mesh = new Mesh(mergeGeometries(list), material);
    for (const one of list) one.dispose();
    mesh.castShadow = !material.transparent;
    mesh.receiveShadow = true;
    into.add(mesh);
    yield;
  }
};
