/** Marks of growth, dirt, soil and make: what only looks bad, and what a body all round shows. */
import { noise, step } from '../materials/noise.ts';
import type { Rgba } from './film.ts';
import type { Work } from './mark.ts';

/** Places about the middle of a mark, metres aside and along, more of them inward. */
const strewn = (w: Work, count: number): [number, number][] =>
  Array.from({ length: count }, () => [
    (w.next() + w.next() - 1) * w.mark.width * 0.5,
    w.from + w.mark.length * (0.06 + 0.88 * w.next()),
  ]);

const at = (w: Work, aside: number, s: number): number => w.film.aside(w.azimuth, s, aside);

/** Clean round mouth of a bolt's bore: dark, its upper lip in shadow, its lower one worn pale. */
const bore = (w: Work): void => {
  const r = w.mark.width / 2;
  const s = w.from + w.mark.length / 2;
  const even = (): number => 0.5;
  w.film.blot(w.azimuth, s, [r * 1.5, r * 1.5], [0.16, 0.13, 0.1, 0.75 * w.contrast], 0.7, even);
  w.film.blot(w.azimuth, s - r * 0.12, [r * 1.12, r * 1.12], [0.36, 0.31, 0.25, 0.7 * w.contrast], 0.8, even);
  w.film.blot(w.azimuth, s, [r * 1.02, r * 1.02], [0.006, 0.005, 0.004, w.contrast], 0.88, even);
};

/** Cushions of moss, thickest low down, with a green haze of algae about them. */
const moss = (w: Work): void => {
  w.film.patch(w.azimuth, w.from, w.mark.width, w.mark.length, (u, v) => {
    const n = noise((u + 1) * 5, v * 9, w.seed, 97, 97);
    const edge = step(1, 0.1 + 0.5 * n, Math.abs(u)) ** 2 * step(1, 0.2 + 0.5 * n, v) * step(0, 0.03, v);
    return [0.1 + 0.05 * n, 0.13 + 0.05 * n, 0.05, 0.42 * edge * w.contrast];
  });
  for (const [x, s] of strewn(w, 110)) {
    const low = 1 - (s - w.from) / w.mark.length;
    if (w.next() > 0.25 + 0.75 * low) continue;
    const r = 0.006 + 0.016 * low * w.next();
    const g = 0.7 + 0.6 * w.next();
    const dark: Rgba = [0.04 * g, 0.065 * g, 0.016 * g, 0.9 * w.contrast];
    w.film.blot(at(w, x, s), s, [r, r * 0.8], dark, 0.55, w.next);
    w.film.blot(
      at(w, x, s + r * 0.3),
      s + r * 0.25,
      [r * 0.6, r * 0.45],
      [0.14 * g, 0.2 * g, 0.04, 0.8 * w.contrast],
      0.4,
      w.next,
    );
  }
};

/** Pale grey-green rosettes with a darker middle, some grown together. */
const lichen = (w: Work): void => {
  for (const [x, s] of strewn(w, 90)) {
    const r = 0.003 + 0.011 * w.next() ** 2;
    const t = w.next();
    const rim: Rgba = [0.4 + 0.12 * t, 0.43 + 0.09 * t, 0.36 + 0.1 * t, 0.9 * w.contrast];
    w.film.blot(at(w, x, s), s, [r, r], rim, 0.78, w.next);
    if (r > 0.007) w.film.blot(at(w, x, s), s, [r * 0.5, r * 0.5], [0.26, 0.28, 0.22, 0.5 * w.contrast], 0.3, w.next);
  }
};

/** A shadow cast across the round: dark, even, straight at both edges. */
const band = (w: Work): void => {
  w.film.patch(w.azimuth, w.from, w.mark.width, w.mark.length, (u, v) => {
    const slant = v + 0.16 * u;
    const edge = step(0.1, 0.125, slant) * step(0.9, 0.875, slant) * step(1, 0.9, Math.abs(u));
    return [0.05, 0.045, 0.042, 0.72 * edge * w.contrast];
  });
};

/** Where soil once stood: wood dark and damp up to a level line, a crust of earth along it. */
const soil = (w: Work): void => {
  w.film.patch(w.azimuth, w.from, w.mark.width, w.mark.length, (u, v) => {
    const n = noise((u + 1) * 9, v * 5, w.seed, 97, 97);
    const top = 0.93 + 0.05 * (noise((u + 1) * 6, 0.5, w.seed + 2, 97, 3) - 0.5);
    const line = step(top - 0.13, top - 0.03, v);
    const edge = step(top + 0.015, top - 0.01, v) * step(1, 0.82, Math.abs(u)) * step(0, 0.05, v);
    const [r, g, b] = [
      0.05 + 0.05 * n + 0.08 * line * n,
      0.039 + 0.036 * n + 0.06 * line * n,
      0.029 + 0.026 * n + 0.045 * line * n,
    ];
    return [r, g, b, Math.min(1, edge * (0.7 + 0.3 * line)) * w.contrast];
  });
};

