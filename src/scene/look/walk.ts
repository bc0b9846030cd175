/** A walk between two near standing points: the eye goes along, with the bob of steps. */
import type { Vec3 } from '../../engine/math/vec3.ts';

export interface Walk {
  readonly from: Vec3;
  readonly to: Vec3;
  past: number;
}

/** Milliseconds of a walk, whatever its length; further than NEAR metres nobody is shown walking. */
export const WALK = 900;
export const NEAR = 26;

/** Where the eye is by now. */
export const eyeOn = ({ from, to, past }: Walk): Vec3 => {
  const t = Math.min(1, past / WALK);
  const k = t * t * (3 - 2 * t);
  const bob = 0.035 * Math.sin(t * Math.PI * 4) * Math.sin(Math.PI * t);
  return [from[0] + (to[0] - from[0]) * k, from[1] + (to[1] - from[1]) * k, from[2] + (to[2] - from[2]) * k + bob];
};
