/**
 * World to objects. What belongs to one pole or premises is looked at again together when a part of it has changed; untouched parts
 * stay the same objects in a World, so that is a comparison of references. A piece that comes out as before stays the object it was.
 */
import { Group, type Mesh, type Object3D } from 'three';
import { isLit } from '../../engine/senses/lookAt.ts';
import { straightened } from '../../engine/world/lean.ts';
import type { Lean, Part, World } from '../../engine/world/types.ts';
import { addMark } from '../hardware/marks.ts';
import { hardware } from '../hardware/registry.ts';
import type { PartData } from '../hardware/types.ts';
import type { Materials } from '../materials/materials.ts';
import { addedBy } from './added.ts';
import { aroundOf, ownerOf } from './around.ts';
import { premisesBodies, premisesWires } from './atPremises.ts';
import { buildPiece } from './buildPiece.ts';
import { finished } from './finished.ts';
import { poleWires } from './leadsOnPole.ts';
import { leanTo } from './leanTo.ts';
import { marksOn } from './marksOn.ts';
import { poleBodies } from './onPole.ts';
import { drawnState, isGone } from './showsAs.ts';
import type { Around, Picture, Piece } from './types.ts';

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

export interface Drawing {
  readonly root: Group;
  /** Redraws what has changed; true if anything did. */
  follow(world: World): boolean;
  /** The same, a part at a time; yields the share done. */
  steps(world: World): Generator<number, boolean>;
  /** All objects of all parts. */
  groups(): readonly Group[];
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

/** What an object was drawn from: two of the same text are the same object. */
const textOf = (table: string, piece: Piece, lean: Lean | null): string =>
  `${table} ${JSON.stringify(piece)}${lean === null ? '' : ` leaning ${lean}`}`;

/** Where things are drawn: the scene itself, or a leaning pole's own, in which it stands plumb. */
interface Frame {
  readonly lean: Lean | null;
  readonly around: Around;
  /** The parts of its World; null: as they are. */
  readonly parts: ReadonlyMap<string, Part> | null;
}

/** An empty drawing; the first `follow` fills it. */
export const drawingOf = (set: Materials): Drawing => {
  const root = new Group();
  const drawn = new Map<string, readonly Group[]>();
  const texts = new WeakMap<Group, string>();
  const marked = new WeakMap<Group, string>();
  let seen = new Map<string, Part>();
  let burning = new Map<string, boolean>();

  /** How the parts of each leaning pole that is drawn again look from a frame in which it stands plumb. */
  const framesOf = (world: World, stale: ReadonlySet<string>): ReadonlyMap<string, Frame> => {
    const lit = (part: Part): boolean => burning.get(part.id) === true;
    const frames = new Map<string, Frame>([['', { lean: null, around: aroundOf(world, drawn, lit), parts: null }]]);
    for (const pole of world.parts) {
      if (pole.kind !== 'pole' || pole.lean === undefined || !stale.has(ownerOf(pole))) continue;
      const plumb = { ...world, parts: straightened(world.parts, pole) };
      frames.set(ownerOf(pole), {
        lean: pole.lean,
        around: aroundOf(plumb, drawn, lit, pole.lean),
        parts: new Map(plumb.parts.map((part) => [part.id, part])),
      });
    }
    return frames;
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
    const frames = framesOf(world, stale);
    const frameOf = (part: Part): Frame => frames.get(ownerOf(part)) ?? (frames.get('') as Frame);
    const again = world.parts.filter((part) => stale.has(ownerOf(part)));
    /** What is left over of what was drawn of a part, to be taken again. */
    const spare = new Map(again.map(({ id }) => [id, [...(drawn.get(id) ?? [])]]));
    const taken = (id: string, text: string): Group | null => {
      const mine = spare.get(id) ?? [];
      const i = mine.findIndex((group) => texts.get(group) === text);
      return i < 0 ? null : (mine.splice(i, 1)[0] as Group);
    };
    const put = (part: Part, table: string, piece: Piece): Group => {
      const { lean } = frameOf(part);
      const text = textOf(table, piece, lean);
      const known = taken(part.id, text);
      if (known !== null) return known;
      const group = buildPiece(piece, set);
      group.userData.body = table === 'body';
      if (lean !== null) leanTo(group, lean);
      texts.set(group, text);
      root.add(group);
      return group;
    };
    const bodyOf = (part: Part, piece: Piece): Group => {
      const body = put(part, 'body', piece);
      const { x, y, z } = body.position;
      const marks = marksOn(part, frameOf(part).around, body.userData as PartData, [x, y, z]);
      const text = JSON.stringify(marks);
      const was = marked.get(body);
      if (was === text) return body;
      // A mark may bite into its body, so what stood there already is built anew.
      if (was !== undefined) release(body);
      const bare = was === undefined ? body : put(part, 'body', piece);
      for (const mark of marks) addMark(bare, mark, set);
      marked.set(bare, text);
      return bare;
    };
    const upright = again.map((part) => frameOf(part).parts?.get(part.id) ?? part);
    let done = 0;
    for (const part of upright) {
      const built = piecesOf(bodies[part.kind], part, frameOf(part).around).map((piece, i) =>
        i === 0 ? bodyOf(part, piece) : put(part, 'body', piece),
      );
      drawn.set(part.id, built);
      done++;
      if (built.length > 0) yield done / (2 * again.length);
    }
    for (const part of upright) {
      const built = [
        ...piecesOf(wires[part.kind], part, frameOf(part).around).map((piece) => put(part, 'wire', piece)),
        ...addedBy(part).map((piece) => put(part, 'added', piece)),
      ];
      drawn.set(part.id, [...(drawn.get(part.id) ?? []), ...built]);
      done++;
      if (built.length > 0) yield done / (2 * again.length);
    }
    for (const left of spare.values()) for (const group of left) release(group);
    return true;
  };

  return {
    root,
    steps,
    follow: (world) => finished(steps(world)),
    groups: () => [...drawn.values()].flat(),
    of: (id) => drawn.get(id) ?? [],
    outlineOf: (id) => {
      const all = drawn.get(id) ?? [];
      const body = all.filter(({ userData }) => userData.body === true);
      return body.length > 0 ? body : all;
    },
    dispose: () => {
      for (const groups of drawn.values()) for (const group of groups) release(group);
    },
  };
};
