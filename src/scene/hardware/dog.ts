/** A yard dog. Origin: ground between its feet; it faces along `side`. States: `standing`, `sitting`. */
import { CapsuleGeometry, ConeGeometry, Matrix4, SphereGeometry, Vector3 } from 'three';
import type { MaterialName } from '../materials/materials.ts';
import { type Assembly, builder } from './assembly.ts';
import { along } from './shapes.ts';

type P = readonly [number, number, number];

const tube = (a: Assembly, material: MaterialName, p: P, q: P, r: number): void => {
  const from = new Vector3(...p);
  const to = new Vector3(...q);
  const l = from.distanceTo(to);
  a.add(
    material,
    new CapsuleGeometry(r, l, 4, 10)
      .rotateX(Math.PI / 2)
      .translate(0, 0, l / 2)
      .applyMatrix4(along(from, to)),
  );
};

export const dog = builder({
  kind: 'dog',
  states: ['standing', 'sitting'],
  size: { height: 0.56 },
  build: (a, s, part) => {
    const k = s.height / 0.56;
    const sits = part.state === 'sitting';
    const seat = new Matrix4()
      .makeScale(k, k, k)
      .multiply(new Matrix4().makeTranslation(-0.2, 0, sits ? 0.2 : 0.46))
      .multiply(new Matrix4().makeRotationY(sits ? -0.75 : 0));
    a.within(seat, () => {
      tube(a, 'fur', [0, 0, 0], [0.44, 0, 0.02], 0.125);
      tube(a, 'fur', [0.4, 0, 0.02], [0.52, 0, 0.16], 0.085);
      a.add('fur', new SphereGeometry(0.1, 14, 10).scale(1.15, 0.9, 0.95).translate(0.6, 0, 0.22));
      tube(a, 'fur', [0.64, 0, 0.2], [0.76, 0, 0.17], 0.045);
      a.add('black', new SphereGeometry(0.022, 8, 6).translate(0.8, 0, 0.18));
      for (const y of [-1, 1]) {
        a.add('fur', new ConeGeometry(0.042, 0.11, 8).rotateX(Math.PI / 2).translate(0.57, y * 0.06, 0.33));
        a.add('black', new SphereGeometry(0.013, 6, 5).translate(0.685, y * 0.045, 0.25));
      }
      tube(a, 'fur', [-0.1, 0, 0.04], [-0.3, 0, sits ? -0.1 : 0.2], 0.026);
      tube(a, 'red', [0.44, -0.06, 0.07], [0.44, 0.06, 0.07], 0.06);
    });
    for (const y of [-1, 1]) {
      tube(a, 'fur', [0.2 * k, y * 0.075 * k, (sits ? 0.5 : 0.42) * k], [0.21 * k, y * 0.075 * k, 0.03], 0.034 * k);
      tube(
        a,
        'fur',
        [-0.22 * k, y * 0.08 * k, (sits ? 0.16 : 0.42) * k],
        [(sits ? -0.02 : -0.25) * k, y * 0.1 * k, 0.04],
        0.042 * k,
      );
    }
    a.name('head', [0.35 * k, 0, 0.6 * k]);
  },
});
