/**
 * Simple solids of the parts (upright or lying cylinders, boxes turned with their part) and where a ray meets them. They decide
 * what hides what and which part is pointed at, so that picture and engine cannot differ. Left out: people, trees, hardware finer than
 * the solids.
 */
import { componentKind } from '../catalogue/components.ts';
import type { Solid } from '../catalogue/types.ts';
import { Memo } from '../circuit/memo.ts';
import { cos, hypot, sin } from '../math/elementary.ts';
import { add, cross, dot, length, scale, sub, type Vec3 } from '../math/vec3.ts';
import { placeOn } from '../world/edit.ts';
import { upright } from '../world/lean.ts';
import type { Lean, Part, World } from '../world/types.ts';
import { alongSolid, awayFrom } from './rays.ts';

interface Body {
  readonly part: string;
  readonly solids: readonly Solid[];
  /** Its part's place and turn: cosine and sine. */
  readonly at: Vec3;
  readonly turn: readonly [number, number];
  /** Of a part out of plumb. */
  readonly lean?: Lean;
  /** A ball round all of them, so that most rays need no closer look. */
  readonly centre: Vec3;
  readonly radius: number;
}

const cornersOf = (solid: Solid): readonly Vec3[] => {
  if (solid.shape === 'box') return [sub(solid.centre, solid.half), add(solid.centre, solid.half)];
  const { from, to, radius, tip = radius } = solid;
  const r = Math.max(radius, tip);
  return [from, to].flatMap((end): Vec3[] => [sub(end, [r, r, r]), add(end, [r, r, r])]);
};

const bodyOf = (part: Part, solids: readonly Solid[]): Body => {
  const corners = solids.flatMap(cornersOf);
  const along = (i: 0 | 1 | 2): readonly number[] => corners.map((corner) => corner[i]);
  const low: Vec3 = [Math.min(...along(0)), Math.min(...along(1)), Math.min(...along(2))];
  const high: Vec3 = [Math.max(...along(0)), Math.max(...along(1)), Math.max(...along(2))];
  const middle = scale(add(low, high), 0.5);
  const { id, at, azimuth, lean } = part;
  const turn = [cos(azimuth), sin(azimuth)] as const;
  const wider = lean === undefined ? 1 : 1 + hypot(...lean);
  return {
    part: id,
    solids,
    at,
    turn,
    centre: placeOn(part, middle),
    radius: wider * length(sub(high, middle)),
    ...(lean === undefined ? {} : { lean }),
  };
};

/** A direction of the scene in a body's own frame, upright again; its length is no longer one, which only scales. */
const within = ({ turn: [c, s], lean }: Body, way: Vec3): Vec3 => {
  const [x, y, z] = lean === undefined ? way : upright(way, lean);
  return [x * c + y * s, y * c - x * s, z];
};

// Most changes of a part leave its body what it was, and the very same object says so.
const bodies = new Memo<Body>(4096);
// A part is never changed in place, so its body may be kept with it.
const kept = new WeakMap<Part, Body>();

const bodyKept = (part: Part): Body => {
  const known = kept.get(part);
  if (known !== undefined) return known;
  const solids = componentKind(part.kind).solids(part);
  const { id, at, azimuth, lean } = part;
  const body = bodies.get(JSON.stringify([id, at, azimuth, lean, solids]), () => bodyOf(part, solids));
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
  const body = bodyKept(part);
  const { solids, centre, radius } = body;
  if (solids.length === 0 || passesBy(from, direction, centre, radius)) return null;
  const start = within(body, sub(from, part.at));
  const heading = within(body, direction);
  const hits = solids.map((solid) => alongSolid(start, heading, solid)).filter((t) => t !== null);
  return hits.length === 0 ? null : Math.min(...hits);
};

/** What is nearer than this to the place that is looked at does not hide it: it is what the place lies on, metres. */
const TOUCHING = 0.03;

/** A body that may stand between an eye and what is looked at, with the eye in its frame. */
export interface Before {
  readonly body: Body;
  readonly eye: Vec3;
}

/** The bodies of these parts that may stand between an eye and something within a ball. */
export const between = (parts: readonly Part[], eye: Vec3, middle: Vec3, radius: number): readonly Before[] => {
  const way = sub(middle, eye);
  const far = length(way);
  const direction = scale(way, 1 / far);
  return parts.flatMap((part) => {
    const body = bodyKept(part);
    if (body.solids.length === 0) return [];
    const off = sub(body.centre, eye);
    const along = dot(direction, off);
    const aside = Math.sqrt(Math.max(0, dot(off, off) - along * along));
    const near = along < far + radius + body.radius && along > -body.radius && aside < radius + body.radius;
    return near ? [{ body, eye: within(body, sub(eye, body.at)) }] : [];
  });
};

/** Whether one of these bodies stands before a place on a part; `itself`: whether the part's own, where it is not in it, counts. */
export const hiddenBy = (before: readonly Before[], eye: Vec3, place: Vec3, of: string, itself: boolean): boolean => {
  const way = sub(place, eye);
  const far = length(way);
  const direction = scale(way, 1 / far);
  return before.some(({ body, eye: start }) => {
    const own = body.part === of;
    if ((own && !itself) || passesBy(eye, direction, body.centre, body.radius)) return false;
    const heading = within(body, direction);
    return body.solids.some((solid) => {
      const t = alongSolid(start, heading, solid);
      return t !== null && t < far - TOUCHING && !(own && awayFrom(add(start, scale(heading, far)), solid) === 0);
    });
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
