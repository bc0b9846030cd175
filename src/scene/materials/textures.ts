/** Turns functions of the unit square into textures: colour (sRGB) and tangent-space normals. Painted by rows, later. */
import {
  DataTexture,
  LinearFilter,
  LinearMipmapLinearFilter,
  LinearSRGBColorSpace,
  RepeatWrapping,
  SRGBColorSpace,
} from 'three';
import { paintLater } from './painting.ts';

export type Rgb = readonly [number, number, number];

/** Colour of a hexadecimal number, each channel 0 to 255. */
export const rgb = (hex: number): Rgb => [(hex >> 16) & 255, (hex >> 8) & 255, hex & 255];

export const mix = (a: Rgb, b: Rgb, t: number): Rgb => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

export const scale = (a: Rgb, k: number): Rgb => [a[0] * k, a[1] * k, a[2] * k];

const finish = (pixels: Uint8Array, width: number, height: number, srgb: boolean): DataTexture => {
  const texture = new DataTexture(pixels, width, height);
  texture.colorSpace = srgb ? SRGBColorSpace : LinearSRGBColorSpace;
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  texture.anisotropy = 4;
  texture.needsUpdate = true;
  return texture;
};

/** A colour texture; `at` gives red, green, blue and, if wanted, alpha, 0 to 255. */
export const colours = (
  width: number,
  height: number,
  at: (u: number, v: number) => readonly number[],
  srgb = true,
): DataTexture => {
  const pixels = new Uint8Array(width * height * 4);
  const texture = finish(pixels, width, height, srgb);
  const paint = function* () {
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        const c = at((x + 0.5) / width, (y + 0.5) / height);
        const o = (y * width + x) * 4;
        for (let k = 0; k < 4; k++) pixels[o + k] = Math.max(0, Math.min(255, Math.round(c[k] ?? 255)));
      }
      yield;
    }
    texture.needsUpdate = true;
  };
  paintLater(paint());
  return texture;
};

/** Normals of a height field that tiles; `slope` scales height per pixel. */
export const normals = (
  width: number,
  height: number,
  slope: number,
  at: (u: number, v: number) => number,
): DataTexture => {
  const field = new Float32Array(width * height);
  const h = (x: number, y: number): number => field[((y + height) % height) * width + ((x + width) % width)] ?? 0;
  const pixels = new Uint8Array(width * height * 4);
  const texture = finish(pixels, width, height, false);
  const row = (y: number): void => {
    for (let x = 0; x < width; x++) {
      const nx = (h(x - 1, y) - h(x + 1, y)) * slope;
      const ny = (h(x, y - 1) - h(x, y + 1)) * slope;
      const l = Math.sqrt(nx * nx + ny * ny + 1);
      const o = (y * width + x) * 4;
      pixels[o] = Math.round((nx / l) * 127 + 128);
      pixels[o + 1] = Math.round((ny / l) * 127 + 128);
      pixels[o + 2] = Math.round((1 / l) * 127 + 128);
      pixels[o + 3] = 255;
    }
  };
  const paint = function* () {
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) field[y * width + x] = at((x + 0.5) / width, (y + 0.5) / height);
      yield;
    }
    for (let y = 0; y < height; y++) {
      row(y);
      if (y % 16 === 15) yield;
    }
    texture.needsUpdate = true;
  };
  paintLater(paint());
  return texture;
};

/** Values of a function at the pixels of a texture, a row computed when it is first looked at, and kept. */
export const field = (
  width: number,
  height: number,
  count: number,
  at: (u: number, v: number) => readonly number[],
): ((u: number, v: number, k: number) => number) => {
  const rows: (Float32Array | undefined)[] = [];
  const fill = (y: number): Float32Array => {
    const out = new Float32Array(width * count);
    for (let x = 0; x < width; x++) out.set(at((x + 0.5) / width, (y + 0.5) / height), x * count);
    rows[y] = out;
    return out;
  };
  return (u, v, k) => {
    const y = Math.floor(v * height);
    return (rows[y] ?? fill(y))[Math.floor(u * width) * count + k] as number;
  };
};
