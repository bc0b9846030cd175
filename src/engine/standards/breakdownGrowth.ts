/**
 * Growth of a breakdown pattern on a square grid: the Laplace equation with the pattern at 0 and the far electrode at 1; a
 * neighbour of the pattern joins it with a probability in proportion to its potential to the power eta (Niemeyer,
 * Pietronero and Wiesmann, Phys. Rev. Lett. 52, 1033, 1984). Seeded. The potential is relaxed (successive
 * over-relaxation, warm start, a fixed number of sweeps a step), so that it lags a little; walls carry no field. Its fractal
 * dimension is the slope of mass against radius: about 1.7 for eta 1 (published). Left out: heat,
 * drying, the material's own grain; a picture of a track, not a forecast of one.
 */
import { ln, pow } from '../math/elementary.ts';
import { nextUniform, type RandomState, seedFrom } from '../math/random.ts';

/** A place on the grid: column, row. */
export type Cell = readonly [number, number];

/** One place of the pattern and the place that it grew from; -1 for the first. */
export interface GrownCell {
  readonly at: Cell;
  readonly from: number;
}

/** Grid, electrodes and law of growth. */
export interface GrowthField {
  readonly width: number;
  readonly height: number;
  readonly start: Cell;
  /** Held at 1; growth ends when the pattern touches one of them. */
  readonly target: (column: number, row: number) => boolean;
  /** Exponent of the field; 1 gives the widest branching that is usual, larger ones straighten it. */
  readonly eta: number;
  readonly seed: string | number;
}

const sweeps = 6;
const overRelaxation = 1.8;

const neighbours = (cell: number, width: number, height: number): number[] => {
  const column = cell % width;
  const found: number[] = [];
  if (column > 0) found.push(cell - 1);
  if (column < width - 1) found.push(cell + 1);
  if (cell >= width) found.push(cell - width);
  if (cell < width * (height - 1)) found.push(cell + width);
  return found;
};

class Growth {
  readonly grown: GrownCell[] = [];
  private readonly potential: Float64Array;
  private readonly held: Uint8Array;
  private readonly target: Uint8Array;
  /** Neighbours of the pattern, in the order in which they became it, and the pattern cell that they would grow from. */
  private readonly border = new Map<number, number>();
  private random: RandomState;
  private readonly field: GrowthField;

  constructor(field: GrowthField) {
    const { width, height, start, target, seed } = field;
    this.field = field;
    this.random = seedFrom(seed);
    this.held = new Uint8Array(width * height);
    this.target = new Uint8Array(width * height);
    this.potential = new Float64Array(width * height).fill(0.5);
    for (let cell = 0; cell < width * height; cell++) {
      if (!target(cell % width, Math.floor(cell / width))) continue;
      this.held[cell] = 1;
      this.target[cell] = 1;
      this.potential[cell] = 1;
    }
    this.join(start[1] * width + start[0], -1);
  }

  /** Adds a cell; whether the pattern then touches the target. */
  join(cell: number, from: number): boolean {
    const { width, height } = this.field;
    const index = this.grown.length;
    this.grown.push({ at: [cell % width, Math.floor(cell / width)], from });
    this.held[cell] = 1;
    this.potential[cell] = 0;
    this.border.delete(cell);
    let touches = this.target[cell] === 1;
    for (const next of neighbours(cell, width, height)) {
      if (this.target[next] === 1) touches = true;
      else if (this.held[next] === 0 && !this.border.has(next)) this.border.set(next, index);
    }
    return touches;
  }

  relax(times: number): void {
    const { width, height } = this.field;
    const { potential, held } = this;
    const at = (cell: number): number => potential[cell] as number;
    for (let sweep = 0; sweep < times; sweep++) {
      for (let row = 0; row < height; row++) {
        for (let column = 0; column < width; column++) {
          const cell = row * width + column;
          if (held[cell] === 1) continue;
          // A wall mirrors the field: what is missing outside equals the cell itself.
          const here = at(cell);
          const sum =
            (column > 0 ? at(cell - 1) : here) +
            (column < width - 1 ? at(cell + 1) : here) +
            (row > 0 ? at(cell - width) : here) +
            (row < height - 1 ? at(cell + width) : here);
          potential[cell] = here + overRelaxation * (sum / 4 - here);
        }
      }
    }
  }

  /** Picks the next cell and adds it; whether the target is touched, or nothing is left to grow into. */
  step(): boolean {
    const { eta } = this.field;
    const candidates = [...this.border.entries()];
    const weights = candidates.map(([cell]) => {
      const potential = Math.max(0, this.potential[cell] as number);
      return eta === 1 ? potential : pow(potential, eta);
    });
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const [uniform, after] = nextUniform(this.random);
    this.random = after;
    let left = uniform * total;
    const chosen = weights.findIndex((weight) => {
      left -= weight;
      return left < 0;
    });
    const next = candidates[chosen < 0 ? candidates.length - 1 : chosen];
    return next === undefined || this.join(next[0], next[1]);
  }
}

/** Pattern from its start until it touches the target; the same for the same field and seed. */
export const growBreakdown = (field: GrowthField): readonly GrownCell[] => {
  const growth = new Growth(field);
  growth.relax(200);
  while (!growth.step()) growth.relax(sweeps);
  return growth.grown;
};

/** Pattern from the middle of a disc of `radius` cells to its rim. */
export const growInDisc = (radius: number, eta: number, seed: string | number): readonly GrownCell[] => {
  const size = 2 * radius + 1;
  const isRim = (column: number, row: number): boolean =>
    (column - radius) * (column - radius) + (row - radius) * (row - radius) >= radius * radius;
  return growBreakdown({ width: size, height: size, start: [radius, radius], target: isRim, eta, seed });
};

/** Cells from the target back to the start: the path that carries the current. */
export const trunkOf = (grown: readonly GrownCell[]): readonly Cell[] => {
  const path: Cell[] = [];
  for (let index = grown.length - 1; index >= 0; ) {
    const cell = grown[index];
    if (cell === undefined) break;
    path.push(cell.at);
    index = cell.from;
  }
  return path;
};

/** Slope of ln(cells within r) against ln r by least squares over whole radii from `inner` to `outer`. */
export const massDimension = (patterns: readonly (readonly GrownCell[])[], inner: number, outer: number): number => {
  const points: (readonly [number, number])[] = [];
  for (let radius = inner; radius <= outer; radius++) {
    let within = 0;
    for (const grown of patterns) {
      const start = grown[0]?.at ?? [0, 0];
      for (const { at } of grown) {
        const [x, y] = [at[0] - start[0], at[1] - start[1]];
        if (x * x + y * y <= radius * radius) within++;
      }
    }
    points.push([ln(radius), ln(within / patterns.length)]);
  }
  const meanX = points.reduce((sum, [x]) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, [, y]) => sum + y, 0) / points.length;
  const above = points.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  return above / points.reduce((sum, [x]) => sum + (x - meanX) * (x - meanX), 0);
};
