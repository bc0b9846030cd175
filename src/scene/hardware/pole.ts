/**
 * Wood pole. Origin: groundline on the axis. Text: brand (class and length), burnt in about 1.2 m above ground on `side`.
 * Size: height above ground, diameters at top and groundline, fall of the roof to both sides of the line, turn of a split. States:
 * `whole`, `split-top` (top opened in two; one looks through it along y, turned by `split`), `broken` is not drawn: a pole that fell is another scene.
 */
import { BufferAttribute, BufferGeometry, Matrix4 } from 'three';
import { builder } from './assembly.ts';
import { lettering, wrapped } from './lettering.ts';
import { type PoleSize, poleRadius, poleWall } from './poleShape.ts';
import { parted, tornFaces } from './poleSplit.ts';

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
  states: ['whole', 'split-top'],
  size: { height: 10.36, topDiameter: 0.2, groundDiameter: 0.29, roof: 0.3, below: 0.3, split: 0 },
  build: (a, size, part) => {
    const wall = poleWall(size, part.seed, size.below, size.roof);
    if (part.state === 'split-top') {
      const half = (z: number): number => poleRadius(size, z);
      const roofAt = (y: number): number => size.height - size.roof * Math.abs(y * Math.cos(size.split));
      const cut = (g: BufferGeometry): BufferGeometry => parted(g.rotateZ(-size.split), size.height);
      a.within(new Matrix4().makeRotationZ(size.split), () => {
        a.add('wood', cut(wall), tornFaces(size.height, half, roofAt));
        a.add('woodEnd', cut(roof(size)));
      });
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
