/** Ground, road, verges and drives of the place, as few large meshes. */
import { BufferAttribute, BufferGeometry, Color, Group, Mesh, MeshStandardMaterial } from 'three';
import { type Materials, wet } from '../materials/materials.ts';
import { drives, groundAt, road } from './lie.ts';
import { surfaceOf } from './surface.ts';
import type { Place } from './types.ts';

type Line = readonly number[];

const range = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

/** A sheet over a grid of x and y lines; `tile` metres of texture. */
const sheet = (xs: Line, ys: Line, height: (x: number, y: number) => number, tile: number): BufferGeometry => {
  const position: number[] = [];
  const uv: number[] = [];
  const index: number[] = [];
  for (const y of ys) {
    for (const x of xs) {
      position.push(x, y, height(x, y));
      uv.push(x / tile, y / tile);
    }
  }
  const n = xs.length;
  for (let j = 0; j < ys.length - 1; j++) {
    for (let i = 0; i < n - 1; i++) {
      const p = j * n + i;
      index.push(p, p + 1, p + n, p + 1, p + n + 1, p + n);
    }
  }
  const g = new BufferGeometry();
  g.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  g.setAttribute('uv', new BufferAttribute(new Float32Array(uv), 2));
  g.setIndex(index);
  g.computeVertexNormals();
  return g;
};

const ground = (): BufferGeometry => {
  const xs = [...range(-300, -90, 15), ...range(-84, 84, 2), ...range(90, 300, 15)];
  const ys = [
    ...range(-300, -60, 15),
    ...range(-52, -20, 4),
    ...range(-17, -11.6, 0.45),
    -11.2,
    -9,
    -6.8,
    ...range(-6.4, -1.6, 0.3),
    ...range(-1.2, 20, 1.2),
    ...range(24, 60, 4),
    ...range(75, 300, 15),
  ];
  return sheet(xs, ys, (x, y) => groundAt(x, y) - (y < -6.5 && y > -11.6 && x < road.end ? 0.06 : 0), 3);
};

const strip = (
  from: number,
  to: number,
  x0: number,
  x1: number,
  z: (y: number) => number,
  tile: number,
): BufferGeometry => {
  const ys = Array.from({ length: 7 }, (_, i) => from + ((to - from) * i) / 6);
  return sheet(range(x0, x1, 4), ys, (_x, y) => z(y), tile);
};

/** A kerb stone's section from the gutter on: metres aside and up, its arris worn round. */
const KERB = [
  [0, -0.02],
  [0.012, 0.062],
  [0.03, 0.08],
  [0.13, 0.084],
  [0.15, 0.034],
] as const;

const kerb = (at: number, toward: 1 | -1): BufferGeometry => {
  const section = toward > 0 ? KERB : KERB.toReversed();
  const up = new Map(section.map(([aside, z]) => [at + toward * aside, z]));
  return sheet(range(-300, road.end + 1, 4), [...up.keys()], (_x, y) => up.get(y) ?? 0, 1.2);
};

/** Grass late in the year: straw among the green; the rest is as it is. */
const autumn = new Color(1.35, 1.12, 1.75);
const white = new Color(1, 1, 1);
/** Kerb stone is darker than the slabs behind it. */
const granite = new Color(0.78, 0.78, 0.8);
/** Snow on a roof: beyond white over its dark texture, so that courses still show through. */
const roofed = new Color(6, 6.2, 6.6);

/** Level of standing water: over the flat by the pole, under the crown of the road; hummocks stand out of it. */
const FLOOD = 0.014;

export interface Land {
  readonly group: Group;
  /** Darkens the ground with the film of water on it; snow lies white, and water stands where it is flooded. */
  soak(set: Materials, wetness: number, snow?: number, flooded?: boolean, iced?: boolean): void;
  dispose(): void;
}

/** The land of a scene. */
export const landOf = (set: Materials, place: Place): Land => {
  const group = new Group();
  const lying = { value: 0 };
  const grass = surfaceOf(set.grass, { broad: 0.173 }, lying);
  const gravel = surfaceOf(set.gravel, { broad: 0.31 }, lying);
  const asphalt = surfaceOf(set.asphalt, { broad: 0.13, road: { line: place.centreLine } }, lying);
  const concrete = surfaceOf(set.concrete, { broad: 0.29 }, lying);
  const stone = surfaceOf(set.concrete, { broad: 0.29 }, lying);
  for (const m of [grass, gravel]) m.envMapIntensity = 0.5;
  const add = (g: BufferGeometry, m: MeshStandardMaterial): void => {
    const mesh = new Mesh(g, m);
    mesh.receiveShadow = true;
    group.add(mesh);
  };
  add(ground(), grass);
  const half = (road.near - road.far) / 2;
  const crown = (y: number): number => 0.035 - 0.05 * ((y - road.middle) / half) ** 2;
  add(strip(road.far, road.near, -300, road.end, crown, 4), asphalt);
  add(
    strip(road.near - 0.15, road.near + 0.95, -300, road.end + 1, (y) => -0.014 - 0.045 * (y - road.near), 2),
    gravel,
  );
  add(
    strip(road.far - 0.95, road.far + 0.15, -300, road.end + 1, (y) => -0.014 + 0.045 * (y - road.far), 2),
    gravel,
  );
  const paving = { asphalt, gravel, concrete };
  for (const { from, to, level, of } of place.paved)
    add(
      strip(from, to, -300, road.end + 1, () => level, 3),
      paving[of],
    );
  for (const { at, toward } of place.kerbs ?? []) add(kerb(at, toward), stone);
  for (const d of place.drives ? drives : []) {
    const near = d.to > 0 ? road.near - 0.2 : d.to;
    const far = d.to > 0 ? d.to : road.far + 0.2;
    add(
      sheet(
        range(d.x - 1.7, d.x + 1.7, 0.425),
        range(near, far, 1),
        (x, y) => groundAt(x, y) + 0.03 - 0.03 * ((x - d.x) / 1.7) ** 4,
        2,
      ),
      gravel,
    );
  }
  const water = new Mesh(
    sheet(range(-120, 120, 30), range(-24, 28, 13), () => FLOOD, 4),
    new MeshStandardMaterial({ color: 0x20261f, roughness: 0.06, metalness: 0, transparent: true, opacity: 0.82 }),
  );
  water.visible = false;
  group.add(water);
  return {
    group,
    soak: (materials, wetness, snow = 0, flooded = false, iced = false) => {
      wet(materials, wetness, iced);
      water.visible = flooded;
      for (const [mine, theirs, tint] of [
        [grass, materials.grass, autumn],
        [gravel, materials.gravel, white],
        [asphalt, materials.asphalt, white],
        [concrete, materials.concrete, white],
        [stone, materials.concrete, granite],
      ] as const) {
        mine.color.copy(theirs.color).multiply(tint);
        const paved = mine === asphalt || mine === concrete || mine === stone;
        mine.roughness = paved ? theirs.roughness : iced ? 0.72 : 1;
      }
      // Ice on the blades hides an eighth of what they stand on (estimate).
      lying.value = Math.max(snow, iced ? 0.12 : 0);
      materials.shingles.color.lerp(roofed, 0.85 * snow);
    },
    dispose: () => {
      for (const child of group.children) (child as Mesh).geometry.dispose();
      for (const m of [grass, gravel, asphalt, concrete, stone, water.material]) m.dispose();
    },
  };
};
