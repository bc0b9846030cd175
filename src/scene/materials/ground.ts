/** Textures of the site: grass, gravel, asphalt, concrete, boards, shingles, bark, leaves, twigs. */
import type { DataTexture } from 'three';
import { hash, layers, noise, step } from './noise.ts';
import { colours, field, mix, normals, rgb, scale } from './textures.ts';

/** Rough grass with bare spots, 3 m square. */
export const grass = (): DataTexture =>
  colours(512, 512, (u, v) => {
    const blade = 0.5 * noise(u * 170, v * 120, 1, 170, 120) + 0.5 * noise(u * 90 + v * 60, v * 90, 2, 90, 90);
    let c = mix(rgb(0x2f3a1c), rgb(0x6d7a3c), blade);
    c = mix(c, rgb(0x7d7a48), 0.35 * step(0.4, 0.8, layers(u, v, 3, 6, 6, 4)));
    return mix(c, rgb(0x5a4c38), 0.3 * step(0.55, 0.8, layers(u, v, 4, 9, 9, 3)));
  });

const pebble = (u: number, v: number, n: number, seed: number): { d: number; shade: number } => {
  let best = 9;
  let cell = [0, 0];
  const cx = Math.floor(u * n);
  const cy = Math.floor(v * n);
  for (let i = -1; i <= 1; i++) {
    for (let j = -1; j <= 1; j++) {
      const x = (cx + i + n) % n;
      const y = (cy + j + n) % n;
      const dx = u * n - (cx + i + 0.15 + 0.7 * hash(x, y, seed));
      const dy = v * n - (cy + j + 0.15 + 0.7 * hash(x, y, seed + 1));
      const d = dx * dx + dy * dy;
      if (d < best) {
        best = d;
        cell = [x, y];
      }
    }
  }
  return { d: Math.sqrt(best), shade: hash(cell[0] ?? 0, cell[1] ?? 0, seed + 2) };
};

/** Stones of two sizes: large ones where the coarse noise wants them, fines between. */
const stones = (u: number, v: number): { height: number; shade: number } => {
  const large = pebble(u, v, 58, 10);
  const small = pebble(u, v, 128, 14);
  const size = 0.2 + 0.3 * large.shade;
  const dome = Math.max(0, 1 - (large.d / size) ** 2);
  const fine = 0.4 * Math.max(0, 1 - (small.d / 0.5) ** 2);
  return dome > fine ? { height: dome, shade: large.shade } : { height: fine, shade: small.shade };
};

/** Heights and shades of the stones, laid once for colour and normals. */
const bed = field(512, 512, 2, (u, v) => {
  const s = stones(u, v);
  return [s.height, s.shade];
});

export const gravel = (): DataTexture =>
  colours(512, 512, (u, v) => {
    const c = mix(rgb(0x69635a), rgb(0x9f9a91), (bed(u, v, 1) * 7.3) % 1);
    const dirt = mix(c, rgb(0x5d5346), 0.55 * step(0.35, 0.75, layers(u, v, 5, 5, 5, 3)));
    return mix(rgb(0x4a443b), dirt, step(0.02, 0.35, bed(u, v, 0)));
  });

export const gravelNormals = (): DataTexture => normals(512, 512, 1.1, (u, v) => bed(u, v, 0));

/** Worn asphalt, 4 m square: its stones are smaller than a texel, so a grain of texels, some of them a pale stone. */
export const asphalt = (): DataTexture =>
  colours(256, 256, (u, v) => {
    const own = hash(Math.floor(u * 256), Math.floor(v * 256), 20);
    const stone = 0.3 * own + 0.3 * step(0.93, 1, own);
    const c = mix(rgb(0x3a3b3c), rgb(0x6c6c6a), stone + 0.5 * layers(u, v, 6, 5, 5, 4));
    const crack = 1 - Math.abs(2 * layers(u, v, 7, 4, 4, 4) - 1);
    return mix(c, [24, 24, 24], 0.45 * step(0.98, 0.998, crack) * step(0.5, 0.7, layers(u, v, 17, 3, 3, 2)));
  });

