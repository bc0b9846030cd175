/**
 * Down guy: seven-wire strand from the pole (first point) to the eye of the anchor rod (last point), formed grips at both
 * ends, yellow guard over the foot. Points in the frame of the parent. Variants: `plain`, `strain-ball` (porcelain, one
 * third down), `strain-rod` (fibreglass). States: `whole`, `no-guard`. Size: strand radius, length of the guard.
 */
import { Matrix4, Vector3 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { turnedOf } from './profiles.ts';
import { along, bar, bolt, point, ring, rod, vec } from './shapes.ts';
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

export const guy = builder({
  kind: 'guy',
  states: ['whole', 'no-guard'],
  variants: ['plain', 'strain-ball', 'strain-rod'],
  size: { radius: 0.0048, guard: 2.4 },
  build: (a, size, part) => {
    const first = part.points[0];
    const last = part.points[part.points.length - 1];
    if (!first || !last || first === last) throw new RangeError('guy: two points');
    const top = vec(first);
    const foot = vec(last);
    const d = foot.clone().sub(top).normalize();
    const length = top.distanceTo(foot);
    const on = (s: number): Point => point(top.clone().addScaledVector(d, s));
    a.add('steelStrand', wire([top, top.clone().lerp(foot, 0.5), foot], size.radius, 8, 0.09));
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
    if (part.variant === 'strain-ball') {
      a.within(along(vec(on(length * 0.33)), foot), () => a.add('porcelainBrown', turnedOf('strainBall')));
    }
    if (part.variant === 'strain-rod') {
      a.add('polymer', rod(on(0.75), on(1.95), 0.013, 12));
      a.add('zinc', rod(on(0.7), on(0.8), 0.017, 12), rod(on(1.9), on(2), 0.017, 12));
    }
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
    if (part.state === 'whole') {
      const lift = along(foot.clone().addScaledVector(d, -0.12), top);
      a.within(lift.multiply(new Matrix4().makeTranslation(0, 0, 0)), () => {
        a.add('yellow', rod([0, 0.012, 0], [0, 0.012, size.guard], 0.026, 14, 0.024));
      });
    }
    a.name('anchor', last);
  },
});
