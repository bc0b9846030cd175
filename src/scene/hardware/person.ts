/**
 * Standing figure. Origin: ground between the feet; faces along `side`. Variants: `crew` (hard hat, high-visibility vest,
 * leather gloves), `public` (plain clothes). States: `standing`, `reaching` (one arm up, as with a stick).
 */
import { CapsuleGeometry, SphereGeometry, Vector3 } from 'three';
import type { MaterialName } from '../materials/materials.ts';
import { type Assembly, builder } from './assembly.ts';
import { along, block, turned } from './shapes.ts';

type P = readonly [number, number, number];

const limb = (a: Assembly, material: MaterialName, p: P, q: P, r: number): void => {
  const va = new Vector3(...p);
  const vb = new Vector3(...q);
  const l = va.distanceTo(vb);
  a.add(
    material,
    new CapsuleGeometry(r, l, 4, 12)
      .rotateX(Math.PI / 2)
      .translate(0, 0, l / 2)
      .applyMatrix4(along(va, vb)),
  );
};

export const person = builder({
  kind: 'person',
  states: ['standing', 'reaching'],
  variants: ['crew', 'public'],
  size: { height: 1.78 },
  build: (a, size, part) => {
    const crew = part.variant === 'crew';
    const k = size.height / 1.78;
    const at = (x: number, y: number, z: number): P => [x * k, y * k, z * k];
    for (const s of [-1, 1]) {
      limb(a, 'fabricDark', at(0, s * 0.09, 0.9), at(0.01, s * 0.105, 0.5), 0.083 * k);
      limb(a, 'fabricDark', at(0.01, s * 0.105, 0.5), at(-0.01, s * 0.11, 0.14), 0.071 * k);
      a.add('leather', block(at(0.045, s * 0.11, 0.05), [0.28 * k, 0.1 * k, 0.1 * k], 0.35));
    }
    const shell = [
      [0.0, 0.88],
      [0.14, 0.88],
      [0.165, 0.95],
      [0.16, 1.08],
      [0.175, 1.25],
      [0.19, 1.38],
      [0.17, 1.45],
      [0.1, 1.49],
      [0.055, 1.52],
      [0, 1.53],
    ] as const;
    const torso = (grow: number): ReturnType<typeof turned> =>
      turned(
        shell.map(([r, z]) => [r * k * grow, z * k] as const),
        22,
      ).scale(0.72, 1.1, 1);
    a.add(crew ? 'safetyLime' : 'fabricDark', torso(1));
    if (crew) {
      for (const [z, r] of [
        [1.02, 0.168],
        [1.2, 0.174],
      ] as const) {
        const strip = turned(
          [
            [r * k * 1.02, (z - 0.025) * k],
            [(r + 0.004) * k * 1.02, (z + 0.025) * k],
          ],
          22,
        );
        a.add('reflective', strip.scale(0.72, 1.1, 1));
      }
      for (const s of [-1, 1]) {
        a.add('reflective', block(at(0.118, s * 0.085, 1.31), [0.02 * k, 0.05 * k, 0.19 * k], 0.1));
      }
    }
    const sleeve: MaterialName = crew ? 'fabricDark' : 'leather';
    const hand: MaterialName = crew ? 'leather' : 'skin';
    const arm = (s: number, elbow: P, wrist: P): void => {
      limb(a, sleeve, at(0, s * 0.205, 1.4), elbow, 0.053 * k);
      limb(a, sleeve, elbow, wrist, 0.043 * k);
      a.add(hand, new SphereGeometry(0.052 * k, 12, 8).translate(...wrist));
    };
    arm(-1, at(-0.02, -0.255, 1.13), at(0.08, -0.25, 0.87));
    if (part.state === 'reaching') arm(1, at(0.22, 0.24, 1.42), at(0.32, 0.2, 1.7));
    else arm(1, at(-0.02, 0.255, 1.13), at(0.1, 0.24, 0.88));
    limb(a, 'skin', at(0, 0, 1.5), at(0.005, 0, 1.56), 0.052 * k);
    a.add('skin', new SphereGeometry(0.098 * k, 18, 14).scale(1.02, 0.82, 1.22).translate(...at(0.015, 0, 1.645)));
    if (crew) {
      const hat = turned(
        [
          [0.165, 0],
          [0.168, 0.006],
          [0.128, 0.014],
          [0.122, 0.03],
          [0.116, 0.07],
          [0.095, 0.108],
          [0.06, 0.13],
          [0, 0.136],
        ],
        24,
      );
      a.add('white', hat.scale(1.06 * k, 0.92 * k, k).translate(...at(0.02, 0, 1.675)));
      a.add('white', block(at(0.02, 0, 1.8), [0.19 * k, 0.02 * k, 0.026 * k], 0.4));
    } else {
      a.add(
        'fabricDark',
        new SphereGeometry(0.104 * k, 16, 10, 0, Math.PI * 2, 0, 1.5)
          .rotateX(Math.PI / 2)
          .scale(1.05, 0.88, 1.15)
          .translate(...at(0.005, 0, 1.665)),
      );
    }
  },
});
