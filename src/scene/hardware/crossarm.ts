/**
 * Wood crossarm with two flat braces. Origin: face of the pole at the through-bolt; the arm's face is toward `side`, the
 * arm itself runs at right angles to it. Variants: `single`, `double` (a second arm behind the pole, spacing bolts).
 * States: `whole`, `tilted` (one brace off, the arm turned on its bolt), `broken` (cracked through beside the pole, its end
 * hanging). Size: length, width (height of the section), depth, drop of the braces, diameter of the pole for a second arm.
 */
import { BoxGeometry, type BufferGeometry, Matrix4 } from 'three';
import { stream } from '../materials/noise.ts';
import { type Assembly, builder } from './assembly.ts';
import { bar, bolt, rod } from './shapes.ts';

interface ArmSize {
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly brace: number;
}

/** Timber from y `from` to `to`, its grain along it and its edges broken on top. */
const timber = (s: ArmSize, from: number, to: number): BufferGeometry => {
  const arm = new BoxGeometry(s.depth, to - from, s.width, 3, 10, 3);
  const p = arm.getAttribute('position');
  const uv = arm.getAttribute('uv');
  for (let i = 0; i < p.count; i++) {
    uv.setXY(i, 0.12 * (p.getX(i) + p.getZ(i)) * 10, p.getY(i) / 3 + 0.4);
    const edge = Math.abs(p.getX(i)) > s.depth * 0.49 && p.getZ(i) > s.width * 0.49;
    if (edge) p.setXYZ(i, p.getX(i) * 0.93, p.getY(i), p.getZ(i) - 0.006);
  }
  arm.computeVertexNormals();
  return arm.translate(0, (from + to) / 2, 0);
};

const cap = (a: Assembly, s: ArmSize, e: number): void => {
  const face = new BoxGeometry(s.depth * 0.96, 0.002, s.width * 0.96);
  a.add('woodEnd', face.translate(0, e * (s.length / 2 + 0.0008), 0));
};

/** Where an arm has broken, beside the pole, and how its end hangs from there. */
const BREAK = 0.22;
const dropped = (): Matrix4 =>
  new Matrix4()
    .makeTranslation(0, BREAK, -0.05)
    .multiply(new Matrix4().makeRotationX(-0.42))
    .multiply(new Matrix4().makeTranslation(0, -BREAK, 0.05));

/** Fibres drawn out of a broken face, long ones where the wood was in tension on top. */
const splinters = (a: Assembly, s: ArmSize, way: number): void => {
  const next = stream(way > 0 ? 31 : 47);
  for (let i = 0; i < 34; i++) {
    const [x, z] = [(next() - 0.5) * s.depth * 0.94, (next() - 0.5) * s.width * 0.92];
    const reach = (0.012 + 0.12 * next() ** 2) * (0.5 + 0.5 * (z / s.width + 0.5) * (way > 0 ? 2 : 1));
    const thick = 0.003 + 0.008 * next();
    const tip = [x + 0.012 * (next() - 0.5), BREAK + way * reach, z + 0.016 * (next() - 0.5)] as const;
    a.add('woodEnd', rod([x, BREAK - way * 0.02, z], tip, thick, 4, thick * 0.12));
  }
};

const arm = (a: Assembly, s: ArmSize, state: string): void => {
  if (state === 'broken') {
    a.add('wood', timber(s, -s.length / 2, BREAK));
    a.within(dropped(), () => {
      a.add('wood', timber(s, BREAK, s.length / 2));
      splinters(a, s, -1);
    });
    splinters(a, s, 1);
  } else a.add('wood', timber(s, -s.length / 2, s.length / 2));
  if (state === 'broken') {
    cap(a, s, -1);
    a.within(dropped(), () => cap(a, s, 1));
  } else for (const e of [-1, 1]) cap(a, s, e);
  a.within(new Matrix4().makeRotationX(-Math.PI / 2), () =>
    a.markable(
      [
        [1, -s.length / 2],
        [1, s.length / 2],
      ],
      0.002,
      undefined,
      [s.depth / 2, s.width / 2],
    ),
  );
};

const braces = (a: Assembly, s: ArmSize, state: string): void => {
  for (const e of [-1, 1]) {
    const off = state === 'tilted' && e > 0;
    // The brace of the broken end has gone with it: it still hangs by its bolt there.
    if (state === 'broken' && e > 0) {
      a.within(dropped(), () => {
        a.add('zinc', bar([s.depth + 0.008, 0.7, -0.01], [s.depth + 0.012, 0.66, -0.9], 0.032, 0.0065, [1, 0, 0]));
        a.add('zinc', bolt([s.depth + 0.011, 0.7, -0.01], [1, 0, 0], 0.018, 0));
      });
      continue;
    }
    const foot: [number, number, number] = off ? [0.03, 0.1, -s.brace - 0.12] : [0.006, e * 0.01, -s.brace];
    const top: [number, number, number] = off
      ? [0.012, 0.02, -s.brace + 0.5]
      : [s.depth + 0.008, e * s.brace * 1.25, -0.01];
    a.add('zinc', bar(top, foot, 0.032, 0.0065, [1, 0, 0]));
    a.add('zinc', bolt([s.depth + 0.011, e * s.brace * 1.25, -0.01], [1, 0, 0], 0.018, 0));
  }
  a.add('zinc', bolt([0.012, 0, -s.brace], [1, 0, 0], 0.024, 0));
};

export const crossarm = builder({
  kind: 'crossarm',
  states: ['whole', 'tilted', 'broken'],
  variants: ['single', 'double'],
  size: { length: 2.44, width: 0.12, depth: 0.095, brace: 0.56, pole: 0.22 },
  build: (a, s, part) => {
    const tilt = new Matrix4().makeRotationX(part.state === 'tilted' ? -0.14 : 0);
    const at = tilt.clone().multiply(new Matrix4().makeTranslation(s.depth / 2 + 0.004, 0, 0));
    a.within(at, () => arm(a, s, part.state));
    a.add('zinc', bolt([s.depth + 0.004, 0, 0], [1, 0, 0]));
    braces(a, s, part.state);
    if (part.variant === 'double') {
      a.within(new Matrix4().makeTranslation(-s.pole - s.depth / 2 - 0.004, 0, 0), () => arm(a, s, 'whole'));
      for (const y of [-s.length / 2 + 0.12, s.length / 2 - 0.12]) {
        a.add('zinc', rod([s.depth + 0.03, y, 0], [-s.pole - s.depth - 0.03, y, 0], 0.0085, 10));
        a.add('zinc', bolt([s.depth + 0.005, y, 0], [1, 0, 0]), bolt([-s.pole - s.depth - 0.008, y, 0], [-1, 0, 0]));
      }
    }
    const top = s.width / 2;
    a.within(tilt, () => {
      for (const [name, y] of [
        ['left', -s.length / 2 + 0.1],
        ['inner', -0.37],
        ['right', s.length / 2 - 0.1],
      ] as const)
        a.name(name, [s.depth / 2 + 0.004, y, top]);
    });
  },
});
