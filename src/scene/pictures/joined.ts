/**
 * Draws many groups as one mesh a material, so that a frame has few things to draw, and their shadows as one mesh for each way they
 * face, which only lamp and sun see. What is joined stays hidden where it stood, to be pointed at and measured. A pile is made anew
 * only when what lies in it has changed.
 */
import {
  BufferAttribute,
  BufferGeometry,
  DoubleSide,
  FrontSide,
  Group,
  type Material,
  Mesh,
  MeshBasicMaterial,
  type Object3D,
  type Side,
} from 'three';
import { CASTERS } from '../look/casters.ts';
import { finished } from './finished.ts';
import { leanOfGroup } from './leanTo.ts';

interface Pile {
  readonly members: readonly Mesh[];
  readonly mesh: Mesh;
}

/** Marks lie in order over what bears them. */
const isJoined = (mesh: Mesh): boolean =>
  mesh.isMesh === true && !mesh.name.startsWith('mark-') && mesh.geometry.getIndex() !== null;

const isPierced = (mesh: Mesh): boolean => (mesh.material as Material).alphaTest > 0;

const keys = new WeakMap<Mesh, { readonly of: Material; readonly key: string }>();
const keyOf = (mesh: Mesh): string => {
  const material = mesh.material as Material;
  const known = keys.get(mesh);
  if (known?.of === material) return known.key;
  const attributes = Object.keys(mesh.geometry.attributes).sort().join(' ');
  const key = `${material.uuid} ${mesh.castShadow} ${mesh.receiveShadow} ${mesh.renderOrder} ${attributes}`;
  keys.set(mesh, { of: material, key });
  return key;
};

const floatsOf = (mesh: Mesh, name: string): Float32Array => {
  const { array } = mesh.geometry.getAttribute(name);
  if (!(array instanceof Float32Array)) throw new Error(`${mesh.name}: ${name} is not of floats`);
  return array;
};

/** Moves an attribute's floats to where their group stands; of a group that leans (`leanTo`) aside by the height. */
const setDown = (floats: Float32Array, name: string, group: Object3D): void => {
  const { x, y, z } = group.position;
  const [dx, dy] = leanOfGroup(group) ?? [0, 0];
  const isMoved = x !== 0 || y !== 0 || z !== 0 || dx !== 0 || dy !== 0;
  if (name === 'position' && isMoved)
    for (let i = 0; i < floats.length; i += 3) {
      const up = (floats[i + 2] as number) + z;
      floats[i] = (floats[i] as number) + x + dx * up;
      floats[i + 1] = (floats[i + 1] as number) + y + dy * up;
      floats[i + 2] = up;
    }
  if (name === 'normal' && (dx !== 0 || dy !== 0))
    for (let i = 0; i < floats.length; i += 3) {
      const [nx, ny, nz] = [floats[i] as number, floats[i + 1] as number, floats[i + 2] as number];
      const up = nz - dx * nx - dy * ny;
      const size = Math.hypot(nx, ny, up);
      floats[i] = nx / size;
      floats[i + 1] = ny / size;
      floats[i + 2] = up / size;
    }
};

/** One geometry of meshes whose groups are set down somewhere and not turned. */
const joinedShape = (members: readonly Mesh[], names: readonly string[]): BufferGeometry => {
  const joined = new BufferGeometry();
  const count = members.reduce((sum, { geometry }) => sum + geometry.getAttribute('position').count, 0);
  for (const name of names) {
    const size = members[0]?.geometry.getAttribute(name).itemSize ?? 3;
    const out = new Float32Array(count * size);
    let at = 0;
    for (const mesh of members) {
      const from = floatsOf(mesh, name);
      out.set(from, at);
      if (mesh.parent !== null) setDown(out.subarray(at, at + from.length), name, mesh.parent);
      at += from.length;
    }
    joined.setAttribute(name, new BufferAttribute(out, size));
  }
  const index = new Uint32Array(members.reduce((sum, { geometry }) => sum + (geometry.getIndex()?.count ?? 0), 0));
  let at = 0;
  let first = 0;
  for (const { geometry } of members) {
    const { array = [] } = geometry.getIndex() ?? {};
    for (let i = 0; i < array.length; i++) index[at++] = (array[i] as number) + first;
    first += geometry.getAttribute('position').count;
  }
  joined.setIndex(new BufferAttribute(index, 1));
  joined.computeBoundingSphere();
  return joined;
};

