/**
 * Wood pole. Origin: groundline on the axis. Text: brand (class and length), burnt in about 1.2 m above ground on `side`.
 * Size: height above ground, diameters at top and groundline, fall of the roof to both sides of the line.
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

export const pole = builder({
  kind: 'pole',
  size: { height: 10.36, topDiameter: 0.2, groundDiameter: 0.29, roof: 0.3, below: 0.3 },
  build: (a, size, part) => {
    a.add('wood', poleWall(size, part.seed, size.below, size.roof));
    a.add('woodEnd', roof(size));
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
