/**
 * Secondary rack: a steel channel on the pole with one spool a wire, 0.2 m apart. Origin: face of the pole, middle of the
 * rack; it stands off along `side` and the wires pass outside. States: `whole`, `loose` (upper bolt gone, leaning out),
 * `spool-broken` (the middle one in shards). Size: wires, spacing, conductor.
 */
import { Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { bar, bolt, plate, rod } from './shapes.ts';

const scale = [0.78, 0.78] as const;

const spoolAt = (a: Assembly, z: number, broken: boolean, named: string, conductor: number): void => {
  a.within(new Matrix4().makeTranslation(0.052, 0, z), () => {
    if (broken) {
      const shard = plate(
        [
          [0.01, -0.02],
          [0.026, -0.016],
          [0.03, 0.004],
          [0.016, 0.012],
          [0.008, 0.002],
        ],
        0.016,
        0.001,
      );
      a.add('bisque', shard.translate(-0.018, 0, -0.026));
    } else {
      a.add('porcelainWhite', turnedOf('spool', scale));
      if (named === 'x2') a.markable(outerOf(profileOf('spool', scale)));
    }
    a.name(named, [0.022 + conductor, 0, 0]);
  });
};

export const secondaryRack = builder({
  kind: 'secondary-rack',
  states: ['whole', 'loose', 'spool-broken'],
  size: { wires: 3, spacing: 0.2, conductor: 0.0045 },
  build: (a, size, part) => {
    const half = ((size.wires - 1) * size.spacing) / 2;
    const foot = -half - 0.07;
    const lean = part.state === 'loose' ? 0.13 : 0;
    const turn = new Matrix4()
      .makeTranslation(0, 0, foot)
      .multiply(new Matrix4().makeRotationY(lean))
      .multiply(new Matrix4().makeTranslation(0, 0, -foot));
    a.within(turn, () => {
      a.add('zinc', bar([0.005, 0, foot], [0.005, 0, half + 0.07], 0.05, 0.006, [1, 0, 0]));
      for (const y of [-0.025, 0.025])
        a.add('zinc', bar([0.014, y, foot], [0.014, y, half + 0.07], 0.02, 0.005, [0, 1, 0]));
      a.within(new Matrix4().makeTranslation(0.005, 0, foot), () =>
        a.markable(
          [
            [1, 0],
            [1, 2 * half + 0.14],
          ],
          0.001,
          'back',
          [0.012, 0.0275],
        ),
      );
      for (const z of part.state === 'loose' ? [foot + 0.025] : [foot + 0.025, half + 0.045])
        a.add('zinc', bolt([0.008, 0, z], [1, 0, 0], 0.024, 0));
      a.add('zinc', rod([0.052, 0, foot + 0.02], [0.052, 0, half + 0.06], 0.0075, 10));
      for (let i = 0; i < size.wires; i++) {
        const z = half - i * size.spacing;
        for (const s of [-1, 1]) a.add('zinc', bar([0.01, 0, z + s * 0.04], [0.07, 0, z + s * 0.04], 0.034, 0.005));
        spoolAt(a, z, part.state === 'spool-broken' && i === 1, `x${i + 1}`, size.conductor);
      }
    });
  },
});
