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
  /** Values in all, and the places in their list of those that are not the earth node's. */
  readonly count: number;
  readonly inside: Int32Array;
  /** Of each of these: twice the slot, plus one for the first value there; or ABSENT. */
  readonly slots: Int32Array;
  readonly plans: Plan[];
}

/** Zero, and therefore no entry. */
const ABSENT = -1;

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
  const [begins, held, having] = [roomAt, wide, lengths];
  let there = 0;
  for (let p = 0; p < count; p++) {
    const i = row[p] as number;
    if (i < 0 || (column[p] as number) < 0) continue;
    begins[i + 1] = (begins[i + 1] as number) + 1;
    there++;
  }
  for (let i = 0; i < size; i++) begins[i + 1] = (begins[i + 1] as number) + (begins[i] as number);
  const inside = new Int32Array(there);
  const slots = new Int32Array(there);
  there = 0;
  // Places within the row first.
  for (let p = 0; p < count; p++) {
    const i = row[p] as number;
    const j = column[p] as number;
    if (i < 0 || j < 0) continue;
    inside[there] = p;
    if (re[p] === 0 && im[p] === 0) {
      slots[there++] = ABSENT;
      continue;
    }
    const from = begins[i] as number;
    const length = having[i] as number;
    let t = 0;
    while (t < length && held[from + t] !== j) t++;
    if (t === length) {
      held[from + t] = j;
      having[i] = length + 1;
    }
    slots[there++] = 2 * t + (t === length ? 1 : 0);
  }
  const bounds = new Int32Array(size + 1);
  for (let i = 0; i < size; i++) bounds[i + 1] = (bounds[i] as number) + (having[i] as number);
  const columns = new Int32Array(bounds[size] as number);
  for (let i = 0; i < size; i++) {
    const from = begins[i] as number;
    const to = bounds[i] as number;
    const length = having[i] as number;
    for (let t = 0; t < length; t++) columns[to + t] = held[from + t] as number;
  }
  for (let s = 0; s < there; s++) {
    const slot = slots[s] as number;
    if (slot !== ABSENT) slots[s] = slot + 2 * (bounds[row[inside[s] as number] as number] as number);
  }
  return { size, start: bounds, end: bounds.subarray(1), columns, count, inside, slots, plans: [] };
}

/** The matrix of these values, or null when others of them are zero. */
export function filled(pattern: Pattern, values: Values, room: Room): SparseMatrix | null {
  const { size, start, end, columns, inside, slots, plans } = pattern;
  room.re = fitting(room.re, columns.length);
  room.im = fitting(room.im, columns.length);
  const { re, im } = room;
  const { re: fromRe, im: fromIm } = values;
  for (let s = 0; s < slots.length; s++) {
    const slot = slots[s] as number;
    const p = inside[s] as number;
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
