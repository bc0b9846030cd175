/**
 * Sweeps over factors and matrix for one complex vector, real before imaginary parts; sweepThree.ts does the same for
 * three side by side, to the same bits. Sums are kept in variables, not in arrays: these loops are most of a solution.
 */
import type { Factors } from './plan.ts';
import type { SparseMatrix } from './sparseMatrix.ts';

/** Solves for `b`, which is used up; writes to `x`. */
export function substituteOne(factors: Factors, b: Float64Array, x: Float64Array): void {
  const { size, pivotRow, pivotColumn, inverseRe, inverseIm, lower, upper } = factors;
  const { start: lowerStart, index: lowerIndex, re: lowerRe, im: lowerIm } = lower;
  for (let k = 0; k < size; k++) {
    const p = 2 * (pivotRow[k] as number);
    const bRe = b[p] as number;
    const bIm = b[p + 1] as number;
    if (bRe === 0 && bIm === 0) continue;
    const end = lowerStart[k + 1] as number;
    for (let t = lowerStart[k] as number; t < end; t++) {
      const mRe = lowerRe[t] as number;
      const mIm = lowerIm[t] as number;
      const i = 2 * (lowerIndex[t] as number);
      b[i] = (b[i] as number) - (mRe * bRe - mIm * bIm);
      b[i + 1] = (b[i + 1] as number) - (mRe * bIm + mIm * bRe);
    }
  }
  const { start: upperStart, index: upperIndex, re: upperRe, im: upperIm } = upper;
  for (let k = size - 1; k >= 0; k--) {
    const p = 2 * (pivotRow[k] as number);
    let sRe = b[p] as number;
    let sIm = b[p + 1] as number;
    const end = upperStart[k + 1] as number;
    for (let t = upperStart[k] as number; t < end; t++) {
      const uRe = upperRe[t] as number;
      const uIm = upperIm[t] as number;
      const j = 2 * (upperIndex[t] as number);
      const xRe = x[j] as number;
      const xIm = x[j + 1] as number;
      sRe -= uRe * xRe - uIm * xIm;
      sIm -= uRe * xIm + uIm * xRe;
    }
    const iRe = inverseRe[k] as number;
    const iIm = inverseIm[k] as number;
    const j = 2 * (pivotColumn[k] as number);
    x[j] = sRe * iRe - sIm * iIm;
    x[j + 1] = sRe * iIm + sIm * iRe;
  }
}

/** Writes to `left` what of b the solution leaves over. */
export function subtractOne(matrix: SparseMatrix, x: Float64Array, b: Float64Array, left: Float64Array): void {
  const { size, start, end, columns, re, im } = matrix;
  for (let i = 0; i < size; i++) {
    let sRe = b[2 * i] as number;
    let sIm = b[2 * i + 1] as number;
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const aRe = re[t] as number;
      const aIm = im[t] as number;
      const j = 2 * (columns[t] as number);
      const xRe = x[j] as number;
      const xIm = x[j + 1] as number;
      sRe -= aRe * xRe - aIm * xIm;
      sIm -= aRe * xIm + aIm * xRe;
    }
    left[2 * i] = sRe;
    left[2 * i + 1] = sIm;
  }
}

/** The same, and writes to `terms` the sum of the magnitudes (|re| + |im|) of each equation's terms. */
export function weighOne(
  matrix: SparseMatrix,
  sizes: Float64Array,
  x: Float64Array,
  b: Float64Array,
  left: Float64Array,
  terms: Float64Array,
): void {
  const { size, start, end, columns, re, im } = matrix;
  for (let i = 0; i < size; i++) {
    let sRe = b[2 * i] as number;
    let sIm = b[2 * i + 1] as number;
    let sum = Math.abs(sRe) + Math.abs(sIm);
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const aRe = re[t] as number;
      const aIm = im[t] as number;
      const j = 2 * (columns[t] as number);
      const xRe = x[j] as number;
      const xIm = x[j + 1] as number;
      sRe -= aRe * xRe - aIm * xIm;
      sIm -= aRe * xIm + aIm * xRe;
      sum += (sizes[t] as number) * (Math.abs(xRe) + Math.abs(xIm));
    }
    left[2 * i] = sRe;
    left[2 * i + 1] = sIm;
    terms[i] = sum;
  }
}
