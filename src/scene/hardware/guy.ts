/**
 * Down guy: seven-wire strand from the pole (first point) to the eye of the anchor rod (last point), formed grips at both
 * ends, yellow guard over the foot. Points in the frame of the parent. Variants: `plain`, `strain-ball` (porcelain, `ball`
 * metres down), `strain-rod` (fibreglass). States: `whole`, `no-guard`, `slack` (hanging in a bow), `eased` (a hand's breadth of bow), `rusted` (brown in
 * patches about `ball`), `frayed` (two wires of the
 * strand sprung out by the lower grip), `broken` (the strand down in the grass from the pole, guard tilted). Size: strand radius, length of the guard, how far down the
 * ball is, how far a broken strand lies from its foot.
 */
import { Matrix4, Vector3 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { turnedOf } from './profiles.ts';
import { along, bar, bolt, curve, point, ring, rod, vec } from './shapes.ts';
import type { Point } from './types.ts';
import { helix, wire } from './wire.ts';

const grip = (a: Assembly, at: Vector3, toward: Vector3, radius: number): void => {
  const d = toward.clone().sub(at).normalize();
  const course = [0.06, 0.2, 0.4, 0.66].map((s) => at.clone().addScaledVector(d, s));
  for (let k = 0; k < 3; k++) {
    a.add('zinc', wire(helix(course, radius + 0.0016, 0.075, (k / 3) * 2 * Math.PI, 8), 0.0017, 4));
  }
  const side = d
    .clone()
    .cross(new Vector3(0.3, 1, 0.2))
    .normalize();
  const loop = Array.from({ length: 13 }, (_, i) => {
    const t = (i / 12) * 2 * Math.PI;
    return at
      .clone()
      .addScaledVector(d, 0.032 - 0.032 * Math.cos(t))
      .addScaledVector(side, 0.017 * Math.sin(t));
  });
  a.add('zinc', wire(loop, radius, 6));
};

/** The rod and its eye, out of the ground. */
const footOf = (a: Assembly, foot: Vector3, d: Vector3, last: Point): void => {
  const rodEnd = foot.clone().addScaledVector(d, 0.6);
  a.add('zinc', rod(point(foot), point(rodEnd), 0.0095, 10));
  a.add(
    'zinc',
    ring(
      last,
      point(
        d
          .clone()
          .cross(new Vector3(0, 0, 1))
          .normalize(),
      ),
      0.022,
      0.009,
    ),
  );
};

/** Depth of the bow of a strand that is not taut, m. */
const bows: Readonly<Record<string, number>> = { slack: 0.35, eased: 0.1 };

/** Patches of rust on a strand for an arm's length to both sides of a place: brown between wires and over some. */
const rustOn = (a: Assembly, top: Vector3, foot: Vector3, radius: number, about: number): void => {
  const d = foot.clone().sub(top).normalize();
  for (const [from, to] of [
    [-0.75, -0.52],
    [-0.45, -0.4],
    [-0.31, 0.04],
    [0.1, 0.14],
    [0.22, 0.55],
    [0.63, 0.74],
  ] as const) {
    const course = [from, (from + to) / 2, to].map((s) => top.clone().addScaledVector(d, about + s));
    a.add(
      'rust',
      wire(course, (t) => radius * (0.97 + 0.09 * Math.sin(Math.PI * t)), 8, 0.09),
    );
  }
};

/** Of a strand that is down: how far it lies from its foot, and what comes down with it. */
interface Down {
  readonly lying: Vector3;
  readonly ball: boolean;
  readonly guard: boolean;
}

/** The strand as it is: taut, in a bow, with wires sprung, or down. */
const strand = (
  a: Assembly,
  top: Vector3,
  foot: Vector3,
  radius: number,
  state: string,
  { lying, ball, guard }: Down,
): void => {
  const lay = 0.09;
  if (state === 'broken') {
    const flat = new Vector3(foot.x - top.x, foot.y - top.y, 0).normalize();
    const side = new Vector3(-flat.y, flat.x, 0);
    const hang = curve(
      [
        top,
        top
          .clone()
          .addScaledVector(flat, 0.12)
          .setZ(top.z - 0.5),
        top
          .clone()
          .addScaledVector(flat, 0.2)
          .setZ(top.z - 1.5),
      ].map(point),
      24,
    );
    a.add('steelStrand', wire(hang, radius, 8, lay));
    const lies = Array.from({ length: 25 }, (_, i) => {
      const t = i / 24;
      // Stiff strand that has come down lies in long bends; the far end springs up.
      const bend = 0.2 * Math.sin(7.5 * t) * Math.sin(Math.PI * Math.min(1, 1.15 * t));
      return foot
        .clone()
        .lerp(lying, t)
        .addScaledVector(side, bend)
        .setZ(i === 0 ? foot.z : 0.03 + 0.1 * Math.max(0, foot.z) * (1 - t) + (t > 0.9 ? 2.4 * (t - 0.9) : 0));
    });
    const course = curve(lies.map(point), 50);
    a.add('steelStrand', wire(course, radius, 8, lay));
    if (ball) {
      const at = course[Math.round(0.45 * course.length)] as Vector3;
      const next = course[Math.round(0.5 * course.length)] as Vector3;
      a.within(along(at, next), () => a.add('porcelainBrown', turnedOf('strainBall')));
    }
    if (guard)
      a.within(
        along(foot.clone().setZ(0.05), foot.clone().addScaledVector(flat, -1).addScaledVector(side, 0.5).setZ(0.6)),
        () => a.add('yellow', rod([0, 0.012, 0], [0, 0.012, 2.1], 0.026, 14, 0.024)),
      );
    return;
  }
  const middle = top.clone().lerp(foot, 0.5);
  const bowed = bows[state];
  if (bowed === undefined) a.add('steelStrand', wire([top, middle, foot], radius, 8, lay));
  else {
    const bow = Array.from({ length: 17 }, (_, i) => {
      const t = i / 16;
      const p = top.clone().lerp(foot, t);
      p.z -= 4 * bowed * t * (1 - t);
      return p;
    });
    a.add('steelStrand', wire(bow, radius, 8, lay));
  }
  if (state !== 'frayed') return;
  const d = foot.clone().sub(top).normalize();
  const across = d
    .clone()
    .cross(new Vector3(0.2, 1, 0.1))
    .normalize();
  const up = d.clone().cross(across);
  for (let k = 0; k < 3; k++) {
    const root = foot.clone().addScaledVector(d, -2.75 + k * 0.05);
    const out = across
      .clone()
      .multiplyScalar(Math.cos(k * 2.3))
      .addScaledVector(up, Math.sin(k * 2.3));
    const course = [
      root.clone().addScaledVector(out, radius * 0.6),
      root.clone().addScaledVector(d, 0.09).addScaledVector(out, 0.035),
      root.clone().addScaledVector(d, 0.15).addScaledVector(out, 0.1),
      root.clone().addScaledVector(d, 0.13).addScaledVector(out, 0.15),
    ];
    a.add('rust', wire(curve(course.map(point), 12), 0.0015, 5));
  }
};

export const guy = builder({
  kind: 'guy',
  states: ['whole', 'no-guard', 'slack', 'eased', 'frayed', 'rusted', 'broken'],
  variants: ['plain', 'strain-ball', 'strain-rod'],
  size: { radius: 0.0048, guard: 2.4, ball: 2.9, lies: 3.5 },
  build: (a, size, part) => {
    const first = part.points[0];
    const last = part.points[part.points.length - 1];
    if (!first || !last || first === last) throw new RangeError('guy: two points');
    const top = vec(first);
    const foot = vec(last);
    const d = foot.clone().sub(top).normalize();
    const length = top.distanceTo(foot);
    const on = (s: number): Point => point(top.clone().addScaledVector(d, s));
    const down: Down = {
      lying: foot.clone().lerp(top.clone().setZ(foot.z), size.lies / Math.hypot(top.x - foot.x, top.y - foot.y)),
      ball: part.variant === 'strain-ball',
      guard: size.guard > 0,
    };
    strand(a, top, foot, size.radius, part.state, down);
    if (part.state === 'rusted') rustOn(a, top, foot, size.radius, size.ball);
    grip(a, top, foot, size.radius);
    grip(a, foot, top, size.radius);
    const outward: Point = point(new Vector3(d.x, d.y, 0).normalize());
    a.add(
      'zinc',
      bar(
        [first[0] - outward[0] * 0.01, first[1] - outward[1] * 0.01, first[2] - 0.05],
        [first[0] - outward[0] * 0.01, first[1] - outward[1] * 0.01, first[2] + 0.05],
        0.06,
        0.01,
        outward,
      ),
    );
    a.add(
      'zinc',
      bolt(
        point(
          top
            .clone()
            .addScaledVector(vec(outward), -0.004)
            .setZ(first[2] + 0.025),
        ),
        outward,
        0.026,
        0,
      ),
    );
    a.add(
      'zinc',
      ring(
        first,
        point(
          d
            .clone()
            .cross(new Vector3(0, 0, 1))
            .normalize(),
        ),
        0.02,
        0.007,
      ),
    );
    if (part.state === 'broken') {
      a.name('anchor', last);
      footOf(a, foot, d, last);
      return;
    }
    if (part.variant === 'strain-ball') {
      a.within(along(vec(on(Math.min(size.ball, length / 2))), foot), () =>
        a.add('porcelainBrown', turnedOf('strainBall')),
      );
    }
    if (part.variant === 'strain-rod') {
      a.add('polymer', rod(on(0.75), on(1.95), 0.013, 12));
      a.add('zinc', rod(on(0.7), on(0.8), 0.017, 12), rod(on(1.9), on(2), 0.017, 12));
    }
    footOf(a, foot, d, last);
    if (part.state !== 'no-guard' && size.guard > 0) {
      const lift = along(foot.clone().addScaledVector(d, -0.12), top);
      a.within(lift.multiply(new Matrix4().makeTranslation(0, 0, 0)), () => {
        a.add('yellow', rod([0, 0.012, 0], [0, 0.012, size.guard], 0.026, 14, 0.024));
      });
    }
    a.name('anchor', last);
  },
});
