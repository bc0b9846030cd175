/** Marks that only wood bears: a woodpecker's hole, a check that has opened into a split, a face gone soft. */
import { noise, step } from '../materials/noise.ts';
import type { Work } from './mark.ts';

/** Round mouth with a gnawed pale rim and dark inside, its upper edge in shadow. */
const hole = (w: Work): void => {
  const { width, length } = w.mark;
  const rim = (u: number, v: number): number => {
    const y = 2 * v - 1;
    const ragged = 1 + 0.16 * (noise((Math.atan2(y, u) + 4) * 2.2, 3.5, w.seed, 97, 9) - 0.5);
    return Math.sqrt(u * u + y * y) / ragged;
  };
  const grow = 1.5;
  w.film.patch(w.azimuth, w.from - (length * (grow - 1)) / 2, width * grow, length * grow, (u, v) => {
    const r = rim(u, v) * grow;
    const torn = noise((u + 1) * 9, v * 9, w.seed + 2, 97, 97);
    return [0.34 + 0.14 * torn, 0.25 + 0.1 * torn, 0.16 + 0.06 * torn, 0.85 * step(1.5, 1.15, r) * w.contrast];
  });
  w.film.patch(w.azimuth, w.from, width, length, (u, v) => {
    const depth = 0.012 + 0.03 * step(0.6, 0, v);
    return [depth, depth * 0.75, depth * 0.55, step(1.02, 0.86, rim(u, v)) * w.contrast];
  });
};

/** A check opened wide at one end: dark wedge, pale fresh wood along its lips. */
const split = (w: Work): void => {
  const pieces = Math.max(10, Math.ceil(w.mark.length / 0.03));
  let a = w.azimuth;
  const course = Array.from({ length: pieces + 1 }, (_, i): [number, number] => {
    const s = w.from + (w.mark.length * i) / pieces;
    a += ((w.next() - 0.5) * 0.006) / Math.max(0.02, w.film.radius(s));
    return [a, Math.min(s, w.film.total)];
  });
  const wide = (t: number): number => (w.mark.width / 2) * (0.06 + 0.94 * t * t);
  w.film.ribbon(course, (t) => wide(t) + 0.007 * t, [0.4, 0.3, 0.19, 0.8 * w.contrast], 0.5);
  w.film.ribbon(course, wide, [0.01, 0.008, 0.006, 0.98 * w.contrast], 0.12);
};

/** Wood gone soft: dark, broken across the grain into small blocks, crumbling at the edge. */
const decay = (w: Work): void => {
  w.film.patch(w.azimuth, w.from, w.mark.width, w.mark.length, (u, v) => {
    const n = noise((u + 1) * 4, v * 6, w.seed, 97, 97);
    const block =
      Math.min(1, Math.abs(((u * 5 + n) % 1) - 0.5) * 5) * Math.min(1, Math.abs(((v * 9 + n) % 1) - 0.5) * 6);
    const shade = 0.03 + 0.07 * block * n;
    const edge =
      step(1.05 - 0.55 * v, 0.35 + 0.25 * n - 0.3 * v, Math.abs(u)) * step(0, 0.04, v) * step(1, 0.5 - 0.25 * n, v);
    return [shade * 1.15, shade * 0.8, shade * 0.55, Math.min(1, edge * 1.3) * w.contrast];
  });
};

/** Makers of these marks by kind. */
export const woodMarks = { hole, split, decay } as const;
