/**
 * LU factorisation of a sparse complex matrix (elimination.ts, or by a plan, follow.ts): factor once, solve for many right-hand
 * sides.
 */
import { Elimination } from './elimination.ts';
import { follow, hasPattern } from './follow.ts';
import { type Plan, planOf } from './plan.ts';
import type { Room } from './room.ts';
import { type ComplexVector, type Scaling, type SparseMatrix, scaled, zeroVector } from './sparseMatrix.ts';
import type { Triangle } from './triangle.ts';

export interface Factors {
  readonly singular: false;
  readonly size: number;
  readonly pivotRow: Int32Array;
  readonly pivotColumn: Int32Array;
  readonly pivotRe: Float64Array;
  readonly pivotIm: Float64Array;
  readonly lower: Triangle;
  readonly upper: Triangle;
}

/** Fewer independent equations than unknowns: this column is free. */
export interface Singular {
  readonly singular: true;
  readonly column: number;
}

const state = new Elimination();

function eliminated(matrix: SparseMatrix): Factors | Singular {
  const { size } = matrix;
  state.begin(matrix);
  const pivotRow = new Int32Array(size);
  const pivotColumn = new Int32Array(size);
  const pivotRe = new Float64Array(size);
  const pivotIm = new Float64Array(size);
  for (let k = 0; k < size; k++) {
    if (!state.choosePivot()) return { singular: true, column: state.freeColumn };
    const { pivotAt } = state;
    pivotRow[k] = state.pivotRow;
    pivotColumn[k] = state.columns[pivotAt] as number;
    pivotRe[k] = state.re[pivotAt] as number;
    pivotIm[k] = state.im[pivotAt] as number;
    state.eliminate();
  }
  const [lower, upper] = [state.lower.build(), state.upper.build()];
  return { singular: false, size, pivotRow, pivotColumn, pivotRe, pivotIm, lower, upper };
}

const PLANS = 4;
/** Plans by the array that tells where rows begin, which matrices of one structure share; the last that fitted first. */
const plans = new WeakMap<Int32Array, Plan[]>();

/**
 * Factors of a square matrix whose rows and columns, scaled if asked, are of comparable size. They may be in the room, and
 * then last until the next matrix.
 */
export function factor(matrix: SparseMatrix, scaling: Scaling | null = null, room?: Room): Factors | Singular {
  const { size } = matrix;
  const known = plans.get(matrix.start);
  // A structure met for the first time may be the last of its kind: it is planned when it comes again.
  if (known === undefined) plans.set(matrix.start, []);
  for (let at = 0; known !== undefined && at < known.length; at++) {
    const plan = known[at] as Plan;
    const followed = hasPattern(plan, matrix) ? follow(plan, matrix, scaling, room) : null;
    if (followed === null) continue;
    if (at > 0) known.unshift(...known.splice(at, 1));
    const { pivotRe, pivotIm, lower, upper } = followed;
    const { row: pivotRow, column: pivotColumn } = plan.pivots;
    return { singular: false, size, pivotRow, pivotColumn, pivotRe, pivotIm, lower, upper };
  }
  const factors = eliminated(scaling === null ? matrix : scaled(matrix, scaling));
  if (known === undefined || factors.singular) return factors;
  known.unshift(planOf(matrix, { row: factors.pivotRow, column: factors.pivotColumn }));
  known.length = Math.min(known.length, PLANS);
  return factors;
}

/** Solves for the right-hand side in `b`, which is used up; the solution is written to `x`. */
export function substitute(factors: Factors, b: ComplexVector, x: ComplexVector): void {
  const { size, pivotRow, pivotColumn, pivotRe, pivotIm, lower, upper } = factors;
  const { re, im } = b;
  const { start: lowerStart, index: lowerIndex, re: lowerRe, im: lowerIm } = lower;
  const { start: upperStart, index: upperIndex, re: upperRe, im: upperIm } = upper;
  for (let k = 0; k < size; k++) {
    const p = pivotRow[k] as number;
    const bRe = re[p] as number;
    const bIm = im[p] as number;
    if (bRe === 0 && bIm === 0) continue;
    const end = lowerStart[k + 1] as number;
    for (let t = lowerStart[k] as number; t < end; t++) {
      const i = lowerIndex[t] as number;
      const mRe = lowerRe[t] as number;
      const mIm = lowerIm[t] as number;
      re[i] = (re[i] as number) - (mRe * bRe - mIm * bIm);
      im[i] = (im[i] as number) - (mRe * bIm + mIm * bRe);
    }
  }
  const { re: outRe, im: outIm } = x;
  for (let k = size - 1; k >= 0; k--) {
    const p = pivotRow[k] as number;
    let sRe = re[p] as number;
    let sIm = im[p] as number;
    const end = upperStart[k + 1] as number;
    for (let t = upperStart[k] as number; t < end; t++) {
      const j = upperIndex[t] as number;
      const uRe = upperRe[t] as number;
      const uIm = upperIm[t] as number;
      const xRe = outRe[j] as number;
      const xIm = outIm[j] as number;
      sRe -= uRe * xRe - uIm * xIm;
      sIm -= uRe * xIm + uIm * xRe;
    }
    const dRe = pivotRe[k] as number;
    const dIm = pivotIm[k] as number;
    const square = dRe * dRe + dIm * dIm;
    const j = pivotColumn[k] as number;
    outRe[j] = (sRe * dRe + sIm * dIm) / square;
    outIm[j] = (sIm * dRe - sRe * dIm) / square;
  }
}

/** Solution for one right-hand side, which stays untouched. */
export function backSubstitute(factors: Factors, b: ComplexVector): ComplexVector {
  const x = zeroVector(factors.size);
  substitute(factors, { re: b.re.slice(), im: b.im.slice() }, x);
  return x;
}