/** A broad paler place with soft edges, nothing on it. */
const paler = (w: Work, [r, g, b, alpha]: Rgba): void => {
  w.film.patch(w.azimuth, w.from, w.mark.width, w.mark.length, (u, v) => {
    const n = noise((u + 1) * 2, v * 2.5, w.seed, 97, 97);
    const edge = step(1, 0.2 + 0.25 * n, Math.abs(u)) * step(0, 0.45, v) * step(1, 0.7, v);
    return [r, g, b, alpha * edge * w.contrast];
  });
};
const pale = (w: Work): void => paler(w, [0.62, 0.6, 0.55, 0.5]);

/** Paint that the sun has chalked. */
const faded = (w: Work): void => paler(w, [0.86, 0.86, 0.84, 0.8]);

/** Water run down from above, dark and narrow, ended in drops. */
const wet = (w: Work): void => {
  const top = w.from + w.mark.length;
  for (const [share, reach, wide] of [
    [-0.3, 0.55, 0.26],
    [0.02, 1, 0.42],
    [0.33, 0.72, 0.22],
  ] as const) {
    const x = share * w.mark.width;
    const run = Array.from({ length: 25 }, (_, i): [number, number] => {
      const s = top - (w.mark.length * reach * i) / 24;
      return [at(w, x + 0.003 * Math.sin(i * 0.55 + share * 9), s), s];
    });
    const half = (wide * w.mark.width) / 2;
    w.film.ribbon(run, (t) => half * (0.75 + 0.25 * t), [0.05, 0.052, 0.05, 0.55 * w.contrast], 0.7);
    w.film.ribbon(run, (t) => half * 0.4 * t, [0.03, 0.032, 0.031, 0.4 * w.contrast], 0.6);
    const end = top - w.mark.length * reach;
    w.film.blot(at(w, x, end), end, [half * 1.05, half * 1.6], [0.04, 0.042, 0.041, 0.65 * w.contrast], 0.5, () => 0.5);
  }
};

/** A gash in rubber: its lips parted and dark, the pale rod bare between them. */
const cut = (w: Work): void => {
  const n = 24;
  const course = Array.from({ length: n + 1 }, (_, i): [number, number] => {
    const s = Math.min(w.film.total, w.from + (w.mark.length * i) / n);
    return [at(w, 0.0025 * Math.sin(i * 0.7 + w.seed), s), s];
  });
  const lens = (t: number): number => Math.max(0.06, Math.sin(Math.PI * t)) ** 0.8;
  const half = w.mark.width / 2;
  w.film.ribbon(course, (t) => half * 1.3 * lens(t), [0.02, 0.019, 0.018, w.contrast], 0.25);
  w.film.ribbon(course, (t) => half * 0.5 * lens(t), [0.6, 0.53, 0.36, w.contrast], 0.25);
  w.film.ribbon(course, (t) => half * 0.12 * lens(t), [0.16, 0.13, 0.08, 0.8 * w.contrast], 0.5);
};

/** One raised line along a body: lit on one flank, in its own shadow on the other. */
const seam = (w: Work): void => {
  const steps = Math.max(24, Math.ceil(w.mark.length / 0.006));
  const half = w.mark.width / 2;
  const course = (aside: number): [number, number][] =>
    Array.from({ length: steps + 1 }, (_, i) => {
      const s = Math.min(w.film.total, w.from + (w.mark.length * i) / steps);
      return [at(w, aside, s), s];
    });
  w.film.ribbon(course(-half * 0.6), () => half * 0.4, [0.05, 0.042, 0.038, 0.45 * w.contrast], 0.8);
  w.film.ribbon(course(half * 0.1), () => half * 0.75, [0.45, 0.42, 0.4, 0.25 * w.contrast], 0.6);
  w.film.ribbon(course(half * 0.25), () => half * 0.3, [0.62, 0.6, 0.57, 0.6 * w.contrast], 0.6);
};

/** Lengths along a profile at which a body stands out farthest: the rims of its sheds. */
const rimsOf = (w: Work): readonly number[] => {
  const step = 0.002;
  const radii = Array.from({ length: Math.floor(w.film.total / step) + 1 }, (_, i) => w.film.radius(i * step));
  const most = Math.max(...radii);
  return radii.flatMap((radius, i) => {
    const [before = 0, after = 0] = [radii[i - 1], radii[i + 1]];
    return radius > before && radius >= after && radius > 0.7 * most ? [i * step] : [];
  });
};

