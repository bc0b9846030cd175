/**
 * Bird guard: grey cap of tracking-resistant plastic that snaps over a bushing's or arrester's terminal, with a slot for the
 * lead. Origin: the terminal. States: `whole`, `displaced` (slid up the lead, the terminal bare). Size: radius of its mouth.
 */
import { Matrix4 } from 'three';
import { builder } from './assembly.ts';
import { block, rod, turned } from './shapes.ts';

export const birdGuard = builder({
  kind: 'bird-guard',
  states: ['whole', 'displaced'],
  size: { mouth: 0.062 },
  build: (a, size, part) => {
    const m = size.mouth;
    const off = part.state === 'displaced';
    const at = new Matrix4()
      .makeTranslation(off ? -0.05 : 0, off ? 0.02 : 0, off ? 0.06 : 0)
      .multiply(new Matrix4().makeRotationY(off ? -0.9 : 0));
    a.within(at, () => {
      const cap = turned(
        [
          [0, 0.05],
          [m * 0.5, 0.035],
          [m * 0.78, -0.002],
          [m - 0.008, -0.055],
          [m - 0.004, -0.07],
          [m + 0.006, -0.072],
          [m + 0.008, -0.062],
          [m, -0.05],
          [m * 0.86, 0.0],
          [m * 0.8, 0.025],
          [m * 0.62, 0.05],
          [m * 0.34, 0.062],
          [0.012, 0.066],
          [0.012, 0.085],
          [0, 0.085],
        ],
        26,
      );
      a.add('guard', cap);
      a.add('guard', block([m * 0.75, 0, -0.005], [m * 0.5, 0.012, 0.08], 0.3));
      for (const y of [-0.03, 0.03]) a.add('guard', rod([m * 0.8, y, -0.05], [m * 0.95, y, -0.05], 0.007, 8));
    });
  },
});
