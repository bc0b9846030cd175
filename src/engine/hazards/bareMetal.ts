/** Bare metal of a World in space: every point that can be touched, and the wire between two of them that a series branch joins. */
import { componentKind } from '../catalogue/components.ts';
import { branchesOf, netOf } from '../circuit/elementsOf.ts';
import { lerp, type Vec3 } from '../math/vec3.ts';
import { sagAt } from '../standards/sag.ts';
import { pointAt } from '../world/edit.ts';
import type { Part, PointId, World } from '../world/types.ts';

/** A point, or a wire named by the point where it begins. */
export interface BareMetal {
  readonly point: PointId;
  readonly part: string;
  readonly path: readonly Vec3[];
  /** Nets of the point, or of both ends of the wire. */
  readonly nets: readonly string[];
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

function metalOf(world: World, part: Part): BareMetal[] {
  const place = (terminal: string): Vec3 | null => pointAt(world, `${part.id}/${terminal}`);
  const points = Object.keys(componentKind(part.kind).points).flatMap((terminal) => {
    const at = place(terminal);
    return at === null
      ? []
      : [{ point: `${part.id}/${terminal}`, part: part.id, path: [at], nets: [netOf(part, terminal)] }];
  });
  if (points.length < 2) return points;
  const wires = branchesOf(part).flatMap((branch) => {
    if (branch.type !== 'series') return [];
    const [from, to] = branch.between;
    const [a, b] = [place(from), place(to)];
    return a === null || b === null
      ? []
      : [
          {
            point: `${part.id}/${from}`,
            part: part.id,
            path: pathBetween(part, a, b),
            nets: [netOf(part, from), netOf(part, to)],
          },
        ];
  });
  return [...points, ...wires];
}

const known = new WeakMap<World['parts'], readonly BareMetal[]>();

/** Points and wires in the order of the parts. */
export function bareMetal(world: World): readonly BareMetal[] {
  const found = known.get(world.parts) ?? world.parts.flatMap((part) => metalOf(world, part));
  known.set(world.parts, found);
  return found;
}
