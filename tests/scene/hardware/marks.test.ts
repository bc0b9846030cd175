import { DoubleSide, type Group, type Mesh, MeshBasicMaterial, Raycaster, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import { type Mark, markKinds, type SolidMark, solidMarks } from '../../../src/scene/hardware/mark.ts';
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

describe.each(markKinds.filter((k) => !solidMarks.includes(k as SolidMark)))('%s', (kind) => {
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

test('a burn with a middle keeps to the face of an arm on which it lies', () => {
  const part = build({ kind: 'crossarm', side: Math.PI });
  const middle: [number, number, number] = [-0.0515, 0.6, -0.06];
  const segments = [-0.4, -0.2, 0, 0.2].map(
    (s) => [[0.02 * Math.sin(9 * s), s] as const, [0.02, s + 0.2] as const] as const,
  );
  const mesh = addMark(
    part,
    { kind: 'burn', azimuth: 0, z: 0, length: 0.8, width: 0.014, middle, out: [0, 0, -1], segments },
    set,
  );
  const marks = verticesOf(mesh);
  for (const v of marks) expect(v.z).toBeLessThan(-0.058);
  expect(Math.min(...marks.map((v) => Math.abs(v.y)))).toBeCloseTo(0.2, 1);
  expect(Math.max(...marks.map((v) => Math.abs(v.y)))).toBeCloseTo(1, 1);
});

test.each(solidMarks.filter((k) => k !== 'chip'))('%s stands on the side that it is given', (kind) => {
  const part = build({ kind: 'pole' });
  addMark(part, { kind, azimuth: field, z: 1, length: 0.15, width: 0.06, seed: 4 }, set);
  const its = meshesOf(part).filter((m) => m.name === `mark-${kind}`);
  const most = Math.max(...its.flatMap((m) => verticesOf(m).map((v) => v.y)));
  expect(its.length).toBeGreaterThan(0);
  expect(most).toBeGreaterThan(0.14);
});

test('a pole that is split open at its top can be looked through there, and not below', () => {
  const wood = meshesOf(build({ kind: 'pole', state: 'split-top', side: 0.4, size: { split: -0.4 } })).find(
    (m) => m.name === 'wood',
  ) as Mesh;
  const shots = (z: number): number => {
    wood.updateMatrixWorld();
    const ray = new Raycaster(new Vector3(0, -2, z), new Vector3(0, 1, 0));
    wood.material = new MeshBasicMaterial({ side: DoubleSide });
    return ray.intersectObject(wood).length;
  };
  expect(shots(10.2)).toBe(0);
  expect(shots(9)).toBeGreaterThan(0);
});

test('a part without a turned surface refuses a mark', () => {
  expect(() => addMark(build({ kind: 'cone' }), crack, set)).toThrow(/cone/);
});
