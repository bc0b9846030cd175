/**
 * Moulding over a ground wire: half-round channel of plastic or wood, strapped to the pole at azimuth `side`. Origin:
 * groundline on the pole's axis. States: `whole`, `loose` (upper half swung out from the pole), `missing` (straps only).
 * Size: the pole's, height of the moulding.
 */
import { CylinderGeometry, Matrix4 } from 'three';
import { builder } from './assembly.ts';
import { poleRadius } from './poleShape.ts';
import { bar, bolt, ring } from './shapes.ts';

const channel = (from: number, to: number, on: (z: number) => number): CylinderGeometry => {
  const g = new CylinderGeometry(0.0135, 0.0135, to - from, 10, 6, false, -0.25, Math.PI + 0.5);
  g.rotateX(Math.PI / 2).translate(0, 0, (from + to) / 2);
  const p = g.getAttribute('position');
  for (let i = 0; i < p.count; i++) p.setX(i, p.getX(i) + on(p.getZ(i)) - 0.001);
  return g;
};

export const moulding = builder({
  kind: 'moulding',
  states: ['whole', 'loose', 'missing'],
  size: { height: 10.36, topDiameter: 0.2, groundDiameter: 0.29, top: 2.4 },
  build: (a, size, part) => {
    const on = (z: number): number => poleRadius(size, z);
    const half = size.top * 0.5;
    const upTo = part.state === 'whole' ? size.top : half;
    if (part.state !== 'missing') a.add('moulding', channel(0, upTo, on));
    if (part.state === 'loose') {
      const foot = new Matrix4().makeTranslation(on(half), 0, half).multiply(new Matrix4().makeRotationY(0.22));
      a.within(foot.multiply(new Matrix4().makeTranslation(-on(half), 0, -half)), () =>
        a.add('moulding', channel(half, size.top, on)),
      );
    }
    for (let z = 0.25; z < upTo; z += 0.65) {
      if (part.state !== 'missing')
        a.add('zinc', ring([on(z) - 0.001, 0, z], [0, 0, 1], 0.0155, 0.0028, Math.PI).rotateZ(0));
      for (const y of [-0.021, 0.021]) {
        a.add('zinc', bar([on(z) - 0.002, y - 0.006, z], [on(z) - 0.002, y + 0.006, z], 0.012, 0.004, [1, 0, 0]));
        a.add('zinc', bolt([on(z), y, z], [1, 0, 0], 0.007, 0));
      }
    }
    a.name('top', [on(upTo), 0, upTo]);
  },
});
