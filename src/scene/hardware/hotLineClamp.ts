/**
 * Hot-line clamp of bronze, alone on the conductor or on a stirrup (`stirrup`). Origin: centre of the conductor, which runs
 * along azimuth `side`; eye screw and tap lead hang below. The stirrup alone is a kind of its own;
 * its states: `whole`, `burned` (necked and sooty on one side), `patina` (green all over).
 */
import { Matrix4, SphereGeometry, type Vector3 } from 'three';
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

/** A bail eaten by a bad joint: necked where its clamp sat, sooty for a finger to both sides, a bead of melt under the neck. */
const burnedBail = (a: Assembly, bail: readonly Vector3[]): void => {
  const from = Math.round(bail.length * 0.58);
  const to = Math.round(bail.length * 0.9);
  const neck = bail.slice(from, to);
  const middle = neck[Math.floor(neck.length / 2)] as Vector3;
  a.add('copper', wire(bail.slice(0, from + 1), 0.0052, 8), wire(bail.slice(to - 1), 0.0052, 8));
  a.add(
    'black',
    wire(neck, (t) => 0.0054 - 0.0032 * Math.exp(-(((t - 0.5) / 0.17) ** 2)), 9),
  );
  a.add('steelDark', new SphereGeometry(0.0036, 8, 6).translate(middle.x, middle.y + 0.001, middle.z - 0.004));
};

interface StirrupSize {
  readonly conductor: number;
  readonly width: number;
  readonly drop: number;
}

const bailOn = (a: Assembly, size: StirrupSize, state = 'whole'): void => {
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
  if (state === 'burned') burnedBail(a, bail);
  else a.add(state === 'patina' ? 'verdigris' : 'copper', wire(bail, 0.0052, 8));
  a.name('bail', [0, 0, -size.drop]);
};

export const stirrup = builder({
  kind: 'stirrup',
  states: ['whole', 'burned', 'patina'],
  size: { conductor: 0.0051, width: 0.115, drop: 0.075 },
  build: (a, size, part) => bailOn(a, size, part.state),
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
