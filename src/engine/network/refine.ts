/**
 * Solutions with iterative refinement, judged by the componentwise backward error: the largest ratio, over all
 * equations, of what is left over to the sum of the magnitudes of the equation's own terms (Oettli & Prager 1964;
 * Arioli, Demmel & Duff 1989). A small equation, a body's microamperes, is so held as strictly as a large one.
 * Right-hand sides go through the factors together, each in a lane of its own (lanes.ts).
 */
import { type Factors, substitute } from './complexLu.ts';
import { copyLane, type Lanes } from './lanes.ts';
import { fitting } from './room.ts';
import type { Scaling, SparseMatrix } from './sparseMatrix.ts';

/** Refinement stops here; rounding alone leaves about 1e-15. */
const GOOD = 1e-14;
const STEPS = 4;
/** An equation is judged as if its terms were at least this fraction of the largest in the network: below is rounding. */
const NOTHING = 1e-18;

/** A system of equations, factored with its rows and columns scaled. */
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

const EXACT: Judged = { residual: 0, worstRow: 0 };

type Values = Float64Array<ArrayBuffer>;

/** Solutions and what they leave over. */
interface Trial {
  x: Values;
  left: Values;
}

const none = new Float64Array(0);
// Room for one solution after another; nothing in it outlives a call.
let best: Trial = { x: none, left: none };
let next: Trial = { x: none, left: none };
/** What is to be solved for, rows scaled; and what solves for it. */
let wanted = none;
let found = none;
/** |re| + |im| of each unknown, and the sum of the magnitudes of each equation's terms. */
let magnitudes = none;
let terms = none;

function makeRoom(room: number): void {
  if (2 * room <= wanted.length) return;
  for (const each of [best, next]) {
    each.x = fitting(each.x, 2 * room);
    each.left = fitting(each.left, 2 * room);
  }
  wanted = fitting(wanted, 2 * room);
  found = fitting(found, 2 * room);
  magnitudes = fitting(magnitudes, room);
  terms = fitting(terms, room);
}

/** Writes to `found` what, columns scaled, solves for b. */
function solveFor({ scaling, factors }: Factored, b: Float64Array, lanes: number): void {
  const width = 2 * lanes;
  const { row } = scaling;
  const to = wanted;
  for (let i = 0; i < factors.size; i++) {
    const factor = row[i] as number;
    const at = i * width;
    for (let g = at; g < at + width; g += 2) {
      to[g] = (b[g] as number) * factor;
      to[g + 1] = (b[g + 1] as number) * factor;
    }
  }
  substitute(factors, to, found, lanes);
}

/** Solves for b anew. */
function begin(system: Factored, { lanes, values }: Lanes): void {
  const width = 2 * lanes;
  const { column } = system.scaling;
  solveFor(system, values, lanes);
  const from = found;
  const { x: to } = best;
  for (let j = 0; j < system.factors.size; j++) {
    const factor = column[j] as number;
    const at = j * width;
    for (let g = at; g < at + width; g += 2) {
      to[g] = (from[g] as number) * factor;
      to[g + 1] = (from[g + 1] as number) * factor;
    }
  }
}

/** Solves for what the best leaves over and adds it. */
function improve(system: Factored, lanes: number): void {
  const width = 2 * lanes;
  const { column } = system.scaling;
  solveFor(system, best.left, lanes);
  const change = found;
  const { x: from } = best;
  const { x: to } = next;
  for (let j = 0; j < system.factors.size; j++) {
    const factor = column[j] as number;
    const at = j * width;
    for (let g = at; g < at + width; g += 2) {
      to[g] = (from[g] as number) + (change[g] as number) * factor;
      to[g + 1] = (from[g + 1] as number) + (change[g + 1] as number) * factor;
    }
  }
}

/** Writes what of b the solutions leave over. */
function subtract(matrix: SparseMatrix, { x, left }: Trial, { lanes, values }: Lanes): void {
  const width = 2 * lanes;
  const { size, start, end, columns, re, im } = matrix;
  for (let i = 0; i < size; i++) {
    const row = i * width;
    for (let g = row; g < row + width; g += 2) {
      left[g] = values[g] as number;
      left[g + 1] = values[g + 1] as number;
    }
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const aRe = re[t] as number;
      const aIm = im[t] as number;
      let from = (columns[t] as number) * width;
      for (let g = row; g < row + width; g += 2) {
        const xRe = x[from] as number;
        const xIm = x[from + 1] as number;
        left[g] = (left[g] as number) - (aRe * xRe - aIm * xIm);
        left[g + 1] = (left[g + 1] as number) - (aRe * xIm + aIm * xRe);
        from += 2;
      }
    }
  }
}

/** Whether a lane's solution leaves nothing over. */
function isExact({ left }: Trial, size: number, lanes: number, lane: number): boolean {
  const width = 2 * lanes;
  // Written so that a NaN is something as well.
  for (let g = 2 * lane; g < size * width; g += width) if (left[g] !== 0 || left[g + 1] !== 0) return false;
  return true;
}

