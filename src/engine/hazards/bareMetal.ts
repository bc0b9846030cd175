/**
 * Bare metal of a World in space: every point that can be touched, and the wire between two of them that a series
 * branch joins.
 */
import { branchesOf, netOf } from '../circuit/elementsOf.ts';
import { lerp, type Vec3 } from '../math/vec3.ts';
import { sagAt } from '../standards/sag.ts';
import { piecesOf } from '../world/lying.ts';
import { barePlace, bareTerminals } from '../world/points.ts';
import type { Part, PointId, World } from '../world/types.ts';

/** A point, or a wire named by the point where it begins. */
export interface BareMetal {
  readonly point: PointId;
  readonly part: string;
  readonly path: readonly Vec3[];
  /** The point, or both ends of the wire, each with its net. */
  readonly ends: readonly { readonly point: PointId; readonly net: string; readonly at: Vec3 }[];
}

/** Where a wire is looked at along its length: close by its ends, where people are. */
const fractions = [0, 0.01, 0.02, 0.04, 0.07, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5] as const;
const steps: readonly number[] = [
  ...fractions,
  ...[...fractions]
    .reverse()
    .slice(1)
    .map((t) => 1 - t),
];

function pathBetween(part: Part, a: Vec3, b: Vec3): readonly Vec3[] {
  const { lengthM, sagM } = part.values;
  if (part.end === null || lengthM === undefined || sagM === undefined) return [a, b];
  return steps.map((t) => {
    const [x, y, z] = lerp(a, b, t);
    return [x, y, z - sagAt(lengthM, sagM, t * lengthM)];
  });
}

function metalOf(part: Part): readonly BareMetal[] {
  const end = (terminal: string, at: Vec3) => ({ point: `${part.id}/${terminal}`, net: netOf(part, terminal), at });
  const points = bareTerminals(part).flatMap((terminal) => {
    const at = barePlace(part, terminal);
    return at === null
      ? []
      : [{ point: `${part.id}/${terminal}`, part: part.id, path: [at], ends: [end(terminal, at)] }];
  });
  const pieces = piecesOf(part).map(({ terminal, held, path }) => ({
    point: `${part.id}/${terminal}`,
    part: part.id,
    path,
    ends: [end(terminal, held)],
  }));
  if (points.length < 2) return [...points, ...pieces];
  const wires = branchesOf(part).flatMap((branch) => {
    if (branch.type !== 'series') return [];
    const [from, to] = branch.between;
    const [a, b] = [barePlace(part, from), barePlace(part, to)];
    if (a === null || b === null) return [];
    const ends = [end(from, a), end(to, b)];
    return [{ point: `${part.id}/${from}`, part: part.id, path: pathBetween(part, a, b), ends }];
  });
  return [...points, ...wires, ...pieces];
}

// A part is frozen, so what it shows may be kept with it.
const known = new WeakMap<Part, readonly BareMetal[]>();

/** Points and wires of one part. */
export function metalOn(part: Part): readonly BareMetal[] {
  const found = known.get(part) ?? metalOf(part);
  known.set(part, found);
  return found;
}

const all = new WeakMap<World['parts'], readonly BareMetal[]>();

/** Points and wires in the order of the parts. */
export function bareMetal({ parts }: World): readonly BareMetal[] {
  const found = all.get(parts) ?? parts.flatMap(metalOn);
  all.set(parts, found);
  return found;
}

const representatives = new WeakMap<World['parts'], ReadonlyMap<string, PointId>>();

/** One point for a net, the same from wherever one looks: the first by id. */
export function representativeOf(world: World, net: string): PointId {
  const known = representatives.get(world.parts) ?? firstPoints(world);
  representatives.set(world.parts, known);
  const point = known.get(net);
  if (point === undefined) throw new Error(`no bare metal on ${net}`);
  return point;
}

function firstPoints(world: World): ReadonlyMap<string, PointId> {
  const first = new Map<string, PointId>();
  for (const { ends } of bareMetal(world)) {
    for (const { point, net } of ends) if (point < (first.get(net) ?? '~')) first.set(net, point);
  }
  return first;
}
