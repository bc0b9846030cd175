/** Outline of a part on the picture: the convex hull of its points as projected. Method: Andrew 1979, monotone chain. */
import { type Mesh, type Object3D, Vector3 } from 'three';
import type { Vec3 } from '../../engine/math/vec3.ts';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

const cross = (o: Spot, a: Spot, b: Spot): number => (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);

const chain = (sorted: readonly Spot[]): Spot[] => {
  const out: Spot[] = [];
  for (const p of sorted) {
    while (out.length >= 2 && cross(out[out.length - 2] as Spot, out[out.length - 1] as Spot, p) <= 0) out.pop();
    out.push(p);
  }
  out.pop();
  return out;
};

/** Corners of the smallest convex outline round spots, in order. */
export const hullOf = (spots: readonly Spot[]): readonly Spot[] => {
  const sorted = [...spots].sort((a, b) => a.x - b.x || a.y - b.y);
  return sorted.length < 3 ? sorted : [...chain(sorted), ...chain(sorted.reverse())];
};

/** Enough points of objects to outline them, world axes. */
export const pointsOf = (objects: readonly Object3D[], most = 1600): readonly Vec3[] => {
  const meshes: Mesh[] = [];
  for (const object of objects) {
    object.updateWorldMatrix(true, true);
    object.traverse((o) => {
      if ((o as Mesh).isMesh) meshes.push(o as Mesh);
    });
  }
  const total = meshes.reduce((n, m) => n + m.geometry.getAttribute('position').count, 0);
  const every = Math.max(1, Math.ceil(total / most));
  const v = new Vector3();
  return meshes.flatMap((mesh) => {
    const position = mesh.geometry.getAttribute('position');
    const out: Vec3[] = [];
    for (let i = 0; i < position.count; i += every) {
      v.fromBufferAttribute(position, i).applyMatrix4(mesh.matrixWorld);
      out.push([v.x, v.y, v.z]);
    }
    return out;
  });
};

/** Moves each corner outward from the middle by so much. */
export const widened = (corners: readonly Spot[], by: number): readonly Spot[] => {
  const n = Math.max(1, corners.length);
  const cx = corners.reduce((s, p) => s + p.x, 0) / n;
  const cy = corners.reduce((s, p) => s + p.y, 0) / n;
  return corners.map(({ x, y }) => {
    const l = Math.hypot(x - cx, y - cy) || 1;
    return { x: x + ((x - cx) / l) * by, y: y + ((y - cy) / l) * by };
  });
};
