/**
 * Single-phase disconnect, worked by a hook stick: two posts on a channel, a copper blade between jaw and hinge. Origin: face
 * of the pole or arm at the bracket's bolt; the blade looks along `side`, jaw above, hinge below. States: `closed`, `open`
 * (blade hanging down), `part-open` (blade out of the jaw by a hand). Size: reach of the bracket.
 */
import { Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, block, bolt, ring, rod } from './shapes.ts';

const half = 0.19;
const postLength = 0.254;

const post = (a: Assembly, z: number, upper: boolean): void => {
  a.within(new Matrix4().makeTranslation(0.02, 0, z).multiply(new Matrix4().makeRotationY(Math.PI / 2)), () => {
    a.add('porcelainGrey', turnedOf('switchPost'));
    if (upper) a.markable(outerOf(profileOf('switchPost')));
    a.add(
      'zinc',
      rod([0, 0, -0.004], [0, 0, 0.016], 0.036, 18),
      rod([0, 0, postLength - 0.012], [0, 0, postLength + 0.008], 0.034, 18),
    );
  });
};

const degrees: Readonly<Record<string, number>> = { closed: 0, 'part-open': 24, open: 172 };

export const disconnect = builder({
  kind: 'disconnect',
  states: ['closed', 'open', 'part-open'],
  size: { reach: 0.1 },
  build: (a, size, part) => {
    a.add(
      'zinc',
      bar([0.005, 0, -0.06], [0.005, 0, 0.06], 0.06, 0.008, [1, 0, 0]),
      bolt([0.009, 0, 0], [1, 0, 0], 0.026, 0),
    );
    a.add(
      'zinc',
      bar([0.004, 0, 0.03], [size.reach, 0, 0.03], 0.05, 0.008),
      bar([0.004, 0, -0.03], [size.reach, 0, -0.03], 0.05, 0.008),
    );
    a.within(new Matrix4().makeTranslation(size.reach, 0, 0), () => {
      a.add('zinc', bar([0.006, 0, -half - 0.07], [0.006, 0, half + 0.07], 0.076, 0.008, [1, 0, 0]));
      for (const y of [-0.036, 0.036])
        a.add('zinc', bar([-0.006, y, -half - 0.07], [-0.006, y, half + 0.07], 0.03, 0.007, [0, 1, 0]));
      post(a, half, true);
      post(a, -half, false);
      const x = 0.02 + postLength + 0.012;
      for (const z of [half, -half])
        a.add('copper', bar([x + 0.004, 0, z - 0.05], [x + 0.004, 0, z + 0.05], 0.05, 0.009, [1, 0, 0]));
      for (const y of [-0.016, 0.016]) {
        a.add('copper', bar([x + 0.006, y, half + 0.012], [x + 0.055, y, half + 0.012], 0.046, 0.005, [0, 1, 0]));
        a.add('copper', bar([x + 0.006, y, -half], [x + 0.055, y, -half], 0.04, 0.005, [0, 1, 0]));
      }
      a.add(
        'bronze',
        block([x + 0.004, 0, half + 0.068], [0.03, 0.034, 0.026], 0.2),
        block([x + 0.004, 0, -half - 0.068], [0.03, 0.034, 0.026], 0.2),
      );
      a.name('line', [x + 0.004, 0, half + 0.082]);
      a.name('load', [x + 0.004, 0, -half - 0.082]);
      const hinge = new Matrix4()
        .makeTranslation(x + 0.04, 0, -half)
        .multiply(new Matrix4().makeRotationY(((degrees[part.state] ?? 0) * Math.PI) / 180));
      a.within(hinge, () => {
        for (const y of [-0.0065, 0.0065])
          a.add('copper', bar([0, y, -0.02], [0, y, 2 * half + 0.035], 0.028, 0.004, [0, 1, 0]));
        a.add('zinc', rod([0, -0.03, 0], [0, 0.03, 0], 0.006, 10));
        a.add(
          'bronze',
          block([0.004, 0, 2 * half - 0.03], [0.03, 0.022, 0.03], 0.2),
          ring([0.042, 0, 2 * half - 0.03], [0, 1, 0], 0.024, 0.005),
        );
        a.name('ring', [0.042, 0, 2 * half - 0.03]);
      });
    });
  },
});
