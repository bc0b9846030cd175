/**
 * Streetlight on a bracket arm with photocell. Origin: face of the pole at the arm's bolts; it reaches along `side`.
 * States: `dark`, `lit`, `hanging` (head drooping on its arm, refractor open).
 */
import { Matrix4, SphereGeometry } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { bar, block, bolt, curve, ring, rod } from './shapes.ts';
import { wire } from './wire.ts';

/** Head in its own frame: the arm's end at the origin, reaching along x. */
const head = (a: Assembly, state: string): void => {
  const top = new SphereGeometry(1, 26, 10, 0, Math.PI * 2, 0, Math.PI / 2).rotateX(Math.PI / 2);
  a.add('boxPaint', top.scale(0.36, 0.155, 0.115).translate(0.3, 0, 0));
  a.add('boxPaint', rod([-0.06, 0, 0.012], [0.12, 0, 0.02], 0.034, 14, 0.06));
  a.add('boxPaint', ring([0.3, 0, 0], [0, 0, 1], 0.15, 0.012).scale(2.3, 1, 1).translate(-0.39, 0, 0));
  const bowl = new SphereGeometry(1, 26, 8, 0, Math.PI * 2, Math.PI / 2, Math.PI / 2).rotateX(Math.PI / 2);
  const lens = state === 'lit' ? 'lampLit' : 'lens';
  if (state === 'hanging') {
    a.within(new Matrix4().makeTranslation(0.08, 0, 0).multiply(new Matrix4().makeRotationY(1.15)), () =>
      a.add(lens, bowl.scale(0.27, 0.125, 0.085).translate(0.27, 0, 0)),
    );
    a.add('bisque', rod([0.2, 0, -0.01], [0.36, 0, -0.01], 0.028, 12));
  } else a.add(lens, bowl.scale(0.27, 0.125, 0.085).translate(0.33, 0, 0));
  a.add('boxPaint', rod([0.12, 0, 0.09], [0.12, 0, 0.175], 0.042, 18, 0.038));
  a.add('windowDark', rod([0.155, 0, 0.14], [0.166, 0, 0.14], 0.014, 10));
  a.name('lamp', [0.33, 0, -0.05]);
};

export const streetlight = builder({
  kind: 'streetlight',
  states: ['dark', 'lit', 'hanging'],
  size: { arm: 1.8, rise: 0.5 },
  build: (a, s, part) => {
    a.add('zinc', bar([0.006, 0, -0.13], [0.006, 0, 0.13], 0.09, 0.01, [1, 0, 0]));
    for (const z of [-0.09, 0.09]) a.add('zinc', bolt([0.011, 0, z], [1, 0, 0], 0.024, 0));
    const arm = curve(
      [
        [0.01, 0, 0],
        [s.arm * 0.3, 0, s.rise * 0.55],
        [s.arm * 0.7, 0, s.rise * 0.95],
        [s.arm, 0, s.rise],
      ],
      18,
    );
    a.add('aluminium', wire(arm, 0.021, 10));
    a.add(
      'insulation',
      wire(
        curve(
          [
            [0.02, 0.03, -0.1],
            [0.05, 0.04, -0.3],
            [0.012, 0.02, -0.5],
          ],
          10,
        ),
        0.005,
        6,
      ),
    );
    a.add('boxPaint', block([0.04, 0.03, -0.1], [0.05, 0.04, 0.06], 0.2));
    const droop = part.state === 'hanging' ? 0.5 : 0;
    a.within(new Matrix4().makeTranslation(s.arm, 0, s.rise).multiply(new Matrix4().makeRotationY(droop)), () =>
      head(a, part.state),
    );
    a.name('feed', [0.012, 0.02, -0.5]);
  },
});
