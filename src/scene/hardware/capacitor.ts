/**
 * Capacitor on a pole. Variants: `unit` (one can on a bracket), `bank` (a rack of three cans with their oil switches).
 * Origin: face of the pole at the upper bolt; it stands off along `side`. Each can is a flat steel case with two bushings.
 * States: `whole`, `bulged` (case swollen), `leaking` is a mark on the surface `tank`. Size: width, depth and height of a can.
 */
import { BoxGeometry, type BufferGeometry, CylinderGeometry, Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { lettering } from './lettering.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, block, bolt, curve, rod } from './shapes.ts';
import { wire } from './wire.ts';

interface Can {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
}

/** Steel case with its broad faces blown out by `out` metres in the middle. */
const casing = (c: Can, out: number): BufferGeometry => {
  if (out === 0) return block([0, 0, 0], [c.width, c.depth, c.height], 0.08);
  const g = new BoxGeometry(c.width, c.depth, c.height, 10, 3, 12);
  const p = g.getAttribute('position');
  for (let i = 0; i < p.count; i++) {
    const u = (2 * p.getX(i)) / c.width;
    const v = (2 * p.getZ(i)) / c.height;
    const w = (2 * p.getY(i)) / c.depth;
    const swell = (1 - u * u) * (1 - v * v);
    p.setY(i, p.getY(i) + w * swell * (out + 0.002));
    p.setX(i, p.getX(i) + u * (1 - v * v) * (1 - w * w) * out * 0.3);
  }
  g.computeVertexNormals();
  return g;
};

const can = (a: Assembly, c: Can, bulged: boolean, markable: boolean, name: string): void => {
  a.add('lidPaint', casing(c, bulged ? 0.05 : 0));
  if (markable)
    a.markable(
      [
        [1, -c.height / 2],
        [1, c.height / 2],
      ],
      0.003,
      'tank',
      [c.width / 2, c.depth / 2],
    );
  a.add('lidPaint', block([0, 0, c.height / 2 + 0.004], [c.width + 0.008, c.depth + 0.008, 0.01], 0.2));
  for (const s of [-1, 1]) {
    a.add(
      'lidPaint',
      bar([s * (c.width / 2), 0, c.height * 0.3], [s * (c.width / 2 + 0.05), 0, c.height * 0.3], 0.06, 0.008),
    );
    a.within(
      new Matrix4()
        .makeTranslation(s * c.width * 0.28, 0, c.height / 2 + 0.008)
        .multiply(new Matrix4().makeRotationY(s * 0.12)),
      () => {
        a.add('porcelainGrey', turnedOf('capacitorBushing'));
        if (markable && s === 1) a.markable(outerOf(profileOf('capacitorBushing')));
        a.add('tinned', rod([0, 0, 0.236], [0, 0, 0.275], 0.007, 10));
        a.add('bronze', block([0, 0, 0.262], [0.024, 0.02, 0.018], 0.2));
        a.name(`${name}${s < 0 ? 'a' : 'b'}`, [0, 0, 0.272]);
      },
    );
  }
  a.add('aluminium', block([0, -c.depth / 2 - 0.003, 0.04], [0.09, 0.003, 0.06], 0));
  a.within(
    new Matrix4().makeTranslation(0, -c.depth / 2 - 0.003, -0.12).multiply(new Matrix4().makeRotationZ(-Math.PI / 2)),
    () => {
      for (const g of lettering('100', 0.06, 0.001)) a.add('black', g);
    },
  );
  a.add('safetyOrange', block([0, -c.depth / 2 - 0.003, -0.2], [0.05, 0.003, 0.05], 0));
};

/** Oil switch: small round tank with two bushings and a yellow handle below. */
const oilSwitch = (a: Assembly): void => {
  a.add('lidPaint', new CylinderGeometry(0.09, 0.09, 0.26, 22).rotateX(Math.PI / 2).translate(0, 0, 0.13));
  a.add('lidPaint', new CylinderGeometry(0.1, 0.1, 0.02, 22).rotateX(Math.PI / 2).translate(0, 0, 0.25));
  for (const s of [-1, 1])
    a.within(new Matrix4().makeTranslation(0, s * 0.055, 0.26).multiply(new Matrix4().makeRotationX(-s * 0.25)), () => {
      a.add('porcelainGrey', turnedOf('lowVoltageBushing', [1.2, 2.6], 10));
      a.add('tinned', rod([0, 0, 0.185], [0, 0, 0.22], 0.007, 10));
    });
  a.add('yellow', bar([0, 0.06, -0.01], [0, 0.13, -0.05], 0.02, 0.008, [1, 0, 0]));
};

export const capacitor = builder({
  kind: 'capacitor',
  states: ['whole', 'bulged'],
  variants: ['unit', 'bank'],
  size: { width: 0.34, depth: 0.13, height: 0.6 },
  build: (a, size, part) => {
    const bank = part.variant === 'bank';
    const out = bank ? 0.3 : 0.2;
    a.add('zinc', bar([0.006, 0, -0.16], [0.006, 0, 0.1], 0.08, 0.01, [1, 0, 0]));
    for (const z of [-0.12, 0.02]) a.add('zinc', bolt([0.011, 0, z], [1, 0, 0], 0.027, 0));
    a.add(
      'zinc',
      bar([0, 0, 0.02], [out, 0, 0.02], 0.06, 0.012),
      bar([0.01, 0, -0.14], [out, 0, 0], 0.03, 0.008, [0.5, 0, 1]),
    );
    const count = bank ? 3 : 1;
    const pitch = 0.44;
    const span = (count - 1) * pitch + 0.5;
    for (const x of [out - 0.085, out + 0.085])
      a.add('zinc', bar([x, -span / 2, 0.025], [x, span / 2, 0.025], 0.05, 0.008));
    for (let i = 0; i < count; i++) {
      const y = (i - (count - 1) / 2) * pitch;
      const at = new Matrix4()
        .makeTranslation(out, y, 0.03 - size.height * 0.3)
        .multiply(new Matrix4().makeRotationZ(Math.PI / 2));
      a.within(at, () =>
        can(a, size, part.state === 'bulged' && i === (count - 1) / 2, i === Math.floor((count - 1) / 2), `h${i + 1}`),
      );
    }
    if (bank) {
      for (const y of [-0.44, 0, 0.44])
        a.within(new Matrix4().makeTranslation(0.12, y * 0.55, 0.12), () => oilSwitch(a));
      const lead = curve(
        [
          [out, -0.5, 0.45],
          [out, -0.2, 0.52],
          [0.12, -0.24, 0.62],
        ],
        12,
      );
      a.add('copper', wire(lead, 0.003, 6));
    }
    a.name('line', [out, -size.width * 0.28, 0.03 + size.height * 0.2 + 0.28]);
    a.name('ground', [out, size.width * 0.28, 0.03 + size.height * 0.2 + 0.28]);
  },
});
