/** Burn of tracking on wood: branching char, from a seed or along the course the engine grew. */
import type { Rgba } from './film.ts';
import type { Work } from './mark.ts';
import { lengthAt, localAzimuth, runOf, spotAt } from './markSurface.ts';

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

/** Places of a mark with a middle: metres aside and along from there, the start being the end farther from the part's origin. */
const aboutMiddle = (w: Work, segments: readonly Segment[]): [Spot, Spot][] => {
  const run = runOf(w.surface);
  const reach = w.mark.length / 2;
  const middle = w.from + reach;
  const away = (s: number): number => spotAt(w.surface, w.azimuth, s, run).at.length();
  const up = away(Math.min(w.film.total, middle + reach)) >= away(Math.max(0, middle - reach)) ? 1 : -1;
  const lay = ([aside, along]: Spot): Spot => {
    const s = Math.min(w.film.total, Math.max(0, middle + up * along));
    return [w.film.aside(w.azimuth, s, aside), s];
  };
  return segments.map(([p, q]) => [lay(p), lay(q)]);
};

/** Takes the steps out of a course that was grown on a grid: each place goes toward what it came from and what carries on. */
const smoothed = (segments: readonly Segment[], carried: readonly number[]): Segment[] => {
  const before = new Map<string, Spot>();
  const after = new Map<string, readonly [Spot, number]>();
  segments.forEach(([p, q], i) => {
    before.set(keyOf(q), p);
    const heavy = carried[i] as number;
    if ((after.get(keyOf(p))?.[1] ?? 0) < heavy) after.set(keyOf(p), [q, heavy]);
  });
  const ease = (at: Spot): Spot => {
    const [from, to] = [before.get(keyOf(at)), after.get(keyOf(at))?.[0]];
    if (from === undefined || to === undefined) return at;
    return [0.4 * at[0] + 0.3 * (from[0] + to[0]), 0.4 * at[1] + 0.3 * (from[1] + to[1])];
  };
  return segments.map(([p, q]) => [ease(p), ease(q)]);
};

const scorch: Rgba = [0.1, 0.058, 0.03, 0.42];
const brown: Rgba = [0.03, 0.021, 0.015, 0.72];
const coal: Rgba = [0.006, 0.005, 0.0045, 0.95];
const ash: Rgba = [0.17, 0.165, 0.16, 0.55];

export const burn = (w: Work): void => {
  const given = w.mark.middle
    ? w.mark.segments && aboutMiddle(w, w.mark.segments)
    : w.mark.segments?.map(
        (pair) =>
          pair.map(([a, z]) => [localAzimuth(w.surface, a), lengthAt(w.surface, a, z)] as [number, number]) as [
            [number, number],
            [number, number],
          ],
      );
  const rough = given ?? grown(w);
  const carried = carriedWidths(rough);
  const starts = new Set(rough.map(([p]) => keyOf(p)));
  const taper = rough.map(([, q]) => (starts.has(keyOf(q)) ? 0 : 0.88));
  const segments = smoothed(smoothed(rough, carried), carried);
  const half = w.mark.width / 2;
  const jagged = ([p, q]: Segment): [number, number][] =>
    [0, 0.33, 0.66, 1].map((t) => {
      const s = p[1] + (q[1] - p[1]) * t;
      const wobble = t > 0 && t < 1 ? (w.next() - 0.5) * half * 0.9 : 0;
      return [w.film.aside(p[0] + (q[0] - p[0]) * t, s, wobble), s];
    });
  const courses = segments.map(jagged);
  const widths = carried.map((width) => width * (0.8 + 0.35 * w.next()));
  const wide = (i: number, by: number) => (t: number) =>
    half * by * (widths[i] as number) * (1 - (taper[i] as number) * t);
  const lay = (by: number, [r, g, b, alpha]: Rgba, soft: number): void =>
    courses.forEach((c, i) => {
      w.film.ribbon(c, wide(i, by), [r, g, b, alpha * w.contrast], soft);
    });
  lay(3.6, scorch, 0.97);
  lay(1.9, brown, 0.85);
  lay(0.85, coal, 0.35);
  // Where it burned hottest the coal is crazed across the grain and grey with ash.
  courses.forEach((c, i) => {
    if ((widths[i] as number) < 0.85 || w.next() > 0.45) return;
    const [a, s] = c[1] as [number, number];
    const [r, g, b, alpha] = ash;
    w.film.blot(a, s, [half * 0.5, half * 0.22], [r, g, b, alpha * w.contrast], 0.3, w.next);
  });
};
