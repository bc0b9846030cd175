/**
 * Where a conductor can be once its tie has let go. The two spans beside the lost support become one, as long as both
 * were together (parabola, standards/sag.ts), hung between the next supports. At rest it hangs at the sag of that
 * length. Wherever it drops or swings to, the sum of the distances to its two supports cannot exceed its length, so
 * every place within reach of it lies in the ellipsoid about them (plain geometry). Left out: stretch, slip at the
 * next supports, a break, and what it catches on below; the ellipsoid is therefore the bound of a whole conductor
 * that stays held at both ends.
 */
import { distance, lerp, length as size, sub, type Vec3 } from '../math/vec3.ts';
import { parabolicLength, sagAt } from '../standards/sag.ts';
import type { Metres } from '../units/quantities.ts';

/** A span as it hangs: far support, support whose tie is lost, sag at mid-span. */
export interface HungSpan {
  readonly far: Vec3;
  readonly near: Vec3;
  readonly sag: Metres;
}

/** The double span after the tie is lost. */
export interface LooseConductor {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly length: Metres;
  /** Sag at mid-span of the double span. */
  readonly sag: Metres;
  /** Horizontal distance of the lost support from `from`. */
  readonly lostAt: Metres;
}

const level = (a: Vec3, b: Vec3): Metres => size([b[0] - a[0], b[1] - a[1], 0]);

/** Horizontal length between the supports of the double span. */
export const doubleLength = ({ from, to }: LooseConductor): Metres => level(from, to);

/** Joins two spans at their lost support; throws a RangeError for a span without length. */
export function looseConductor(one: HungSpan, other: HungSpan): LooseConductor {
  const spans = [level(one.far, one.near), level(other.far, other.near)] as const;
  if (!(spans[0] > 0 && spans[1] > 0)) throw new RangeError('a span without length');
  const length = parabolicLength(spans[0], one.sag) + parabolicLength(spans[1], other.sag);
  const span = level(one.far, other.far);
  const spare = Math.max(0, length - span);
  return { from: one.far, to: other.far, length, sag: Math.sqrt((3 * span * spare) / 8), lostAt: spans[0] };
}

/** Height at rest, metres above the datum, `along` metres from `from`. */
export function restHeight(loose: LooseConductor, along: Metres): Metres {
  const span = doubleLength(loose);
  return lerp(loose.from, loose.to, along / span)[2] - sagAt(span, loose.sag, along);
}

/** Farthest that it can be from the line between its supports, `along` metres from `from`. */
export function swingRadius(loose: LooseConductor, along: Metres): Metres {
  const span = distance(loose.from, loose.to);
  const spare = loose.length * loose.length - span * span;
  if (spare <= 0) return 0;
  // Ellipse about the supports: half axes length/2 and sqrt(length2 - span2)/2.
  const x = (along - span / 2) / (loose.length / 2);
  return (Math.sqrt(spare) / 2) * Math.sqrt(Math.max(0, 1 - x * x));
}

/** Lowest place it can reach beside the lost support, metres above the datum. */
export const lowestAt = (loose: LooseConductor, along: Metres): Metres =>
  lerp(loose.from, loose.to, along / doubleLength(loose))[2] - swingRadius(loose, along);

/** Distance of a place from everything that it can reach; zero inside. The slope of the ellipsoid is neglected. */
export function distanceToLoose(loose: LooseConductor, place: Vec3): Metres {
  const axis = sub(loose.to, loose.from);
  const span = size(axis);
  const offset = sub(place, loose.from);
  const along = (axis[0] * offset[0] + axis[1] * offset[1] + axis[2] * offset[2]) / span;
  const nearest = Math.min(span, Math.max(0, along));
  const foot = lerp(loose.from, loose.to, nearest / span);
  return Math.max(0, distance(place, foot) - swingRadius(loose, nearest));
}
