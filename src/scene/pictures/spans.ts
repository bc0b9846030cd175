/**
 * Pictures of spans: a parabola for the catenary of their sag (they differ by less than a strand at these spans); parted ones and
 * those off their tie hang and lie where the engine has them; a limb rests on one that bears it.
 */
import { componentKind } from '../../engine/catalogue/components.ts';
import { faultKind } from '../../engine/catalogue/faults.ts';
import { restHeight } from '../../engine/mechanics/looseConductor.ts';
import { hasFallen, looseRuns } from '../../engine/mechanics/looseRuns.ts';
import { type Piece as EnginePiece, piecesOf } from '../../engine/world/lying.ts';
import type { Part } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import { groundAt } from '../place/lie.ts';
import { azimuthFrom, leadThrough, seedOf, spanOf, toward } from './shared.ts';
import { shownOf } from './showsAs.ts';
import { conductor } from './support.ts';
import type { Around, Picture, Piece } from './types.ts';

/** Where a span is made up at one end: the clamp of a dead end, a spool's outer side, or its own end in a groove. */
const endOf = (net: string | undefined, own: Point, around: Around): Point => {
  for (const holder of around.world.parts) {
    if (holder.pole === null || Math.hypot(holder.at[0] - own[0], holder.at[1] - own[1]) > 1.5) continue;
    if (holder.nets.conductor !== net && holder.nets.neutral !== net) continue;
    const held = around.point(holder.id, 'conductor');
    if (held !== null) return held;
  }
  return own;
};

/** Metres from its `at` at which a joint in it has come apart; null if none has. */
const apartAt = (part: Part): number | null =>
  part.faults.some((fault) => faultKind(fault.kind).opens.includes('line') && shownOf(fault) !== null) ? 0.12 : null;

/** How high a wire's middle lies on the ground, and how far out from its support one hangs clear of the pole. */
const LYING = 0.025;
const CLEAR = 0.26;

const onGround = (x: number, y: number): Point => [x, y, Math.max(0, groundAt(x, y)) + LYING];

/** A parted piece where the engine has it: down beside its support, round a bend, and along the ground to its free end. */
const partedPiece = ({ foot, free, length }: EnginePiece, held: Point, out: number, bend: number): readonly Piece[] => {
  if (length < 0.06) return [];
  const clear = Math.min(CLEAR, 0.4 * length);
  const low = foot === null ? free[2] : LYING;
  const course: Point[] = [
    held,
    toward(held, out, clear * 0.6, -0.04),
    ...[0.15, 0.5, 0.85].map((t): Point => {
      const [x, y] = toward(held, out, clear * (0.9 + 0.1 * t));
      return [x, y, held[2] + (low - held[2]) * t];
    }),
  ];
  if (foot === null) return leadThrough('aluminium', conductor, [...course, toward(free, out, clear)], 'cut');
  const lies = Math.hypot(free[0] - foot[0], free[1] - foot[1]);
  for (const [off, up] of [
    [0.01, 0.4],
    [0.05, 0.2],
    [0.14, 0.08],
    [0.26, 0.035],
  ] as const)
    course.push(toward([held[0], held[1], up], out, clear + off));
  const steps = Math.max(1, Math.min(12, Math.ceil(lies / 3)));
  for (let i = 0; i <= steps; i++) {
    const along = clear + 0.45 + (Math.max(0.2, lies - clear - 0.45) * i) / steps;
    const [x, y] = toward(foot, out, along);
    // Wire that was under tension keeps a curl of its own where it lies.
    const off = 0.18 * Math.sin(bend + along * 0.9) * Math.min(1, along / 2);
    course.push(onGround(x - off * Math.sin(out), y + off * Math.cos(out)));
  }
  return leadThrough('aluminium', conductor, course, 'cut');
};

/** What is left of a joint that came apart, hanging beside its clamp. */
const hangingPiece = (held: Point, side: number, length: number): readonly Piece[] => {
  const lean = Math.min(0.35 * length, 1.4);
  const drop = Math.min(length, held[2] - LYING);
  const course = [
    held,
    toward(held, side, lean * 0.3, -drop * 0.25),
    toward(held, side, lean * 0.55, -drop * 0.6),
    toward(held, side, lean * 0.7, -drop),
  ];
  const [x, y] = toward(held, side, lean * 0.7);
  if (length - drop - lean > 0.3)
    for (const t of [0.3, 0.6, 0.95])
      course.push(onGround(...flat(toward([x, y, 0], side, (length - drop - lean) * t))));
  return leadThrough('aluminium', conductor, course, 'cut');
};

const flat = ([x, y]: Point): [number, number] => [x, y];

