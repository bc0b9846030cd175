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

/** Whether some lane of a row has something. */
function hasAny(values: Float64Array, from: number, to: number): boolean {
  for (let g = from; g < to; g++) if (values[g] !== 0) return true;
  return false;
}

/** Clears the lower triangle: what follows is solved by the upper one. */
function forward({ size, pivotRow, lower }: Factors, b: Float64Array, width: number): void {
  const { start, index, re, im } = lower;
  for (let k = 0; k < size; k++) {
    const p = (pivotRow[k] as number) * width;
    if (!hasAny(b, p, p + width)) continue;
    const end = start[k + 1] as number;
    for (let t = start[k] as number; t < end; t++) {
      const mRe = re[t] as number;
      const mIm = im[t] as number;
      let i = (index[t] as number) * width;
      for (let g = p; g < p + width; g += 2) {
        const bRe = b[g] as number;
        const bIm = b[g + 1] as number;
        b[i] = (b[i] as number) - (mRe * bRe - mIm * bIm);
        b[i + 1] = (b[i + 1] as number) - (mRe * bIm + mIm * bRe);
        i += 2;
      }
    }
  }
}

/** Solves by the upper triangle. */
function backward(factors: Factors, b: Float64Array, x: Float64Array, width: number): void {
  const { size, pivotRow, pivotColumn, pivotRe, pivotIm, upper } = factors;
  const { start, index, re, im } = upper;
  for (let k = size - 1; k >= 0; k--) {
    const p = (pivotRow[k] as number) * width;
    const end = start[k + 1] as number;
    for (let t = start[k] as number; t < end; t++) {
      const uRe = re[t] as number;
      const uIm = im[t] as number;
      let j = (index[t] as number) * width;
      for (let g = p; g < p + width; g += 2) {
        const xRe = x[j] as number;
        const xIm = x[j + 1] as number;
        b[g] = (b[g] as number) - (uRe * xRe - uIm * xIm);
        b[g + 1] = (b[g + 1] as number) - (uRe * xIm + uIm * xRe);
        j += 2;
      }
    }
    const dRe = pivotRe[k] as number;
    const dIm = pivotIm[k] as number;
    const square = dRe * dRe + dIm * dIm;
    let j = (pivotColumn[k] as number) * width;
    for (let g = p; g < p + width; g += 2) {
      const sRe = b[g] as number;
      const sIm = b[g + 1] as number;
      x[j] = (sRe * dRe + sIm * dIm) / square;
      x[j + 1] = (sIm * dRe - sRe * dIm) / square;
      j += 2;
    }
  }
}

/** Solves for the right-hand sides in the lanes of `b`, which is used up; the solutions are written to `x` likewise. */
export function substitute(factors: Factors, b: Float64Array, x: Float64Array, lanes: number): void {
  forward(factors, b, 2 * lanes);
  backward(factors, b, x, 2 * lanes);
}

/** Solution for one right-hand side, which stays untouched. */
export function backSubstitute(factors: Factors, b: ComplexVector): ComplexVector {
  const { size } = factors;
  const [from, to] = [new Float64Array(2 * size), new Float64Array(2 * size)];
  for (let i = 0; i < size; i++) {
    from[2 * i] = b.re[i] as number;
    from[2 * i + 1] = b.im[i] as number;
  }
  substitute(factors, from, to, 1);
  const x = zeroVector(size);
  for (let i = 0; i < size; i++) {
    x.re[i] = to[2 * i] as number;
    x.im[i] = to[2 * i + 1] as number;
  }
  return x;
}
