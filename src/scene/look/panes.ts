/** The panes in a mesh of lit windows: each body by itself, flat boxes upright in a wall. */
import { type Mesh, type Object3D, Vector3 } from 'three';
import type { Pane } from './spill.ts';

/** Vertices by the bodies that the triangles make of them. */
const bodiesOf = ({ geometry }: Mesh): readonly (readonly number[])[] => {
  const count = geometry.getAttribute('position').count;
  const root = Array.from({ length: count }, (_, i) => i);
  const rootOf = (i: number): number => {
    let at = i;
    while (root[at] !== at) at = root[at] as number;
    return at;
  };
  const index = geometry.getIndex();
  for (let i = 0; i + 2 < (index?.count ?? 0); i += 3)
    for (const k of [1, 2]) root[rootOf(index?.getX(i + k) as number)] = rootOf(index?.getX(i) as number);
  const bodies = new Map<number, number[]>();
  for (let i = 0; i < count; i++) bodies.set(rootOf(i), [...(bodies.get(rootOf(i)) ?? []), i]);
  return [...bodies.values()];
};

const extent = (points: readonly Vector3[], along: Vector3): number => {
  const by = points.map((p) => p.dot(along));
  return Math.max(...by) - Math.min(...by);
};

/** Panes of a mesh, looking away from where its building stands. */
export const panesOf = (mesh: Mesh): readonly Pane[] => {
  mesh.updateWorldMatrix(true, false);
  const position = mesh.geometry.getAttribute('position');
  const home = new Vector3().setFromMatrixPosition(mesh.matrixWorld);
  return bodiesOf(mesh).map((body): Pane => {
    const points = body.map((i) => new Vector3().fromBufferAttribute(position, i).applyMatrix4(mesh.matrixWorld));
    const at = points.reduce((sum, p) => sum.add(p), new Vector3()).divideScalar(points.length);
    let [xx, xy, yy] = [0, 0, 0];
    for (const { x, y } of points) {
      xx += (x - at.x) ** 2;
      xy += (x - at.x) * (y - at.y);
      yy += (y - at.y) ** 2;
    }
    // A wall's direction is that in which a pane reaches farthest.
    const wall = Math.atan2(2 * xy, xx - yy) / 2;
    const out = new Vector3(-Math.sin(wall), Math.cos(wall), 0);
    if (out.dot(at.clone().sub(home).setZ(0)) < 0) out.negate();
    const width = extent(points, new Vector3(Math.cos(wall), Math.sin(wall), 0));
    return { at, out, width, height: extent(points, new Vector3(0, 0, 1)) };
  });
};

/** All panes of a kind of material under an object. */
export const panesIn = (root: Object3D, name: string): readonly Pane[] => {
  const found: Pane[] = [];
  root.traverse((o) => {
    if (o.name === name && (o as Mesh).isMesh) found.push(...panesOf(o as Mesh));
  });
  return found;
};
