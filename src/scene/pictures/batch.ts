/** Joins what is drawn of one pole or premises into one mesh a material, so that a frame has few things to draw. */
import { type BufferGeometry, Group, type Material, Mesh } from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';

interface Pile {
  readonly like: Mesh;
  readonly shapes: BufferGeometry[];
}

/** Marks lie in order over what bears them, and spans swing by themselves. */
const isJoined = (mesh: Mesh): boolean =>
  mesh.isMesh === true &&
  !mesh.name.startsWith('mark-') &&
  mesh.geometry.getIndex() !== null &&
  !('swing' in mesh.geometry.attributes);

const keyOf = (mesh: Mesh): string =>
  [
    (mesh.material as Material).uuid,
    mesh.castShadow,
    mesh.renderOrder,
    Object.keys(mesh.geometry.attributes).sort().join(' '),
  ].join(' ');

/** One group for these; what is in it is hidden where it stood, and stays there to be pointed at and measured. */
export const batchOf = (groups: readonly Group[]): Group => {
  const piles = new Map<string, Pile>();
  for (const group of groups) {
    group.updateMatrix();
    for (const child of group.children as Mesh[]) {
      if (!isJoined(child)) continue;
      const key = keyOf(child);
      const pile = piles.get(key) ?? { like: child, shapes: [] };
      pile.shapes.push(child.geometry.clone().applyMatrix4(group.matrix));
      piles.set(key, pile);
      child.visible = false;
    }
  }
  const batch = new Group();
  for (const { like, shapes } of piles.values()) {
    const joined = mergeGeometries(shapes, false);
    for (const shape of shapes) shape.dispose();
    if (!joined) throw new Error(`shapes in ${like.name} cannot be joined`);
    const mesh = new Mesh(joined, like.material);
    mesh.name = 'joined';
    mesh.castShadow = like.castShadow;
    mesh.receiveShadow = like.receiveShadow;
    mesh.renderOrder = like.renderOrder;
    mesh.matrixAutoUpdate = false;
    batch.add(mesh);
  }
  batch.matrixAutoUpdate = false;
  return batch;
};
