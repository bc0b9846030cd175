/**
 * Where a sign lies on its part: faces on the part's solids, each asked at several spots, or spots in the air for what is no mark. The
 * picture lays its marks on the same faces. Model: a mark on a side covers `extent` along the solid nearest to its place and a
 * third of that (or its size) round it; on no side in particular it lies on all four. A side that looks along a lying body means
 * the half toward that side. Left out: sheds and skirts, whose surface is taken as straight.
 */
import { componentKind } from '../catalogue/components.ts';
import type { Feature, Side, SignKind, Solid } from '../catalogue/types.ts';
import { cos, sin } from '../math/elementary.ts';
import { add, cross, dot, length, normalise, scale, sub, type Vec3 } from '../math/vec3.ts';
import { placeOn } from '../world/edit.ts';
import { courseOfFeature, placeOfFeature } from '../world/featurePlace.ts';
import { upright } from '../world/lean.ts';
import { turned } from '../world/points.ts';
import type { Part } from '../world/types.ts';
import { awayFrom, axisOf } from './rays.ts';

/** A place of a sign and which way it looks; null: seen from all round. */
export interface Spot {
  readonly at: Vec3;
  readonly out: Vec3 | null;
  /** Among sheds: the body's axis, and how far they stand out from it, metres. */
  readonly sheds?: { readonly kind: 'sheds' | 'skirts'; readonly axis: Vec3; readonly radius: number };
}

/** One patch of a mark, in the axes of the scene: its middle, which way it looks, its length and width, metres. */
export interface Face {
  readonly at: Vec3;
  readonly out: Vec3 | null;
  readonly long: number;
  readonly wide: number;
  /** Radius of a ball about its middle that holds all its spots. */
  readonly reach: number;
  readonly spots: readonly Spot[];
}

/** What is asked about: how large, on which side, how it lies. */
export interface Lie {
  readonly feature: Feature;
  readonly side: Side;
  readonly size: number;
  readonly extent: number;
  readonly form?: SignKind['form'];
  readonly strip?: SignKind['strip'];
  readonly place?: Vec3;
}

const normals: Readonly<Partial<Record<Side, Vec3>>> = {
  road: [0, -1, 0],
  field: [0, 1, 0],
  source: [-1, 0, 0],
  load: [1, 0, 0],
  top: [0, 0, 1],
  under: [0, 0, -1],
};
const round = ['road', 'load', 'field', 'source'] as const;

/** Shares of length and of width at which a face is asked. */
const LONG = [-0.42, -0.21, 0, 0.21, 0.42];
/** The same of what stands free, which thin things cover here and there. */
const FREE = [-0.48, -0.36, -0.24, -0.12, 0, 0.12, 0.24, 0.36, 0.48];
const WIDE = [-0.4, 0, 0.4];
/** From this cosine on a side looks along a body. */
const ALONG = 0.7;
/** A mark leaves so much of a body's length free. */
const WHOLE = 0.96;
/** How far what has no direction reaches about its place at most, metres: an outline, a piece. */
const REACH = { outline: 0.25, piece: 0.03, mark: 0.03 };

const face = (spots: readonly Spot[], at: Vec3, out: Vec3 | null, long: number, wide: number): Face => ({
  at,
  out,
  long,
  wide,
  reach: Math.max(...spots.map((spot) => length(sub(spot.at, at)))),
  spots,
});

/** Two unit directions square to one. */
const squareTo = (unit: Vec3): readonly [Vec3, Vec3] => {
  const first = normalise(cross(unit, Math.abs(unit[2]) < ALONG ? [0, 0, 1] : [1, 0, 0]));
  return [first, cross(unit, first)];
};

interface Stretch {
  readonly middle: number;
  readonly long: number;
}

/** The stretch of a body of so many metres that a mark covers about a place. */
const stretchAt = (at: number, whole: number, extent: number): Stretch => {
  const long = Math.min(extent, WHOLE * whole);
  return { middle: Math.min(whole - long / 2, Math.max(long / 2, at)), long };
};

/** How wide a mark is where its part lets it: a strip is as wide as its sign, anything else grows with its length. */
const widthOf = ({ size, extent, strip }: Lie): number => (strip ? size : Math.max(size, 0.35 * extent));

type Round = Extract<Solid, { readonly shape: 'cylinder' }>;
type Box = Extract<Solid, { readonly shape: 'box' }>;

