/**
 * Wood crossarm with two flat braces. Origin: face of the pole at the through-bolt; the arm's face is toward `side`, the
 * arm itself runs at right angles to it. Size: length, width (height of the section), depth, drop of the braces.
 */
import { BoxGeometry } from 'three';
import { builder } from './assembly.ts';
import { bar, bolt } from './shapes.ts';

export const crossarm = builder({
  kind: 'crossarm',
  size: { length: 2.44, width: 0.12, depth: 0.095, brace: 0.56 },
  build: (a, s) => {
    const arm = new BoxGeometry(s.depth, s.length, s.width, 1, 10, 1);
    const p = arm.getAttribute('position');
    const uv = arm.getAttribute('uv');
    for (let i = 0; i < p.count; i++) uv.setXY(i, 0.12 * (p.getX(i) + p.getZ(i)) * 10, p.getY(i) / 3 + 0.4);
    a.add('wood', arm.translate(s.depth / 2 + 0.004, 0, 0));
    a.add('zinc', bolt([s.depth + 0.004, 0, 0], [1, 0, 0]));
    for (const e of [-1, 1]) {
      a.add(
        'zinc',
        bar([s.depth + 0.008, e * s.brace * 1.25, -0.01], [0.006, e * 0.01, -s.brace], 0.032, 0.0065, [1, 0, 0]),
      );
      a.add('zinc', bolt([s.depth + 0.011, e * s.brace * 1.25, -0.01], [1, 0, 0], 0.018, 0));
    }
    a.add('zinc', bolt([0.012, 0, -s.brace], [1, 0, 0], 0.024, 0));
    const top = s.width / 2;
    for (const [name, y] of [
      ['left', -s.length / 2 + 0.1],
      ['inner', -0.37],
      ['right', s.length / 2 - 0.1],
    ] as const) {
      a.name(name, [s.depth / 2 + 0.004, y, top]);
    }
  },
});
