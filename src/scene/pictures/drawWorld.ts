/**
 * World to objects. What belongs to one pole or premises is drawn together and drawn again only when a part of it has changed;
 * untouched parts stay the same objects in a World, so that is a comparison of references.
 */
import {
  BufferAttribute,
  type BufferGeometry,
  Group,
  type Material,
  type Mesh,
  type MeshStandardMaterial,
  type Object3D,
} from 'three';
import { isLit } from '../../engine/senses/lookAt.ts';
import type { Part, World } from '../../engine/world/types.ts';
import { addMark } from '../hardware/marks.ts';
import { hardware } from '../hardware/registry.ts';
import type { PartData, Point } from '../hardware/types.ts';
import { thin } from '../look/thinWire.ts';
import type { Materials } from '../materials/materials.ts';
import { addedBy } from './added.ts';
import { premisesBodies, premisesWires } from './atPremises.ts';
import { batchOf } from './batch.ts';
import { poleWires } from './leadsOnPole.ts';
import { lineCover } from './lineCover.ts';
import { marksOn } from './marksOn.ts';
import { poleBodies } from './onPole.ts';
import { drawnState, isGone } from './showsAs.ts';
import { poleForm } from './support.ts';
import { drawnTerminals, isLed } from './tapLeads.ts';
import type { Around, Picture, Piece, Terminal } from './types.ts';

const bodies = { ...poleBodies, ...premisesBodies };
const wires = { ...poleWires, ...premisesWires };

/** The pieces of a part, the first that can show its fault in that state; none if the part has gone. */
const asLaid = (part: Part, pieces: readonly Piece[]): readonly Piece[] => {
  const [first] = pieces;
  if (first === undefined || part.faults.length === 0) return pieces;
  const statesOf = (piece: Piece): readonly string[] => hardware[piece.spec.kind]?.states ?? [];
  if (isGone(part, statesOf(first))) return [];
  const bears = pieces.findIndex((piece) => drawnState(part, '', statesOf(piece)) !== '');
  return pieces.map((piece, i) =>
    i === bears ? { ...piece, spec: { ...piece.spec, state: drawnState(part, '', statesOf(piece)) } } : piece,
  );
};

/** Pictures whose state is settled by themselves. */
const settled: readonly string[] = ['ground-lead', 'ground-bond'];

const piecesOf = (picture: Picture | undefined, part: Part, around: Around): readonly Piece[] => {
  const pieces = picture?.(part, around) ?? [];
  return settled.includes(part.kind) ? pieces : asLaid(part, pieces);
};

const ownerOf = (part: Part): string => part.pole ?? part.premises ?? part.id;

export interface Drawing {
  readonly root: Group;
  /** Redraws what has changed; true if anything did. */
  follow(world: World): boolean;
  /** The same, a part at a time; yields the share done. */
  steps(world: World): Generator<number, boolean>;
  /** The objects of a part. */
  of(id: string): readonly Object3D[];
  /** The objects that outline it: its body where it has one, else its wires. */
  outlineOf(id: string): readonly Object3D[];
  dispose(): void;
}

const release = (object: Object3D): void => {
  object.removeFromParent();
  object.traverse((o) => {
    (o as Mesh).geometry?.dispose();
  });
};

/** Writes how far each vertex of a span hangs below the chord of its supports: along it sideways, and down, metres. */
const hangFree = (g: BufferGeometry, points: readonly Point[]): void => {
  const [a, b] = [points[0], points[points.length - 1]];
  if (!a || !b) return;
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const l = Math.max(1e-6, Math.hypot(dx, dy));
  const p = g.getAttribute('position');
  const swing = new Float32Array(p.count * 3);
  for (let i = 0; i < p.count; i++) {
    const t = Math.min(1, Math.max(0, ((p.getX(i) - a[0]) * dx + (p.getY(i) - a[1]) * dy) / (l * l)));
    const depth = Math.max(0, a[2] + (b[2] - a[2]) * t - p.getZ(i));
    swing.set([(-dy / l) * depth, (dx / l) * depth, depth], i * 3);
  }
  g.setAttribute('swing', new BufferAttribute(swing, 3));
};

/** Builds a piece of hardware where it stands. */
export const buildPiece = (piece: Piece, set: Materials): Group => {
  const build = piece.spec.kind === lineCover.kind ? lineCover : hardware[piece.spec.kind];
  if (!build) throw new Error(`nothing draws ${piece.spec.kind}`);
  const group = build(piece.spec, set);
  group.position.set(...piece.at);
  group.updateMatrix();
  group.matrixAutoUpdate = false;
  const { thin: radius } = piece;
  if (radius !== undefined) {
    for (const child of group.children as Mesh[]) {
      child.material = thin(child.material as Material, radius) as MeshStandardMaterial;
      child.renderOrder = 5;
      if (piece.swings) hangFree(child.geometry, piece.spec.points ?? []);
    }
  }
  return group;
};

