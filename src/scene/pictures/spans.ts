/**
 * Pictures of spans: a parabola for the catenary of their sag (they differ by less than a strand at these spans); parted ones hang
 * from what holds them and lie from where they reach the ground; a limb rests on one that bears it.
 */
import { faultKind } from '../../engine/catalogue/faults.ts';
import type { Part } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import { azimuthFrom, leadThrough, seedOf, shifted, spanOf, toward } from './shared.ts';
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

/** Metres from its `at` at which a fault has parted it; null if it is whole. */
const partedAt = (part: Part, whole: number): number | null => {
  for (const fault of part.faults) {
    const value = faultKind(fault.kind).mechanical?.breaks;
    if (value !== undefined) return Math.min(whole - 0.5, fault.values[value] ?? whole * 0.4);
    if (faultKind(fault.kind).opens.includes('line') && shownOf(fault) !== null) return 0.12;
  }
  return null;
};

/** One piece of a parted conductor, from where it is held down and, what is left of it, along the ground. */
const hangingPiece = (held: Point, side: number, length: number, seed: number): readonly Piece[] => {
  if (length < 0.06) return [];
  const lean = Math.min(0.35 * length, 1.4);
  const drop = Math.min(length, held[2] - 0.03);
  const lies = Math.max(0, length - drop - lean);
  const bend = 0.4 * Math.sin(seed);
  const course: Point[] = [
    held,
    toward(held, side, lean * 0.3, -drop * 0.25),
    toward(held, side, lean * 0.55, -drop * 0.6),
    toward(held, side, lean * 0.7, -drop),
  ];
  if (lies > 0.3)
    course.push(
      shifted(toward(held, side, lean * 0.7 + 0.5 * lies, -drop), 0, bend * lies * 0.3, 0),
      toward(held, side, lean * 0.7 + 0.95 * lies, -drop),
    );
  return leadThrough('aluminium', conductor, course, 'cut');
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
  const parted = partedAt(part, whole);
  if (parted !== null) {
    const out = azimuthFrom(a, b);
    return [...hangingPiece(a, out, parted, 1), ...hangingPiece(b, out + Math.PI, whole - parted, seedOf(part.id))];
  }
  return [spanOf('aluminium', conductor, a, b, sag), ...limbOn(part, a, b, sag)];
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
