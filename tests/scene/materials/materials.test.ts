import { type DataTexture, Material, MeshStandardMaterial } from 'three';
import { expect, test } from 'vitest';
import { materials, wet } from '../../../src/scene/materials/materials.ts';
import { oxide, spangle } from '../../../src/scene/materials/metal.ts';
import { layers, noise, stream } from '../../../src/scene/materials/noise.ts';
import { paintAll, painted, paintFor } from '../../../src/scene/materials/painting.ts';

test('materials are made once', () => {
  expect(materials()).toBe(materials());
  for (const m of Object.values(materials())) expect(m).toBeInstanceOf(Material);
});

test('textures are the same each time they are painted and no larger than 512', () => {
  const [a, b, c, d] = [spangle(), spangle(), oxide(), oxide()];
  paintAll();
  expect(a.image.data).toEqual(b.image.data);
  expect(c.image.data).toEqual(d.image.data);
  for (const m of Object.values(materials()) as MeshStandardMaterial[]) {
    for (const t of [m.map, m.normalMap] as (DataTexture | null)[]) {
      if (t) expect(Math.max(t.image.width, t.image.height)).toBeLessThanOrEqual(512);
    }
  }
});

test('noise stays in 0 to 1, repeats at its period and streams differ by seed', () => {
  for (let i = 0; i < 500; i++) {
    const [x, y] = [i * 0.37, i * 0.71];
    const n = noise(x, y, 5, 7, 9);
    expect(n).toBeGreaterThanOrEqual(0);
    expect(n).toBeLessThanOrEqual(1);
    expect(noise(x + 7, y + 9, 5, 7, 9)).toBeCloseTo(n, 9);
  }
  expect(layers(0.2, 0.3, 1, 4, 4, 3)).toBeCloseTo(layers(1.2, 1.3, 1, 4, 4, 3), 9);
  const [a, b, c] = [stream(1), stream(1), stream(2)];
  const first = a();
  expect(b()).toBe(first);
  expect(c()).not.toBe(first);
});

test('water darkens wood and smooths it, and drying brings it back', () => {
  const { wood } = materials();
  const { r } = wood.color;
  const { roughness } = wood;
  wet(materials(), 1);
  expect(wood.color.r).toBeLessThan(r * 0.7);
  expect(wood.roughness).toBeLessThan(roughness);
  wet(materials(), 0);
  expect(wood.color.r).toBeCloseTo(r, 9);
  expect(wood.roughness).toBe(roughness);
  expect(wood).toBeInstanceOf(MeshStandardMaterial);
});

test('a texture is handed out blank and painted a few rows at a time', () => {
  paintAll();
  const texture = spangle();
  const data = texture.image.data as Uint8Array;
  expect(data.every((v) => v === 0)).toBe(true);
  expect(paintFor(0)).toBe(false);
  expect(data.some((v) => v > 0)).toBe(true);
  expect(data.subarray(-4).every((v) => v === 0)).toBe(true);
  expect(painted()).toBeLessThan(1);
  paintAll();
  expect(data.subarray(-4).every((v) => v === 0)).toBe(false);
  expect(painted()).toBe(1);
});
