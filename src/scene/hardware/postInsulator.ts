/**
 * Line post insulator. Origin: seat of its base; it stands along the pole's or arm's outward, `lean` radians from upright
 * toward `side` (π/2: horizontal from a pole face). Porcelain holds the conductor in a tied groove, polymer in a clamp.
 * Variants: `porcelain`, `polymer`. States: `whole`, `bent` (base stud bent, leaning off). Size: lean.
 */
import { CylinderGeometry, Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, block, bolt, rod } from './shapes.ts';

const tall: Readonly<Record<string, number>> = { porcelain: 0.24, polymer: 0.216 };
const seat = 0.03;
/** Housing of the profile shortened to this class. */
const short = [1, 0.72] as const;

const base = (a: Assembly, horizontal: boolean): void => {
  if (horizontal) {
    a.add('zinc', block([0, 0, 0.006], [0.3, 0.09, 0.012]), block([0, 0, 0.016], [0.11, 0.075, 0.012], 0.3));
    for (const x of [-0.115, 0.115]) a.add('zinc', bolt([x, 0, 0.012], [0, 0, 1], 0.027, 0.045));
    return;
  }
  a.add('zinc', new CylinderGeometry(0.052, 0.056, 0.016, 24).rotateX(Math.PI / 2).translate(0, 0, 0.012));
  a.add('zinc', rod([0, 0, 0.01], [0, 0, -0.16], 0.0095, 10), bolt([0, 0, -0.14], [0, 0, -1], 0.03, 0.057));
};

/** Trunnion clamp on a polymer post; the conductor lies along local y. */
const clamp = (a: Assembly, z: number): void => {
  a.add('zinc', block([0, 0, z + 0.012], [0.05, 0.05, 0.024], 0.2));
  a.add('aluminium', bar([0, -0.06, z + 0.034], [0, 0.06, z + 0.034], 0.03, 0.018));
  a.add('aluminium', bar([0, -0.045, z + 0.061], [0, 0.045, z + 0.061], 0.028, 0.012));
  for (const y of [-0.032, 0.032])
    a.add(
      'zinc',
      rod([0.02, y, z + 0.02], [0.02, y, z + 0.075], 0.0048, 8),
      bolt([0.02, y, z + 0.067], [0, 0, 1], 0.014, 0),
    );
};

export const postInsulator = builder({
  kind: 'post-insulator',
  states: ['whole', 'bent'],
  variants: ['porcelain', 'polymer'],
  size: { lean: 0 },
  build: (a, size, part) => {
    const lean = size.lean + (part.state === 'bent' ? 0.24 : 0);
    const turn = new Matrix4().makeRotationY(size.lean);
    a.within(turn, () => base(a, size.lean > 0.7));
    a.within(new Matrix4().makeRotationY(lean), () => {
      const h = tall[part.variant] as number;
      a.within(new Matrix4().makeTranslation(0, 0, seat), () => {
        if (part.variant === 'porcelain') {
          a.add('porcelainGrey', turnedOf('postPorcelain'));
          a.markable(outerOf(profileOf('postPorcelain')));
          a.name('groove', [0, 0, h + 0.004]);
          return;
        }
        a.add('zinc', new CylinderGeometry(0.03, 0.036, 0.05, 20).rotateX(Math.PI / 2).translate(0, 0, 0.012));
        a.add('polymer', turnedOf('postPolymer', short));
        a.add('zinc', new CylinderGeometry(0.024, 0.026, 0.03, 20).rotateX(Math.PI / 2).translate(0, 0, h));
        a.markable(profileOf('postPolymer', short));
        clamp(a, h + 0.012);
        a.name('groove', [0, 0, h + 0.0585]);
      });
    });
  },
});
