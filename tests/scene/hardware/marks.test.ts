import { type Group, type Mesh, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import { type Mark, markKinds } from '../../../src/scene/hardware/mark.ts';
import { addMark } from '../../../src/scene/hardware/marks.ts';
import { hardware } from '../../../src/scene/hardware/registry.ts';
import type { PartSpec } from '../../../src/scene/hardware/types.ts';
import { bare, meshesOf } from './parts.ts';

const set = bare;
const build = (spec: PartSpec): Group => (hardware[spec.kind] as NonNullable<(typeof hardware)[string]>)(spec, set);
const verticesOf = (mesh: Mesh): Vector3[] => {
  const p = mesh.geometry.getAttribute('position');
  return Array.from({ length: p.count }, (_, i) => new Vector3().fromBufferAttribute(p, i));
};
const field = Math.PI / 2;
const crack: Mark = { kind: 'crack', azimuth: field, z: 0.21, length: 0.06, width: 0.0008 };

test.each([0, field, 2.5, -2])('a crack lies on the side it is given: azimuth %f', (azimuth) => {
  for (const side of [0, field]) {
    const mesh = addMark(build({ kind: 'pin-insulator', side }), { ...crack, azimuth }, set);
    const mean = verticesOf(mesh).reduce((sum, v) => sum.add(v), new Vector3());
    const off = Math.atan2(mean.y, mean.x) - azimuth;
    expect(Math.abs(Math.atan2(Math.sin(off), Math.cos(off)))).toBeLessThan(0.35);
  }
});

test('a crack begins at its height, is as long as it says and hugs the glaze', () => {
  const part = build({ kind: 'pin-insulator' });
  const glaze = meshesOf(part).find((m) => m.name === 'porcelainBrown') as Mesh;
  const body = verticesOf(glaze);
  const mesh = addMark(part, crack, set);
  const marks = verticesOf(mesh);
  const low = Math.min(...marks.map((v) => v.z));
  expect(Math.abs(low - crack.z)).toBeLessThan(0.006);
  for (const v of marks.filter((_, i) => i % 16 === 0)) {
    expect(Math.min(...body.map((b) => b.distanceTo(v)))).toBeLessThan(0.009);
  }
});

test('a crack round a leaning cutout keeps to the azimuth seen from above', () => {
  for (const side of [0, field, Math.PI]) {
    const part = build({ kind: 'cutout', side });
    const mesh = addMark(part, { kind: 'crack', azimuth: side + field, z: -0.05, length: 0.05, width: 0.0008 }, set);
    const mean = verticesOf(mesh)
      .reduce((sum, v) => sum.add(v), new Vector3())
      .divideScalar(mesh.geometry.getAttribute('position').count);
    const across = -Math.sin(side) * mean.x + Math.cos(side) * mean.y;
    expect(across).toBeGreaterThan(0.02);
  }
});

describe.each(markKinds.filter((k) => k !== 'chip'))('%s', (kind) => {
  const mark: Mark = { kind, azimuth: 1, z: 7, length: 0.5, width: 0.04, seed: 3 };

  test('is finite, transparent at its edges and the same for the same seed', () => {
    const a = addMark(build({ kind: 'pole' }), mark, set);
    const b = addMark(build({ kind: 'pole' }), mark, set);
    const p = a.geometry.getAttribute('position').array as Float32Array;
    expect(p.every(Number.isFinite)).toBe(true);
    expect(b.geometry.getAttribute('position').array).toEqual(p);
    const c = a.geometry.getAttribute('color');
    const alphas = Array.from({ length: c.count }, (_, i) => c.getW(i));
    expect(Math.min(...alphas)).toBe(0);
    expect(Math.max(...alphas)).toBeGreaterThan(0.2);
  });

  test('fades with its contrast', () => {
    const strongest = (contrast: number): number => {
      const c = addMark(build({ kind: 'pole' }), { ...mark, contrast }, set).geometry.getAttribute('color');
      return Math.max(...Array.from({ length: c.count }, (_, i) => c.getW(i)));
    };
    expect(strongest(0.2)).toBeLessThan(strongest(1));
  });
});

test('another seed gives another burn', () => {
  const of = (seed: number): ArrayLike<number> =>
    addMark(
      build({ kind: 'pole' }),
      { kind: 'burn', azimuth: 1, z: 8, length: 1, width: 0.012, seed },
      set,
    ).geometry.getAttribute('position').array;
  expect(of(2)).not.toEqual(of(3));
});

test('a burn follows the course it is handed', () => {
  const part = build({ kind: 'pole' });
  const segments = [
    [
      [1, 8],
      [1.1, 8.4],
    ],
    [
      [1.1, 8.4],
      [1.05, 9],
    ],
  ] as const;
  const mesh = addMark(part, { kind: 'burn', azimuth: 1, z: 8, length: 1, width: 0.01, segments }, set);
  const z = verticesOf(mesh).map((v) => v.z);
  expect(Math.min(...z)).toBeCloseTo(8, 1);
  expect(Math.max(...z)).toBeCloseTo(9, 1);
  const azimuths = verticesOf(mesh).map((v) => Math.atan2(v.y, v.x));
  expect(Math.min(...azimuths)).toBeGreaterThan(0.6);
  expect(Math.max(...azimuths)).toBeLessThan(1.5);
});

test('a chip takes the rim away on its side only, and from no other insulator', () => {
  const rim = (part: Group, azimuth: number): number =>
    Math.max(
      ...verticesOf(meshesOf(part).find((m) => m.name === 'porcelainBrown') as Mesh)
        .filter((v) => Math.abs(Math.atan2(v.y, v.x) - azimuth) < 0.09)
        .map((v) => Math.sqrt(v.x * v.x + v.y * v.y)),
    );
  const chipped = build({ kind: 'pin-insulator' });
  const sound = build({ kind: 'pin-insulator' });
  const before = rim(sound, field);
  addMark(chipped, { kind: 'chip', azimuth: field, z: 0.203, length: 0.015, width: 0.05 }, set);
  expect(rim(chipped, field)).toBeLessThan(before - 0.008);
  expect(rim(chipped, -field)).toBeCloseTo(before, 6);
  expect(rim(sound, field)).toBeCloseTo(before, 6);
});

test('a part without a turned surface refuses a mark', () => {
  expect(() => addMark(build({ kind: 'cone' }), crack, set)).toThrow(/cone/);
});
