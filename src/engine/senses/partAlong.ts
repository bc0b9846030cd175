/**
 * Which part is pointed at: a small solid that the ray meets; else the small part or wire that it passes closest, within a
 * finger's width; else the nearest large solid (pole, tank, house). What lies behind a solid is not pointed at.
 */
import { componentKind } from '../catalogue/components.ts';
import { add, dot, scale, sub, type Vec3 } from '../math/vec3.ts';
import { lieOfFallen, placeOfFeature } from '../world/featurePlace.ts';
import type { Part, World } from '../world/types.ts';
import { besideRay, distanceToPart, sizeOf } from './solids.ts';

/** Radians beside the ray within which a small part is still meant: about a finger's width on a screen. */
const FORGIVING = 0.012;
/** Radius of the ball round a part up to which it is small, metres. */
const SMALL = 0.45;
/** What is mounted on a surface lies a little behind where the ray meets it, metres. */
const MOUNTED = 0.1;
const SEGMENTS = 20;

/** Places along a wire, sag taken as a parabola, or where it lies. */
const alongWire = (part: Part, end: Vec3): readonly Vec3[] =>
  lieOfFallen(part) ??
  Array.from({ length: SEGMENTS + 1 }, (_, i): Vec3 => {
    const t = i / SEGMENTS;
    const [x, y, z] = add(part.at, scale(sub(end, part.at), t));
    return [x, y, z - 4 * (part.values.sagM ?? 0) * t * (1 - t)];
  });

/** The place on a segment that a ray passes closest. */
const closest = (from: Vec3, direction: Vec3, a: Vec3, b: Vec3): Vec3 => {
  const way = sub(b, a);
  const start = sub(from, a);
  const [square, lean] = [dot(way, way), dot(direction, way)];
  const across = square - lean * lean;
  const t = across < 1e-12 ? 0 : (lean * dot(way, start) - dot(direction, start) * square) / across;
  const s = (dot(way, start) + t * lean) / square;
  return add(a, scale(way, Math.min(1, Math.max(0, s))));
};

/** Places by which a small part is meant: its features, or where a wire passes the ray. */
const placesOf = (part: Part, from: Vec3, direction: Vec3): readonly Vec3[] => {
  if (part.end === null) return componentKind(part.kind).features.map((feature) => placeOfFeature(part, feature));
  const wire = alongWire(part, part.end);
  return wire.slice(1).map((b, i) => closest(from, direction, wire[i] ?? b, b));
};

/** Id of the part that a unit ray points at, null for none. */
export const partAlong = (world: World, from: Vec3, direction: Vec3): string | null => {
  const met = world.parts.flatMap((part) => {
    const away = distanceToPart(part, from, direction);
    return away === null ? [] : [{ id: part.id, away, small: sizeOf(part) <= SMALL }];
  });
  const first = met.reduce<(typeof met)[number] | null>(
    (near, each) => (near === null || each.away < near.away ? each : near),
    null,
  );
  if (first?.small) return first.id;
  const seenTo = (first?.away ?? Number.POSITIVE_INFINITY) + MOUNTED;
  const mounted = met.find(({ small, away }) => small && away <= seenTo);
  if (mounted !== undefined) return mounted.id;
  let best: { readonly id: string; readonly aside: number } | null = null;
  for (const part of world.parts) {
    if (componentKind(part.kind).features.length === 0 || sizeOf(part) > SMALL) continue;
    for (const place of placesOf(part, from, direction)) {
      const { aside, along } = besideRay(from, direction, place);
      if (along <= 0 || along > seenTo || aside > FORGIVING * along) continue;
      if (best === null || aside / along < best.aside) best = { id: part.id, aside: aside / along };
    }
  }
  return best?.id ?? first?.id ?? null;
};
