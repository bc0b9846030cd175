/** A yard dog. Origin: ground between its feet; it faces along `side`. States: `standing`, `sitting`. */
import {
  CapsuleGeometry,
  ConeGeometry,
  CylinderGeometry,
  Matrix4,
  SphereGeometry,
  TorusGeometry,
  Vector3,
} from 'three';
import type { MaterialName } from '../materials/materials.ts';
import { type Assembly, builder } from './assembly.ts';
import { along } from './shapes.ts';

type P = readonly [number, number, number];

/** A limb between two points, so thick at the first and so thick at the second, round at both. */
const limb = (a: Assembly, material: MaterialName, p: P, q: P, r: number, thin = r): void => {
  const from = new Vector3(...p);
  const to = new Vector3(...q);
  const l = from.distanceTo(to);
  const lie = along(from, to);
  if (thin === r) {
    const capsule = new CapsuleGeometry(r, l, 3, 10).rotateX(Math.PI / 2);
    a.add(material, capsule.translate(0, 0, l / 2).applyMatrix4(lie));
    return;
  }
  const cone = new CylinderGeometry(thin, r, l, 10, 1, true).rotateX(Math.PI / 2);
  a.add(material, cone.translate(0, 0, l / 2).applyMatrix4(lie));
  a.add(material, new SphereGeometry(r, 10, 6).translate(...p), new SphereGeometry(thin, 8, 5).translate(...q));
};

/** An egg of flesh: its middle, its half axes, how far its nose is turned up. */
const mass = (a: Assembly, at: P, half: P, up = 0): void =>
  a.add(
    'fur',
    new SphereGeometry(1, 14, 9)
      .scale(...half)
      .rotateY(-up)
      .translate(...at),
  );

/** Trunk, neck, head and tail; the loin is the origin, the chest ahead. */
const trunk = (a: Assembly, sits: boolean): void => {
  mass(a, [0.33, 0, 0.0], [0.19, 0.115, 0.155], 0.12);
  mass(a, [0.16, 0, 0.035], [0.22, 0.098, 0.112]);
  mass(a, [-0.03, 0, 0.02], [0.14, 0.105, 0.122]);
  limb(a, 'fur', [0.4, 0, 0.05], [0.53, 0, 0.2], 0.1, 0.075);
  mass(a, [0.585, 0, 0.25], [0.108, 0.082, 0.082], -0.15);
  limb(a, 'fur', [0.63, 0, 0.235], [0.755, 0, 0.205], 0.058, 0.036);
  a.add('black', new SphereGeometry(0.021, 10, 8).scale(0.8, 1.1, 0.8).translate(0.79, 0, 0.217));
  for (const y of [-1, 1]) {
    const ear = new ConeGeometry(0.05, 0.13, 10).rotateX(Math.PI / 2).scale(0.5, 1, 1);
    a.add('fur', ear.rotateX(-y * 0.22).translate(0.545, y * 0.062, 0.355));
    a.add('black', new SphereGeometry(0.0125, 8, 6).translate(0.662, y * 0.05, 0.272));
  }
  const collar = new TorusGeometry(0.087, 0.014, 6, 18).applyMatrix4(
    along(new Vector3(0.47, 0, 0.13), new Vector3(0.6, 0, 0.28)),
  );
  a.add('red', collar);
  limb(a, 'fur', [-0.14, 0, 0.07], [-0.28, 0, sits ? -0.12 : 0.05], 0.036, 0.028);
  limb(a, 'fur', [-0.28, 0, sits ? -0.12 : 0.05], [-0.42, 0, sits ? -0.2 : 0.13], 0.028, 0.012);
};

export const dog = builder({
  kind: 'dog',
  states: ['standing', 'sitting'],
  size: { height: 0.56 },
  build: (a, s, part) => {
    const k = s.height / 0.56;
    const sits = part.state === 'sitting';
    const scaled = new Matrix4().makeScale(k, k, k);
    const seat = scaled
      .clone()
      .multiply(new Matrix4().makeTranslation(-0.2, 0, sits ? 0.2 : 0.46))
      .multiply(new Matrix4().makeRotationY(sits ? -0.75 : 0));
    a.within(seat, () => trunk(a, sits));
    a.within(scaled, () => {
      for (const y of [-1, 1]) {
        const [shoulder, hip] = [sits ? 0.46 : 0.42, sits ? 0.2 : 0.44];
        const fore = sits ? 0.06 : 0.14;
        limb(a, 'fur', [fore, y * 0.075, shoulder], [fore - 0.02, y * 0.085, 0.25], 0.062, 0.036);
        limb(a, 'fur', [fore - 0.02, y * 0.085, 0.25], [fore + 0.005, y * 0.085, 0.04], 0.034, 0.024);
        mass(a, [fore + 0.03, y * 0.085, 0.024], [0.055, 0.034, 0.026]);
        const knee: P = [sits ? 0.0 : -0.15, y * 0.1, sits ? 0.16 : 0.27];
        const hock: P = [sits ? -0.2 : -0.28, y * 0.095, sits ? 0.05 : 0.17];
        const foot: P = [sits ? -0.04 : -0.24, y * 0.095, 0.03];
        limb(a, 'fur', [-0.23, y * 0.075, hip], knee, 0.085, 0.046);
        limb(a, 'fur', knee, hock, 0.044, 0.026);
        limb(a, 'fur', hock, foot, 0.026, 0.023);
        mass(a, [foot[0] + 0.03, foot[1], 0.024], [0.055, 0.034, 0.026]);
      }
    });
    a.name('head', [0.35 * k, 0, 0.6 * k]);
  },
});
