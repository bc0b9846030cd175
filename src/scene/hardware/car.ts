/** A plain car going by. Origin: ground under its middle; it heads along `side`. States: `day`, `lit` (lamps on). */
import { CylinderGeometry } from 'three';
import { builder } from './assembly.ts';
import { block, plate } from './shapes.ts';

export const car = builder({
  kind: 'car',
  states: ['day', 'lit'],
  size: { length: 4.5, width: 1.78 },
  build: (a, s, part) => {
    const h = s.length / 2;
    const body = plate(
      [
        [-h, 0.32],
        [h - 0.05, 0.3],
        [h, 0.5],
        [h - 0.1, 0.72],
        [h - 1.15, 0.86],
        [-h + 0.15, 0.92],
        [-h, 0.78],
      ],
      s.width - 0.12,
      0.06,
    );
    a.add('carPaint', body.rotateX(Math.PI / 2).translate(0, s.width / 2 - 0.06, 0));
    const cabin = plate(
      [
        [h - 1.35, 0.86],
        [h - 2.05, 1.36],
        [-h + 1.2, 1.42],
        [-h + 0.45, 0.92],
      ],
      s.width - 0.36,
      0.05,
    );
    a.add('windowDark', cabin.rotateX(Math.PI / 2).translate(0, s.width / 2 - 0.18, 0));
    a.add('carPaint', block([-0.3, 0, 1.43], [1.3, s.width - 0.42, 0.06], 0.4));
    for (const x of [-h + 0.85, h - 0.9]) {
      for (const y of [-1, 1]) {
        a.add('rubber', new CylinderGeometry(0.32, 0.32, 0.2, 20).translate(x, y * (s.width / 2 - 0.12), 0.32));
        a.add('zinc', new CylinderGeometry(0.19, 0.19, 0.205, 14).translate(x, y * (s.width / 2 - 0.12), 0.32));
      }
    }
    const lit = part.state === 'lit';
    for (const y of [-1, 1]) {
      a.add(lit ? 'lampLit' : 'lens', block([h - 0.04, y * 0.62, 0.66], [0.06, 0.32, 0.13], 0.4));
      a.add(lit ? 'lampRed' : 'red', block([-h - 0.02, y * 0.68, 0.74], [0.05, 0.24, 0.13], 0.4));
    }
    a.name('front', [h, 0, 0.66]);
  },
});
