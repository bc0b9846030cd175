/** The sweeps of sweepOne.ts for three complex vectors side by side: number i of vector g is at 6 i + 2 g. */
import type { Factors } from './plan.ts';
import type { SparseMatrix } from './sparseMatrix.ts';

/** Solves for the three in `b`, which are used up; writes to `x`. */
export function substituteThree(factors: Factors, b: Float64Array, x: Float64Array): void {
  const { size, pivotRow, pivotColumn, inverseRe, inverseIm, lower, upper } = factors;
  const { start: lowerStart, index: lowerIndex, re: lowerRe, im: lowerIm } = lower;
  for (let k = 0; k < size; k++) {
    const p = 6 * (pivotRow[k] as number);
    const b0 = b[p] as number;
    const b1 = b[p + 1] as number;
    const b2 = b[p + 2] as number;
    const b3 = b[p + 3] as number;
    const b4 = b[p + 4] as number;
    const b5 = b[p + 5] as number;
    if (b0 === 0 && b1 === 0 && b2 === 0 && b3 === 0 && b4 === 0 && b5 === 0) continue;
    const end = lowerStart[k + 1] as number;
    for (let t = lowerStart[k] as number; t < end; t++) {
      const mRe = lowerRe[t] as number;
      const mIm = lowerIm[t] as number;
      const i = 6 * (lowerIndex[t] as number);
      b[i] = (b[i] as number) - (mRe * b0 - mIm * b1);
      b[i + 1] = (b[i + 1] as number) - (mRe * b1 + mIm * b0);
      b[i + 2] = (b[i + 2] as number) - (mRe * b2 - mIm * b3);
      b[i + 3] = (b[i + 3] as number) - (mRe * b3 + mIm * b2);
      b[i + 4] = (b[i + 4] as number) - (mRe * b4 - mIm * b5);
      b[i + 5] = (b[i + 5] as number) - (mRe * b5 + mIm * b4);
    }
  }
  const { start: upperStart, index: upperIndex, re: upperRe, im: upperIm } = upper;
  for (let k = size - 1; k >= 0; k--) {
    const p = 6 * (pivotRow[k] as number);
    let s0 = b[p] as number;
    let s1 = b[p + 1] as number;
    let s2 = b[p + 2] as number;
    let s3 = b[p + 3] as number;
    let s4 = b[p + 4] as number;
    let s5 = b[p + 5] as number;
    const end = upperStart[k + 1] as number;
    for (let t = upperStart[k] as number; t < end; t++) {
      const uRe = upperRe[t] as number;
      const uIm = upperIm[t] as number;
      const j = 6 * (upperIndex[t] as number);
      const x0 = x[j] as number;
      const x1 = x[j + 1] as number;
      const x2 = x[j + 2] as number;
      const x3 = x[j + 3] as number;
      const x4 = x[j + 4] as number;
      const x5 = x[j + 5] as number;
      s0 -= uRe * x0 - uIm * x1;
      s1 -= uRe * x1 + uIm * x0;
      s2 -= uRe * x2 - uIm * x3;
      s3 -= uRe * x3 + uIm * x2;
      s4 -= uRe * x4 - uIm * x5;
      s5 -= uRe * x5 + uIm * x4;
    }
    const iRe = inverseRe[k] as number;
    const iIm = inverseIm[k] as number;
    const j = 6 * (pivotColumn[k] as number);
    x[j] = s0 * iRe - s1 * iIm;
    x[j + 1] = s0 * iIm + s1 * iRe;
    x[j + 2] = s2 * iRe - s3 * iIm;
    x[j + 3] = s2 * iIm + s3 * iRe;
    x[j + 4] = s4 * iRe - s5 * iIm;
    x[j + 5] = s4 * iIm + s5 * iRe;
  }
}

/** Writes to `left` what of b the solutions leave over. */
export function subtractThree(matrix: SparseMatrix, x: Float64Array, b: Float64Array, left: Float64Array): void {
  const { size, start, end, columns, re, im } = matrix;
  for (let i = 0; i < size; i++) {
    const p = 6 * i;
    let s0 = b[p] as number;
    let s1 = b[p + 1] as number;
    let s2 = b[p + 2] as number;
    let s3 = b[p + 3] as number;
    let s4 = b[p + 4] as number;
    let s5 = b[p + 5] as number;
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const aRe = re[t] as number;
      const aIm = im[t] as number;
      const j = 6 * (columns[t] as number);
      const x0 = x[j] as number;
      const x1 = x[j + 1] as number;
      const x2 = x[j + 2] as number;
      const x3 = x[j + 3] as number;
      const x4 = x[j + 4] as number;
      const x5 = x[j + 5] as number;
      s0 -= aRe * x0 - aIm * x1;
      s1 -= aRe * x1 + aIm * x0;
      s2 -= aRe * x2 - aIm * x3;
      s3 -= aRe * x3 + aIm * x2;
      s4 -= aRe * x4 - aIm * x5;
      s5 -= aRe * x5 + aIm * x4;
    }
    left[p] = s0;
    left[p + 1] = s1;
    left[p + 2] = s2;
    left[p + 3] = s3;
    left[p + 4] = s4;
    left[p + 5] = s5;
  }
}

/** The same, and writes to `terms` the sums of the magnitudes of each equation's terms, three an equation. */
export function weighThree(
  matrix: SparseMatrix,
  sizes: Float64Array,
  x: Float64Array,
  b: Float64Array,
  left: Float64Array,
  terms: Float64Array,
): void {
  const { size, start, end, columns, re, im } = matrix;
  for (let i = 0; i < size; i++) {
    const p = 6 * i;
    let s0 = b[p] as number;
    let s1 = b[p + 1] as number;
    let s2 = b[p + 2] as number;
    let s3 = b[p + 3] as number;
    let s4 = b[p + 4] as number;
    let s5 = b[p + 5] as number;
    let sum0 = Math.abs(s0) + Math.abs(s1);
    let sum1 = Math.abs(s2) + Math.abs(s3);
    let sum2 = Math.abs(s4) + Math.abs(s5);
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const aRe = re[t] as number;
      const aIm = im[t] as number;
      const entry = sizes[t] as number;
      const j = 6 * (columns[t] as number);
      const x0 = x[j] as number;
      const x1 = x[j + 1] as number;
      const x2 = x[j + 2] as number;
      const x3 = x[j + 3] as number;
      const x4 = x[j + 4] as number;
      const x5 = x[j + 5] as number;
      s0 -= aRe * x0 - aIm * x1;
      s1 -= aRe * x1 + aIm * x0;
      s2 -= aRe * x2 - aIm * x3;
      s3 -= aRe * x3 + aIm * x2;
      s4 -= aRe * x4 - aIm * x5;
      s5 -= aRe * x5 + aIm * x4;
      sum0 += entry * (Math.abs(x0) + Math.abs(x1));
      sum1 += entry * (Math.abs(x2) + Math.abs(x3));
      sum2 += entry * (Math.abs(x4) + Math.abs(x5));
    }
    left[p] = s0;
    left[p + 1] = s1;
    left[p + 2] = s2;
    left[p + 3] = s3;
    left[p + 4] = s4;
    left[p + 5] = s5;
    terms[3 * i] = sum0;
    terms[3 * i + 1] = sum1;
    terms[3 * i + 2] = sum2;
  }
}