/** An empty drawing; the first `follow` fills it. `joins`: what belongs together is drawn as one mesh a material. */
export const drawingOf = (set: Materials, joins = false): Drawing => {
  const root = new Group();
  const drawn = new Map<string, readonly Group[]>();
  const batches = new Map<string, Group>();
  let seen = new Map<string, Part>();
  let burning = new Map<string, boolean>();

  const aroundOf = (world: World, built: Map<string, readonly Group[]>): Around => {
    const byId = new Map(world.parts.map((part) => [part.id, part]));
    const around: Around = {
      world,
      on: (owner, name) => byId.get(`${owner}.${name}`) ?? null,
      beside: (part, kind) =>
        world.parts.find((p) => p.kind === kind && p.id !== part.id && ownerOf(p) === ownerOf(part)) ?? null,
      terminals: (pole) =>
        world.parts
          .filter((part) => part.pole === pole)
          .flatMap((part): readonly Terminal[] =>
            Object.entries(drawnTerminals[part.kind] ?? {}).flatMap(([terminal, point]): readonly Terminal[] => {
              const at = around.point(part.id, point);
              const net = part.nets[terminal];
              return at === null || net === undefined ? [] : [{ part, net, at, led: isLed(part.kind) }];
            }),
          ),
      point: (id, name) => {
        for (const group of (id === undefined ? undefined : built.get(id)) ?? []) {
          const p = (group.userData as PartData).points[name];
          if (p) return [p[0] + group.position.x, p[1] + group.position.y, p[2] + group.position.z] as Point;
        }
        return null;
      },
      face: (owner, azimuth, z, off = 0) => {
        const pole = byId.get(`${owner}.pole`) ?? null;
        const { height, topDiameter, groundDiameter } = poleForm(pole);
        const r = (groundDiameter + (topDiameter - groundDiameter) * (z / height)) / 2 + off;
        const at = pole?.at ?? [0, 0, 0];
        return [at[0] + r * Math.cos(azimuth), at[1] + r * Math.sin(azimuth), z];
      },
      lit: (part) => burning.get(part.id) === true,
    };
    return around;
  };

  const steps = function* (world: World): Generator<number, boolean> {
    const now = new Map(world.parts.map((part) => [part.id, part]));
    const lit = new Map(
      world.parts.filter(({ kind }) => kind in premisesBodies).map(({ id }) => [id, isLit(world, id)]),
    );
    const stale = new Set(
      world.parts
        .filter((part) => seen.get(part.id) !== part || burning.get(part.id) !== lit.get(part.id))
        .map(ownerOf),
    );
    if (stale.size === 0) return false;
    seen = now;
    burning = lit;
    const around = aroundOf(world, drawn);
    const again = world.parts.filter((part) => stale.has(ownerOf(part)));
    for (const part of again) for (const group of drawn.get(part.id) ?? []) release(group);
    for (const owner of stale) {
      const batch = batches.get(owner);
      if (batch) release(batch);
      batches.delete(owner);
    }
    const draw = (part: Part, table: typeof bodies): Group[] =>
      piecesOf(table[part.kind], part, around).map((piece) => {
        const group = buildPiece(piece, set);
        group.userData.body = table === bodies;
        root.add(group);
        return group;
      });
    let done = 0;
    for (const part of again) {
      const built = draw(part, bodies);
      const [body] = built;
      if (body) {
        for (const mark of marksOn(part, around, body.userData as PartData)) addMark(body, mark, set);
      }
      drawn.set(part.id, built);
      done++;
      if (built.length > 0) yield done / (2 * again.length);
    }
    for (const part of again) {
      const added = addedBy(part).map((piece) => {
        const group = buildPiece(piece, set);
        root.add(group);
        return group;
      });
      const built = [...draw(part, wires), ...added];
      drawn.set(part.id, [...(drawn.get(part.id) ?? []), ...built]);
      done++;
      if (built.length > 0) yield done / (2 * again.length);
    }
    if (joins) {
      for (const owner of stale) {
        const mine = again.filter((part) => ownerOf(part) === owner).flatMap((part) => drawn.get(part.id) ?? []);
        if (mine.length === 0) continue;
        const batch = batchOf(mine);
        batches.set(owner, batch);
        root.add(batch);
        yield 1;
      }
    }
    return true;
  };

  return {
    root,
    steps,
    follow: (world) => {
      const work = steps(world);
      for (;;) {
        const { done, value } = work.next();
        if (done) return value;
      }
    },
    of: (id) => drawn.get(id) ?? [],
    outlineOf: (id) => {
      const all = drawn.get(id) ?? [];
      const body = all.filter(({ userData }) => userData.body === true);
      return body.length > 0 ? body : all;
    },
    dispose: () => {
      for (const groups of drawn.values()) for (const group of groups) release(group);
      for (const batch of batches.values()) release(batch);
    },
  };
};
