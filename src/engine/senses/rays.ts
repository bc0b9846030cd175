/** Where a ray meets a simple solid, how near a place is to one. All in the solid's own frame, metres. */
import type { Solid } from '../catalogue/types.ts';
import { add, dot, length, scale, sub, type Vec3 } from '../math/vec3.ts';

type Round = Extract<Solid, { readonly shape: 'cylinder' }>;

/** Axis of a round solid: unit direction, length, and radius at so many metres from its foot. */
export const axisOf = ({ from, to, radius, tip = radius }: Round) => {
  const way = sub(to, from);
  const height = length(way);
  const slope = (tip - radius) / height;
  return { unit: scale(way, 1 / height), height, slope, radiusAt: (s: number): number => radius + slope * s };
};

/** Distance along a unit ray to a closed cylinder or stump of a cone; null if it passes by. */
const alongRound = (from: Vec3, direction: Vec3, solid: Round): number | null => {
  const { unit, height, slope, radiusAt } = axisOf(solid);
  const start = sub(from, solid.from);
  const up = dot(start, unit);
  const lean = dot(direction, unit);
  const across = sub(direction, scale(unit, lean));
  const offset = sub(start, scale(unit, up));
  const hits: number[] = [];
  // |offset + t across| = radiusAt(up + t lean), a square equation; the smaller root is where the ray goes in.
  const here = radiusAt(up);
  const qa = dot(across, across) - slope * lean * slope * lean;
  if (qa > 1e-12) {
    const qb = dot(across, offset) - here * slope * lean;
    const root = qb * qb - qa * (dot(offset, offset) - here * here);
    if (root >= 0) {
      const t = (-qb - Math.sqrt(root)) / qa;
      const along = up + t * lean;
      if (t > 0 && along >= 0 && along <= height) hits.push(t);
    }
  }
  if (Math.abs(lean) > 1e-9) {
    for (const end of [0, height]) {
      const t = (end - up) / lean;
      const spot = add(offset, scale(across, t));
      if (t > 0 && Math.sqrt(dot(spot, spot)) <= radiusAt(end)) hits.push(t);
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

/** Distance along a unit ray to a solid; null if it passes by, or starts within. */
export const alongSolid = (from: Vec3, direction: Vec3, solid: Solid): number | null =>
  solid.shape === 'cylinder' ? alongRound(from, direction, solid) : alongBox(from, direction, solid.centre, solid.half);

/** Metres from a place to a solid, 0 within; of a stump of a cone, square to its axis. */
export const awayFrom = (place: Vec3, solid: Solid): number => {
  if (solid.shape === 'box') {
    const off = sub(place, solid.centre);
    const out = ([0, 1, 2] as const).map((i) => Math.max(0, Math.abs(off[i]) - solid.half[i]));
    return length(out as unknown as Vec3);
  }
  const { unit, height, radiusAt } = axisOf(solid);
  const start = sub(place, solid.from);
  const up = dot(start, unit);
  const beside = Math.max(0, length(sub(start, scale(unit, up))) - radiusAt(Math.min(height, Math.max(0, up))));
  const beyond = Math.max(0, -up, up - height);
  return Math.sqrt(beside * beside + beyond * beyond);
};
