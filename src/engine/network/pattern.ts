/**
 * Where the entries of a matrix are kept: each value's slot, which follows from the values' places and from which of
 * them are zero. Networks that share both are written without any searching.
 */
import { fitting, type Room } from './room.ts';
import type { SparseMatrix } from './sparseMatrix.ts';

/** Row and column of each value, in the order of the values; row -1: it is the earth node's. */
export interface Places {
  readonly size: number;
  readonly row: Int32Array;
  readonly column: Int32Array;
}

export interface Values {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export interface Pattern {
  readonly size: number;
  readonly start: Int32Array;
  readonly end: Int32Array;
  readonly columns: Int32Array;
  /** Of each value: twice the slot, plus one for the first value there; or EARTHED or ABSENT. */
  readonly slots: Int32Array;
}

const EARTHED = -1;
/** Zero, and therefore no entry. */
const ABSENT = -2;

/** The pattern of these values; entries of a row are in the order in which they were first added. */
export function patternOf({ size, row, column }: Places, { re, im }: Values): Pattern {
  const count = row.length;
  const slots = new Int32Array(count);
  const roomAt = new Int32Array(size + 1);
  for (let p = 0; p < count; p++) {
    const i = row[p] as number;
    if (i >= 0) roomAt[i + 1] = (roomAt[i + 1] as number) + 1;
  }
  for (let i = 0; i < size; i++) roomAt[i + 1] = (roomAt[i + 1] as number) + (roomAt[i] as number);
  const wide = new Int32Array(roomAt[size] as number);
  const lengths = new Int32Array(size);
  // Places within the row first.
  for (let p = 0; p < count; p++) {
    const i = row[p] as number;
    if (i < 0) slots[p] = EARTHED;
    else if (re[p] === 0 && im[p] === 0) slots[p] = ABSENT;
    else {
      const from = roomAt[i] as number;
      const length = lengths[i] as number;
      let t = 0;
      while (t < length && wide[from + t] !== column[p]) t++;
      if (t === length) {
        wide[from + t] = column[p] as number;
        lengths[i] = length + 1;
      }
      slots[p] = 2 * t + (t === length ? 1 : 0);
    }
  }
  const start = new Int32Array(size);
  const end = new Int32Array(size);
  let used = 0;
  for (let i = 0; i < size; i++) {
    start[i] = used;
    used += lengths[i] as number;
    end[i] = used;
  }
  const columns = new Int32Array(used);
  for (let i = 0; i < size; i++) {
    const from = roomAt[i] as number;
    columns.set(wide.subarray(from, from + (lengths[i] as number)), start[i] as number);
  }
  for (let p = 0; p < count; p++) {
    if ((slots[p] as number) >= 0) slots[p] = (slots[p] as number) + 2 * (start[row[p] as number] as number);
  }
  return { size, start, end, columns, slots };
}

/** The matrix of these values, or null when others of them are zero. */
export function filled({ size, start, end, columns, slots }: Pattern, values: Values, room: Room): SparseMatrix | null {
  room.re = fitting(room.re, columns.length);
  room.im = fitting(room.im, columns.length);
  const { re, im } = room;
  const { re: fromRe, im: fromIm } = values;
  for (let p = 0; p < slots.length; p++) {
    const slot = slots[p] as number;
    if (slot === EARTHED) continue;
    const vRe = fromRe[p] as number;
    const vIm = fromIm[p] as number;
    if ((vRe === 0 && vIm === 0) !== (slot === ABSENT)) return null;
    if (slot === ABSENT) continue;
    const t = slot >> 1;
    if ((slot & 1) === 1) {
      re[t] = vRe;
      im[t] = vIm;
    } else {
      re[t] = (re[t] as number) + vRe;
      im[t] = (im[t] as number) + vIm;
    }
  }
  return { size, start, end, columns, re, im };
}
