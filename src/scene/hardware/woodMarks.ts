/** Marks that only wood bears: a woodpecker's hole, a check that has opened into a split, a face gone soft. */
import { noise, step } from '../materials/noise.ts';
import type { Work } from './mark.ts';

/** Mouth chiselled by a bird, taller than wide: chips of pale wood at its lips, dark inside, light only on the floor of it. */
const hole = (w: Work): void => {
  const [x, y] = [w.mark.width / 2, w.mark.length / 2];
  const s = w.from + y;
  const k = w.contrast;
  w.film.blot(w.azimuth, s, [x * 1.34, y * 1.26], [0.3, 0.24, 0.17, 0.5 * k], 0.6, w.next);
  for (let i = 0; i < 26; i++) {
    const t = (i / 26) * 2 * Math.PI + 0.2 * w.next();
    const [u, v] = [1.06 * x * Math.cos(t), 1.05 * y * Math.sin(t)];
    const lit = Math.sin(t) < 0 ? 1.25 : 0.8;
    const bite = [x * (0.1 + 0.1 * w.next()), y * (0.12 + 0.16 * w.next())] as const;
    const c = lit * (0.85 + 0.3 * w.next());
    w.film.blot(w.film.aside(w.azimuth, s, u), s + v, bite, [0.36 * c, 0.27 * c, 0.17 * c, 0.95 * k], 0.6, w.next);
  }
  w.film.blot(w.azimuth, s, [x, y], [0.07, 0.05, 0.034, k], 0.9, w.next);
  w.film.blot(w.azimuth, s + 0.14 * y, [x * 0.98, y * 0.9], [0.007, 0.006, 0.005, k], 0.8, w.next);
};

/** A check: dark and deep, widest in its middle and closed at both ends, weathered lips, lesser ones beside it with the grain. */
const split = (w: Work): void => {
  const { length, width } = w.mark;
  const course = (aside: number, from: number, reach: number, sway: number): [number, number][] => {
    const pieces = Math.max(12, Math.ceil(reach / 0.025));
    let x = aside;
    return Array.from({ length: pieces + 1 }, (_, i): [number, number] => {
      const s = Math.min(w.film.total, from + (reach * i) / pieces);
      x += (w.next() - 0.5) * sway;
      return [w.film.aside(w.azimuth, s, x), s];
    });
  };
  const lens = (most: number) => (t: number) =>
    (most / 2) * (0.05 + 0.95 * Math.max(0, Math.sin(Math.PI * t)) ** 0.7) * (0.85 + 0.15 * Math.sin(t * 41 + w.seed));
  const main = course(0, w.from, length, 0.003);
  w.film.ribbon(main, lens(width), [0.3, 0.275, 0.25, 0.6 * w.contrast], 0.5);
  w.film.ribbon(main, lens(width * 0.78), [0.007, 0.006, 0.005, w.contrast], 0.25);
  for (const [aside, from, share] of [
    [1.3, 0.12, 0.4],
    [-1.7, 0.5, 0.42],
    [0.9, 0.62, 0.3],
  ] as const) {
    const beside = course(aside * width, w.from + from * length, share * length, 0.002);
    w.film.ribbon(beside, lens(width * 0.16), [0.02, 0.017, 0.014, 0.8 * w.contrast], 0.4);
  }
};

/** Wood gone soft: dark brown, cracked along and across into small blocks, holes where some have fallen out. */
const decay = (w: Work): void => {
  const { width, length } = w.mark;
  w.film.patch(w.azimuth, w.from, width, length, (u, v) => {
    const n = noise((u + 1) * 4, v * 6, w.seed, 97, 97);
    const edge = step(1.02, 0.55 + 0.35 * n, Math.abs(u)) * step(0, 0.05 + 0.1 * n, v) * step(1, 0.62 + 0.3 * n, v);
    return [0.085 + 0.05 * n, 0.05 + 0.028 * n, 0.03 + 0.015 * n, Math.min(1, edge * 1.3) * 0.9 * w.contrast];
  });
  const within = (): [number, number] => [(w.next() - 0.5) * width * 0.72, w.from + length * (0.1 + 0.62 * w.next())];
  for (let i = 0; i < 26; i++) {
    const [x, s] = within();
    const lengthwise = w.next() < 0.55;
    const reach = lengthwise ? 0.03 + 0.05 * w.next() : 0.012 + 0.016 * w.next();
    const line = [0, 0.5, 1].map((t): [number, number] => {
      const at = Math.min(w.film.total, lengthwise ? s + reach * t : s + 0.002 * (w.next() - 0.5));
      return [w.film.aside(w.azimuth, at, lengthwise ? x + 0.002 * (w.next() - 0.5) : x + reach * (t - 0.5)), at];
    });
    w.film.ribbon(line, (t) => 0.0022 * (1.1 - Math.abs(2 * t - 1)), [0.012, 0.008, 0.006, 0.95 * w.contrast], 0.35);
  }
  for (let i = 0; i < 4; i++) {
    const [x, s] = within();
    const r = 0.005 + 0.006 * w.next();
    const at = w.film.aside(w.azimuth, s, x);
    w.film.blot(at, s - r * 0.3, [r * 1.1, r * 2.3], [0.2, 0.14, 0.07, 0.8 * w.contrast], 0.6, w.next);
    w.film.blot(at, s, [r * 0.9, r * 2], [0.01, 0.007, 0.005, w.contrast], 0.7, w.next);
  }
};

/** Makers of these marks by kind. */
export const woodMarks = { hole, split, decay } as const;
