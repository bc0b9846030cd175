/** A broken branch lying across a conductor: bark, twigs, leaves. Origin: where it rests; its butt points away along `side`. */
import { type BufferAttribute, PlaneGeometry, Vector3 } from 'three';
import { stream } from '../materials/noise.ts';
import { builder } from './assembly.ts';
import { curve } from './shapes.ts';
import type { Point } from './types.ts';
import { wire } from './wire.ts';

export const limb = builder({
  kind: 'limb',
  size: { length: 2.2, thick: 0.03 },
  build: (a, s, part) => {
    const next = stream(part.seed * 13 + 5);
    const main: Point[] = [
      [s.length * 0.55, 0.1, -0.42],
      [s.length * 0.25, 0.03, -0.1],
      [0, 0, 0.035],
      [-s.length * 0.28, -0.06, -0.06],
      [-s.length * 0.5, 0.05, -0.3],
    ];
    const stem = curve(main, 26);
    a.add(
      'bark',
      wire(stem, (t) => s.thick * (1.1 - 0.85 * t), 7),
    );
    for (let i = 0; i < 9; i++) {
      const root = stem[8 + i * 2] as Vector3;
      const way = new Vector3(next() - 0.5, next() - 0.5, next() * 0.5 - 0.35).normalize();
      const reach = 0.25 + 0.35 * next();
      const tip = root
        .clone()
        .addScaledVector(way, reach)
        .add(new Vector3(0, 0, -0.1));
      const mid = root
        .clone()
        .lerp(tip, 0.5)
        .add(new Vector3(0, 0, 0.04));
      a.add(
        'bark',
        wire([root, mid, tip], (t) => 0.008 * (1 - 0.7 * t), 5),
      );
      for (let k = 0; k < 3; k++) {
        const card = new PlaneGeometry(0.34, 0.34)
          .rotateX(next() * 3)
          .rotateY(next() * 3)
          .rotateZ(next() * 6);
        const n = card.getAttribute('normal') as BufferAttribute;
        for (let j = 0; j < n.count; j++) n.setXYZ(j, 0, 0, 1);
        const at = root.clone().lerp(tip, 0.5 + 0.25 * k);
        a.add('leaves', card.translate(at.x, at.y, at.z - 0.04));
      }
    }
  },
});
