/** Textures of metal, glaze and paint: zinc spangle, stranding, verdigris, rain streaks, rust. */
import type { DataTexture } from 'three';
import { hash, layers, noise, step } from './noise.ts';
import { colours, mix, normals, rgb, scale } from './textures.ts';

/** Zinc crystals: each cell of a jittered grid has its own shade. */
export const spangle = (): DataTexture =>
  colours(256, 256, (u, v) => {
    const n = 14;
    let best = 9;
    let shade = 0;
    const cx = Math.floor(u * n);
    const cy = Math.floor(v * n);
    for (let i = -1; i <= 1; i++) {
      for (let j = -1; j <= 1; j++) {
        const x = (cx + i + n) % n;
        const y = (cy + j + n) % n;
        const dx = u * n - (cx + i + hash(x, y, 1));
        const dy = v * n - (cy + j + hash(x, y, 2));
        const d = dx * dx + dy * dy;
        if (d < best) {
          best = d;
          shade = hash(x, y, 3);
        }
      }
    }
    const k = 205 + 34 * shade + 16 * layers(u, v, 4, 32, 32, 2) - 60 * step(0.62, 0.85, layers(u, v, 5, 5, 5, 3));
    return [k, k, k + 2];
  });

/** Normals of a stranded conductor: diagonal ridges, u once round, v once per lay. */
export const strandNormals = (strands: number): DataTexture =>
  normals(128, 128, 7, (u, v) => {
    const f = (u * strands + v * 3) % 1;
    return Math.sqrt(Math.max(0, 1 - (2 * f - 1) ** 2));
  });

/** Old copper: brown oxide with green where water stands. */
export const oxide = (): DataTexture =>
  colours(128, 128, (u, v) => {
    const c = mix(rgb(0x5d3a26), rgb(0x7d4e31), layers(u, v, 1, 8, 8, 3));
    return mix(c, rgb(0x5d8676), 0.75 * step(0.55, 0.78, layers(u, v, 2, 5, 5, 4)));
  });

/** Mottling of a glaze, near white, to multiply its colour. */
export const mottle = (): DataTexture =>
  colours(128, 128, (u, v) => {
    const k = 206 + 38 * layers(u, v, 6, 6, 10, 4) + 14 * hash(Math.floor(u * 128), Math.floor(v * 128), 2);
    return [k, k, k];
  });

/** Painted tank: rain streaks from the top, dust, a few specks; near white. */
export const streaks = (): DataTexture =>
  colours(256, 256, (u, v) => {
    const streak = layers(u, v, 8, 42, 1, 3) * step(0.35, 0.85, v);
    const dust = layers(u, v, 9, 6, 6, 4);
    const k = 1 - 0.13 * step(0.4, 0.75, streak) - 0.1 * step(0.45, 0.8, dust);
    const c = mix(rgb(0xf2f2ee), rgb(0xb9ad98), 0.4 * step(0.5, 0.8, streak));
    const speck = noise(u * 90, v * 90, 10, 90, 90) > 0.985 ? 0.75 : 1;
    return scale(c, k * speck);
  });

/** Rust blooms; alpha where there is rust. */
export const rustColour = (): DataTexture =>
  colours(128, 128, (u, v) => mix(rgb(0x4a2413), rgb(0x9a5226), layers(u, v, 3, 9, 9, 4)));
