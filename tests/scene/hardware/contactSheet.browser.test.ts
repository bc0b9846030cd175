import {
  Box3,
  Color,
  DirectionalLight,
  type Group,
  HemisphereLight,
  PerspectiveCamera,
  PMREMGenerator,
  Scene,
  Vector3,
  WebGLRenderer,
} from 'three';
import { RoomEnvironment } from 'three/addons/environments/RoomEnvironment.js';
import { afterAll, describe, expect, test } from 'vitest';
import type { Mark } from '../../../src/scene/hardware/mark.ts';
import { addMark } from '../../../src/scene/hardware/marks.ts';
import { hardware } from '../../../src/scene/hardware/registry.ts';
import type { PartSpec } from '../../../src/scene/hardware/types.ts';
import { materials } from '../../../src/scene/materials/materials.ts';
import { paintAll } from '../../../src/scene/materials/painting.ts';
import { kinds, specsOf } from './parts.ts';

const edge = 128;
const renderer = new WebGLRenderer({ antialias: false, preserveDrawingBuffer: true });
renderer.setSize(edge, edge);
const room = new PMREMGenerator(renderer);
const environment = room.fromScene(new RoomEnvironment()).texture;
const problems: string[] = [];
renderer.debug.onShaderError = () => problems.push('a shader does not compile');
const sky = new Color(0.3, 0.45, 0.6);

afterAll(() => renderer.dispose());

const build = (spec: PartSpec): Group => {
  const b = hardware[spec.kind];
  if (!b) throw new Error(spec.kind);
  return b(spec, materials());
};

/** Pixels of a part seen from an azimuth, framed by `box` or by itself. */
const see = (part: Group, azimuth: number, lift = 0.25, box = new Box3().setFromObject(part)): Uint8Array => {
  const scene = new Scene();
  scene.background = sky;
  scene.environment = environment;
  const sun = new DirectionalLight(0xffffff, 1.5);
  sun.position.set(2, -3, 4);
  scene.add(part, sun, new HemisphereLight(0xdde6ff, 0x665544, 0.6));
  const middle = box.getCenter(new Vector3());
  const far = (box.getSize(new Vector3()).length() / 2 / Math.sin(0.2)) * 1.02;
  const camera = new PerspectiveCamera((0.4 * 180) / Math.PI, 1, far / 50, far * 4);
  camera.up.set(0, 0, 1);
  camera.position
    .copy(middle)
    .add(
      new Vector3(
        Math.cos(azimuth) * Math.cos(lift),
        Math.sin(azimuth) * Math.cos(lift),
        Math.sin(lift),
      ).multiplyScalar(far),
    );
  camera.lookAt(middle);
  paintAll();
  renderer.render(scene, camera);
  const gl = renderer.getContext();
  const pixels = new Uint8Array(edge * edge * 4);
  gl.readPixels(0, 0, edge, edge, gl.RGBA, gl.UNSIGNED_BYTE, pixels);
  return pixels;
};

/** Pixels that differ by more than a shade. */
const differing = (a: Uint8Array, b: Uint8Array): number => {
  let n = 0;
  for (let i = 0; i < a.length; i += 4) {
    const d = [0, 1, 2].reduce((sum, k) => sum + Math.abs((a[i + k] as number) - (b[i + k] as number)), 0);
    if (d > 12) n++;
  }
  return n;
};

const empty = (() => {
  const part = build({ kind: 'cone' });
  part.visible = false;
  return see(part, 0);
})();

/** Long thin kinds are looked at where there is something to see. */
const near = (at: readonly [number, number, number], half: number): Box3 =>
  new Box3(new Vector3(...at).subScalar(half), new Vector3(...at).addScalar(half));
const closeUps: Readonly<Record<string, Box3>> = {
  guy: near([-0.2, 0, 7.7], 0.35),
  'pole-ground': near([0.13, 0, 2.5], 0.2),
  triplex: near([0.3, 0, 7], 0.3),
  'telecom-cable': near([0.6, 0, 5.95], 0.3),
};

