/**
 * Factors a matrix by the plan of another one of the same pattern, without any searching. At each step the pivot is
 * held against the others that elimination.ts would weigh it with, by the same rule; when another one would be chosen, the
 * plan does not fit and says so. What a plan gives is therefore the same to the last bit as what elimination
 * would have given.
 */
import { ROUNDING, THRESHOLD } from './elimination.ts';
import { type Plan, RIVAL_BEFORE, RIVAL_FIRST } from './plan.ts';
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

/** By slot, real before imaginary part. */
let values = new Float64Array(0);
/** |re| + |im| of each value when its row was looked at last. */
let sizes = new Float64Array(0);
let peaks = new Float64Array(0);
/** What a pivot must have at least, by row. */
let leasts = new Float64Array(0);

function takeValues({ slots }: Plan, matrix: SparseMatrix, scaling: Scaling | null): void {
  const { size, start, end, columns, re, im } = matrix;
  values = fitting(values, 2 * slots);
  sizes = fitting(sizes, slots);
  peaks = fitting(peaks, size);
  leasts = fitting(leasts, size);
  const to = values;
  for (let i = 0; i < size; i++) {
    let peak = 0;
    const row = scaling === null ? 1 : (scaling.row[i] as number);
    const last = end[i] as number;
    for (let t = start[i] as number; t < last; t++) {
      const factor = scaling === null ? row : row * (scaling.column[columns[t] as number] as number);
      const a = (re[t] as number) * factor;
      const b = (im[t] as number) * factor;
      to[2 * t] = a;
      to[2 * t + 1] = b;
      const entry = Math.abs(a) + Math.abs(b);
      if (entry > peak) peak = entry;
    }
    peaks[i] = peak;
  }
}

// As constants of this file they are read faster, whatever binds the files together.
const ROUNDED = ROUNDING;
const LEAST = THRESHOLD;
const FIRST = RIVAL_FIRST;
const BEFORE = RIVAL_BEFORE;

/** Looks at the rows that have changed before step k; false when elimination would drop one. */
function look({ lookStart, lookRow, lookSlotStart, lookSlot }: Plan, k: number): boolean {
  const last = lookStart[k + 1] as number;
  for (let c = lookStart[k] as number; c < last; c++) {
    const to = lookSlotStart[c + 1] as number;
    let max = 0;
    for (let e = lookSlotStart[c] as number; e < to; e++) {
      const slot = lookSlot[e] as number;
      const entry = Math.abs(values[2 * slot] as number) + Math.abs(values[2 * slot + 1] as number);
      sizes[slot] = entry;
      if (entry > max) max = entry;
    }
    const row = lookRow[c] as number;
    if (!(max > ROUNDED * (peaks[row] as number))) return false;
    leasts[row] = LEAST * max;
  }
  return true;
}

/** Whether elimination would choose the plan's pivot in step k. */
function isChosen(plan: Plan, k: number, pivot: number): boolean {
  if (!look(plan, k)) return false;
  const size = sizes[pivot] as number;
  if (size < (leasts[plan.pivots.row[k] as number] as number)) return false;
  const { rivalStart, rivalSlot, rivalRow, rivalKind } = plan;
  const last = rivalStart[k + 1] as number;
  for (let r = rivalStart[k] as number; r < last; r++) {
    const other = sizes[rivalSlot[r] as number] as number;
    if (other < (leasts[rivalRow[r] as number] as number)) continue;
    const kind = rivalKind[r];
    if (kind === FIRST || other > size || (kind === BEFORE && other === size)) return false;
  }
  return true;
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
  const all = values;
  let next = 0;
  for (let k = 0; k < size; k++) {
    const pivot = pivotSlot[k] as number;
    if (!isChosen(plan, k, pivot)) return null;
    const dRe = all[2 * pivot] as number;
    const dIm = all[2 * pivot + 1] as number;
    pivotRe[k] = dRe;
    pivotIm[k] = dIm;
    const first = upperStart[k] as number;
    const last = upperStart[k + 1] as number;
    for (let s = first; s < last; s++) {
      const slot = upperSlot[s] as number;
      upperRe[s] = all[2 * slot] as number;
      upperIm[s] = all[2 * slot + 1] as number;
    }
    const square = dRe * dRe + dIm * dIm;
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
          const at = 2 * target;
          all[at] = (all[at] as number) - pRe;
          all[at + 1] = (all[at + 1] as number) - pIm;
        } else {
          const at = 2 * ~target;
          all[at] = -pRe;
          all[at + 1] = -pIm;
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
