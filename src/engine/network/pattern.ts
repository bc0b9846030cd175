/**
 * Where the entries of a matrix are kept: each value's slot, which follows from the values' places and from which of
 * them are zero. Networks that share both are written without any searching.
 */
import type { Plan } from './plan.ts';
import { fitting, fittingInts, type Room } from './room.ts';
import type { SparseMatrix } from './sparseMatrix.ts';

/** Row and column of each value, in the order of the values; -1 is the earth node. */
export interface Places {
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
  readonly plans: Plan[];
}

const EARTHED = -1;
/** Zero, and therefore no entry. */
const ABSENT = -2;

// Room for one pattern after another: where a row begins when every value has a slot, their columns, how many it has.
let roomAt = new Int32Array(0);
let wide = new Int32Array(0);
let lengths = new Int32Array(0);

function makeRoom(size: number, count: number): void {
  roomAt = fittingInts(roomAt, size + 1);
  lengths = fittingInts(lengths, size);
  wide = fittingInts(wide, count);
  roomAt.fill(0, 0, size + 1);
  lengths.fill(0, 0, size);
}

/** The pattern of so many values; entries of a row are in the order in which they were first added. */
export function patternOf(size: number, count: number, { row, column }: Places, { re, im }: Values): Pattern {
  makeRoom(size, count);
  for (let p = 0; p < count; p++) {
    const i = row[p] as number;
    if (i >= 0) roomAt[i + 1] = (roomAt[i + 1] as number) + 1;
  }
  for (let i = 0; i < size; i++) roomAt[i + 1] = (roomAt[i + 1] as number) + (roomAt[i] as number);
  const slots = new Int32Array(count);
  // Places within the row first.
  for (let p = 0; p < count; p++) {
    const i = row[p] as number;
    const j = column[p] as number;
    if (i < 0 || j < 0) slots[p] = EARTHED;
    else if (re[p] === 0 && im[p] === 0) slots[p] = ABSENT;
    else {
      const from = roomAt[i] as number;
      const length = lengths[i] as number;
      let t = 0;
      while (t < length && wide[from + t] !== j) t++;
      if (t === length) {
        wide[from + t] = j;
        lengths[i] = length + 1;
      }
      slots[p] = 2 * t + (t === length ? 1 : 0);
    }
  }
  const bounds = new Int32Array(size + 1);
  for (let i = 0; i < size; i++) bounds[i + 1] = (bounds[i] as number) + (lengths[i] as number);
  const columns = new Int32Array(bounds[size] as number);
  for (let i = 0; i < size; i++) {
    const from = roomAt[i] as number;
    const to = bounds[i] as number;
    const length = lengths[i] as number;
    for (let t = 0; t < length; t++) columns[to + t] = wide[from + t] as number;
  }
  for (let p = 0; p < count; p++) {
    if ((slots[p] as number) >= 0) slots[p] = (slots[p] as number) + 2 * (bounds[row[p] as number] as number);
  }
  return { size, start: bounds, end: bounds.subarray(1), columns, slots, plans: [] };
}

/** The matrix of these values, or null when others of them are zero. */
export function filled(
  { size, start, end, columns, slots, plans }: Pattern,
  values: Values,
  room: Room,
): SparseMatrix | null {
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
  return { size, start, end, columns, re, im, plans };
}
