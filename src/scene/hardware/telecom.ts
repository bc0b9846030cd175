/**
 * Communication plant, the lowest on the pole. `telecom-cable`: steel strand with black cables lashed under it between two
 * points (frame of the parent), held by a three-bolt clamp at each; state `unlashed` shows the cables sagging out of a
 * broken lashing. `telecom-enclosure`: splice case hung under the strand along `side` (`case`) or a cabinet on the pole
 * face (`cabinet`); state `open` shows its cover hanging. Size: sag, radii.
 */
import { Matrix4, Vector3 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { bar, block, bolt, hanging, ring, rod, turned } from './shapes.ts';
import type { Point } from './types.ts';
import { helix, wire } from './wire.ts';

const under = (line: readonly Vector3[], down: number, aside: number, extra: (t: number) => number): Vector3[] =>
  line.map((p, i) => p.clone().add(new Vector3(0, aside, -down - extra(i / (line.length - 1)))));

export const telecomCable = builder({
  kind: 'telecom-cable',
  states: ['whole', 'unlashed'],
  size: { sag: 0.6, strand: 0.004, cable: 0.011 },
  build: (a, size, part) => {
    const [p, q] = part.points;
    if (!p || !q) throw new RangeError('telecom-cable: two points');
    const line = hanging(p, q, size.sag, 32);
    const loose =
      part.state === 'unlashed'
        ? (t: number): number => 0.42 * Math.max(0, 1 - Math.abs(t - 0.3) / 0.22)
        : (): number => 0;
    a.add('steelStrand', wire(line, size.strand, 6, size.strand * 22));
    a.add('insulation', wire(under(line, size.strand + size.cable, 0.004, loose), size.cable, 8));
    a.add('insulation', wire(under(line, size.strand + size.cable * 2.2, -0.011, loose), size.cable * 0.55, 6));
    const near = hanging(p, q, size.sag, 160).slice(1, 18);
    a.add(
      'tinned',
      wire(
        helix(
          near.map((v) => v.clone().add(new Vector3(0, 0, -size.cable))),
          size.cable + 0.007,
          0.28,
          0,
          7,
        ),
        0.0009,
        3,
      ),
    );
    a.name('start', p);
    a.name('end', q);
  },
});

/** Three-bolt clamp on the face of a pole that holds the strand; origin: face of the pole, the strand runs across `side`. */
export const strandClamp = builder({
  kind: 'strand-clamp',
  size: { strand: 0.004 },
  build: (a, size) => {
    a.add(
      'zinc',
      bar([0.03, -0.075, 0.012], [0.03, 0.075, 0.012], 0.034, 0.012, [1, 0, 0]),
      bar([0.044, -0.075, 0.012], [0.044, 0.075, 0.012], 0.034, 0.01, [1, 0, 0]),
    );
    for (const y of [-0.055, 0, 0.055]) a.add('zinc', bolt([0.049, y, 0.018], [1, 0, 0], 0.019, 0));
    a.add('zinc', rod([-0.02, 0, 0.018], [0.05, 0, 0.018], 0.008, 10));
    a.name('strand', [0.037, 0, 0.004 - size.strand]);
  },
});

const splice = (a: Assembly, open: boolean): void => {
  const l = 0.3;
  const shell = turned(
    [
      [0, -l],
      [0.03, -l],
      [0.055, -l + 0.03],
      [0.068, -l + 0.05],
      [0.074, -l + 0.09],
      [0.074, -0.12],
      [0.08, -0.115],
      [0.08, -0.085],
      [0.074, -0.08],
      [0.074, 0.08],
      [0.08, 0.085],
      [0.08, 0.115],
      [0.074, 0.12],
      [0.074, l - 0.09],
      [0.068, l - 0.05],
      [0.055, l - 0.03],
      [0.03, l],
      [0, l],
    ],
    24,
  );
  a.within(new Matrix4().makeTranslation(0, 0, -0.11).multiply(new Matrix4().makeRotationY(Math.PI / 2)), () => {
    a.add(open ? 'boxPaint' : 'polymerBlack', shell);
    for (const z of [-0.18, 0, 0.18]) a.add('tinned', block([0, 0.078, z], [0.03, 0.012, 0.05], 0.2));
  });
  for (const x of [-0.17, 0.17]) a.add('zinc', bar([x, 0, 0], [x, 0, -0.04], 0.02, 0.004, [1, 0, 0]));
  if (!open) return;
  a.within(new Matrix4().makeTranslation(0, 0.08, -0.11).multiply(new Matrix4().makeRotationX(0.9)), () =>
    a.add('polymerBlack', bar([-0.26, 0.02, -0.09], [0.26, 0.02, -0.09], 0.15, 0.012, [0, 1, 0])),
  );
};

const cabinet = (a: Assembly, open: boolean): void => {
  a.add('boxPaint', block([0.12, 0, 0], [0.2, 0.32, 0.62], 0.06), block([0.12, 0, 0.318], [0.24, 0.36, 0.02], 0.2));
  for (const z of [-0.25, 0.25]) a.add('zinc', bar([0.01, -0.1, z], [0.01, 0.1, z], 0.05, 0.01, [1, 0, 0]));
  const door = new Matrix4().makeTranslation(0.223, -0.155, 0).multiply(new Matrix4().makeRotationZ(open ? -1.8 : 0));
  a.within(door, () => {
    a.add('lidPaint', bar([0.004, 0.155, -0.29], [0.004, 0.155, 0.29], 0.3, 0.01, [1, 0, 0]));
    a.add('steelDark', block([0.014, 0.27, 0], [0.014, 0.02, 0.06], 0.2));
  });
  if (open) {
    a.add('black', block([0.218, 0, 0], [0.006, 0.28, 0.56], 0.1));
    for (let i = 0; i < 5; i++)
      a.add('insulation', rod([0.224, -0.1 + i * 0.05, -0.27], [0.224, -0.1 + i * 0.045, 0.2], 0.006, 6));
  }
  a.add('zinc', rod([0.12, 0.08, -0.31], [0.1, 0.08, -0.9], 0.02, 12));
};

export const telecomEnclosure = builder({
  kind: 'telecom-enclosure',
  states: ['whole', 'open'],
  variants: ['case', 'cabinet'],
  size: { drop: 0 },
  build: (a, size, part) => {
    const foot: Point = [0, 0, -size.drop];
    a.within(new Matrix4().makeTranslation(...foot), () =>
      (part.variant === 'case' ? splice : cabinet)(a, part.state === 'open'),
    );
    if (part.variant === 'case')
      for (const s of [-1, 1])
        a.add('insulation', ring([s * 0.33, 0, -0.07 - size.drop], [0, 1, 0], 0.05, 0.008, Math.PI / 2));
  },
});
