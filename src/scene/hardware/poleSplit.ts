/**
 * The top of a wood pole split in two along the line: an opening through it, widest at the roof, that runs out below; both halves
 * lean away, and what tore is pale, splintered and proud of the weathered round.
 */
import { BufferAttribute, BufferGeometry } from 'three';
import { noise, step } from '../materials/noise.ts';

/** Metres that the top is split down, and how far each half leans out at the roof. */
export const SPLIT = 0.95;
const APART = 0.026;

/** Half the opening at a height, m. */
const openAt = (z: number, height: number): number => {
  const t = Math.min(1, Math.max(0, (z - (height - SPLIT)) / SPLIT));
  return APART * t * (0.35 + 0.65 * t);
};

/** Where the wood parted: it follows the grain, not a plane; x by place across the pole and height. */
const tear = (y: number, z: number): number =>
  0.009 * (noise(z * 2.6 + 40, 1.5, 11, 997, 9) - 0.5) + 0.003 * (noise(y * 60 + 30, z * 9 + 40, 12, 997, 997) - 0.5);

type Vertex = readonly number[];

/** Cuts a geometry along the tear above the foot of the split and leans its halves away from each other. */
export const parted = (g: BufferGeometry, height: number): BufferGeometry => {
  const names = Object.keys(g.attributes);
  const sizes = names.map((name) => g.getAttribute(name).itemSize);
  const place = names.indexOf('position');
  const first = sizes.slice(0, place).reduce((sum, n) => sum + n, 0);
  const vertex = (i: number): Vertex =>
    names.flatMap((name, k) =>
      Array.from({ length: sizes[k] as number }, (_, c) => g.getAttribute(name).getComponent(i, c)),
    );
  const off = (v: Vertex): number => (v[first] as number) - tear(v[first + 1] as number, v[first + 2] as number);
  const out: Vertex[] = [];
  const index: number[] = [];
  const known = new Map<string, number>();
  const put = (v: Vertex, side: number): number => {
    const key = `${side} ${v.map((n) => n.toFixed(6)).join()}`;
    const there = known.get(key);
    if (there !== undefined) return there;
    const moved = [...v];
    moved[first] = (v[first] as number) + side * openAt(v[first + 2] as number, height);
    known.set(key, out.length);
    return out.push(moved) - 1;
  };
  const fan = (polygon: readonly Vertex[], side: number): void => {
    const at = polygon.map((v) => put(v, side));
    for (let i = 1; i < at.length - 1; i++) index.push(at[0] as number, at[i] as number, at[i + 1] as number);
  };
  const { array = [] } = g.getIndex() ?? {};
  for (let i = 0; i < array.length; i += 3) {
    const corners = [0, 1, 2].map((k) => vertex(array[i + k] as number));
    const sides = corners.map((v) => Math.sign(off(v)) || 1);
    if (
      Math.max(...corners.map((v) => v[first + 2] as number)) < height - SPLIT ||
      sides.every((s) => s === sides[0])
    ) {
      fan(corners, sides[0] as number);
      continue;
    }
    for (const side of [-1, 1]) {
      const kept: Vertex[] = [];
      corners.forEach((v, k) => {
        const w = corners[(k + 1) % 3] as Vertex;
        const [p, q] = [off(v) * side, off(w) * side];
        if (p >= 0) kept.push(v);
        if (p >= 0 === q >= 0) return;
        const t = p / (p - q);
        kept.push(v.map((n, c) => n + ((w[c] as number) - n) * t));
      });
      if (kept.length > 2) fan(kept, side);
    }
  }
  const made = new BufferGeometry();
  let from = 0;
  names.forEach((name, k) => {
    const size = sizes[k] as number;
    const flat = out.flatMap((v) => v.slice(from, from + size));
    made.setAttribute(name, new BufferAttribute(new Float32Array(flat), size));
    from += size;
  });
  made.setIndex(index);
  return made;
};

/** The torn faces inside, splinters and all; `half`: half the pole's width at a height, `roofAt`: height of its roof across it. */
export const tornFaces = (
  height: number,
  half: (z: number) => number,
  roofAt: (y: number) => number,
): BufferGeometry => {
  const [rows, columns] = [26, 8];
  const position: number[] = [];
  const colour: number[] = [];
  const uv: number[] = [];
  const index: number[] = [];
  for (const side of [-1, 1]) {
    const start = position.length / 3;
    for (let j = 0; j <= rows; j++) {
      const t = j / rows;
      for (let i = 0; i <= columns; i++) {
        const u = (i / columns) * 2 - 1;
        const z0 = height - SPLIT + SPLIT * t;
        const y = u * half(z0) * 0.995;
        const z = height - SPLIT + (roofAt(y) - (height - SPLIT)) * t;
        // Splinters stand into the gap; at the rim the lip is torn proud of the round.
        const sliver = noise(u * 9 + 20, z * 1.7 + 30, 21 + side, 997, 997) ** 3;
        const into = Math.min(0.7 * openAt(z, height), 0.016 * sliver * step(0, 0.15, t));
        const lip = step(0.86, 1, Math.abs(u)) * 0.004 * noise(z * 14 + 9, side + 3, 5, 997, 9);
        position.push(tear(y, z) + side * (openAt(z, height) - into), y + Math.sign(u) * lip, z);
        const grain = noise(u * 26 + 40, z * 2.2 + 20, 8, 997, 997);
        const deep = 0.5 + 0.5 * step(0.1, 0.9, Math.abs(u));
        const k = (0.75 + 0.75 * grain) * deep * (0.55 + 0.45 * step(0, 0.5, t));
        colour.push(1.75 * k, 1.45 * k, 1.02 * k);
        uv.push(0.5 + y * 1.4, z / 3);
      }
    }
    for (let j = 0; j < rows; j++)
      for (let i = 0; i < columns; i++) {
        const p = start + j * (columns + 1) + i;
        const q = p + columns + 1;
        index.push(...(side > 0 ? [p, q, p + 1, p + 1, q, q + 1] : [p, p + 1, q, p + 1, q + 1, q]));
      }
  }
  const g = new BufferGeometry();
  g.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  g.setAttribute('color', new BufferAttribute(new Float32Array(colour), 3));
  g.setAttribute('uv', new BufferAttribute(new Float32Array(uv), 2));
  g.setIndex(index);
  g.computeVertexNormals();
  return g;
};
