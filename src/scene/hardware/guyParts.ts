/**
 * Parts of a guy that are kinds of their own, along a strand from `points[0]` (pole end) to `points[1]` (anchor end), in the
 * frame of the parent. `strain-insulator`: variants `porcelain` (interlocking ball) and `fibreglass` (rod), `share` of the
 * way down; state `broken` shows the ball gone and the loops straining on each other. `guy-guard`: yellow half round over
 * the foot; `loose` has slid and turned. `anchor`: rod and eye out of the ground; `pulled` stands far out of heaved earth, `rusted` is brown at its eye.
 */
import { Matrix4, Vector3 } from 'three';
import { stream } from '../materials/noise.ts';
import { type Assembly, builder } from './assembly.ts';
import { clods, groundPiece, mound } from './mound.ts';
import { outerOf, profileOf, turnedOf } from './profiles.ts';
import { along, point, ring, rod, vec } from './shapes.ts';
import type { Point } from './types.ts';
import { helix, wire } from './wire.ts';

const strandOf = (points: readonly Point[]): { top: Vector3; foot: Vector3; way: Vector3; length: number } => {
  const [p, q] = points;
  if (!p || !q) throw new RangeError('a guy part: two points');
  const top = vec(p);
  const foot = vec(q);
  return { top, foot, way: foot.clone().sub(top).normalize(), length: top.distanceTo(foot) };
};

/** Formed grip that comes to the ball from along z, with its eye round it. */
const grip = (a: Assembly, sign: number): void => {
  const course = [0.05, 0.2, 0.4].map((z) => new Vector3(0, 0, sign * z));
  for (let k = 0; k < 3; k++) a.add('zinc', wire(helix(course, 0.0064, 0.075, (k / 3) * 2 * Math.PI, 8), 0.0017, 4));
  a.add('zinc', ring([0, 0, sign * 0.012], sign > 0 ? [1, 0, 0] : [0, 1, 0], 0.032, 0.0045));
};

export const strainInsulator = builder({
  kind: 'strain-insulator',
  states: ['whole', 'broken'],
  variants: ['porcelain', 'fibreglass'],
  size: { share: 0.33 },
  build: (a, size, part) => {
    const { top, foot, way, length } = strandOf(part.points);
    const at = top.clone().addScaledVector(way, length * size.share);
    a.within(along(at, foot), () => {
      if (part.variant === 'fibreglass') {
        const half = 0.45;
        const whole = part.state === 'whole';
        a.add('yellow', rod([0, 0, whole ? -half : -0.1], [0, 0, half], 0.0095, 12));
        for (const s of [-1, 1]) {
          a.add(
            'zinc',
            rod([0, 0, s * half], [0, 0, s * (half + 0.09)], 0.0145, 12, 0.012),
            ring([0, 0, s * (half + 0.11)], [1, 0, 0], 0.019, 0.006),
          );
        }
        a.markable([
          [0.0095, -half],
          [0.0095, half],
        ]);
        return;
      }
      if (part.state === 'whole') {
        a.add('porcelainBrown', turnedOf('strainBall'));
        a.markable(outerOf(profileOf('strainBall')));
      }
      grip(a, 1);
      grip(a, -1);
    });
    a.name('middle', point(at));
  },
});

export const guyGuard = builder({
  kind: 'guy-guard',
  states: ['whole', 'loose'],
  size: { length: 2.4 },
  build: (a, size, part) => {
    const { top, foot } = strandOf(part.points);
    const loose = part.state === 'loose';
    const lay = along(foot.clone().lerp(top, 0.02), top).multiply(new Matrix4().makeRotationZ(loose ? 1.9 : 0));
    a.within(lay, () => {
      a.add('yellow', rod([0, 0.012, loose ? -0.05 : 0], [0, loose ? 0.1 : 0.012, size.length], 0.026, 14, 0.024));
      a.add('zinc', ring([0, 0.004, size.length - 0.08], [0, 0, 1], 0.028, 0.003));
    });
  },
});

/** Earth heaved up round a rod and open about it, clods of it lying about. */
const heave = (a: Assembly, at: Vector3): void => {
  const set = new Matrix4().makeTranslation(at.x, at.y, 0);
  const next = stream(19);
  a.within(set, () => {
    a.add('earth', mound({ inner: 0.05, reach: 0.42, high: 0.16, half: Math.PI, seed: 3 }));
    a.add('earth', [...clods(0.2, 0.35, Math.PI, 14, next)]);
    a.add(
      'black',
      groundPiece(0, Math.PI, (t, k) => [0.075 * k * (1 + 0.25 * Math.sin(3 * t)), 0.05 + 0.03 * k]),
    );
  });
};

export const anchor = builder({
  kind: 'anchor',
  states: ['whole', 'pulled', 'rusted'],
  size: { rod: 0.0095, out: 0.2 },
  build: (a, size, part) => {
    const { foot, way } = strandOf(part.points);
    const pulled = part.state === 'pulled';
    const eye = pulled ? foot.clone().addScaledVector(way, -0.55) : foot;
    a.add('zinc', rod(point(eye), point(foot.clone().addScaledVector(way, 0.7)), size.rod, 10));
    const rusted = part.state === 'rusted';
    const across = way
      .clone()
      .cross(new Vector3(0, 0, 1))
      .normalize();
    if (rusted)
      for (const [from, to] of [
        [0, 0.17],
        [0.19, 0.2],
        [0.235, 0.25],
      ] as const)
        a.add(
          'rust',
          rod(
            point(eye.clone().addScaledVector(way, from)),
            point(eye.clone().addScaledVector(way, to)),
            size.rod * 1.05,
            10,
          ),
        );
    for (const s of [-1, 1])
      a.add(
        rusted ? 'rust' : 'zinc',
        ring(point(eye.clone().addScaledVector(across, s * 0.013)), point(across), 0.021, 0.008),
      );
    if (pulled) {
      a.add(
        'rust',
        rod(
          point(eye.clone().addScaledVector(way, 0.2)),
          point(foot.clone().addScaledVector(way, 0.3)),
          size.rod * 1.06,
          10,
        ),
      );
      heave(a, foot.clone().addScaledVector(way, 0.1));
    }
    a.name('eye', point(eye));
  },
});
