/** What a conductor bears at a place of its course: strands sprung out of it, armor rods, a compression sleeve. */
import { Vector3 } from 'three';
import type { Assembly } from './assembly.ts';
import { curve, point } from './shapes.ts';
import { helix, wire } from './wire.ts';

/** The place and direction at a share of a course. */
export const spotOn = (line: readonly Vector3[], share: number): { readonly at: Vector3; readonly d: Vector3 } => {
  const place = Math.min(line.length - 1.001, share * (line.length - 1));
  const i = Math.floor(place);
  const [p, q] = [line[i] as Vector3, line[i + 1] as Vector3];
  return { at: p.clone().lerp(q, place - i), d: q.clone().sub(p).normalize() };
};

/** Two directions across a course. */
const across = (d: Vector3): readonly [Vector3, Vector3] => {
  const n = d
    .clone()
    .cross(new Vector3(0.31, 0.2, 1))
    .normalize();
  return [n, d.clone().cross(n)];
};

/** The course for so many metres to both sides of a place. */
const about = (line: readonly Vector3[], share: number, half: number): Vector3[] => {
  const { at, d } = spotOn(line, share);
  return [-half, -half / 2, 0, half / 2, half].map((s) => at.clone().addScaledVector(d, s));
};

/** Strands opened like a cage for an arm's length, two broken through, their tails curled and hanging. */
export const frayed = (a: Assembly, line: readonly Vector3[], radius: number, share: number): void => {
  const { at, d } = spotOn(line, share);
  const [n, b] = across(d);
  const on = (s: number, out: Vector3, off: number): Vector3 =>
    at.clone().addScaledVector(d, s).addScaledVector(out, off);
  for (let k = 0; k < 4; k++) {
    const t = k * 1.7 + 0.4;
    const out = n.clone().multiplyScalar(Math.cos(t)).addScaledVector(b, Math.sin(t));
    const bow = 0.012 + 0.007 * k;
    const middle = 0.05 * Math.sin(k * 2.3);
    const course = [
      on(-0.34, out, radius * 0.8),
      on(middle - 0.15, out, radius + bow * 0.7),
      on(middle, out, radius + bow),
      on(middle + 0.14, out, radius + bow * 0.6),
      on(0.33, out, radius * 0.8),
    ];
    a.add('aluminium', wire(curve(course.map(point), 22), radius * 0.33, 5));
  }
  for (const [sign, hang, lean] of [
    [1, 0.3, 0.5],
    [-1, 0.21, -0.7],
  ] as const) {
    const out = n.clone().multiplyScalar(lean);
    const down = new Vector3(0, 0, -1);
    const tail = (s: number, off: number, drop: number): Vector3 =>
      on(sign * s, out, off).addScaledVector(down, radius + drop);
    const course = [
      tail(0.05, 0.004, 0),
      tail(0.12, 0.02, hang * 0.12),
      tail(0.16, 0.05, hang * 0.45),
      tail(0.13, 0.06, hang * 0.8),
      tail(0.09, 0.03, hang),
      tail(0.1, 0, hang * 0.92),
    ];
    a.add('aluminium', wire(curve(course.map(point), 26), radius * 0.36, 5));
  }
};

/** Formed rods laid round a conductor, side by side, their ends even. */
export const armoured = (a: Assembly, line: readonly Vector3[], radius: number, share: number): void => {
  const course = about(line, share, 0.6);
  const rod = radius * 0.62;
  for (let k = 0; k < 7; k++)
    a.add('aluminium', wire(helix(course, radius + rod, 0.24, (k / 7) * 2 * Math.PI, 10), rod, 4));
};

/** A sleeve pressed over both ends of a conductor, tapered where it comes in. */
export const spliced = (a: Assembly, line: readonly Vector3[], radius: number, share: number): void => {
  const wide = radius * 3.1;
  const taper = (t: number): number => Math.min(1, 0.42 + 9 * Math.min(t, 1 - t));
  const { at, d } = spotOn(line, share);
  const course = Array.from({ length: 25 }, (_, i) => at.clone().addScaledVector(d, -0.3 + (0.6 * i) / 24));
  a.add(
    'aluminium',
    wire(course, (t) => wide * taper(t), 12),
  );
};
