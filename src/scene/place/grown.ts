/** What grows and stands about: tufts of grass, trees, bushes, a field fence. Instanced; seeded, so the place is always the same. */
import {
  type BufferAttribute,
  type BufferGeometry,
  DataTexture,
  DoubleSide,
  Euler,
  Group,
  InstancedMesh,
  LinearFilter,
  LinearMipmapLinearFilter,
  Matrix4,
  type Mesh,
  MeshStandardMaterial,
  PlaneGeometry,
  Quaternion,
  ShaderChunk,
  SRGBColorSpace,
  Vector3,
} from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import { hardware } from '../hardware/registry.ts';
import type { Materials } from '../materials/materials.ts';
import { hash, stream } from '../materials/noise.ts';
import { drives, groundAt, road } from './lie.ts';
import { SNOW } from './surface.ts';
import type { Place, Plants } from './types.ts';

/** Blades of grass on transparent ground, root at the lower edge. */
const blades = (): DataTexture => {
  const n = 128;
  const data = new Uint8Array(n * n * 4);
  for (let i = 0; i < n * n; i++) data.set([84, 92, 56, 0], i * 4);
  for (let b = 0; b < 46; b++) {
    const root = 10 + hash(b, 1, 5) * (n - 20);
    const lean = (hash(b, 2, 5) - 0.5) * 60;
    const tall = n * (0.35 + 0.63 * hash(b, 3, 5));
    const dry = hash(b, 4, 5);
    for (let y = 0; y < tall; y++) {
      const t = y / tall;
      const x = root + lean * t * t;
      const half = 1.9 * (1 - t) + 0.35;
      for (let dx = Math.floor(x - half); dx <= x + half; dx++) {
        if (dx < 0 || dx >= n) continue;
        const k = 0.8 + 0.42 * t;
        data.set([(62 + 86 * dry) * k, (76 + 58 * dry) * k, (36 + 34 * dry) * k, 255], (y * n + dx) * 4);
      }
    }
  }
  const texture = new DataTexture(data, n, n);
  texture.colorSpace = SRGBColorSpace;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  texture.needsUpdate = true;
  return texture;
};

const tuft = (): BufferGeometry => {
  const planes = [0, 1, 2].map((i) => {
    const g = new PlaneGeometry(1, 1)
      .rotateX(Math.PI / 2)
      .translate(0, 0, 0.48)
      .rotateZ((i * Math.PI) / 3);
    const normal = g.getAttribute('normal') as BufferAttribute;
    for (let k = 0; k < normal.count; k++) normal.setXYZ(k, 0, 0, 1);
    return g;
  });
  return mergeGeometries(planes);
};

const matrix = (x: number, y: number, turn: number, wide: number, tall: number): Matrix4 =>
  new Matrix4().compose(
    new Vector3(x, y, groundAt(x, y) - 0.02),
    new Quaternion().setFromEuler(new Euler(0, 0, turn)),
    new Vector3(wide, wide, tall),
  );

const onRoad = (x: number, y: number): boolean =>
  (y < road.near + 0.75 && y > road.far - 0.75 && x < road.end + 1) ||
  drives.some((d) => Math.abs(x - d.x) < 1.75 && (d.to > 0 ? y > road.far && y < d.to : y < road.near && y > d.to));

/** Tufts thick near where people stand and in the ditches, thin beyond. */
const tufts = (count: number, height: number, keep: (x: number, y: number) => boolean): Matrix4[] => {
  const next = stream(41);
  const out: Matrix4[] = [];
  for (let i = 0; out.length < count && i < count * 6; i++) {
    const x = -75 + 145 * next();
    const near = next();
    const y = near < 0.6 ? -20 + 34 * next() : -40 + 85 * next();
    const turn = next() * 6.28;
    const size = next();
    if (onRoad(x, y) || !keep(x, y)) continue;
    const ditch = Math.abs(y + 3.9) < 1.4 || Math.abs(y + 14.2) < 1.4;
    const tall = (ditch ? 0.34 + 0.5 * size : 0.14 + 0.24 * size * size) * (Math.abs(y) < 1.2 ? 0.7 : 1) * height;
    out.push(matrix(x, y, turn, ditch ? 0.3 + 0.4 * size : 0.22 + 0.26 * size, tall));
  }
  return out;
};

/**
 * Leaves and blades are lit by where they grow, not by which face of the card is seen: a card turned round would stand dark among
 * its like. Snow lies on the paler of them; a skin of ice takes their colour and leaves them grey and bright.
 */
const eitherFace = (
  material: MeshStandardMaterial,
  lying: { value: number },
  glaze: { value: number },
): MeshStandardMaterial => {
  material.onBeforeCompile = (shader) => {
    shader.uniforms.lying = lying;
    shader.uniforms.glaze = glaze;
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', '#include <common>\nuniform float lying;\nuniform float glaze;')
      .replace(
        '#include <map_fragment>',
        `#include <map_fragment>
float seen = dot(diffuseColor.rgb, vec3(0.3, 0.59, 0.11));
diffuseColor.rgb = mix(diffuseColor.rgb, vec3(0.94, 0.98, 1.0) * (0.12 + 2.3 * seen), 0.75 * glaze);
diffuseColor.rgb = mix(diffuseColor.rgb, vec3(${SNOW}), lying * (0.35 + 0.5 * smoothstep(0.03, 0.2, diffuseColor.g)));`,
      )
      .replace(
        '#include <normal_fragment_begin>',
        ShaderChunk.normal_fragment_begin.replace('gl_FrontFacing ? 1.0 : - 1.0', '1.0'),
      );
  };
  material.customProgramCacheKey = () => 'either face';
  return material;
};