test.each(kinds)('a %s fills its frame from three sides, and no two sides are alike', (kind) => {
  const spec = specsOf(kind)[0] as PartSpec;
  const views = [-1, 0.7, 2.4].map((azimuth) => see(build(spec), azimuth, 0.25, closeUps[kind]));
  for (const v of views) expect(differing(v, empty)).toBeGreaterThan(25);
  const round = ['cone', 'barrier-post', 'pole'];
  if (!round.includes(kind)) expect(differing(views[0] as Uint8Array, views[2] as Uint8Array)).toBeGreaterThan(8);
  expect(problems).toEqual([]);
});

const states: readonly (readonly [string, string, string, number])[] = [
  ['cutout', 'closed', 'open', -1.2],
  ['cutout', 'closed', 'removed', -1.2],
  ['tie', 'whole', 'one-leg', -1.2],
  ['tie', 'whole', 'broken', 1.2],
  ['arrester', 'whole', 'disconnected', -1.2],
  ['transformer', 'whole', 'no-strap', 0],
  ['meter', 'present', 'blank', 0.2],
  ['meter', 'blank', 'empty', 0.2],
  ['panel', 'main-on', 'main-off', 0.2],
  ['transfer-switch', 'line', 'generator', 0.6],
  ['house', 'dark', 'lit', 0.3],
  ['outbuilding', 'dark', 'open', 0.3],
  ['pole-ground', 'whole', 'cut', 0.2],
  ['guy', 'whole', 'no-guard', -1.2],
  ['truck', 'stowed', 'set-up', -1.2],
];

test.each(states)('a %s that is %s does not look like one that is %s', (kind, one, other, azimuth) => {
  const of = (state: string): PartSpec => specsOf(kind).find((s) => s.state === state) as PartSpec;
  const box = new Box3().setFromObject(build(of(one)));
  if (kind === 'pole-ground') box.set(new Vector3(0, -0.4, 0.7), new Vector3(0.3, 0.4, 1.5));
  expect(differing(see(build(of(one)), azimuth, 0.1, box), see(build(of(other)), azimuth, 0.1, box))).toBeGreaterThan(
    8,
  );
});

describe('a mark is seen from its own side and not from the other', () => {
  const field = Math.PI / 2;
  const cases: readonly (readonly [PartSpec, Mark, Box3])[] = [
    [
      { kind: 'pin-insulator' },
      { kind: 'crack', azimuth: field, z: 0.21, length: 0.06, width: 0.001 },
      new Box3(new Vector3(-0.09, -0.09, 0.17), new Vector3(0.09, 0.09, 0.31)),
    ],
    [
      { kind: 'pin-insulator' },
      { kind: 'chip', azimuth: field, z: 0.203, length: 0.015, width: 0.05 },
      new Box3(new Vector3(-0.09, -0.09, 0.17), new Vector3(0.09, 0.09, 0.31)),
    ],
    [
      { kind: 'pole' },
      { kind: 'burn', azimuth: field, z: 9, length: 1, width: 0.012 },
      new Box3(new Vector3(-0.2, -0.2, 9), new Vector3(0.2, 0.2, 10)),
    ],
    [
      { kind: 'pole' },
      { kind: 'scar', azimuth: field, z: 3, length: 0.5, width: 0.1 },
      new Box3(new Vector3(-0.2, -0.2, 2.9), new Vector3(0.2, 0.2, 3.6)),
    ],
  ];
  test.each(cases)('%o with %o', (spec, mark, box) => {
    const marked = build(spec);
    addMark(marked, mark, materials());
    expect(differing(see(marked, field, 0.1, box), see(build(spec), field, 0.1, box))).toBeGreaterThan(15);
    expect(differing(see(marked, -field, 0.1, box), see(build(spec), -field, 0.1, box))).toBe(0);
  });
});
