/**
 * Clouds on the dome: value noise in four octaves (fractional Brownian motion) on a flat sheet overhead, so they draw
 * together toward the horizon. How much of the sky they cover follows from the light of the hour and from what falls; fog
 * hides them. Amounts and shades chosen by eye.
 */
import type { Site } from '../../engine/world/types.ts';
import type { Air } from './sky.ts';

/** Light of a clear day's sky and of a closed grey one, lux (estimates between the levels of an open and an overcast noon). */
const OPEN = 60_000;
const CLOSED = 6000;

const between = (value: number): number => Math.min(1, Math.max(0, value));

/** How much of the sky is clouded, and how plainly that is seen through the air; each 0 to 1. */
export const cloudsOf = (site: Site, air: Air): { readonly cover: number; readonly seen: number } => {
  const falls = air.rain + air.snow > 0;
  const byLight = site.light === 'day' ? Math.log(OPEN / site.skyLux) / Math.log(OPEN / CLOSED) : 0.5;
  return { cover: falls ? 1 : between(byLight), seen: between((site.visibilityM - 500) / 4000) };
};

/** GLSL: lays clouds over a sky's colour in a direction; `open` is the sky without, `grey` the light of the air there. */
export const cloudsGlsl = `
uniform vec2 clouds;
float spot(vec2 at) { return fract(sin(dot(at, vec2(41.3, 289.1))) * 17539.17); }
float puff(vec2 at) {
  vec2 cell = floor(at);
  vec2 f = fract(at);
  f = f * f * (3.0 - 2.0 * f);
  return mix(mix(spot(cell), spot(cell + vec2(1.0, 0.0)), f.x), mix(spot(cell + vec2(0.0, 1.0)), spot(cell + 1.0), f.x), f.y);
}
/** How thick the air is with water there, 0 to 1. */
float thick(vec3 d) {
  vec2 at = d.xy / (0.16 + max(d.z, 0.0)) * vec2(0.9, 1.25) + 7.0;
  at += 0.7 * puff(at * 0.6);
  return 0.5 * puff(at) + 0.26 * puff(at * 2.1 + 3.1) + 0.15 * puff(at * 4.3 + 9.7) + 0.09 * puff(at * 8.7 + 1.3);
}
vec3 clouded(vec3 open, vec3 grey, vec3 d) {
  float n = thick(d);
  float edge = mix(0.56, 0.08, clouds.x);
  float there = smoothstep(edge, edge + 0.3 - 0.1 * clouds.x, n);
  float shade = mix(1.14, 0.8, smoothstep(max(edge, 0.3), 0.85, n));
  return mix(open, grey * shade, 0.94 * there * clouds.y * smoothstep(-0.02, 0.2, d.z));
}`;
