/**
 * Solutions with iterative refinement, judged by the componentwise backward error: the largest ratio, over all
 * equations, of what is left over to the sum of the magnitudes of the equation's own terms (Oettli & Prager 1964;
 * Arioli, Demmel & Duff 1989). A small equation, a body's microamperes, is so held as strictly as a large one. All is
 * done on the scaled system, whose factors are powers of two: no digit hangs on them. Right-hand sides go through the
 * factors three at a time, or alone.
 */
import type { Lanes, SparseLanes } from './lanes.ts';
import type { Factors } from './plan.ts';
import { fitting } from './room.ts';
import type { Scaling, SparseMatrix } from './sparseMatrix.ts';
import { substituteOne, subtractOne, weighOne } from './sweepOne.ts';
import { substituteThree, subtractThree, weighThree } from './sweepThree.ts';

/** Refined once, a solution is nearly always within rounding, about 1e-16; one that is not within this is refined on. */
const GOOD = 1e-12;
const STEPS = 4;
/** An equation is judged as if its terms were at least this fraction of the largest in the network: below is rounding. */
const NOTHING = 1e-18;

/** A system of equations with its rows and columns scaled, and its factors. */
export interface Factored {
  readonly matrix: SparseMatrix;
  readonly scaling: Scaling;
  readonly factors: Factors;
}

/** The largest relative residual, and the equation where it is. */
export interface Judged {
  readonly residual: number;
  readonly worstRow: number;
}

export interface Refined {
  /** Laid out as the right-hand sides. */
  readonly x: Float64Array;
  /** Of each lane. */
  readonly judged: readonly Judged[];
}

interface Sweeps {
  readonly lanes: number;
  readonly substitute: typeof substituteOne;
  readonly subtract: typeof subtractOne;
  readonly weigh: typeof weighOne;
}

const one: Sweeps = { lanes: 1, substitute: substituteOne, subtract: subtractOne, weigh: weighOne };
const three: Sweeps = { lanes: 3, substitute: substituteThree, subtract: subtractThree, weigh: weighThree };

const none = new Float64Array(0);
// Room for one solution after another; nothing in it outlives a call.
let wanted = none;
let spent = none;
let x = none;
let left = none;
let change = none;
let terms = none;
let best = none;

function makeRoom(size: number): void {
  if (6 * size <= wanted.length) return;
  wanted = fitting(wanted, 6 * size);
  spent = fitting(spent, 6 * size);
  x = fitting(x, 6 * size);
  left = fitting(left, 6 * size);
  change = fitting(change, 6 * size);
  terms = fitting(terms, 3 * size);
  best = fitting(best, 2 * size);
}

/** Takes up lanes of b from the first on, rows scaled. */
function take({ row }: Scaling, { entries }: SparseLanes, first: number, width: number, size: number): void {
  wanted.fill(0, 0, 2 * size * width);
  spent.fill(0, 0, 2 * size * width);
  for (const entry of entries) {
    const lane = entry.lane - first;
    if (lane < 0 || lane >= width) continue;
    const factor = row[entry.row] as number;
    const at = 2 * (entry.row * width + lane);
    wanted[at] = (wanted[at] as number) + entry.re * factor;
    wanted[at + 1] = (wanted[at + 1] as number) + entry.im * factor;
    spent[at] = wanted[at] as number;
    spent[at + 1] = wanted[at + 1] as number;
  }
}

/** Writes as many lanes of solutions as there are, columns scaled back, to their places from `first` on. */
function give(
  from: Float64Array,
  width: number,
  { column }: Scaling,
  { lanes, values }: Lanes,
  first: number,
  size: number,
): void {
  const numbers = 2 * Math.min(width, lanes - first);
  const skipped = 2 * width - numbers;
  const between = 2 * lanes - numbers;
  let at = 0;
  let to = 2 * first;
  for (let j = 0; j < size; j++) {
    const factor = column[j] as number;
    for (const end = to + numbers; to < end; to++) values[to] = (from[at++] as number) * factor;
    at += skipped;
    to += between;
  }
}

/** Solves for what is left over and adds it. */
function improve({ factors }: Factored, { lanes, substitute }: Sweeps): void {
  const count = 2 * factors.size * lanes;
  const [sofar, more] = [x, change];
  substitute(factors, left, more);
  for (let g = 0; g < count; g++) sofar[g] = (sofar[g] as number) + (more[g] as number);
}

/** The largest ratio, of one lane of what was weighed, of what is left over to the terms, or to so much if that is more. */
function ratioAbove(nothing: number, size: number, lanes: number, lane: number): Judged {
  const [rest, sums] = [left, terms];
  let residual = 0;
  let worstRow = 0;
  for (let i = 0; i < size; i++) {
    const g = i * lanes + lane;
    const over = Math.abs(rest[2 * g] as number) + Math.abs(rest[2 * g + 1] as number);
    const most = Math.max(sums[g] as number, nothing);
    // Written so that a NaN counts as the worst.
    if (over <= residual * most) continue;
    const ratio = over / most;
    residual = Number.isNaN(ratio) ? Number.POSITIVE_INFINITY : ratio;
    worstRow = i;
  }
  return { residual, worstRow };
}

/** Judges one lane of what was weighed. */
function judge(size: number, lanes: number, lane: number): Judged {
  const strictly = ratioAbove(0, size, lanes, lane);
  if (strictly.residual <= GOOD) return strictly;
  let largest = 0;
  for (let g = lane; g < size * lanes; g += lanes) if ((terms[g] as number) > largest) largest = terms[g] as number;
  return ratioAbove(NOTHING * largest, size, lanes, lane);
}

/** Solves for what is wanted of one lane and refines as long as it gets better; the best solution is in `best`. */
function solveOn(system: Factored): Judged {
  const { matrix, scaling } = system;
  const { size } = matrix;
  const judged = (): Judged => {
    one.weigh(matrix, scaling.sizes, x, wanted, left, terms);
    return judge(size, 1, 0);
  };
  one.substitute(system.factors, spent, x);
  let found = judged();
  best.set(x.subarray(0, 2 * size));
  for (let step = 0; step < STEPS && found.residual > GOOD; step++) {
    improve(system, one);
    const better = judged();
    if (!(better.residual <= found.residual)) break;
    best.set(x.subarray(0, 2 * size));
    found = better;
  }
  return found;
}

/** Solves matrix x = b with the factors of the scaled matrix and refines until rounding is all that is left. */
export function solveRefined(system: Factored, b: SparseLanes): Refined {
  const { matrix, scaling } = system;
  const { size } = matrix;
  const { lanes } = b;
  makeRoom(size);
  const found = { lanes, values: new Float64Array(2 * size * lanes) };
  const judged: Judged[] = [];
  const onward: number[] = [];
  for (let first = 0; first < lanes; first += 3) {
    const sweeps = lanes - first === 1 ? one : three;
    const width = sweeps.lanes;
    take(scaling, b, first, width, size);
    sweeps.substitute(system.factors, spent, x);
    sweeps.subtract(matrix, x, wanted, left);
    improve(system, sweeps);
    sweeps.weigh(matrix, scaling.sizes, x, wanted, left, terms);
    for (let g = 0; g < width && first + g < lanes; g++) {
      const once = judge(size, width, g);
      judged.push(once);
      if (!(once.residual <= GOOD)) onward.push(first + g);
    }
    give(x, width, scaling, found, first, size);
  }
  for (const lane of onward) {
    take(scaling, b, lane, 1, size);
    judged[lane] = solveOn(system);
    give(best, 1, scaling, found, lane, size);
  }
  return { x: found.values, judged };
}
