/**
 * The course of a tracking burn on a round body, between the two places that the leak joins: where the metal that feeds it
 * meets the wood, and where it ends. Grown by the dielectric breakdown model (standards/breakdownGrowth.ts) on the unrolled
 * surface, seeded by scenario and fault, so that the same fault always looks the same. Eta 2, between a bush and a line
 * (chosen by eye). Each place of the grid is moved a little within its cell, or steps would show. Left out: checks in the
 * wood that lead it, rain that washes one side; it never goes round the back of the body.
 */
import { atan2 } from '../math/elementary.ts';
import { nextUniform, seedFrom } from '../math/random.ts';
import { type Cell, growBreakdown } from '../standards/breakdownGrowth.ts';
import type { Metres, Radians } from '../units/quantities.ts';
import { pointAt } from '../world/edit.ts';
import type { LaidFault, Part, World } from '../world/types.ts';

/** A place on the surface: direction seen from above, and height over the part's foot. */
export type Spot = readonly [azimuth: Radians, height: Metres];
/** From a place that was there before to one that grew from it. */
export type TrackStep = readonly [from: Spot, to: Spot];

const CELL: Metres = 0.025;
const ETA = 2;
/** Columns on each side of the straight way at most, and how far round the body they reach at most. */
const BESIDE = 7;
const ROUND: Radians = 1;
/** Rows above and below. */
const BEYOND = 2;

/** Where the leak of a fault ends on its body, as the World names it; null where it names no place. */
export function trackEnd(world: World, part: Part, fault: LaidFault): Spot | null {
  const place = fault.to === null ? null : pointAt(world, fault.to);
  if (place === null) return null;
  return [atan2(place[1] - part.at[1], place[0] - part.at[0]), place[2] - part.at[2]];
}

/** Branching course from one place to another over a surface of a radius; parents come before what grows from them. */
export function trackCourse(from: Spot, to: Spot, radius: Metres, seed: string): readonly TrackStep[] {
  const aside = (to[0] - from[0]) * radius;
  const down = from[1] - to[1];
  const columns = Math.round(Math.abs(aside) / CELL);
  const rows = Math.round(Math.abs(down) / CELL);
  if (columns + rows === 0) return [[from, to]];
  const beside = Math.max(1, Math.min(BESIDE, Math.floor((ROUND * radius) / CELL)));
  const width = columns + 1 + 2 * beside;
  const height = rows + 1 + 2 * BEYOND;
  const start: Cell = [beside, BEYOND];
  const end: Cell = [beside + columns, BEYOND + rows];
  const target = (column: number, row: number): boolean => column === end[0] && row === end[1];
  const grown = growBreakdown({ width, height, start, target, eta: ETA, seed });
  const stepAcross = columns === 0 ? CELL / radius : (to[0] - from[0]) / columns;
  const stepDown = rows === 0 ? CELL : down / rows;
  let random = seedFrom(`${seed} within its cell`);
  const draw = (): number => {
    const [value, next] = nextUniform(random);
    random = next;
    return value - 0.5;
  };
  const spots = grown.map(({ at: [column, row] }, i): Spot => {
    if (i === 0) return from;
    const [dx, dy] = [0.8 * draw(), 0.8 * draw()];
    return [from[0] + (column - start[0] + dx) * stepAcross, from[1] - (row - start[1] + dy) * stepDown];
  });
  const steps = grown.flatMap(({ from: parent }, i): readonly TrackStep[] => {
    const [a, b] = [spots[parent], spots[i]];
    return a === undefined || b === undefined ? [] : [[a, b]];
  });
  const last = spots.at(-1);
  return last === undefined ? steps : [...steps, [last, to]];
}