type CopyOf = (material: MeshStandardMaterial) => MeshStandardMaterial;

const instanced = (mesh: Mesh, copyOf: CopyOf, places: readonly Matrix4[], shadow: boolean): InstancedMesh => {
  const many = new InstancedMesh(mesh.geometry, copyOf(mesh.material as MeshStandardMaterial), places.length);
  places.forEach((m, i) => {
    many.setMatrixAt(i, m);
  });
  many.castShadow = shadow;
  many.receiveShadow = true;
  many.frustumCulled = false;
  return many;
};

const sizes: Readonly<Record<string, { readonly height: number; readonly spread: number }>> = {
  broadleaf: { height: 9.5, spread: 7 },
  conifer: { height: 11, spread: 5 },
  bush: { height: 1.9, spread: 2.6 },
};

/** Degrees Celsius below which broad leaves are taken to be shed: the picture knows no other season (estimate). */
const BARE = 5;

const trees = (set: Materials, copyOf: CopyOf, plants: Plants, bare: boolean): InstancedMesh[] =>
  Object.entries(plants).flatMap(([variant, list]) => {
    const one = hardware.tree?.(
      { kind: 'tree', variant, state: bare ? 'bare' : 'whole', seed: 3, size: { ...sizes[variant] } },
      set,
    );
    if (!one || list.length === 0) return [];
    const places = list.map(([x, y, k], i) => matrix(x, y, hash(i, 5, 9) * 6.28, k * (0.9 + 0.2 * hash(i, 6, 9)), k));
    return one.children.map((child) => instanced(child as Mesh, copyOf, places, false));
  });

const fence = (set: Materials, copyOf: CopyOf): InstancedMesh[] => {
  const post = hardware.pole?.(
    { kind: 'pole', size: { height: 1.25, topDiameter: 0.1, groundDiameter: 0.12 }, seed: 8 },
    set,
  );
  if (!post) return [];
  const places = Array.from({ length: 52 }, (_, i) => -92 + i * 3.4)
    .filter((x) => Math.abs(x - 17) > 2.4)
    .map((x, i) => matrix(x, 13.6, hash(i, 3, 2) * 6, 1, 0.94 + 0.1 * hash(i, 4, 2)));
  return post.children.map((child) => instanced(child as Mesh, copyOf, places, false));
};

export interface Grown {
  readonly group: Group;
  /** Takes over what rain did to the materials it shares with hardware; a skin of ice on every blade, or none; snow on them, 0 to 1. */
  soak(iced: boolean, snow?: number): void;
  dispose(): void;
}

/** Everything grown; `keep` says where tufts may stand (not through a truck or a house). */
export const grownIn = (
  set: Materials,
  place: Place,
  celsius: number,
  keep: (x: number, y: number) => boolean,
  many: number,
): Grown => {
  const group = new Group();
  const lying = { value: 0 };
  const glaze = { value: 0 };
  // A material that served single things and many-fold ones would change its program twice a frame.
  const copies = new Map<MeshStandardMaterial, MeshStandardMaterial>();
  const copyOf: CopyOf = (material) => {
    const copy =
      copies.get(material) ?? (material.alphaTest > 0 ? eitherFace(material.clone(), lying, glaze) : material.clone());
    copies.set(material, copy);
    return copy;
  };
  const texture = blades();
  const material = eitherFace(
    new MeshStandardMaterial({ map: texture, alphaTest: 0.4, side: DoubleSide, roughness: 1, envMapIntensity: 0.5 }),
    lying,
    glaze,
  );
  const geometry = tuft();
  const places = tufts(many * place.grass.many, place.grass.tall, keep);
  const grass = new InstancedMesh(geometry, material, places.length);
  places.forEach((m, i) => {
    grass.setMatrixAt(i, m);
  });
  grass.receiveShadow = true;
  grass.frustumCulled = false;
  group.add(
    grass,
    ...trees(set, copyOf, place.plants, celsius < BARE),
    ...(place.fieldFence ? fence(set, copyOf) : []),
  );
  return {
    group,
    soak: (on, snow = 0) => {
      for (const [from, to] of copies) {
        to.color.copy(from.color);
        to.roughness = from.roughness;
      }
      glaze.value = on ? 1 : 0;
      lying.value = snow;
      material.roughness = on ? 0.65 : 1;
    },
    dispose: () => {
      for (const child of group.children as InstancedMesh[]) {
        child.geometry.dispose();
        child.dispose();
      }
      for (const copy of copies.values()) copy.dispose();
      texture.dispose();
      material.dispose();
    },
  };
};
