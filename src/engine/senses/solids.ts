/**
 * Simple solids of the parts (upright or lying cylinders, boxes turned with their part) and where a ray meets them. They decide
 * what hides what and which part is pointed at, so that picture and engine cannot differ. Left out: people, trees, hardware finer than
 * the solids.
 */
import { componentKind } from '../catalogue/components.ts';
import type { Solid } from '../catalogue/types.ts';
import { Memo } from '../circuit/memo.ts';
import { add, cross, dot, length, scale, sub, type Vec3 } from '../math/vec3.ts';
import { turned } from '../world/points.ts';
import type { Part, World } from '../world/types.ts';

/** Distance along a unit ray to a closed cylinder; null if it passes by. */
const alongCylinder = (from: Vec3, direction: Vec3, a: Vec3, b: Vec3, radius: number): number | null => {
  const axis = sub(b, a);
  const height = length(axis);
  const unit = scale(axis, 1 / height);
  const start = sub(from, a);
  const across = sub(direction, scale(unit, dot(direction, unit)));
  const offset = sub(start, scale(unit, dot(start, unit)));
  const hits: number[] = [];
  const qa = dot(across, across);
  if (qa > 1e-12) {
    const qb = dot(across, offset);
    const root = qb * qb - qa * (dot(offset, offset) - radius * radius);
    if (root >= 0) {
      const t = (-qb - Math.sqrt(root)) / qa;
      const along = dot(start, unit) + t * dot(direction, unit);
      if (t > 0 && along >= 0 && along <= height) hits.push(t);
    }
  }
  const lean = dot(direction, unit);
  if (Math.abs(lean) > 1e-9) {
    for (const end of [0, height]) {
      const t = (end - dot(start, unit)) / lean;
      const spot = add(offset, scale(across, t));
      if (t > 0 && dot(spot, spot) <= radius * radius) hits.push(t);
    }
  }
  return hits.length === 0 ? null : Math.min(...hits);
};

/** Distance along a ray to a box whose sides follow the axes. */
const alongBox = (from: Vec3, direction: Vec3, centre: Vec3, half: Vec3): number | null => {
  let near = Number.NEGATIVE_INFINITY;
  let far = Number.POSITIVE_INFINITY;
  for (const i of [0, 1, 2] as const) {
    const low = centre[i] - half[i] - from[i];
    const high = centre[i] + half[i] - from[i];
    if (Math.abs(direction[i]) < 1e-12) {
      if (low > 0 || high < 0) return null;
      continue;
    }
    const t1 = low / direction[i];
    const t2 = high / direction[i];
    near = Math.max(near, Math.min(t1, t2));
    far = Math.min(far, Math.max(t1, t2));
  }
  return near <= far && near > 0 ? near : null;
};

const along = (from: Vec3, direction: Vec3, solid: Solid): number | null =>
  solid.shape === 'cylinder'
    ? alongCylinder(from, direction, solid.from, solid.to, solid.radius)
    : alongBox(from, direction, solid.centre, solid.half);

interface Body {
  readonly solids: readonly Solid[];
  /** A ball round all of them, so that most rays need no closer look. */
  readonly centre: Vec3;
  readonly radius: number;
}

const cornersOf = (solid: Solid): readonly Vec3[] => {
  if (solid.shape === 'box') return [sub(solid.centre, solid.half), add(solid.centre, solid.half)];
  const { from, to, radius: r } = solid;
  return [from, to].flatMap((end): Vec3[] => [sub(end, [r, r, r]), add(end, [r, r, r])]);
};

const bodyOf = (part: Part, solids: readonly Solid[]): Body => {
  const corners = solids.flatMap(cornersOf);
  const along = (i: 0 | 1 | 2): readonly number[] => corners.map((corner) => corner[i]);
  const low: Vec3 = [Math.min(...along(0)), Math.min(...along(1)), Math.min(...along(2))];
  const high: Vec3 = [Math.max(...along(0)), Math.max(...along(1)), Math.max(...along(2))];
  const middle = scale(add(low, high), 0.5);
  return { solids, centre: add(part.at, turned(middle, part.azimuth)), radius: length(sub(high, middle)) };
};

// Most changes of a part leave its body what it was, and the very same object says so.
const bodies = new Memo<Body>(4096);
// A part is never changed in place, so its body may be kept with it.
const kept = new WeakMap<Part, Body>();

const bodyKept = (part: Part): Body => {
  const known = kept.get(part);
  if (known !== undefined) return known;
  const solids = componentKind(part.kind).solids(part);
  const { id, at, azimuth } = part;
  const body = bodies.get(JSON.stringify([id, at, azimuth, solids]), () => bodyOf(part, solids));
  kept.set(part, body);
  return body;
};

/** All that can stand before something in a World; the same object as long as it is the same. */
export type Obstacles = readonly Body[];

const OBSTACLES = 8;
/** Met last, the latest first. */
const obstaclesMet: Obstacles[] = [];
const obstaclesKept = new WeakMap<World['parts'], Obstacles>();

/** The bodies of a World's parts. */
export const obstaclesIn = ({ parts }: World): Obstacles => {
  const known = obstaclesKept.get(parts);
  if (known !== undefined) return known;
  const all = parts.map(bodyKept);
  const same = obstaclesMet.find((met) => met.length === all.length && met.every((body, i) => body === all[i]));
  if (same === undefined) {
    obstaclesMet.unshift(all);
    obstaclesMet.length = Math.min(obstaclesMet.length, OBSTACLES);
  }
  obstaclesKept.set(parts, same ?? all);
  return same ?? all;
};

/** Radius of the ball round a part's solids, metres; 0 for a part without. */
export const sizeOf = (part: Part): number => {
  const { solids, radius } = bodyKept(part);
  return solids.length === 0 ? 0 : radius;
};

const passesBy = (from: Vec3, direction: Vec3, centre: Vec3, radius: number): boolean => {
  const way = sub(centre, from);
  const along = dot(direction, way);
  const square = dot(way, way);
  return square - along * along > radius * radius || (along < 0 && square > radius * radius);
};

/** Distance along a unit ray to the part's nearest solid, metres; null if it meets none. */
export const distanceToPart = (part: Part, from: Vec3, direction: Vec3): number | null => {
  const { solids, centre, radius } = bodyKept(part);
  if (solids.length === 0 || passesBy(from, direction, centre, radius)) return null;
  const start = turned(sub(from, part.at), -part.azimuth);
  const heading = turned(direction, -part.azimuth);
  const hits = solids.map((solid) => along(start, heading, solid)).filter((t) => t !== null);
  return hits.length === 0 ? null : Math.min(...hits);
};

/** Whether some other part stands between an eye and a place; what is within a hand's breadth of the place does not count. */
export const isHidden = (world: World, eye: Vec3, place: Vec3, part: string): boolean => {
  const way = sub(place, eye);
  const far = length(way);
  const direction = scale(way, 1 / far);
  return world.parts.some((other) => {
    if (other.id === part) return false;
    const t = distanceToPart(other, eye, direction);
    return t !== null && t < far - 0.08;
  });
};

/** Perpendicular distance of a place from a ray, with the distance along it. */
export const besideRay = (
  from: Vec3,
  direction: Vec3,
  place: Vec3,
): { readonly aside: number; readonly along: number } => {
  const way = sub(place, from);
  return { aside: length(cross(direction, way)), along: dot(direction, way) };
};