export const concrete = (): DataTexture =>
  colours(256, 256, (u, v) => {
    const pit = noise(u * 70, v * 70, 8, 70, 70) > 0.93 ? 0.8 : 1;
    return scale(mix(rgb(0x8d8b85), rgb(0xb0aea6), layers(u, v, 9, 5, 5, 5)), pit);
  });

/** Lapped boards, eight to the tile. */
export const boards = (): DataTexture =>
  normals(256, 256, 5, (u, v) => (1 - ((v * 8) % 1)) * 1.2 + 0.15 * layers(u, v, 3, 4, 64, 2));

export const boardShade = (): DataTexture =>
  colours(256, 256, (u, v) => {
    const f = (v * 8) % 1;
    const k = 226 - 105 * step(0.16, 0, f) + 14 * layers(u, v, 4, 3, 48, 3) - 12 * layers(u, v, 5, 2, 2, 4);
    return [k, k, k];
  });

/** Bricks in running bond, twelve courses to the tile: shade of each brick, joints pale. */
export const bricks = (): DataTexture =>
  colours(256, 256, (u, v) => {
    const row = Math.floor(v * 12);
    const x = u * 5 + (row % 2) * 0.5;
    const [f, g] = [x - Math.floor(x), v * 12 - row];
    const joint = Math.max(step(0.06, 0.02, Math.min(f, 1 - f)), step(0.16, 0.06, Math.min(g, 1 - g)));
    const own = hash(Math.floor(x) % 5, row, 12);
    const k = 150 + 70 * own + 22 * layers(u, v, 13, 40, 40, 2);
    return mix([k, k, k], [214, 208, 198], 0.75 * joint);
  });

/** Ribs of profiled sheet, twelve to the tile, upright. */
export const ribs = (): DataTexture => normals(256, 64, 4, (u) => step(0.3, 0.42, Math.abs(((u * 12) % 1) - 0.5)));

/** Woven wire of a fence: a diamond every sixth of the tile, open between. */
export const meshOfWire = (): DataTexture =>
  colours(256, 256, (u, v) => {
    const near = (k: number): number => Math.abs(((((k * 6) % 1) + 1) % 1) - 0.5);
    const wire = Math.max(near(u + v), near(u - v));
    const on = wire > 0.455;
    const c = on ? 150 + 60 * hash(Math.floor(u * 90), Math.floor(v * 90), 3) : 150;
    return [c, c, c * 1.02, on ? 255 : 0];
  });

const shingle = (u: number, v: number): { edge: number; shade: number } => {
  const row = Math.floor(v * 10);
  const x = u * 12 + (row % 2) * 0.5 + 0.2 * hash(row, 1, 4);
  const f = x - Math.floor(x);
  const g = v * 10 - row;
  return { edge: Math.max(step(0.05, 0, f), step(0.12, 0, g)), shade: hash(Math.floor(x) % 12, row, 6) };
};

export const shingles = (): DataTexture =>
  colours(256, 256, (u, v) => {
    const s = shingle(u, v);
    const c = mix(rgb(0x3d3a38), rgb(0x625c56), 0.6 * s.shade + 0.4 * layers(u, v, 7, 40, 40, 2));
    return scale(c, 1 - 0.55 * s.edge);
  });

export const bark = (): DataTexture =>
  colours(128, 128, (u, v) => mix(rgb(0x2b241d), rgb(0x6d6253), step(0.25, 0.75, layers(u, v, 3, 12, 3, 4))));