/** Sums the magnitudes of each equation's terms, for lanes from the first up to, not including, the last. */
function sumTerms(
  { matrix, scaling }: Factored,
  { x }: Trial,
  { lanes, values: b }: Lanes,
  first: number,
  last: number,
): void {
  const { size, start, end, columns } = matrix;
  const { sizes } = scaling;
  const each = magnitudes;
  const sums = terms;
  for (let j = 0; j < size * lanes; j++) {
    each[j] = Math.abs(x[2 * j] as number) + Math.abs(x[2 * j + 1] as number);
    sums[j] = Math.abs(b[2 * j] as number) + Math.abs(b[2 * j + 1] as number);
  }
  for (let i = 0; i < size; i++) {
    const row = i * lanes;
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const entry = sizes[t] as number;
      let from = (columns[t] as number) * lanes + first;
      for (let g = row + first; g < row + last; g++) sums[g] = (sums[g] as number) + entry * (each[from++] as number);
    }
  }
}

/** Judges one lane by the terms that were summed. */
function judgeLane({ row }: Scaling, { left }: Trial, size: number, lanes: number, lane: number): Judged {
  let largest = 0;
  for (let i = 0; i < size; i++) {
    const even = (terms[i * lanes + lane] as number) * (row[i] as number);
    if (even > largest) largest = even;
  }
  const nothing = NOTHING * largest;
  let residual = 0;
  let worstRow = 0;
  for (let i = 0; i < size; i++) {
    const g = i * lanes + lane;
    const over = Math.abs(left[2 * g] as number) + Math.abs(left[2 * g + 1] as number);
    if (over === 0) continue;
    const all = terms[g] as number;
    const ratio = over / (all * (row[i] as number) > nothing ? all : nothing / (row[i] as number));
    // Written so that a NaN counts as the worst.
    if (!(ratio <= residual)) {
      residual = Number.isNaN(ratio) ? Number.POSITIVE_INFINITY : ratio;
      worstRow = i;
    }
  }
  return { residual, worstRow };
}

function judge(system: Factored, trial: Trial, b: Lanes, lane: number): Judged {
  sumTerms(system, trial, b, lane, lane + 1);
  return judgeLane(system.scaling, trial, system.matrix.size, b.lanes, lane);
}

function acceptNext(): void {
  const last = best;
  best = next;
  next = last;
}

/** A right-hand side alone, its solution refined once and what that leaves over. */
interface Alone extends Trial {
  readonly b: Lanes;
}

function aloneOf(from: Lanes, lane: number, size: number): Lanes & { readonly values: Values } {
  const alone = { lanes: 1, values: new Float64Array(2 * size) };
  copyLane(from, lane, alone, 0, size);
  return alone;
}

/** Goes on refining as long as it gets better; the solution is the best. */
function refineOn(system: Factored, { b, x, left }: Alone, once: Judged): Judged {
  best.x.set(x);
  best.left.set(left);
  let judged = once;
  for (let step = 1; step < STEPS && judged.residual > GOOD; step++) {
    improve(system, 1);
    subtract(system.matrix, next, b);
    const better = judge(system, next, b, 0);
    if (!(better.residual <= judged.residual)) break;
    acceptNext();
    judged = better;
  }
  return judged;
}

/** Refines those lanes on that once was not enough for. */
function withRefined(system: Factored, b: Lanes, judged: Judged[], onward: readonly number[]): Refined {
  const { lanes } = b;
  const { size } = system.matrix;
  const all = { lanes, values: next.x.slice(0, 2 * size * lanes) };
  const started = onward.map(
    (lane): Alone => ({
      b: aloneOf(b, lane, size),
      x: aloneOf(all, lane, size).values,
      left: aloneOf({ lanes, values: next.left }, lane, size).values,
    }),
  );
  for (const [at, lane] of onward.entries()) {
    judged[lane] = refineOn(system, started[at] as Alone, judged[lane] as Judged);
    copyLane({ lanes: 1, values: best.x }, 0, all, lane, size);
  }
  return { x: all.values, judged };
}

/**
 * Solves matrix x = b with the factors of the scaled matrix; refines at least once, until rounding is all that is left.
 * The solutions last until the next ones.
 */
export function solveRefined(system: Factored, b: Lanes): Refined {
  const { matrix, scaling } = system;
  const { size } = matrix;
  const { lanes } = b;
  makeRoom(size * lanes);
  begin(system, b);
  subtract(matrix, best, b);
  improve(system, lanes);
  subtract(matrix, next, b);
  sumTerms(system, next, b, 0, lanes);
  const judged: Judged[] = [];
  for (let lane = 0; lane < lanes; lane++) judged.push(judgeLane(scaling, next, size, lanes, lane));
  const onward: number[] = [];
  for (let lane = 0; lane < lanes; lane++) {
    const once = judged[lane] as Judged;
    const isDone = isExact(best, size, lanes, lane);
    if (!isDone && once.residual <= GOOD) continue;
    const before = isDone ? EXACT : judge(system, best, b, lane);
    if (!isDone && once.residual <= Math.max(before.residual, GOOD)) {
      onward.push(lane);
      continue;
    }
    judged[lane] = before;
    copyLane({ lanes, values: best.x }, lane, { lanes, values: next.x }, lane, size);
  }
  return onward.length > 0 ? withRefined(system, b, judged, onward) : { x: next.x, judged };
}
