/** Small steps that pictures share: azimuths, wires between points, seeds. */
import type { Part } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import type { Piece } from './types.ts';

/** The azimuth that hardware calls `side`: a part's outward is −y, turned by its azimuth. */
export const outwardOf = (part: Part): number => part.azimuth - Math.PI / 2;

export const shifted = (p: Point, dx: number, dy: number, dz: number): Point => [p[0] + dx, p[1] + dy, p[2] + dz];

/** A point `by` metres away at an azimuth, `up` higher. */
export const toward = (p: Point, azimuth: number, by: number, up = 0): Point =>
  shifted(p, by * Math.cos(azimuth), by * Math.sin(azimuth), up);

export const azimuthFrom = (a: Point, b: Point): number => Math.atan2(b[1] - a[1], b[0] - a[0]);

/** A repeatable small number for a part's grain and bends. */
export const seedOf = (id: string): number => {
  let n = 7;
  for (const c of id) n = (n * 31 + (c.codePointAt(0) ?? 0)) % 9973;
  return n;
};

/** A lead through points in world axes; points that are not there are left out, and so is a lead of fewer than two. */
export const leadThrough = (
  variant: string,
  radius: number,
  points: readonly (Point | null)[],
  state = 'whole',
): readonly Piece[] => {
  const there = points.filter((p): p is Point => p !== null);
  if (there.length < 2) return [];
  return [{ spec: { kind: 'lead', variant, state, size: { radius }, points: there }, at: [0, 0, 0], thin: radius }];
};

/** A conductor hanging between two points; `at`: share of the way at which its strands would be sprung. */
export const spanOf = (variant: string, radius: number, a: Point, b: Point, sag: number, at = 0.06): Piece => ({
  spec: { kind: 'lead', variant, size: { radius, sag, at }, points: [a, b] },
  at: [0, 0, 0],
  thin: radius,
  swings: true,
});
