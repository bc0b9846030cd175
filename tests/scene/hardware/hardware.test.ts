import { Box3, type Group, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import { chamferBox } from '../../../src/scene/hardware/chamfer.ts';
import { outerOf, profileNames, profileOf, turnedOf } from '../../../src/scene/hardware/profiles.ts';
import { hardware } from '../../../src/scene/hardware/registry.ts';
import { turned } from '../../../src/scene/hardware/shapes.ts';
import type { PartData, PartSpec } from '../../../src/scene/hardware/types.ts';
import { wire } from '../../../src/scene/hardware/wire.ts';
import { bare, kinds, meshesOf, specsOf, trianglesOf } from './parts.ts';

const build = (spec: PartSpec): Group => {
  const b = hardware[spec.kind];
  if (!b) throw new Error(spec.kind);
  return b(spec, bare);
};
const boxOf = (part: Group): Vector3 => new Box3().setFromObject(part).getSize(new Vector3());

/** Volume by the divergence theorem: positive only if the faces look outward. */
const volume = (g: ReturnType<typeof turned>): number => {
  const p = g.getAttribute('position');
  const index = g.getIndex()?.array ?? [];
  let sum = 0;
  const v = [new Vector3(), new Vector3(), new Vector3()] as const;
  for (let i = 0; i < index.length; i += 3) {
    v.forEach((x, k) => {
      x.fromBufferAttribute(p, index[i + k] as number);
    });
    sum += v[0].dot(v[1].clone().cross(v[2])) / 6;
  }
  return sum;
};

describe.each(kinds)('%s', (kind) => {
  const specs = specsOf(kind);

  test('has finite points, unit normals and a material on every mesh, in every state and variant', () => {
    for (const spec of specs) {
      const part = build(spec);
      expect(part.children.length).toBeGreaterThan(0);
      for (const mesh of meshesOf(part)) {
        expect(mesh.material).toBe(bare[mesh.name as 'wood']);
        const p = mesh.geometry.getAttribute('position').array as Float32Array;
        expect(p.every(Number.isFinite), `${kind} ${spec.state} ${mesh.name} positions`).toBe(true);
        const n = mesh.geometry.getAttribute('normal');
        const v = new Vector3();
        let flat = 0;
        for (let i = 0; i < n.count; i++) if (Math.abs(v.fromBufferAttribute(n, i).length() - 1) > 0.02) flat++;
        expect(flat / n.count, `${kind} ${spec.state} ${mesh.name} normals`).toBeLessThan(0.04);
      }
    }
  });

  test('stays within its budget of triangles', () => {
    const large = ['truck', 'house', 'generator', 'transformer', 'regulator', 'capacitor'];
    for (const spec of specs)
      expect(trianglesOf(build(spec)), String(spec.state)).toBeLessThan(large.includes(kind) ? 10800 : 6000);
  });

  test('is built alike twice and differently by no clock', () => {
    const spec = specs[specs.length - 1] as PartSpec;
    const [a, b] = [build(spec), build(spec)];
    meshesOf(a).forEach((mesh, i) => {
      expect(meshesOf(b)[i]?.geometry.getAttribute('position').array).toEqual(
        mesh.geometry.getAttribute('position').array,
      );
    });
  });

  test('names its make-up points on or near itself', () => {
    for (const spec of specs) {
      const part = build(spec);
      const box = new Box3().setFromObject(part).expandByScalar(kind === 'truck' ? 6 : 1.1);
      for (const [name, at] of Object.entries((part.userData as PartData).points)) {
        expect(box.containsPoint(new Vector3(...at)), name).toBe(true);
      }
    }
  });

  test('refuses a size, a state and a variant that it does not have', () => {
    const spec = specs[0] as PartSpec;
    expect(() => build({ ...spec, size: { nonsense: 1 } })).toThrow(/nonsense/);
    expect(() => build({ ...spec, state: 'nonsense' })).toThrow(/nonsense/);
    expect(() => build({ ...spec, variant: 'nonsense' })).toThrow(/nonsense/);
  });
});

test('every kind of hardware that a service pole needs has a builder', () => {
  const wanted =
    'pole pin-insulator tie deadend-insulator cutout arrester transformer neutral-spool hot-line-clamp lead pole-ground guy secondary-clevis wedge-clamp triplex meter service-mast panel transfer-switch generator streetlight tag ground-set truck cone wheel-chock barrier-tape sign person house outbuilding tree';
  expect(wanted.split(' ').filter((k) => !hardware[k])).toEqual([]);
});

test.each<[string, PartSpec, readonly (number | null)[], number]>([
  ['pole', { kind: 'pole', size: { height: 10.36, groundDiameter: 0.29, below: 0 } }, [0.29, 0.29, 10.36], 0.02],
  ['taller pole', { kind: 'pole', size: { height: 12, groundDiameter: 0.33, below: 0.5 } }, [0.33, 0.33, 12.5], 0.02],
  ['25 kVA tank', { kind: 'transformer' }, [0.614, 0.54, 1.15], 0.03],
  ['50 kVA tank', { kind: 'transformer', size: { diameter: 0.55, height: 1.0 } }, [0.71, 0.64, 1.3], 0.05],
  ['pin insulator', { kind: 'pin-insulator' }, [0.26, 0.164, null], 0.03],
  ['closed cutout', { kind: 'cutout' }, [0.47, 0.11, 0.49], 0.03],
  ['cone', { kind: 'cone', size: { height: 0.71 } }, [0.36, 0.36, 0.71], 0.01],
  ['worker', { kind: 'person' }, [null, null, 1.81], 0.04],
  ['truck', { kind: 'truck' }, [7.5, null, null], 0.3],
])('a %s has its true size', (_, spec, want, within) => {
  const size = boxOf(build(spec)).toArray();
  want.forEach((w, i) => {
    if (w !== null) expect(Math.abs((size[i] as number) - w)).toBeLessThan(within);
  });
});

test('an opened tube hangs lower than the closed cutout and clear of the body, and a removed one is gone', () => {
  const bottom = (state: string): number => new Box3().setFromObject(build({ kind: 'cutout', state })).min.z;
  expect(bottom('open')).toBeLessThan(bottom('closed') - 0.25);
  const ring = (state: string): readonly number[] | undefined =>
    (build({ kind: 'cutout', state }).userData as PartData).points.ring;
  const load = (build({ kind: 'cutout' }).userData as PartData).points.load as readonly number[];
  expect(ring('open')?.[2]).toBeLessThan((load[2] as number) - 0.2);
  expect(ring('removed')).toBeUndefined();
});

test('the side of a part turns it about the vertical', () => {
  const at = (side: number): readonly number[] =>
    (build({ kind: 'cutout', side }).userData as PartData).points.line as readonly number[];
  const [x0, , z0] = at(0) as [number, number, number];
  const [x1, y1, z1] = at(Math.PI / 2) as [number, number, number];
  expect(x1).toBeCloseTo(0, 6);
  expect(y1).toBeCloseTo(x0, 6);
  expect(z1).toBeCloseTo(z0, 6);
});

test('seen from the field, X3 is left and X1 right of the middle bushing', () => {
  const p = (build({ kind: 'transformer', side: 0 }).userData as PartData).points;
  expect(p.x3?.[1]).toBeLessThan(-0.05);
  expect(p.x2?.[1]).toBeCloseTo(0, 6);
  expect(p.x1?.[1]).toBeGreaterThan(0.05);
});

test('turned bodies, boxes and wires look outward', () => {
  for (const name of profileNames) expect(volume(turnedOf(name)), name).toBeGreaterThan(0);
  const r = 0.1;
  const drum = turned(
    [
      [0, 0],
      [r, 0],
      [r, 0],
      [r, 1],
      [r, 1],
      [0, 1],
    ],
    64,
  );
  expect(volume(drum)).toBeCloseTo(Math.PI * r * r, 3);
  expect(volume(chamferBox(1, 2, 3, 0.01))).toBeCloseTo(6, 1);
  const rod = wire([new Vector3(0, 0, 0), new Vector3(0, 0, 0.5), new Vector3(0, 0, 1)], 0.1, 48);
  expect(volume(rod)).toBeCloseTo(Math.PI * 0.01, 3);
});

test('profiles keep off the axis and their outer part runs upward', () => {
  for (const name of profileNames) {
    const outer = outerOf(profileOf(name));
    expect(Math.min(...profileOf(name).map(([r]) => r))).toBeGreaterThanOrEqual(0);
    const first = outer[0] as readonly [number, number];
    const last = outer[outer.length - 1] as readonly [number, number];
    expect(last[1], name).toBeGreaterThan(first[1]);
  }
});

test('a pole ground is parted exactly where it says', () => {
  const parted = build({ kind: 'pole-ground', state: 'cut', size: { partedFrom: 0.5, partedTo: 1.7 } });
  const copper = meshesOf(parted).find((m) => m.name === 'copper');
  const p = copper?.geometry.getAttribute('position');
  const between = Array.from({ length: p?.count ?? 0 }, (_, i) => p?.getZ(i) ?? 0).filter((z) => z > 0.56 && z < 1.64);
  expect(between).toEqual([]);
  expect(() => build({ kind: 'pole-ground', state: 'cut' })).toThrow(/partedFrom/);
});

test('one service pole with its hardware keeps under 60 000 triangles', () => {
  const on = [
    'pole',
    'pin-insulator',
    'tie',
    'hot-line-clamp',
    'cutout',
    'arrester',
    'transformer',
    'neutral-spool',
    'pole-ground',
    'secondary-clevis',
    'wedge-clamp',
    'triplex',
    'lead',
    'lead',
    'lead',
    'guy',
    'tag',
  ];
  const total = on.reduce((sum, kind) => sum + trianglesOf(build(specsOf(kind)[0] as PartSpec)), 0);
  expect(total).toBeLessThan(60000);
});
