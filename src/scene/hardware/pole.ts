/**
 * Wood pole. Origin: groundline on the axis. Text: brand (class and length), burnt in about 1.2 m above ground on `side`.
 * Size: height above ground, diameters at top and groundline, fall of the roof to both sides of the line, lean. States:
 * `whole`, `split-top` (roof opened in two along the line), `broken` is not drawn: a pole that fell is another scene.
 */
import { BufferAttribute, BufferGeometry } from 'three';
import { builder } from './assembly.ts';
import { lettering, wrapped } from './lettering.ts';
import { type PoleSize, poleRadius, poleWall } from './poleShape.ts';

const roof = (size: PoleSize & { roof: number }): BufferGeometry => {
  const n = 48;
  const radius = (size.topDiameter / 2) * 1.003;
  const position = [0, 0, size.height];
  const uv = [0.5, 0.5];
  for (let i = 0; i <= n; i++) {
    const a = (i / n) * 2 * Math.PI;
    const y = radius * Math.sin(a);
    position.push(radius * Math.cos(a), y, size.height - size.roof * Math.abs(y) + 0.0008);
    uv.push(0.5 + 0.48 * Math.cos(a), 0.5 + 0.48 * Math.sin(a));
  }
  const g = new BufferGeometry();
  g.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  g.setAttribute('uv', new BufferAttribute(new Float32Array(uv), 2));
  g.setIndex(Array.from({ length: n }, (_, i) => [0, i + 1, i + 2]).flat());
  g.computeVertexNormals();
  return g;
};

/** Metres that the top is split down, and how far each half leans out at the roof. */
const SPLIT = 0.95;
const APART = 0.026;

/** Leans both halves of the top away from each other. */
const parted = (g: BufferGeometry, height: number): BufferGeometry => {
  const p = g.getAttribute('position');
  for (let i = 0; i < p.count; i++) {
    const t = Math.max(0, (p.getZ(i) - (height - SPLIT)) / SPLIT);
    const x = p.getX(i);
    p.setX(i, x + Math.sign(x) * APART * t * t);
  }
  g.computeVertexNormals();
  return g;
};

/** The dark of the gap, a wedge that stands a little proud on both faces. */
const splitFace = (size: PoleSize & { roof: number }): BufferGeometry => {
  const n = 14;
  const position: number[] = [];
  const index: number[] = [];
  for (const side of [-1, 1]) {
    const start = position.length / 3;
    for (let i = 0; i <= n; i++) {
      const t = i / n;
      const z = size.height - SPLIT * (1 - t);
      const wide = APART * t * t + 0.0015;
      const y = side * (poleRadius(size, z) + 0.003);
      const fall = t === 1 ? size.roof * (size.topDiameter / 2) : 0;
      const wander = 0.006 * Math.sin(t * 9 + side);
      position.push(-wide + wander, y, z - fall, wide + wander, y, z - fall);
      const k = start + i * 2;
      if (i < n)
        index.push(...(side > 0 ? [k, k + 2, k + 1, k + 1, k + 2, k + 3] : [k, k + 1, k + 2, k + 1, k + 3, k + 2]));
    }
  }
  const roofAt = (y: number): number => size.height - size.roof * Math.abs(y) + 0.002;
  const r = size.topDiameter / 2;
  const start = position.length / 3;
  for (const y of [-r, 0, r]) position.push(-APART, y, roofAt(y), APART, y, roofAt(y));
  for (const k of [0, 2])
    index.push(start + k, start + k + 1, start + k + 2, start + k + 1, start + k + 3, start + k + 2);
  const g = new BufferGeometry();
  g.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  g.setIndex(index);
  g.computeVertexNormals();
  return g;
};

export const pole = builder({
  kind: 'pole',
  states: ['whole', 'split-top'],
  size: { height: 10.36, topDiameter: 0.2, groundDiameter: 0.29, roof: 0.3, below: 0.3 },
  build: (a, size, part) => {
    const wall = poleWall(size, part.seed, size.below, size.roof);
    if (part.state === 'split-top') {
      a.add('wood', parted(wall, size.height));
      a.add('woodEnd', parted(roof(size), size.height));
      a.add('black', splitFace(size));
    } else {
      a.add('wood', wall);
      a.add('woodEnd', roof(size));
    }
    part.text.split('|').forEach((line, i) => {
      const z = 1.32 - 0.075 * i;
      for (const g of lettering(line, 0.045, 0.0012, 2)) {
        a.add('black', wrapped(g, poleRadius(size, z)).translate(0.0006, 0, z));
      }
    });
    a.name('top', [0, 0, size.height]);
    const steps = 24;
    a.markable(
      Array.from({ length: steps + 1 }, (_, i) => {
        const z = ((size.height - size.roof * size.topDiameter * 0.5 - 0.004) * i) / steps;
        return [poleRadius(size, z), z] as const;
      }),
      0.002,
    );
  },
});
