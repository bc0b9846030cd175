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
  return path
    .slice(1)
    .reduce(
      (nearest, end, i) => Math.min(nearest, distanceToSegment(place, path[i] ?? end, end)),
      distance(place, first),
    );
}

/** Gap between the body and a place measured by any distance. */
export const bodyGapBy = (reach: Reach, distanceTo: (place: Vec3) => Metres): Metres =>
  Math.max(0, Math.min(...bodyOf(reach).map(distanceTo)) - RADIUS);

interface Gaps {
  readonly body: Metres;
  readonly shoulder: Metres;
}

// Paths and stands are frozen geometry; the same ones are asked about again in every World that is compared.
const known = new WeakMap<readonly Vec3[], WeakMap<Vec3, Gaps>>();

function gapsOf(reach: Reach, path: readonly Vec3[]): Gaps {
  const places = known.get(path) ?? new WeakMap<Vec3, Gaps>();
  known.set(path, places);
  const found = places.get(reach.at);
  if (found !== undefined) return found;
  const gaps = {
    body: bodyGapBy(reach, (place) => distanceToPath(place, path)),
    shoulder: distanceToPath(shoulderOf(reach), path),
  };
  places.set(reach.at, gaps);
  return gaps;
}

/** Gap between the body and a path, zero when they touch. */
export const bodyGap = (reach: Reach, path: readonly Vec3[]): Metres => gapsOf(reach, path).body;

/** Gap between where the hands may get and a path. */
export const handsGap = (world: World, reach: Reach, path: readonly Vec3[]): Metres =>
  Math.max(0, gapsOf(reach, path).shoulder - handsReach(world, reach));
