/** Where something about a part is that can be looked at. */
import { faultKind } from '../catalogue/faults.ts';
import type { Feature } from '../catalogue/types.ts';
import { add, distance, lerp, scale, sub, type Vec3 } from '../math/vec3.ts';
import { placeOn } from './edit.ts';
import { turned } from './points.ts';
import type { Part } from './types.ts';

/** Where a strand that has come down lies, from its end toward below its `at`, on the ground; null: it hangs where it should. */
export const lieOfFallen = ({ at, end, faults }: Part): readonly [end: Vec3, far: Vec3] | null => {
  const metres = faults.reduce((most, { kind }) => Math.max(most, faultKind(kind).mechanical?.lies ?? 0), 0);
  if (metres === 0 || end === null) return null;
  const below: Vec3 = [at[0], at[1], end[2]];
  return [end, lerp(end, below, Math.min(1, metres / Math.max(1e-9, distance(end, below))))];
};

/** A place so many metres along a wire from its `at`, its sag taken as a parabola; of one that has come down, half way along what lies. */
const placeAlong = (part: Part, metres: number): Vec3 => {
  const { at, end, values } = part;
  if (end === null) return at;
  const fallen = lieOfFallen(part);
  if (fallen !== null) return lerp(...fallen, 0.5);
  const t = Math.min(1, metres / distance(at, end));
  const [x, y, z] = lerp(at, end, t);
  return [x, y, z - 4 * (values.sagM ?? 0) * t * (1 - t)];
};

/** Where a feature of a part is, metres in the axes of the scene. */
export const placeOfFeature = (part: Part, { offset, along, fromTop }: Feature): Vec3 => {
  if (along !== undefined && part.end !== null) return add(placeAlong(part, along), offset);
  return placeOn(part, fromTop ? add(offset, [0, 0, part.values.heightM ?? 0]) : offset);
};

/** Unit direction in which a part runs at a feature; null for none in particular. */
export const courseOfFeature = (part: Part, { along, runs }: Feature): Vec3 | null => {
  if (along !== undefined && part.end !== null) {
    const [a, b] = lieOfFallen(part) ?? [placeAlong(part, along), placeAlong(part, along + 0.1)];
    const way = sub(b, a);
    return scale(way, 1 / Math.max(1e-9, distance(a, b)));
  }
  return runs === undefined ? null : turned(runs, part.azimuth);
};