/** Half of what one mark takes of the round: four of them make one line, and none comes round the edge to the other side. */
const EIGHTH = 0.6;

/** A raised line along each rim of a body, the same on all: where the mould closed. Lit above, in its own shadow below. */
const ribs = (w: Work): void => {
  for (const rim of rimsOf(w)) {
    const course = (off: number): [number, number][] =>
      Array.from({ length: 17 }, (_, k) => [w.azimuth + EIGHTH * (k / 8 - 1), Math.min(w.film.total, rim + off)]);
    w.film.ribbon(course(0), () => 0.0034, [0.024, 0.023, 0.022, 0.9 * w.contrast], 0.3);
    w.film.ribbon(course(0), () => 0.0009, [0.62, 0.61, 0.58, 0.7 * w.contrast], 0.4);
  }
};

/** Splashes of a bird, white with a dark grain in them, run down from where they fell. */
const droppings = (w: Work): void => {
  const top = w.from + w.mark.length;
  for (let i = 0; i < 6; i++) {
    const x = (i / 5 - 0.5) * w.mark.width * 0.8 + (w.next() - 0.5) * 0.006;
    const reach = w.mark.length * (0.4 + 0.6 * w.next());
    const start = top - w.mark.length * 0.18 * w.next();
    const wide = 0.0028 + 0.0034 * w.next();
    const run = Array.from({ length: 15 }, (_, k): [number, number] => {
      const s = Math.max(0, start - (reach * k) / 14);
      return [at(w, x + 0.0016 * Math.sin(k * 0.8 + i), s), s];
    });
    const white: Rgba = [0.72, 0.71, 0.66, 0.95 * w.contrast];
    w.film.ribbon(run, (t) => wide * (1 - 0.55 * t), white, 0.35);
    w.film.blot(at(w, x, start), start, [wide * 2, wide * 1.7], white, 0.6, w.next);
    const grain: Rgba = [0.1, 0.1, 0.07, 0.7 * w.contrast];
    w.film.blot(at(w, x, start), start, [wide * 0.7, wide * 0.6], grain, 0.4, w.next);
  }
};

/** White powder of weathered rubber, even and without grain, thinning out. */
const bloom = (w: Work): void => {
  w.film.patch(w.azimuth, w.from, w.mark.width, w.mark.length, (u, v) => {
    const n = noise((u + 1) * 8, v * 10, w.seed, 97, 97);
    const edge = step(1, 0.25, Math.abs(u)) * step(0, 0.25, v) * step(1, 0.75, v);
    return [0.66, 0.66, 0.65, (0.55 + 0.25 * n) * edge * w.contrast];
  });
};

/** An open crack round a body: dark, of its own width, stepped where it runs over. */
const girdle = (w: Work): void => {
  const n = 40;
  const s0 = w.from + w.mark.length * 0.6;
  const reach = 1.35;
  const course = Array.from({ length: n + 1 }, (_, i): [number, number] => {
    const t = (i / n) * 2 - 1;
    const wander = 0.16 * (noise((t + 1) * 6, 0.5, w.seed, 97, 3) - 0.5);
    return [w.azimuth + reach * t, Math.min(w.film.total, s0 + w.mark.length * wander)];
  });
  const half = w.mark.width / 2;
  const thin = (t: number): number => Math.min(1, 6 * Math.min(t, 1 - t) + 0.15);
  w.film.ribbon(course, (t) => half * 2.6 * thin(t), [0.34, 0.29, 0.23, 0.75 * w.contrast], 0.6);
  w.film.ribbon(course, (t) => half * thin(t), [0.008, 0.007, 0.006, w.contrast], 0.2);
  // Where it gave, it also runs down toward the rim.
  for (const [turn, sway] of [
    [-0.28, 0.05],
    [0.42, -0.07],
  ] as const) {
    const run = Array.from({ length: 15 }, (_, i): [number, number] => [
      w.azimuth + turn + sway * Math.sin(i * 0.6),
      Math.max(0, s0 - (0.5 * (s0 - w.from) * i) / 14),
    ]);
    w.film.ribbon(run, (t) => half * (1 - 0.4 * t), [0.008, 0.007, 0.006, w.contrast], 0.25);
  }
};

/** Makers of these marks by kind. */
export const sightMarks = {
  bore,
  moss,
  lichen,
  band,
  soil,
  pale,
  faded,
  wet,
  cut,
  seam,
  ribs,
  droppings,
  bloom,
  girdle,
} as const;
