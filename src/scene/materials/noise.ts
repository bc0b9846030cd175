/** Seeded value noise that tiles, for procedural textures. Method: integer hash on a lattice, smooth interpolation. */

/** A repeatable number in [0, 1) for a lattice point. */
export const hash = (x: number, y: number, seed: number): number => {
  let h = Math.imul(x | 0, 0x27d4eb2d) ^ Math.imul(y | 0, 0x165667b1) ^ Math.imul((seed | 0) + 1, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
};

/** A repeatable stream of numbers in [0, 1). */
export const stream = (seed: number): (() => number) => {
  let i = 0;
  return () => hash(++i, 77, seed);
};

const ease = (t: number): number => t * t * (3 - 2 * t);
const wrap = (i: number, period: number): number => ((i % period) + period) % period;

/** Value noise in [0, 1] that repeats every `px`, `py` lattice cells. */
export const noise = (x: number, y: number, seed: number, px: number, py: number): number => {
  const xi = Math.floor(x);
  const yi = Math.floor(y);
  const fx = ease(x - xi);
  const fy = ease(y - yi);
  const x0 = wrap(xi, px);
  const x1 = wrap(xi + 1, px);
  const y0 = wrap(yi, py);
  const y1 = wrap(yi + 1, py);
  const a = hash(x0, y0, seed);
  const b = hash(x1, y0, seed);
  const c = hash(x0, y1, seed);
  const d = hash(x1, y1, seed);
  return a + (b - a) * fx + (c - a) * fy + (a - b - c + d) * fx * fy;
};

/** Sum of `octaves` of noise over the unit square, each of twice the frequency and half the strength; in [0, 1]. */
export const layers = (u: number, v: number, seed: number, fu: number, fv: number, octaves: number): number => {
  let sum = 0;
  let weight = 0;
  let strength = 1;
  for (let i = 0; i < octaves; i++) {
    const k = 2 ** i;
    sum += strength * noise(u * fu * k, v * fv * k, seed + i * 101, fu * k, fv * k);
    weight += strength;
    strength /= 2;
  }
  return sum / weight;
};

/** 0 below `from`, 1 above `to`, smooth between. */
export const step = (from: number, to: number, x: number): number =>
  ease(Math.min(1, Math.max(0, (x - from) / (to - from))));