const onRound = (solid: Round, place: Vec3, out: Vec3, lie: Lie): Face => {
  const { extent } = lie;
  const { unit, height, radiusAt } = axisOf(solid);
  const along = dot(out, unit);
  if (Math.abs(along) > ALONG) {
    const end = along > 0 ? height : 0;
    const middle = add(solid.from, scale(unit, end));
    const reach = Math.min(extent, 1.6 * radiusAt(end)) / 2;
    const spots = [middle, ...squareTo(unit).flatMap((d) => [reach, -reach].map((by) => add(middle, scale(d, by))))];
    return face(
      spots.map((at) => ({ at, out })),
      middle,
      out,
      2 * reach,
      2 * reach,
    );
  }
  const { middle, long } = stretchAt(dot(sub(place, solid.from), unit), height, extent);
  const normal = normalise(sub(out, scale(unit, along)));
  const aside = cross(unit, normal);
  const radius = radiusAt(middle);
  const wide = Math.min(1.2 * radius, widthOf(lie));
  const spots = LONG.flatMap((l) =>
    WIDE.map((w): Spot => {
      const angle = (w * wide) / radius;
      const s = middle + l * long;
      const facing = add(scale(normal, cos(angle)), scale(aside, sin(angle)));
      const at = add(add(solid.from, scale(unit, s)), scale(facing, radiusAt(s)));
      return { at, out: facing, ...(solid.shedded ? { sheds: { kind: solid.shedded, axis: unit, radius } } : {}) };
    }),
  );
  return face(spots, add(add(solid.from, scale(unit, middle)), scale(normal, radius)), normal, long, wide);
};

const axes: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

const onBox = ({ centre, half }: Box, place: Vec3, out: Vec3, lie: Lie): Face => {
  const weigh = (i: number): number => Math.abs(out[i as 0]);
  const up = [0, 1, 2].reduce((best, i) => (weigh(i) > weigh(best) ? i : best)) as 0 | 1 | 2;
  const [p, q] = ([0, 1, 2] as const).filter((i) => i !== up) as [0 | 1 | 2, 0 | 1 | 2];
  const [run, side] = half[p] > half[q] ? [p, q] : [q, p];
  const normal = scale(axes[up] as Vec3, out[up] < 0 ? -1 : 1);
  const lay = (axis: 0 | 1 | 2, of: number): Stretch =>
    stretchAt(place[axis] - centre[axis] + half[axis], 2 * half[axis], of);
  const wide = Math.min(2 * WHOLE * half[side], widthOf(lie));
  const [length_, width] = [lay(run, lie.extent), lay(side, wide)];
  const at = (l: number, w: number): Vec3 => {
    const foot = scale(normal, half[up]);
    const x = length_.middle + l * length_.long - half[run];
    const y = width.middle + w * width.long - half[side];
    return add(add(centre, foot), add(scale(axes[run] as Vec3, x), scale(axes[side] as Vec3, y)));
  };
  const spots = LONG.flatMap((l) => WIDE.map((w): Spot => ({ at: at(l, w), out: normal })));
  return face(spots, at(0, 0), normal, length_.long, width.long);
};

/** The long axis of what is much longer than wide. */
const lengthwise = (solid: Solid): { readonly unit: Vec3; readonly half: number } | null => {
  if (solid.shape === 'cylinder') {
    const { unit, height } = axisOf(solid);
    return height > 4 * solid.radius ? { unit, half: height / 2 } : null;
  }
  const [x, y, z] = solid.half;
  const most = Math.max(x, y, z);
  const i = most === x ? 0 : most === y ? 1 : 2;
  const other = Math.max(...[x, y, z].filter((_, k) => k !== i));
  return most > 4 * other ? { unit: axes[i] as Vec3, half: most } : null;
};

