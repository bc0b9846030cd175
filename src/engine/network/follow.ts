/**
 * Factors a matrix by the plan of another one of the same pattern, without any searching. At each step the pivot is
 * chosen anew by the values, among the same entries and by the same rule as in elimination.ts; when another one would be
 * chosen, the plan does not fit and says so. What a plan gives is therefore the same to the last bit as what elimination
 * would have given.
 */
import { ROUNDING, THRESHOLD } from './elimination.ts';
import type { Plan } from './plan.ts';
import { emptyRoom, fitting, type Room } from './room.ts';
import type { Scaling, SparseMatrix } from './sparseMatrix.ts';
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
/** |re| + |im| of each value. */
let sizes = new Float64Array(0);
let peaks = new Float64Array(0);

function takeValues({ slots }: Plan, matrix: SparseMatrix, scaling: Scaling | null): void {
  const { size, start, end, columns, re, im } = matrix;
  valuesRe = fitting(valuesRe, slots);
  valuesIm = fitting(valuesIm, slots);
  sizes = fitting(sizes, slots);
  peaks = fitting(peaks, size);
  for (let i = 0; i < size; i++) {
    let peak = 0;
    const row = scaling === null ? 1 : (scaling.row[i] as number);
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const factor = scaling === null ? row : row * (scaling.column[columns[t] as number] as number);
      const a = (re[t] as number) * factor;
      const b = (im[t] as number) * factor;
      valuesRe[t] = a;
      valuesIm[t] = b;
      const entry = Math.abs(a) + Math.abs(b);
      sizes[t] = entry;
      if (entry > peak) peak = entry;
    }
    peaks[i] = peak;
  }
}

// As constants of this file they are read faster, whatever binds the files together.
const ROUNDED = ROUNDING;
const LEAST = THRESHOLD;

/** The slot that elimination would choose in step k; -1 when it would drop a row. */
function chosen(plan: Plan, k: number): number {
  const { candidateStart, candidateRow, entryStart, entrySlot, entryCount } = plan;
  let best = -1;
  let bestCount = Number.MAX_SAFE_INTEGER;
  let bestSize = 0;
  const last = candidateStart[k + 1] as number;
  for (let c = candidateStart[k] as number; c < last; c++) {
    const from = entryStart[c] as number;
    const to = entryStart[c + 1] as number;
    let max = 0;
    for (let e = from; e < to; e++) {
      const entry = sizes[entrySlot[e] as number] as number;
      if (entry > max) max = entry;
    }
    if (!(max > ROUNDED * (peaks[candidateRow[c] as number] as number))) return -1;
    const least = LEAST * max;
    for (let e = from; e < to; e++) {
      const slot = entrySlot[e] as number;
      const entry = sizes[slot] as number;
      if (entry < least) continue;
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

/** Factors by the plan; what is in them lives as long as the room that they are in. */
export interface Followed {
  readonly pivotRe: Float64Array;
  readonly pivotIm: Float64Array;
  readonly lower: Triangle;
  readonly upper: Triangle;
}

function makeRoom(room: Room, size: number, lower: number, upper: number): void {
  room.pivotRe = fitting(room.pivotRe, size);
  room.pivotIm = fitting(room.pivotIm, size);
  room.lowerRe = fitting(room.lowerRe, lower);
  room.lowerIm = fitting(room.lowerIm, lower);
  room.upperRe = fitting(room.upperRe, upper);
  room.upperIm = fitting(room.upperIm, upper);
}

/** Factors a matrix of the plan's pattern, scaled if asked; null when its values ask for other pivots. */
export function follow(
  plan: Plan,
  matrix: SparseMatrix,
  scaling: Scaling | null = null,
  room: Room = emptyRoom(),
): Followed | null {
  const { size } = matrix;
  const { pivotSlot, upperStart, upperSlot, lowerStart, lowerRow, lowerSlot, targets } = plan;
  takeValues(plan, matrix, scaling);
  makeRoom(room, size, lowerRow.length, upperSlot.length);
  const { pivotRe, pivotIm, lowerRe, lowerIm, upperRe, upperIm } = room;
  const re = valuesRe;
  const im = valuesIm;
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
        const entry = Math.abs(pRe) + Math.abs(pIm);
        if (entry > peak) peak = entry;
        const target = targets[next++] as number;
        if (target >= 0) {
          const leftRe = (re[target] as number) - pRe;
          const leftIm = (im[target] as number) - pIm;
          re[target] = leftRe;
          im[target] = leftIm;
          sizes[target] = Math.abs(leftRe) + Math.abs(leftIm);
        } else {
          re[~target] = -pRe;
          im[~target] = -pIm;
          sizes[~target] = entry;
        }
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
