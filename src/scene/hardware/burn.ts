/** Burn of tracking on wood: branching char, from a seed or along the course the engine grew. */
import type { Work } from './mark.ts';
import { lengthAt, localAzimuth } from './markSurface.ts';

type Spot = readonly [number, number];
type Segment = readonly [Spot, Spot];

/** Branching course from the lower end upward, when the engine gives none. */
const grown = (w: Work): [[number, number], [number, number]][] => {
  const out: [[number, number], [number, number]][] = [];
  const pieces = Math.max(8, Math.ceil(w.mark.length / 0.035));
  const rise = w.mark.length / pieces;
  let a = w.azimuth;
  let s = w.from;
  const grow = (a0: number, s0: number, left: number, depth: number): void => {
    let b = a0;
    let t = s0;
    const turn = (w.next() - 0.5) * 2;
    for (let i = 0; i < left; i++) {
      const r = Math.max(0.02, w.film.radius(t));
      const c = b + ((turn * 0.6 + w.next() - 0.5) * rise * 0.9) / r;
      const u = t + rise * (0.35 + 0.5 * w.next());
      out.push([
        [b, t],
        [c, u],
      ]);
      if (depth < 2 && w.next() < 0.16) grow(c, u, Math.floor(left / 2), depth + 1);
      b = c;
      t = u;
    }
  };
  for (let i = 0; i < pieces; i++) {
    const r = Math.max(0.02, w.film.radius(s));
    const c = a + ((w.next() - 0.5) * rise * 0.8) / r + (w.azimuth - a) * 0.25;
    out.push([
      [a, s],
      [c, s + rise],
    ]);
    a = c;
    s += rise;
    if (w.next() < 0.38) grow(a, s, 3 + Math.floor(w.next() * 4), 0);
  }
  return out;
};

const keyOf = ([a, s]: Spot): string => `${Math.round(a * 1e4)}:${Math.round(s * 1e4)}`;

/** Width of each segment, 1 at the thickest: a branch is as wide as what grows from it asks. Parents come before children. */
const carriedWidths = (segments: readonly Segment[]): number[] => {
  const beyond = new Map<string, number>();
  const carried = segments.map(() => 0);
  for (let i = segments.length - 1; i >= 0; i--) {
    const [p, q] = segments[i] as Segment;
    const size = 1 + (beyond.get(keyOf(q)) ?? 0);
    carried[i] = size;
    beyond.set(keyOf(p), (beyond.get(keyOf(p)) ?? 0) + size);
  }
  const most = Math.max(1, ...carried);
  return carried.map((size) => 0.5 + 0.55 * (size / most) ** 0.4);
};

export const burn = (w: Work): void => {
  const given = w.mark.segments?.map(
    (pair) =>
      pair.map(([a, z]) => [localAzimuth(w.surface, a), lengthAt(w.surface, a, z)] as [number, number]) as [
        [number, number],
        [number, number],
      ],
  );
  const segments = given ?? grown(w);
  const k = w.contrast;
  const half = w.mark.width / 2;
  const jagged = ([p, q]: readonly [readonly [number, number], readonly [number, number]]): [number, number][] =>
    [0, 0.33, 0.66, 1].map((t) => {
      const s = p[1] + (q[1] - p[1]) * t;
      const wobble = t > 0 && t < 1 ? ((w.next() - 0.5) * half * 0.9) / Math.max(0.02, w.film.radius(s)) : 0;
      return [p[0] + (q[0] - p[0]) * t + wobble, s];
    });
  const courses = segments.map(jagged);
  const widths = carriedWidths(segments).map((width) => width * (0.8 + 0.35 * w.next()));
  const starts = new Set(segments.map(([p]) => keyOf(p)));
  const taper = segments.map(([, q]) => (starts.has(keyOf(q)) ? 0 : 0.88));
  const wide = (i: number, k: number) => (t: number) =>
    half * k * (widths[i] as number) * (1 - (taper[i] as number) * t);
  courses.forEach((c, i) => {
    w.film.ribbon(c, wide(i, 5), [0.1, 0.058, 0.03, 0.42 * k], 0.97);
  });
  courses.forEach((c, i) => {
    w.film.ribbon(c, wide(i, 1.9), [0.028, 0.02, 0.014, 0.75 * k], 0.85);
  });
  courses.forEach((c, i) => {
    w.film.ribbon(c, wide(i, 0.8), [0.006, 0.005, 0.0045, 0.94 * k], 0.4);
  });
};