/** Places and outward directions of a mark about a solid: where its side looks along the solid, it lies all round that half. */
const laidOn = (
  solid: Solid,
  place: Vec3,
  { side, feature }: Lie,
  azimuth: number,
): readonly (readonly [Vec3, Vec3])[] => {
  if (feature.faces !== undefined) return [[place, feature.faces]];
  const own = (name: Side): Vec3 => turned(normals[name] ?? [0, 0, 1], -azimuth);
  const long = lengthwise(solid);
  const isAlong = (out: Vec3): boolean => long !== null && Math.abs(dot(out, long.unit)) > ALONG;
  const about = round
    .map(own)
    .map((out, i): Vec3 => (isAlong(out) ? [0, 0, i === 1 ? 1 : -1] : out))
    .filter((out) => !isAlong(out));
  if (side === 'any') return about.map((out) => [place, out] as const);
  const out = own(side);
  if (!isAlong(out) || long === null || Math.abs(out[2]) > ALONG) return [[place, out]];
  const middle = solid.shape === 'box' ? solid.centre : scale(add(solid.from, solid.to), 0.5);
  const toward = dot(out, long.unit) > 0 ? 1 : -1;
  const off = dot(sub(place, middle), long.unit);
  const by = toward * Math.max(Math.abs(off), long.half / 2) - off;
  return about.map((each) => [add(place, scale(long.unit, by)), each] as const);
};

/** Metres from its solid within which an outline is that solid's own; farther off it is of what hangs there. */
const NEAR = 0.04;

/** How far a changed outline stands out from a body, against the body's own half width. */
const PROUD = 1.3;

/** Half the size of a solid each way, in its own frame. */
const halfOf = (solid: Solid): Vec3 => {
  if (solid.shape === 'box') return solid.half;
  const { unit, height } = axisOf(solid);
  const each = (i: 0 | 1 | 2): number => Math.max(solid.radius, (Math.abs(unit[i]) * height) / 2);
  return [each(0), each(1), each(2)];
};

/** Spots in the air along a direction, or crosswise about the place, no farther than its body's outline could be. */
const inAir = (
  place: Vec3,
  course: Vec3 | null,
  extent: number,
  reach: number,
  body: Solid | null,
  azimuth: number,
): readonly Face[] => {
  const half = body === null ? null : halfOf(body);
  const by = (i: 0 | 1 | 2): number => Math.min(extent / 2, reach, half === null ? reach : PROUD * half[i]);
  const spots =
    course === null
      ? [
          place,
          ...([0, 1, 2] as const).flatMap((i) =>
            [by(i), -by(i)].map((d) => add(place, turned(scale(axes[i] as Vec3, d), azimuth))),
          ),
        ]
      : FREE.map((l) => add(place, scale(course, l * extent)));
  return [
    face(
      spots.map((at) => ({ at, out: null })),
      place,
      null,
      extent,
      0,
    ),
  ];
};

/** The middles of faces alone: enough to tell whether something is there to be looked at. */
export const middlesOf = (faces: readonly Face[]): readonly Face[] =>
  faces.map(({ at, out, long, wide, spots }) => {
    const sheds = spots.find((spot) => spot.sheds)?.sheds;
    return face([{ at, out, ...(sheds ? { sheds } : {}) }], at, out, long, wide);
  });

/** The faces of a sign, or of a feature, in the axes of the scene. */
export const facesOf = (part: Part, lie: Lie): readonly Face[] => {
  const { feature, extent } = lie;
  const place = lie.place === undefined ? placeOfFeature(part, feature) : placeOn(part, lie.place);
  const solids = componentKind(part.kind).solids(part);
  const off = sub(place, part.at);
  const own = turned(part.lean === undefined ? off : upright(off, part.lean), -part.azimuth);
  const [nearest] = solids.map((solid) => ({ solid, away: awayFrom(own, solid) })).sort((a, b) => a.away - b.away);
  const form = lie.form ?? (nearest === undefined ? 'piece' : 'mark');
  if (form !== 'mark' || nearest === undefined) {
    const body = form === 'outline' && nearest !== undefined && nearest.away < NEAR ? nearest.solid : null;
    return inAir(place, courseOfFeature(part, feature), extent, REACH[form], body, part.azimuth);
  }
  const { solid } = nearest;
  const out = (p: Vec3): Vec3 => placeOn(part, p);
  return laidOn(solid, own, lie, part.azimuth).map(([at, way]) => {
    const laid = solid.shape === 'cylinder' ? onRound(solid, at, way, lie) : onBox(solid, at, way, lie);
    const facing = (n: Vec3 | null): Vec3 | null => n && turned(n, part.azimuth);
    return face(
      laid.spots.map(({ sheds, ...spot }) => ({
        at: out(spot.at),
        out: facing(spot.out),
        ...(sheds ? { sheds: { ...sheds, axis: turned(sheds.axis, part.azimuth) } } : {}),
      })),
      out(laid.at),
      facing(laid.out),
      laid.long,
      laid.wide,
    );
  });
};
