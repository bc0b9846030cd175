/**
 * Hot-line clamp of bronze, alone on the conductor or on a stirrup (`stirrup`). Origin: centre of the conductor, which runs
 * along azimuth `side`; eye screw and tap lead hang below. The stirrup alone is a kind of its own.
 */
import { Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { block, bolt, curve, plate, ring, rod, soften } from './shapes.ts';
import { wire } from './wire.ts';

const clampBody = (a: Assembly, r: number): void => {
  const outline = [
    [-0.012, -0.062],
    [0.016, -0.062],
    [0.02, -0.04],
    [0.02, 0.004],
    [0.013, 0.018],
    [-0.004, 0.022],
    [-0.02, 0.014],
    [-0.024, 0.001],
    [-0.019, -0.003],
    [-0.0145, 0.003],
    [-0.006, 0.0085],
    [0.003, 0.007],
    [0.007, 0],
    [0.007, -0.034],
    [-0.012, -0.04],
  ] as const;
  const jaw = plate(
    soften([...outline, outline[0]], 1)
      .slice(1, -1)
      .map(([x, y]) => [x * (1 + (r - 0.005) * 20), y] as const),
    0.026,
    0.0025,
  );
  a.add(
    'bronze',
    jaw
      .rotateX(Math.PI / 2)
      .rotateZ(Math.PI / 2)
      .translate(-0.013, 0, 0),
  );
  a.add('bronze', block([0, -0.002, -r - 0.006], [0.026, 0.02, 0.01], 0.25));
  a.add('bronze', rod([0, -0.002, -r - 0.01], [0, -0.002, -0.105], 0.0055, 10));
  a.add('bronze', ring([0, -0.002, -0.122], [1, 0, 0], 0.0165, 0.0045));
  a.add('bronze', block([0, 0.034, -0.048], [0.026, 0.03, 0.024], 0.2), bolt([0, 0.034, -0.061], [0, 0, -1], 0.016, 0));
  a.name('lead', [0, 0.05, -0.048]);
  a.name('eye', [0, 0, -0.122]);
};

interface StirrupSize {
  readonly conductor: number;
  readonly width: number;
  readonly drop: number;
}

const bailOn = (a: Assembly, size: StirrupSize): void => {
  const half = size.width / 2;
  for (const s of [-1, 1]) {
    a.add('aluminium', rod([s * half - 0.022, 0, 0], [s * half + 0.022, 0, 0], size.conductor + 0.006, 12));
    a.add('aluminium', block([s * half, 0, -size.conductor - 0.007], [0.03, 0.014, 0.012], 0.2));
  }
  const bail = curve(
    [
      [-half, 0, -0.012],
      [-half, 0, -size.drop + 0.02],
      [-half + 0.02, 0, -size.drop],
      [half - 0.02, 0, -size.drop],
      [half, 0, -size.drop + 0.02],
      [half, 0, -0.012],
    ],
    26,
  );
  a.add('copper', wire(bail, 0.0052, 8));
  a.name('bail', [0, 0, -size.drop]);
};

export const stirrup = builder({
  kind: 'stirrup',
  size: { conductor: 0.0051, width: 0.115, drop: 0.075 },
  build: (a, size) => bailOn(a, size),
});

export const hotLineClamp = builder({
  kind: 'hot-line-clamp',
  variants: ['stirrup', 'bare'],
  size: { conductor: 0.0051, width: 0.115, drop: 0.075 },
  build: (a, size, part) => {
    if (part.variant === 'bare') {
      clampBody(a, size.conductor);
      return;
    }
    bailOn(a, size);
    a.within(new Matrix4().makeTranslation(0, 0, -size.drop), () => clampBody(a, 0.0052));
  },
});
