/**
 * The space a person takes and can get at: an upright cylinder for the body, a ball about the shoulder for the hands.
 * Heights are common practice for drawing reach, not a standard's; how far hands get is stated by the standing point.
 * Left out: posture, tools in the hand (the reach of a tool is its own).
 */
import { add, distance, distanceToSegment, type Vec3 } from '../math/vec3.ts';
import type { Metres } from '../units/quantities.ts';
import { standById } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import type { Reach } from './types.ts';

const SHOULDER: Metres = 1.4;
const EYE: Metres = 1.65;
const HEAD: Metres = 1.8;
/** Half the depth of a chest: people face what they are near. */
const RADIUS: Metres = 0.12;
const ARM: Metres = 0.75;
/** One shifts the feet by about this much without leaving a standing point on the ground (estimate). */
export const STEP: Metres = 1.2;

export const shoulderOf = ({ at }: Reach): Vec3 => add(at, [0, 0, SHOULDER]);
export const eyeOf = ({ at }: Reach): Vec3 => add(at, [0, 0, EYE]);

/** How far the hands get from the shoulder. */
export const handsReach = (world: World, reach: Reach): Metres => standById(world, reach.stand)?.reachM ?? ARM;

const alongBody = [0, 0.3, 0.6, 0.9, 1.2, 1.5, HEAD] as const;

/** Places along the middle of the body. */
export const bodyOf = ({ at }: Reach): readonly Vec3[] => alongBody.map((height) => add(at, [0, 0, height]));

/** Distance from a place to a path of straight pieces. */
export function distanceToPath(place: Vec3, path: readonly Vec3[]): Metres {
  const [first] = path;
  if (first === undefined) return Number.POSITIVE_INFINITY;
  let nearest = distance(place, first);
  for (let i = 1; i < path.length; i++) {
    nearest = Math.min(nearest, distanceToSegment(place, path[i - 1] as Vec3, path[i] as Vec3));
  }
  return nearest;
}

/** Gap between the body and a place measured by any distance. */
export const bodyGapBy = (reach: Reach, distanceTo: (place: Vec3) => Metres): Metres =>
  Math.max(0, Math.min(...bodyOf(reach).map(distanceTo)) - RADIUS);

type Gaps = WeakMap<readonly Vec3[], WeakMap<Vec3, Metres>>;

// Paths and stands are frozen geometry; the same ones are asked about again in every World that is compared.
const bodies: Gaps = new WeakMap();
const shoulders: Gaps = new WeakMap();

function keptGap(gaps: Gaps, { at }: Reach, path: readonly Vec3[], measured: () => Metres): Metres {
  const places = gaps.get(path) ?? new WeakMap<Vec3, Metres>();
  gaps.set(path, places);
  const known = places.get(at) ?? measured();
  places.set(at, known);
  return known;
}

interface Box {
  readonly low: Vec3;
  readonly high: Vec3;
}

const boxes = new WeakMap<readonly Vec3[], Box>();

function boxOf(path: readonly Vec3[]): Box {
  const known = boxes.get(path);
  if (known !== undefined) return known;
  const along = (axis: 0 | 1 | 2, of: (a: number, b: number) => number, from: number): number =>
    path.reduce((far, place) => of(far, place[axis]), from);
  const [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const box: Box = {
    low: [along(0, Math.min, least), along(1, Math.min, least), along(2, Math.min, least)],
    high: [along(0, Math.max, most), along(1, Math.max, most), along(2, Math.max, most)],
  };
  boxes.set(path, box);
  return box;
}

/** Whether the box about a path shows already that it is farther than `beyond` from body and hands. */
export function isFarFrom(world: World, reach: Reach, path: readonly Vec3[], beyond: Metres): boolean {
  const { at } = reach;
  const { low, high } = boxOf(path);
  const far = beyond + RADIUS + handsReach(world, reach);
  return (
    low[0] - at[0] > far ||
    at[0] - high[0] > far ||
    low[1] - at[1] > far ||
    at[1] - high[1] > far ||
    low[2] - at[2] > far + HEAD ||
    at[2] - high[2] > far
  );
}

/** Gap between the body and a path, zero when they touch. */
export const bodyGap = (reach: Reach, path: readonly Vec3[]): Metres =>
  keptGap(bodies, reach, path, () => bodyGapBy(reach, (place) => distanceToPath(place, path)));

/** Gap between where the hands may get and a path. */
export const handsGap = (world: World, reach: Reach, path: readonly Vec3[]): Metres =>
  Math.max(
    0,
    keptGap(shoulders, reach, path, () => distanceToPath(shoulderOf(reach), path)) - handsReach(world, reach),
  );
