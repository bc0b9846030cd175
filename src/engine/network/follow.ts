/**
 * Factors a matrix by the plan of another one of the same pattern, without any searching. At each step the pivot is
 * chosen anew by the values, among the same entries and by the same rule as in elimination.ts; when another one would be
 * chosen, the plan does not fit and says so. What a plan gives is therefore the same to the last bit as what elimination
 * would have given.
 */
import { ROUNDING, THRESHOLD } from './elimination.ts';
import type { Plan } from './plan.ts';
import type { SparseMatrix } from './sparseMatrix.ts';
import type { Triangle } from './triangle.ts';

/** Whether the matrix, laid out in rows of the same room, has its entries where the plan's had them. */
export function hasPattern({ columns, end }: Plan, matrix: SparseMatrix): boolean {
  if (columns === matrix.columns) return true;
  const { size, start } = matrix;
  for (let i = 0; i < size; i++) if (end[i] !== matrix.end[i]) return false;
  for (let i = 0; i < size; i++) {
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) if (columns[t] !== matrix.columns[t]) return false;
  }
  return true;
}

let valuesRe = new Float64Array(0);
let valuesIm = new Float64Array(0);
let peaks = new Float64Array(0);

function takeValues({ slots }: Plan, { size, start, end, re, im }: SparseMatrix): void {
  if (slots > valuesRe.length) {
    valuesRe = new Float64Array(2 * slots);
    valuesIm = new Float64Array(2 * slots);
  }
  if (size > peaks.length) peaks = new Float64Array(2 * size);
  for (let i = 0; i < size; i++) {
    let peak = 0;
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const a = re[t] as number;
      const b = im[t] as number;
      valuesRe[t] = a;
      valuesIm[t] = b;
      const entry = Math.abs(a) + Math.abs(b);
      if (entry > peak) peak = entry;
    }
    peaks[i] = peak;
  }
}

/** The slot that elimination would choose in step k; -1 when it would drop a row. */
function chosen(plan: Plan, k: number): number {
  const { candidateStart, candidateRow, entryStart, entrySlot, entryCount } = plan;
  const re = valuesRe;
  const im = valuesIm;
  let best = -1;
  let bestCount = Number.MAX_SAFE_INTEGER;
  let bestSize = 0;
  const last = candidateStart[k + 1] as number;
  for (let c = candidateStart[k] as number; c < last; c++) {
    const from = entryStart[c] as number;
    const to = entryStart[c + 1] as number;
    let max = 0;
    for (let e = from; e < to; e++) {
      const slot = entrySlot[e] as number;
      const entry = Math.abs(re[slot] as number) + Math.abs(im[slot] as number);
      if (entry > max) max = entry;
    }
    if (!(max > ROUNDING * (peaks[candidateRow[c] as number] as number))) return -1;
    for (let e = from; e < to; e++) {
      const slot = entrySlot[e] as number;
      const entry = Math.abs(re[slot] as number) + Math.abs(im[slot] as number);
      if (entry < THRESHOLD * max) continue;
      const count = entryCount[e] as number;
      if (count < bestCount || (count === bestCount && entry > bestSize)) {
        best = slot;
        bestCount = count;
        bestSize = entry;
      }
    }
    if (bestCount === 1) break;
  }
  return best;
}

/** Factors by the plan. */
export interface Followed {
  readonly pivotRe: Float64Array;
  readonly pivotIm: Float64Array;
  readonly lower: Triangle;
  readonly upper: Triangle;
}

/** Factors a matrix of the plan's pattern; null when its values ask for other pivots. */
export function follow(plan: Plan, matrix: SparseMatrix): Followed | null {
  const { size } = matrix;
  const { pivotSlot, upperStart, upperSlot, lowerStart, lowerRow, lowerSlot, targets } = plan;
  takeValues(plan, matrix);
  const re = valuesRe;
  const im = valuesIm;
  const pivotRe = new Float64Array(size);
  const pivotIm = new Float64Array(size);
  const lowerRe = new Float64Array(lowerRow.length);
  const lowerIm = new Float64Array(lowerRow.length);
  const upperRe = new Float64Array(upperSlot.length);
  const upperIm = new Float64Array(upperSlot.length);
  let next = 0;
  for (let k = 0; k < size; k++) {
    const pivot = pivotSlot[k] as number;
    if (chosen(plan, k) !== pivot) return null;
    const dRe = re[pivot] as number;
    const dIm = im[pivot] as number;
    pivotRe[k] = dRe;
    pivotIm[k] = dIm;
    const first = upperStart[k] as number;
    const last = upperStart[k + 1] as number;
    for (let s = first; s < last; s++) {
      const slot = upperSlot[s] as number;
      upperRe[s] = re[slot] as number;
      upperIm[s] = im[slot] as number;
    }
    const square = dRe * dRe + dIm * dIm;
    const lowerEnd = lowerStart[k + 1] as number;
    for (let l = lowerStart[k] as number; l < lowerEnd; l++) {
      const slot = lowerSlot[l] as number;
      const aRe = re[slot] as number;
      const aIm = im[slot] as number;
      const mRe = (aRe * dRe + aIm * dIm) / square;
      const mIm = (aIm * dRe - aRe * dIm) / square;
      lowerRe[l] = mRe;
      lowerIm[l] = mIm;
      const row = lowerRow[l] as number;
      let peak = peaks[row] as number;
      for (let s = first; s < last; s++) {
        const uRe = upperRe[s] as number;
        const uIm = upperIm[s] as number;
        const pRe = mRe * uRe - mIm * uIm;
        const pIm = mRe * uIm + mIm * uRe;
        const target = targets[next++] as number;
        if (target >= 0) {
          re[target] = (re[target] as number) - pRe;
          im[target] = (im[target] as number) - pIm;
        } else {
          re[~target] = -pRe;
          im[~target] = -pIm;
        }
        const entry = Math.abs(pRe) + Math.abs(pIm);
        if (entry > peak) peak = entry;
      }
      peaks[row] = peak;
    }
  }
  return {
    pivotRe,
    pivotIm,
    lower: { start: lowerStart, index: lowerRow, re: lowerRe, im: lowerIm },
    upper: { start: upperStart, index: plan.upperColumn, re: upperRe, im: upperIm },
  };
}
