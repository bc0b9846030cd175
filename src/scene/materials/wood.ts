/**
 * Weathered pole wood: silver-brown long grain with fine checks, knots and old oil bleed; end grain for the roof.
 * The tile spans once round the pole (about 0.8 m) and 3 m along it.
 */
import type { DataTexture } from 'three';
import { hash, layers, noise, step } from './noise.ts';
import { colours, field, mix, normals, type Rgb, rgb, scale } from './textures.ts';

const knots = Array.from({ length: 5 }, (_, i) => ({
  u: hash(i, 1, 5),
  v: (i + hash(i, 2, 5)) / 5,
  r: 0.018 + 0.02 * hash(i, 3, 5),
}));

const knotAt = (u: number, v: number): number => {
  let d = 9;
  for (const k of knots) {
    const du = Math.abs(u - k.u);
    const dv = Math.abs(v - k.v);
    const x = Math.min(du, 1 - du) / k.r;
    const y = (Math.min(dv, 1 - dv) * 3.6) / k.r;
    d = Math.min(d, Math.sqrt(x * x + y * y));
  }
  return d;
};

const grain = (u: number, v: number, knot: number): number => {
  const bend = 0.02 * layers(u, v, 31, 4, 3, 2) + 0.0022 / (0.35 + knot);
  return 0.6 * layers(u + bend, v, 11, 48, 3, 3) + 0.4 * noise((u + bend) * 192, v * 10, 12, 192, 10);
};

const splits = Array.from({ length: 30 }, (_, i) => ({
  u: (i + 0.2 + 0.6 * hash(i, 1, 6)) / 30,
  v: hash(i, 2, 6),
  length: 0.08 + 0.3 * hash(i, 3, 6) ** 2,
  half: 0.0007 + 0.0016 * hash(i, 4, 6) ** 2,
}));

/** Depth of the fine splits, 0 to 1. */
const checks = (u: number, v: number): number => {
  const bend = 0.012 * (layers(u, v, 41, 6, 4, 3) - 0.5);
  let depth = 0;
  const here = Math.floor(u * splits.length);
  for (const s of splits.slice(Math.max(0, here - 2), here + 3)) {
    const du = Math.abs(u + bend - s.u);
    const dv = (v - s.v + 2) % 1;
    if (dv > s.length || du > 0.006) continue;
    const t = dv / s.length;
    depth = Math.max(depth, step(1, 0.4, du / (s.half * (0.3 + 4 * t * (1 - t)))));
  }
  return depth;
};

const pale: Rgb = rgb(0xaca69b);
const brown: Rgb = rgb(0x7a6d5e);
const dark: Rgb = rgb(0x4c4238);

/** Grain, depth of splits and distance to a knot, for colour and normals. */
const timber = field(512, 512, 3, (u, v) => {
  const k = knotAt(u, v);
  return [grain(u, v, k), checks(u, v), k];
});

export const woodColour = (): DataTexture =>
  colours(512, 512, (u, v) => {
    const [g, split, k] = [timber(u, v, 0), timber(u, v, 1), timber(u, v, 2)];
    const patch = layers(u, v, 51, 4, 3, 2);
    let c = mix(brown, pale, step(0.3, 0.72, 0.55 * patch + 0.45 * g));
    c = mix(c, dark, 0.6 * step(0.56, 0.32, g));
    c = mix(c, dark, 0.5 * step(0.62, 0.8, layers(u, v, 61, 14, 1, 2)));
    c = mix(c, dark, 0.75 * step(1.1, 0.55, k) + 0.25 * step(2, 1.1, k));
    const speck = 0.9 + 0.2 * hash(Math.floor(u * 512), Math.floor(v * 512), 9);
    return scale(mix(c, [22, 17, 13], 0.92 * split), speck);
  });

export const woodNormals = (): DataTexture =>
  normals(512, 512, 2.2, (u, v) => {
    const [g, split, k] = [timber(u, v, 0), timber(u, v, 1), timber(u, v, 2)];
    return g - 2.2 * split - 0.4 * step(1.1, 0.7, k);
  });

/** End grain: rings about the pith, rays opened into checks. */
export const endGrain = (): DataTexture =>
  colours(256, 256, (u, v) => {
    const x = u - 0.48;
    const y = v - 0.51;
    const r = Math.sqrt(x * x + y * y);
    const a = Math.atan2(y, x);
    const ring = 0.5 + 0.5 * Math.sin(r * 190 + 3 * layers(u, v, 3, 4, 4, 2));
    let c = mix(rgb(0x6e6355), rgb(0x93887a), 0.65 * ring + 0.35 * layers(u, v, 7, 24, 24, 2));
    const ray = noise(((a + Math.PI) / (2 * Math.PI)) * 13, r * 3, 8, 13, 9);
    c = mix(c, [25, 20, 16], 0.9 * step(0.86, 0.95, ray) * step(0.02, 0.12, r));
    return mix(c, rgb(0x3b3229), 0.5 * step(0.36, 0.5, r));
  });