const isSame = (a: readonly Mesh[], b: readonly Mesh[]): boolean =>
  a.length === b.length && a.every((m, i) => m === b[i]);

export interface Joined {
  readonly root: Group;
  /** Takes over what is to be shown; yields after each pile made anew. */
  steps(groups: readonly Group[]): Generator<void>;
  /** The same at once. */
  follow(groups: readonly Group[]): void;
  dispose(): void;
}

/** Nothing joined yet. */
export const joinedOf = (): Joined => {
  const root = new Group();
  root.name = 'joined';
  const piles = new Map<string, Pile>();
  const casters = new Map<Side, Pile>();
  const shades = new Map<Side, MeshBasicMaterial>();
  const shadeOf = (side: Side): MeshBasicMaterial => {
    const known = shades.get(side) ?? new MeshBasicMaterial({ side });
    shades.set(side, known);
    return known;
  };
  const drop = <K>(from: Map<K, Pile>, key: K): void => {
    const pile = from.get(key);
    pile?.mesh.removeFromParent();
    pile?.mesh.geometry.dispose();
    from.delete(key);
  };
  const put = <K>(into: Map<K, Pile>, key: K, members: readonly Mesh[], mesh: Mesh): void => {
    mesh.matrixAutoUpdate = false;
    root.add(mesh);
    into.set(key, { members, mesh });
  };
  const shown = (members: readonly Mesh[]): Mesh => {
    const like = members[0] as Mesh;
    const mesh = new Mesh(joinedShape(members, Object.keys(like.geometry.attributes)), like.material);
    mesh.name = 'joined';
    mesh.receiveShadow = like.receiveShadow;
    mesh.renderOrder = like.renderOrder;
    // Leaves throw a shadow with holes, by their own picture.
    if (like.castShadow && isPierced(like)) {
      mesh.castShadow = true;
      mesh.layers.enable(CASTERS);
    }
    return mesh;
  };
  const shadow = (members: readonly Mesh[], side: Side): Mesh => {
    const mesh = new Mesh(joinedShape(members, ['position']), shadeOf(side));
    mesh.name = 'casters';
    mesh.castShadow = true;
    mesh.layers.set(CASTERS);
    return mesh;
  };
  const steps = function* (groups: readonly Group[]): Generator<void> {
    const wanted = new Map<string, Mesh[]>();
    const casting = new Map<Side, Mesh[]>();
    for (const group of groups) {
      let loose = false;
      for (const child of group.children as Mesh[]) {
        child.visible = !isJoined(child);
        if (child.visible) {
          loose = true;
          continue;
        }
        const key = keyOf(child);
        const pile = wanted.get(key);
        if (pile) pile.push(child);
        else wanted.set(key, [child]);
        if (!child.castShadow || isPierced(child)) continue;
        const side = (child.material as Material).side === DoubleSide ? DoubleSide : FrontSide;
        const shade = casting.get(side);
        if (shade) shade.push(child);
        else casting.set(side, [child]);
      }
      group.visible = loose;
    }
    for (const key of [...piles.keys()]) if (!wanted.has(key)) drop(piles, key);
    for (const side of [...casters.keys()]) if (!casting.has(side)) drop(casters, side);
    for (const [key, members] of wanted) {
      if (isSame(piles.get(key)?.members ?? [], members)) continue;
      drop(piles, key);
      put(piles, key, members, shown(members));
      yield;
    }
    for (const [side, members] of casting) {
      if (isSame(casters.get(side)?.members ?? [], members)) continue;
      drop(casters, side);
      put(casters, side, members, shadow(members, side));
      yield;
    }
  };
  return {
    root,
    steps,
    follow: (groups) => finished(steps(groups)),
    dispose: () => {
      for (const key of [...piles.keys()]) drop(piles, key);
      for (const side of [...casters.keys()]) drop(casters, side);
      for (const shade of shades.values()) shade.dispose();
    },
  };
};
