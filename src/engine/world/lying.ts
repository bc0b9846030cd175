/**
 * Where a conductor that has parted lies: each piece hangs straight down from the end that holds it, or reaches the ground
 * below and lies along the line with what is longer (mechanics/hangingLead.ts, plain geometry). Its length is that along
 * the ground; sag is left out.
 */
import { faultKind } from '../catalogue/faults.ts';
import { add, distance, scale, sub, type Vec3 } from '../math/vec3.ts';
import type { Metres } from '../units/quantities.ts';
import type { Part } from './types.ts';

/** One piece: the terminal that it is still joined to, where that is held, and its course from there. */
export interface Piece {
  readonly terminal: 'a' | 'b';
  readonly held: Vec3;
  readonly length: Metres;
  /** Where it comes to the ground; null when it hangs clear. */
  readonly foot: Vec3 | null;
  readonly free: Vec3;
  readonly path: readonly Vec3[];
}

function piece(terminal: Piece['terminal'], held: Vec3, toward: Vec3, length: Metres): Piece {
  const [x, y, z] = held;
  if (length <= z) {
    const free: Vec3 = [x, y, z - length];
    return { terminal, held, length, foot: null, free, path: [held, free] };
  }
  const foot: Vec3 = [x, y, 0];
  const free = add(foot, scale(toward, length - z));
  return { terminal, held, length, foot, free, path: [held, foot, free] };
}

const kept = new WeakMap<Part, readonly Piece[]>();
const none: readonly Piece[] = [];

function split(part: Part): readonly Piece[] {
  const { at, end } = part;
  const fault = part.faults.find(({ kind }) => faultKind(kind).mechanical?.breaks !== undefined);
  const breaks = fault && faultKind(fault.kind).mechanical?.breaks;
  if (fault === undefined || breaks === undefined || end === null) return none;
  const flat: Vec3 = sub([end[0], end[1], 0], [at[0], at[1], 0]);
  const span = distance(flat, [0, 0, 0]);
  if (!(span > 0)) return none;
  const out = scale(flat, 1 / span);
  const where = fault.values[breaks] ?? faultKind(fault.kind).values[breaks]?.default ?? span / 2;
  const near = Math.min(span, Math.max(0, where));
  return [piece('a', at, out, near), piece('b', end, scale(out, -1), span - near)];
}

/** Both pieces of a conductor that has parted, from its `at` first; none of a whole one. */
export function piecesOf(part: Part): readonly Piece[] {
  if (part.faults.length === 0) return none;
  const found = kept.get(part) ?? split(part);
  kept.set(part, found);
  return found;
}

/** The piece that lies on the ground and belongs to the terminal, or null. */
export const lyingAt = (part: Part, terminal: string): Piece | null =>
  piecesOf(part).find((each) => each.terminal === terminal && each.foot !== null) ?? null;
