/** How much of what lies on a part is in view from an eye: the spots of its faces that look this way and that nothing covers. */
import { dot, length, normalise, sub, type Vec3 } from '../math/vec3.ts';
import type { Part, World } from '../world/types.ts';
import type { Face, Spot } from './faces.ts';
import { between, hiddenBy } from './solids.ts';

export interface View {
  /** Whether any of it looks toward the eye. */
  readonly faces: boolean;
  /** Share of the area of its best face that is seen, as it is turned to the eye, 0 to 1. */
  readonly share: number;
  /** Of what is seen, next to the middle of that face; of what is not, the middle of the nearest. */
  readonly at: Vec3;
}

/** Cosine to the outward direction under which a surface is seen on edge. */
const EDGE = 0.06;
/** Sheds cover what lies between them from straight below: from this cosine on one looks in, of the usual spacing (estimate). */
const UNDER = 0.15;

/** Thickness of the shank between sheds against their own, and the way from one to the next, metres (usual 15 kV class, from memory). */
const SHANK = 0.45;
const NEXT = 0.04;
/** Flatter than this one sees the rims of sheds alone. */
const GRAZING = 0.2;

/**
 * Of a shed one sees the flat side, past the shank, also from behind: where the line of sight clears the shank and is out of the
 * sheds before it comes to the next. How far it is turned to the eye, a half of it covered.
 */
const pastShank = (out: Vec3, { axis, radius }: NonNullable<Spot['sheds']>, way: Vec3): number => {
  const along = Math.abs(dot(axis, way));
  const across = Math.sqrt(Math.max(0, 1 - along * along));
  const behind = -dot(out, way) / Math.max(1e-9, across);
  const aside = Math.sqrt(Math.max(0, 1 - behind * behind));
  const isClear = aside > SHANK && (2 * radius * behind * along) / Math.max(1e-9, across) < NEXT;
  return along > GRAZING && behind > 0 && isClear ? along / 2 : 0;
};

/** How far a spot is turned to the eye: 1 face on, 0 on edge or away. */
const turnedTo = ({ at, out, sheds }: Spot, eye: Vec3): number => {
  if (out === null) return 1;
  const way = sub(eye, at);
  // Up a wall one sees it, however steep: of an upright surface the side decides whether, the slant how much of it.
  const flat: Vec3 = Math.abs(out[2]) < EDGE ? [way[0], way[1], 0] : way;
  const slant = dot(out, normalise(way));
  if (dot(out, normalise(flat)) > EDGE && slant > (sheds ? UNDER : 0)) return slant;
  return sheds?.kind === 'sheds' ? pastShank(out, sheds, normalise(way)) : 0;
};

/** Of some spots the one nearest to a place. */
const nearestTo = (place: Vec3, spots: readonly Spot[]): Vec3 | null =>
  spots.reduce<Vec3 | null>(
    (best, { at }) => (best === null || length(sub(at, place)) < length(sub(best, place)) ? at : best),
    null,
  );

const isBetter = (a: View, b: View, eye: Vec3): boolean => {
  if (a.share !== b.share) return a.share > b.share;
  if (a.faces !== b.faces) return a.faces;
  return length(sub(a.at, eye)) < length(sub(b.at, eye));
};

/** What an eye has of these faces of a part; `itself`: whether the part's own body can cover them. */
export const viewOf = (world: World, part: Part, faces: readonly Face[], eye: Vec3, itself: boolean): View => {
  const [first] = faces;
  if (first === undefined) throw new Error(`nothing lies on ${part.id}`);
  const radius = Math.max(...faces.map((face) => length(sub(face.at, first.at)) + face.reach));
  const before = between(world.parts, eye, first.at, radius);
  let best: View | null = null;
  for (const { spots, at } of faces) {
    let some = false;
    let share = 0;
    const seen: Spot[] = [];
    for (const spot of spots) {
      const turned = turnedTo(spot, eye);
      if (turned === 0) continue;
      some = true;
      if (hiddenBy(before, eye, spot.at, part.id, itself)) continue;
      share += turned / spots.length;
      seen.push(spot);
    }
    const view: View = { faces: some, share, at: nearestTo(at, seen) ?? at };
    if (best === null || isBetter(view, best, eye)) best = view;
  }
  return best as View;
};