/** A spray of leaves with holes; alpha cuts it out. */
export const leaves = (): DataTexture => {
  const n = 256;
  const shade = new Float32Array(n * n).fill(-1);
  for (let i = 0; i < 230; i++) {
    const a = hash(i, 1, 8) * 2 * Math.PI;
    const r = 0.45 * Math.sqrt(hash(i, 2, 8));
    const [x, y, t] = [(0.5 + r * Math.cos(a)) * n, (0.5 + r * Math.sin(a)) * n, hash(i, 3, 8) * Math.PI];
    const reach = 13;
    for (let v = Math.max(0, Math.floor(y - reach)); v < Math.min(n, y + reach); v++) {
      for (let u = Math.max(0, Math.floor(x - reach)); u < Math.min(n, x + reach); u++) {
        const p = ((u - x) * Math.cos(t) + (v - y) * Math.sin(t)) / 12.8;
        const q = ((v - y) * Math.cos(t) - (u - x) * Math.sin(t)) / 5.6;
        if (p * p + q * q < 1) shade[v * n + u] = Math.max(0, hash(i, 4, 8) - 0.35 * step(0.25, 0, Math.abs(q)));
      }
    }
  }
  return colours(n, n, (u, v) => {
    const k = shade[Math.floor(v * n) * n + Math.floor(u * n)] as number;
    return [...mix(rgb(0x27341a), rgb(0x5f7434), Math.max(0, k)), k < 0 ? 0 : 255];
  });
};

/** A spray of needles on a hanging twig: stem along v, needles to both sides. */
export const needles = (): DataTexture =>
  colours(128, 256, (u, v) => {
    const x = Math.abs(u - 0.5) * 2;
    const reach = 0.95 * (1 - v) + 0.06;
    const comb = (v * 34 - x * 3.4 + 40) % 1;
    const twig = (v * 7 - x * 0.9 + 10) % 1;
    const on = x < 0.04 || (x < reach && (comb < 0.55 || twig < 0.14));
    const shade = 0.25 + 0.75 * hash(Math.floor(v * 34 - x * 3.4 + 40), u < 0.5 ? 1 : 2, 3);
    return [...mix(rgb(0x1c2a1c), rgb(0x41573a), shade * (0.5 + 0.5 * x)), on ? 255 : 0];
  });

/** A spray of bare twigs from its foot (v = 0) upward, each forking twice; alpha cuts it out. */
export const twigs = (): DataTexture => {
  const n = 256;
  const shade = new Float32Array(n * n).fill(-1);
  const stroke = (x: number, y: number, turn: number, long: number, wide: number, seed: number): void => {
    for (let s = 0; s < long; s++) {
      const bend = turn + 0.35 * (hash(seed, 1, 6) - 0.5) * (s / long);
      const half = Math.max(0.8, wide * (1 - (0.6 * s) / long));
      const [u, v] = [x + s * Math.sin(bend), y + s * Math.cos(bend)];
      for (let d = -half; d <= half; d += 0.5) {
        const [i, j] = [Math.round(u + d * Math.cos(bend)), Math.round(v - d * Math.sin(bend))];
        if (i >= 0 && i < n && j >= 0 && j < n) shade[j * n + i] = 0.5 + (0.5 * d) / half;
      }
    }
    if (long < 24) return;
    for (let k = 0; k < 6; k++) {
      const at = long * (0.25 + 0.72 * hash(seed, 2, k));
      const aside = (k % 2 === 0 ? 1 : -1) * (0.45 + 0.45 * hash(seed, 3, k));
      const reach = long * (0.3 + 0.2 * hash(seed, 4, k)) * (1.25 - (0.6 * at) / long);
      stroke(x + at * Math.sin(turn), y + at * Math.cos(turn), turn + aside, reach, wide * 0.6, seed * 6 + k + 1);
    }
  };
  for (const [i, turn] of [-0.34, 0.02, 0.36].entries()) stroke(n / 2, 0, turn, n * 0.84, 2.3, 11 + i);
  return colours(n, n, (u, v) => {
    const k = shade[Math.floor(v * n) * n + Math.floor(u * n)] as number;
    return [...mix(rgb(0x2f2720), rgb(0x6a5c4c), Math.max(0, k)), k < 0 ? 0 : 255];
  });
};