/** A conductor off its tie: on the one long curve of its run (mechanics/looseRuns.ts), on the ground where that is lower. */
const looseCourse = (part: Part, around: Around): readonly Point[] => {
  const { at, end } = part;
  if (end === null || !(['a', 'b'] as const).some((which) => hasFallen({ part, end: which }))) return [];
  const over = looseRuns(around.world).find(({ spans }) => spans.includes(part))?.over.conductor;
  if (over === undefined) return [];
  const { from } = over;
  return Array.from({ length: 14 }, (_, i): Point => {
    const [x, y] = [at[0] + ((end[0] - at[0]) * i) / 13, at[1] + ((end[1] - at[1]) * i) / 13];
    const z = restHeight(over, Math.hypot(x - from[0], y - from[1]));
    // Beside the pole that it came off, not through it.
    const lost = hasFallen({ part, end: i < 7 ? 'a' : 'b' });
    const off = lost ? CLEAR * Math.max(0, 1 - Math.min(i, 13 - i) / 4) : 0;
    return [x, y - off, Math.max(z, onGround(x, y)[2])];
  });
};

/** Course of what hangs within reach: down from its first support to the lowest place that its fault names, then up to the second. */
export const lowCourse = (part: Part, a: Point, b: Point): readonly Point[] => {
  const fault = part.faults.find((each) => shownOf(each)?.low === true);
  const [place] = fault === undefined ? [] : Object.values(faultKind(fault.kind).points ?? {});
  if (fault === undefined || place?.along === undefined) return [];
  const whole = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const share = Math.min(0.8, (fault.values[place.along] ?? 1.5) / whole);
  const at = (t: number, z: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, z];
  const low = at(share, 0);
  const lowest = Math.max(0, groundAt(low[0], low[1])) + (place.above ?? 2.4);
  return [
    ...[0, 0.25, 0.5, 0.7, 0.85, 0.95].map((k) => at(share * k, lowest + (a[2] - lowest) * (1 - k) ** 2)),
    ...[0, 0.01, 0.04, 0.1, 0.2, 0.35, 0.5, 0.65, 0.8, 0.9, 1].map((k) =>
      at(share + (1 - share) * k, lowest + (b[2] - lowest) * k ** 2),
    ),
  ];
};

/** A branch fallen across the conductor, out from the pole. */
const limbOn = (part: Part, a: Point, b: Point, sag: number): readonly Piece[] => {
  if (!part.faults.some((fault) => shownOf(fault)?.adds === 'limb')) return [];
  const far = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const t = Math.min(0.5, 2 / far);
  const z = a[2] + (b[2] - a[2]) * t - 4 * sag * t * (1 - t);
  const at: Point = [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, z];
  return [{ spec: { kind: 'limb', side: azimuthFrom(a, b) + 0.5, seed: seedOf(part.id) }, at }];
};

const span: Picture = (part, around) => {
  if (part.end === null) return [];
  const a = endOf(part.nets.a, part.at, around);
  const b = endOf(part.nets.b, part.end, around);
  const sag = part.values.sagM ?? 0.5;
  const whole = Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
  const out = azimuthFrom(a, b);
  const parted = piecesOf(part);
  if (parted.length > 0)
    return parted.flatMap((piece) =>
      piece.terminal === 'a' ? partedPiece(piece, a, out, 1) : partedPiece(piece, b, out + Math.PI, seedOf(part.id)),
    );
  const apart = apartAt(part);
  if (apart !== null) return [...hangingPiece(a, out, apart), ...hangingPiece(b, out + Math.PI, whole - apart)];
  const low = lowCourse(part, a, b);
  if (low.length > 0) return leadThrough('aluminium', conductor, low);
  const loose = looseCourse(part, around);
  if (loose.length > 0) return leadThrough('aluminium', conductor, loose);
  const [strands] = componentKind(part.kind).features;
  const toHold = Math.hypot(a[0] - part.at[0], a[1] - part.at[1]);
  const at = Math.min(0.5, ((strands?.along ?? 2) - toHold) / whole);
  return [spanOf('aluminium', conductor, a, b, sag, at), ...limbOn(part, a, b, sag)];
};

/** Triplex from pole to pole, a wedge clamp at each. */
const secondarySpan: Picture = (part, around) => {
  if (part.end === null) return [];
  const poleAt = (net: string | undefined): string | null => net?.split('.')[0] ?? null;
  const side = azimuthFrom(part.at, part.end);
  const a = around.face(poleAt(part.nets.a1), side, part.at[2], 0.05);
  const b = around.face(poleAt(part.nets.b1), side + Math.PI, part.end[2], 0.05);
  return [
    { spec: { kind: 'wedge-clamp', side }, at: a },
    { spec: { kind: 'wedge-clamp', side: side + Math.PI }, at: b },
    {
      spec: {
        kind: 'triplex',
        points: [toward(a, side, 0.28), toward(b, side + Math.PI, 0.28)],
        size: { sag: part.values.sagM ?? 0.6, pitch: 0.95 },
      },
      at: [0, 0, 0],
      thin: 0.0068,
      swings: true,
    },
  ];
};

/** Conductors between poles, by kind. */
export const spanWires: Readonly<Record<string, Picture>> = {
  'phase-span': span,
  'neutral-span': span,
  'coupled-span': span,
  'coupled-neutral': span,
  'secondary-span': secondarySpan,
};
