/** Ground, road, verges and drives of the place, as few large meshes. */
import { BufferAttribute, BufferGeometry, Color, Group, Mesh, MeshStandardMaterial } from 'three';
import { type Materials, wet } from '../materials/materials.ts';
import { drives, groundAt, road } from './lie.ts';
import type { Place } from './setting.ts';

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

/** Breaks the repetition of a tiled texture with two slow waves of shade over the ground. */
const varied = (material: MeshStandardMaterial, scale: number): MeshStandardMaterial => {
  const copy = material.clone();
  copy.onBeforeCompile = (shader) => {
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', '#include <common>\nvarying vec2 vLie;')
      .replace('#include <begin_vertex>', '#include <begin_vertex>\nvLie = position.xy;');
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', '#include <common>\nvarying vec2 vLie;')
      .replace(
        '#include <map_fragment>',
        `#include <map_fragment>
vec4 broad = texture2D(map, vMapUv * ${scale.toFixed(3)} + 0.37);
float wave = sin(vLie.x * 0.21 + sin(vLie.y * 0.17) * 1.7) * sin(vLie.y * 0.26 + 0.6) * 0.5 + 0.5;
diffuseColor.rgb *= mix(0.72, 1.22, wave) * mix(vec3(1.0), broad.rgb / max(0.001, dot(broad.rgb, vec3(0.333))), 0.5);`,
      );
  };
  copy.customProgramCacheKey = () => `varied ${scale}`;
  return copy;
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

/** Grass late in the year; the rest is as it is. */
const autumn = new Color(1.45, 1.2, 1.05);
const white = new Color(1, 1, 1);
/** Snow over a dark texture: beyond white, so that blades still show through. */
const lying = new Color(3.4, 3.5, 3.7);

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
  const grass = varied(set.grass, 0.173);
  const gravel = varied(set.gravel, 0.31);
  const asphalt = varied(set.asphalt, 0.27);
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
  const paving = { asphalt, gravel, concrete: set.concrete };
  for (const { from, to, level, of } of place.paved)
    add(
      strip(from, to, -300, road.end + 1, () => level, 3),
      paving[of],
    );
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
      ] as const) {
        mine.color.copy(theirs.color).multiply(tint);
        if (snow > 0) mine.color.lerp(lying, mine === asphalt ? 0.35 : 0.85);
        mine.roughness = mine === asphalt ? theirs.roughness : iced ? 0.72 : 1;
      }
    },
    dispose: () => {
      for (const child of group.children) (child as Mesh).geometry.dispose();
      for (const m of [grass, gravel, asphalt, water.material]) m.dispose();
    },
  };
};
