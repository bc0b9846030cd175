/** Which part is pointed at: the nearest solid on the ray, or a small part close beside it. */
import { componentKind } from '../catalogue/components.ts';
import { add, scale, sub, type Vec3 } from '../math/vec3.ts';
import { placeOn } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';
import { besideRay, distanceToPart } from './solids.ts';

/** Radians beside the ray within which a small part is still meant: about a finger's width on a screen. */
const FORGIVING = 0.012;

/** Places by which a part without solids is pointed at: its features, a span along its sag. */
const marksOf = (part: Part): readonly Vec3[] => {
  const { features } = componentKind(part.kind);
  if (part.end === null) return features.map(({ offset }) => placeOn(part, offset));
  const { end } = part;
  const sag = part.values.sagM ?? 0;
  return Array.from({ length: 41 }, (_, i) => {
    const t = i / 40;
    const straight = add(part.at, scale(sub(end, part.at), t));
    return [straight[0], straight[1], straight[2] - 4 * sag * t * (1 - t)];
  });
};

/** Id of the part that a unit ray points at, null for none. */
export const partAlong = (world: World, from: Vec3, direction: Vec3): string | null => {
  let best: { readonly id: string; readonly rank: number } | null = null;
  const offer = (id: string, rank: number): void => {
    if (best === null || rank < best.rank) best = { id, rank };
  };
  let nearest = Number.POSITIVE_INFINITY;
  for (const part of world.parts) {
    const t = distanceToPart(part, from, direction);
    if (t === null) continue;
    nearest = Math.min(nearest, t);
    offer(part.id, 1e3 + t);
  }
  for (const part of world.parts) {
    if (componentKind(part.kind).features.length === 0) continue;
    for (const mark of marksOf(part)) {
      const { aside, along } = besideRay(from, direction, mark);
      if (along <= 0 || along > nearest + 0.3 || aside > FORGIVING * along) continue;
      if (componentKind(part.kind).solids(part).length === 0) offer(part.id, aside / along);
    }
  }
  return best === null ? null : (best as { readonly id: string }).id;
};
