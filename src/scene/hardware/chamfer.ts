/** Box with broken edges in 44 triangles: faces flat, edges shaded round, centred on the origin, texture in metres. */
import { BufferAttribute, BufferGeometry } from 'three';
import type { Point } from './types.ts';

/** Texture tiles a metre on metal faces. */
const tiles = 6;

export const chamferBox = (x: number, y: number, z: number, bevel: number): BufferGeometry => {
  const half: Point = [x / 2, y / 2, z / 2];
  const position: number[] = [];
  const normal: number[] = [];
  const uv: number[] = [];
  const index: number[] = [];
  const vertex = new Map<string, number>();
  const key = (axis: number, s: readonly number[]): string => `${axis}:${s.join()}`;
  for (let axis = 0; axis < 3; axis++) {
    const p = (axis + 1) % 3;
    const q = (axis + 2) % 3;
    for (const side of [-1, 1]) {
      const ids: number[] = [];
      for (const [sp, sq] of [
        [-1, -1],
        [1, -1],
        [1, 1],
        [-1, 1],
      ] as const) {
        const s = [0, 0, 0];
        s[axis] = side;
        s[p] = sp;
        s[q] = sq;
        const at = s.map((v, k) => v * ((half[k] as number) - (k === axis ? 0 : bevel)));
        const id = position.length / 3;
        position.push(...at);
        normal.push(...[0, 1, 2].map((k) => (k === axis ? side : 0)));
        uv.push((at[p] as number) * tiles, (at[q] as number) * tiles);
        vertex.set(key(axis, s), id);
        ids.push(id);
      }
      const [i, j, k, l] = ids as [number, number, number, number];
      if (side > 0) index.push(i, j, k, i, k, l);
      else index.push(i, k, j, i, l, k);
    }
  }
  const face = (ids: number[]): void => {
    const at = (i: number): Point => [position[i * 3] ?? 0, position[i * 3 + 1] ?? 0, position[i * 3 + 2] ?? 0];
    const [a, b, c] = [at(ids[0] as number), at(ids[1] as number), at(ids[2] as number)];
    const u = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
    const v = [c[0] - a[0], c[1] - a[1], c[2] - a[2]] as const;
    const out =
      (u[1] * v[2] - u[2] * v[1]) * (a[0] + c[0]) +
      (u[2] * v[0] - u[0] * v[2]) * (a[1] + c[1]) +
      (u[0] * v[1] - u[1] * v[0]) * (a[2] + c[2]);
    const turn = out >= 0 ? ids : [...ids].reverse();
    for (let k = 1; k < turn.length - 1; k++) index.push(turn[0] as number, turn[k] as number, turn[k + 1] as number);
  };
  const id = (axis: number, s: readonly number[]): number => vertex.get(key(axis, s)) as number;
  for (let free = 0; free < 3; free++) {
    const p = (free + 1) % 3;
    const q = (free + 2) % 3;
    for (const sp of [-1, 1]) {
      for (const sq of [-1, 1]) {
        const corner = (sf: number): number[] => {
          const s = [0, 0, 0];
          s[free] = sf;
          s[p] = sp;
          s[q] = sq;
          return s;
        };
        face([id(p, corner(-1)), id(p, corner(1)), id(q, corner(1)), id(q, corner(-1))]);
      }
    }
  }
  for (const sx of [-1, 1]) {
    for (const sy of [-1, 1]) {
      for (const sz of [-1, 1]) face([id(0, [sx, sy, sz]), id(1, [sx, sy, sz]), id(2, [sx, sy, sz])]);
    }
  }
  const g = new BufferGeometry();
  g.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  g.setAttribute('normal', new BufferAttribute(new Float32Array(normal), 3));
  g.setAttribute('uv', new BufferAttribute(new Float32Array(uv), 2));
  g.setIndex(index);
  return g;
};
