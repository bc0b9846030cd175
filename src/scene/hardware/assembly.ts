/** Gathers the shapes of one part, joins those of one material into one mesh, and names sizes, states and points. */
import { BufferAttribute, type BufferGeometry, Group, Matrix4, Mesh } from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import type { MaterialName, Materials } from '../materials/materials.ts';
import type { Profile } from './shapes.ts';
import type { Builder, MarkSurface, PartData, PartSpec, Point } from './types.ts';

const uniform = (geometry: BufferGeometry, coloured: boolean): BufferGeometry => {
  const g = geometry;
  for (const name of Object.keys(g.attributes)) {
    if (!['position', 'normal', 'uv', ...(coloured ? ['color'] : [])].includes(name)) g.deleteAttribute(name);
  }
  const count = g.getAttribute('position').count;
  if (!g.getAttribute('uv')) g.setAttribute('uv', new BufferAttribute(new Float32Array(count * 2), 2));
  if (coloured && !g.getAttribute('color')) {
    g.setAttribute('color', new BufferAttribute(new Float32Array(count * 3).fill(1), 3));
  }
  if (!g.getIndex()) g.setIndex(Array.from({ length: count }, (_, i) => i));
  g.morphAttributes = {};
  return g;
};

/** Collects geometry by material while a builder works, in a frame whose x points outward. */
export class Assembly {
  private readonly pieces = new Map<MaterialName, BufferGeometry[]>();
  private frame: Matrix4;
  points: Record<string, Point> = {};
  surface: MarkSurface | null = null;
  surfaces: Record<string, MarkSurface> = {};

  constructor(side: number) {
    this.frame = new Matrix4().makeRotationZ(side);
  }

  add(material: MaterialName, ...shapes: (BufferGeometry | BufferGeometry[])[]): void {
    const list = this.pieces.get(material) ?? [];
    list.push(...shapes.flat().map((g) => g.applyMatrix4(this.frame)));
    this.pieces.set(material, list);
  }

  /** Builds `work` in a frame carried by `matrix`. */
  within(matrix: Matrix4, work: () => void): void {
    const before = this.frame;
    this.frame = before.clone().multiply(matrix);
    work();
    this.frame = before;
  }

  /** Names a point of the present frame. */
  name(name: string, at: Point): void {
    this.points[name] = this.place(at);
  }

  place(at: Point): Point {
    const e = this.frame.elements as readonly number[];
    const axis = (i: number): number =>
      (e[i] as number) * at[0] + (e[i + 4] as number) * at[1] + (e[i + 8] as number) * at[2] + (e[i + 12] as number);
    return [axis(0), axis(1), axis(2)];
  }

  /** Declares a surface on which marks are laid, a profile about z of the present frame; without a name, the usual one. */
  markable(profile: Profile, lift = 0.0004, name?: string, box?: readonly [number, number]): void {
    const surface = { profile, frame: this.frame.clone(), lift, ...(box ? { box } : {}) };
    if (name === undefined) this.surface = surface;
    else this.surfaces[name] = surface;
  }

  group(kind: string, state: string, set: Materials): Group {
    const group = new Group();
    group.name = kind;
    for (const [name, shapes] of this.pieces) {
      const merged = mergeGeometries(
        shapes.map((g) => uniform(g, set[name].vertexColors)),
        false,
      );
      if (!merged) throw new Error(`${kind}: the shapes in ${name} cannot be joined`);
      const mesh = new Mesh(merged, set[name]);
      mesh.name = name;
      mesh.castShadow = !set[name].transparent;
      mesh.receiveShadow = true;
      group.add(mesh);
    }
    const data: PartData = { kind, state, points: this.points, surface: this.surface, surfaces: this.surfaces };
    Object.assign(group.userData, data);
    return group;
  }
}

interface Description<S extends Record<string, number>> {
  readonly kind: string;
  readonly states?: readonly string[];
  readonly variants?: readonly string[];
  /** Default sizes. */
  readonly size: S;
  readonly build: (a: Assembly, size: S, part: Required<PartSpec>) => void;
}

const chosen = (kind: string, what: string, value: string | undefined, list: readonly string[]): string => {
  const first = list[0] ?? '';
  if (value === undefined) return first;
  if (!list.includes(value)) throw new RangeError(`${kind}: ${what} "${value}" is none of ${list.join(', ')}`);
  return value;
};

/** Makes a builder from its description: defaults filled in, unknown sizes, states and variants refused. */
export const builder = <S extends Record<string, number>>(d: Description<S>): Builder => {
  const states = d.states ?? ['whole'];
  const variants = d.variants ?? ['usual'];
  const build = (spec: PartSpec, set: Materials): Group => {
    const unknown = Object.keys(spec.size ?? {}).find((k) => !(k in d.size));
    if (unknown !== undefined) {
      throw new RangeError(`${d.kind}: size "${unknown}" is none of ${Object.keys(d.size).join(', ')}`);
    }
    const state = chosen(d.kind, 'state', spec.state, states);
    const variant = chosen(d.kind, 'variant', spec.variant, variants);
    const a = new Assembly(spec.side ?? 0);
    const full = { side: 0, size: {}, points: [], text: '', seed: 1, ...spec, state, variant };
    d.build(a, { ...d.size, ...spec.size }, full);
    return a.group(d.kind, state, set);
  };
  return Object.assign(build, { kind: d.kind, states, variants, size: d.size });
};

/** Where wires are made up on a built part, in its own frame. */
export const pointsOf = (part: Group): Readonly<Record<string, Point>> => (part.userData as PartData).points;
