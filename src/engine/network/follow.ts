/**
 * Factors a matrix by the plan of another one of the same pattern, without any searching. At each step the pivot is held
 * against the entries that elimination.ts would have chosen before it; when it would have chosen one of them, or not the
 * pivot, the plan does not fit and says so. Which rows come when follows from the pattern alone. What a plan gives is
 * therefore the same to the last bit as what elimination would have given.
 */
import { ROUNDING, THRESHOLD } from './elimination.ts';
import type { Factors, Plan } from './plan.ts';
import { emptyRoom, fitting, type Room } from './room.ts';
import type { SparseMatrix } from './sparseMatrix.ts';

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

/** Room for factors by a plan; they last as long as the room. */
export function factorsIn(room: Room, plan: Plan): Factors {
  const { pivotRow, pivotColumn, lowerStart, lowerRow, upperStart, upperColumn } = plan;
  const size = pivotRow.length;
  const [below, above] = [lowerRow.length, upperColumn.length];
  room.inverseRe = fitting(room.inverseRe, size);
  room.inverseIm = fitting(room.inverseIm, size);
  room.lowerRe = fitting(room.lowerRe, below);
  room.lowerIm = fitting(room.lowerIm, below);
  room.upperRe = fitting(room.upperRe, above);
  room.upperIm = fitting(room.upperIm, above);
  const { inverseRe, inverseIm, lowerRe, lowerIm, upperRe, upperIm } = room;
  return {
    singular: false,
    size,
    pivotRow,
    pivotColumn,
    inverseRe,
    inverseIm,
    lower: { start: lowerStart, index: lowerRow, re: lowerRe, im: lowerIm },
    upper: { start: upperStart, index: upperColumn, re: upperRe, im: upperIm },
  };
}

/** By slot, real before imaginary part. */
let values = new Float64Array(0);
/** The square of what each row has swallowed (elimination.ts). */
let swallowed = new Float64Array(0);

function takeValues({ slots }: Plan, { size, start, end, columns, re, im }: SparseMatrix): void {
  values = fitting(values, 2 * slots);
  swallowed = fitting(swallowed, size);
  // What fills in.
  values.fill(0, 2 * columns.length, 2 * slots);
  for (let i = 0; i < size; i++) {
    let peak = 0;
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const a = re[t] as number;
      const b = im[t] as number;
      values[2 * t] = a;
      values[2 * t + 1] = b;
      const entry = Math.abs(a) + Math.abs(b);
      if (entry > peak) peak = entry;
    }
    swallowed[i] = peak * peak;
  }
}

// As constants of this file they are read faster, whatever binds the files together.
const ROUNDED = ROUNDING * ROUNDING;
const LEAST = THRESHOLD;

/** Factors a matrix of the plan's pattern; null when its values ask for other pivots. */
export function follow(plan: Plan, matrix: SparseMatrix, room: Room = emptyRoom()): Factors | null {
  const { size } = matrix;
  const { pivotSlot, pivotRow, rivalStart, rivalSlot, upperStart, upperSlot, lowerStart, lowerRow, lowerSlot } = plan;
  const { targets } = plan;
  takeValues(plan, matrix);
  const factors = factorsIn(room, plan);
  const { inverseRe, inverseIm, lower, upper } = factors;
  const { re: lowerRe, im: lowerIm } = lower;
  const { re: upperRe, im: upperIm } = upper;
  const all = values;
  let next = 0;
  for (let k = 0; k < size; k++) {
    const pivot = pivotSlot[k] as number;
    const dRe = all[2 * pivot] as number;
    const dIm = all[2 * pivot + 1] as number;
    const chosen = Math.abs(dRe) + Math.abs(dIm);
    let max = chosen;
    const first = upperStart[k] as number;
    const last = upperStart[k + 1] as number;
    for (let s = first; s < last; s++) {
      const slot = upperSlot[s] as number;
      const uRe = all[2 * slot] as number;
      const uIm = all[2 * slot + 1] as number;
      upperRe[s] = uRe;
      upperIm[s] = uIm;
      const entry = Math.abs(uRe) + Math.abs(uIm);
      if (entry > max) max = entry;
    }
    const least = LEAST * max;
    const pivotSwallowed = swallowed[pivotRow[k] as number] as number;
    if (!(max * max > ROUNDED * pivotSwallowed) || chosen < least) return null;
    const rivalEnd = rivalStart[k + 1] as number;
    for (let r = rivalStart[k] as number; r < rivalEnd; r++) {
      const slot = rivalSlot[r] as number;
      if (Math.abs(all[2 * slot] as number) + Math.abs(all[2 * slot + 1] as number) >= least) return null;
    }
    const square = dRe * dRe + dIm * dIm;
    inverseRe[k] = dRe / square;
    inverseIm[k] = -dIm / square;
    const lowerEnd = lowerStart[k + 1] as number;
    for (let l = lowerStart[k] as number; l < lowerEnd; l++) {
      const slot = lowerSlot[l] as number;
      const aRe = all[2 * slot] as number;
      const aIm = all[2 * slot + 1] as number;
      const mRe = (aRe * dRe + aIm * dIm) / square;
      const mIm = (aIm * dRe - aRe * dIm) / square;
      lowerRe[l] = mRe;
      lowerIm[l] = mIm;
      const row = lowerRow[l] as number;
      const more = (mRe * mRe + mIm * mIm) * pivotSwallowed;
      if (more > (swallowed[row] as number)) swallowed[row] = more;
      for (let s = first; s < last; s++) {
        const uRe = upperRe[s] as number;
        const uIm = upperIm[s] as number;
        const pRe = mRe * uRe - mIm * uIm;
        const pIm = mRe * uIm + mIm * uRe;
        const at = 2 * (targets[next++] as number);
        all[at] = (all[at] as number) - pRe;
        all[at + 1] = (all[at + 1] as number) - pIm;
      }
    }
  }
  return factors;
}
