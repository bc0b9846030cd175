/**
 * Solutions with iterative refinement, judged by the componentwise backward error: the largest ratio, over all
 * equations, of what is left over to the sum of the magnitudes of the equation's own terms (Oettli & Prager 1964;
 * Arioli, Demmel & Duff 1989). A small equation, a body's microamperes, is so held as strictly as a large one.
 */
import { type Factors, substitute } from './complexLu.ts';
import { fitting } from './room.ts';
import type { ComplexVector, Scaling, SparseMatrix } from './sparseMatrix.ts';

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

export interface Refined extends Judged {
  readonly x: ComplexVector;
}

interface Vector {
  re: Float64Array<ArrayBuffer>;
  im: Float64Array<ArrayBuffer>;
}

const noVector = (): Vector => ({ re: new Float64Array(0), im: new Float64Array(0) });

/** A solution and what it leaves over. */
interface Trial {
  readonly x: Vector;
  readonly left: Vector;
}

// Room for one solution after another; nothing in it outlives a call.
let best: Trial = { x: noVector(), left: noVector() };
let next: Trial = { x: noVector(), left: noVector() };
/** What is to be solved for, rows scaled; and what solves for it. */
const wanted = noVector();
const found = noVector();
/** |re| + |im| of each unknown, and the sum of the magnitudes of each equation's terms. */
let magnitudes = new Float64Array(0);
let terms = new Float64Array(0);

function makeRoom(size: number): void {
  if (size <= terms.length) return;
  for (const each of [best.x, best.left, next.x, next.left, wanted, found]) {
    each.re = fitting(each.re, size);
    each.im = fitting(each.im, size);
  }
  magnitudes = fitting(magnitudes, size);
  terms = fitting(terms, size);
}

/** Writes to `found` what, columns scaled, solves for b. */
function solveFor({ scaling, factors }: Factored, b: ComplexVector): void {
  const { re, im } = b;
  const { re: toRe, im: toIm } = wanted;
  const { row } = scaling;
  for (let i = 0; i < factors.size; i++) {
    const factor = row[i] as number;
    toRe[i] = (re[i] as number) * factor;
    toIm[i] = (im[i] as number) * factor;
  }
  substitute(factors, wanted, found);
}

/** Solves for b anew. */
function begin(system: Factored, b: ComplexVector): void {
  const { column } = system.scaling;
  const { re: toRe, im: toIm } = best.x;
  const { re, im } = found;
  solveFor(system, b);
  for (let j = 0; j < system.factors.size; j++) {
    const factor = column[j] as number;
    toRe[j] = (re[j] as number) * factor;
    toIm[j] = (im[j] as number) * factor;
  }
}

/** Solves for what the best leaves over and adds it. */
function improve(system: Factored): void {
  const { column } = system.scaling;
  const { re: fromRe, im: fromIm } = best.x;
  const { re: toRe, im: toIm } = next.x;
  const { re, im } = found;
  solveFor(system, best.left);
  for (let j = 0; j < system.factors.size; j++) {
    const factor = column[j] as number;
    toRe[j] = (fromRe[j] as number) + (re[j] as number) * factor;
    toIm[j] = (fromIm[j] as number) + (im[j] as number) * factor;
  }
}

/** Writes what of b a solution leaves over; false when nothing is left. */
function subtract(matrix: SparseMatrix, { x, left }: Trial, b: ComplexVector): boolean {
  const { size, start, end, columns, re, im } = matrix;
  const { re: outRe, im: outIm } = left;
  const { re: inRe, im: inIm } = x;
  const { re: bRe, im: bIm } = b;
  let isLeft = false;
  for (let i = 0; i < size; i++) {
    let sRe = bRe[i] as number;
    let sIm = bIm[i] as number;
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const aRe = re[t] as number;
      const aIm = im[t] as number;
      const j = columns[t] as number;
      const xRe = inRe[j] as number;
      const xIm = inIm[j] as number;
      sRe -= aRe * xRe - aIm * xIm;
      sIm -= aRe * xIm + aIm * xRe;
    }
    outRe[i] = sRe;
    outIm[i] = sIm;
    // A NaN is something as well.
    if (sRe !== 0 || sIm !== 0) isLeft = true;
  }
  return isLeft;
}

/** Sums the magnitudes of each equation's terms; the largest of them, rows scaled. */
function sumTerms(matrix: SparseMatrix, { row, sizes }: Scaling, x: ComplexVector, b: ComplexVector): number {
  const { size, start, end, columns } = matrix;
  const { re, im } = x;
  const { re: bRe, im: bIm } = b;
  const each = magnitudes;
  const sums = terms;
  for (let j = 0; j < size; j++) each[j] = Math.abs(re[j] as number) + Math.abs(im[j] as number);
  let largest = 0;
  for (let i = 0; i < size; i++) {
    let all = Math.abs(bRe[i] as number) + Math.abs(bIm[i] as number);
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) all += (sizes[t] as number) * (each[columns[t] as number] as number);
    sums[i] = all;
    const even = all * (row[i] as number);
    if (even > largest) largest = even;
  }
  return largest;
}

function judge(matrix: SparseMatrix, scaling: Scaling, { x, left }: Trial, b: ComplexVector): Judged {
  const nothing = NOTHING * sumTerms(matrix, scaling, x, b);
  const { row } = scaling;
  const { re, im } = left;
  let residual = 0;
  let worstRow = 0;
  for (let i = 0; i < matrix.size; i++) {
    const over = Math.abs(re[i] as number) + Math.abs(im[i] as number);
    if (over === 0) continue;
    const all = terms[i] as number;
    const ratio = over / (all * (row[i] as number) > nothing ? all : nothing / (row[i] as number));
    // Written so that a NaN counts as the worst.
    if (!(ratio <= residual)) {
      residual = Number.isNaN(ratio) ? Number.POSITIVE_INFINITY : ratio;
      worstRow = i;
    }
  }
  return { residual, worstRow };
}

function acceptNext(): void {
  const last = best;
  best = next;
  next = last;
}

/** Refines what has been refined once, as long as it gets better. */
function refineOn(system: Factored, b: ComplexVector, once: Judged): Judged {
  const { matrix, scaling } = system;
  const before = judge(matrix, scaling, best, b);
  if (!(once.residual <= Math.max(before.residual, GOOD))) return before;
  acceptNext();
  let judged = once;
  for (let step = 1; step < STEPS && judged.residual > GOOD; step++) {
    improve(system);
    subtract(matrix, next, b);
    const better = judge(matrix, scaling, next, b);
    if (!(better.residual <= judged.residual)) break;
    acceptNext();
    judged = better;
  }
  return judged;
}

/**
 * Solves matrix x = b with the factors of the scaled matrix; refines at least once, until rounding is all that is left.
 * The solution lasts until the next one.
 */
export function solveRefined(system: Factored, b: ComplexVector): Refined {
  const { matrix, scaling } = system;
  makeRoom(matrix.size);
  begin(system, b);
  if (!subtract(matrix, best, b)) return { x: best.x, residual: 0, worstRow: 0 };
  improve(system);
  subtract(matrix, next, b);
  let judged = judge(matrix, scaling, next, b);
  if (judged.residual <= GOOD) acceptNext();
  else judged = refineOn(system, b, judged);
  return { x: best.x, residual: judged.residual, worstRow: judged.worstRow };
}
