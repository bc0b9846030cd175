/**
 * Sparse complex matrix by rows, in flat arrays. Equilibration by powers of two (no rounding), rows then columns, because
 * one network holds milliohms, picofarads and kilovolts.
 */
import type { Plan } from './plan.ts';
import { emptyRoom, fitting, type Room } from './room.ts';

/** Row i holds the entries start[i] up to, not including, end[i], in the order in which they were first added. */
export interface SparseMatrix {
  readonly size: number;
  readonly start: Int32Array;
  readonly end: Int32Array;
  readonly columns: Int32Array;
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** Plans of factorisations (plan.ts) of matrices with this pattern, the last that fitted first. */
  readonly plans: Plan[];
}

export interface ComplexVector {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** A matrix without entries; row i has room for those up to starts[i + 1]. */
export function emptyMatrix(starts: Int32Array): SparseMatrix {
  const size = starts.length - 1;
  const room = starts[size] as number;
  return {
    size,
    start: starts,
    end: starts.slice(0, size),
    columns: new Int32Array(room),
    re: new Float64Array(room),
    im: new Float64Array(room),
    plans: [],
  };
}

export const zeroVector = (size: number): ComplexVector => ({
  re: new Float64Array(size),
  im: new Float64Array(size),
});

/** Adds to one entry, making it if need be. */
export function addEntry(matrix: SparseMatrix, row: number, column: number, re: number, im: number): void {
  const { columns, end } = matrix;
  const last = end[row] as number;
  for (let t = matrix.start[row] as number; t < last; t++) {
    if (columns[t] !== column) continue;
    matrix.re[t] = (matrix.re[t] as number) + re;
    matrix.im[t] = (matrix.im[t] as number) + im;
    return;
  }
  columns[last] = column;
  matrix.re[last] = re;
  matrix.im[last] = im;
  end[row] = last + 1;
}

const real = new Float64Array(1);
const halves = new Int32Array(real.buffer);
real[0] = 1;
/** Which half of a number holds its sign and exponent on this machine. */
const HIGH = halves[0] === 0 ? 1 : 0;
/** Exponent of 1 in that half. */
const BIAS = 1023;
/** Least and largest exponent of a factor: within 1e-150 to 1e150 products of factors neither overflow nor vanish. */
const REACH = 498;

/** 1 / 2^e by the exponent bits of a number. */
const inverses = Float64Array.from({ length: 2048 }, (_, bits) => {
  const e = Math.max(-REACH, Math.min(REACH, bits - BIAS));
  let power = 1;
  for (let i = 0; i < Math.abs(e); i++) power *= 2;
  return e < 0 ? power : 1 / power;
});

/** What brings a positive number into [1, 2). */
function inverseOfPower(x: number): number {
  real[0] = x;
  return inverses[(halves[HIGH] as number) >>> 20] as number;
}

export interface Scaling {
  readonly row: Float64Array;
  readonly column: Float64Array;
  /** |re| + |im| of each entry: as it was, and scaled once the matrix is. */
  readonly sizes: Float64Array;
}

let columnMax = new Float64Array(0);

/**
 * Factors that bring the largest entry (|re| + |im|) of each row to at least a half and less than two, and that of each
 * column to at least one; a row or column of zeros keeps one.
 */
export function equilibrate(matrix: SparseMatrix, room: Room = emptyRoom()): Scaling {
  const { size, start, end, columns, re, im } = matrix;
  room.row = fitting(room.row, size);
  room.column = fitting(room.column, size);
  room.sizes = fitting(room.sizes, columns.length);
  columnMax = fitting(columnMax, size);
  const { row, column, sizes } = room;
  const most = columnMax;
  most.fill(0, 0, size);
  for (let i = 0; i < size; i++) {
    const from = start[i] as number;
    const to = end[i] as number;
    let rowMax = 0;
    for (let t = from; t < to; t++) {
      const entry = Math.abs(re[t] as number) + Math.abs(im[t] as number);
      sizes[t] = entry;
      if (entry > rowMax) rowMax = entry;
    }
    const factor = rowMax > 0 ? inverseOfPower(rowMax) : 1;
    row[i] = factor;
    for (let t = from; t < to; t++) {
      const j = columns[t] as number;
      const entry = (sizes[t] as number) * factor;
      if (entry > (most[j] as number)) most[j] = entry;
    }
  }
  for (let j = 0; j < size; j++) column[j] = (most[j] as number) > 0 ? inverseOfPower(most[j] as number) : 1;
  return { row, column, sizes };
}

/** Multiplies the rows and columns of a matrix, and the sizes of its entries, by the factors. */
export function scale({ size, start, end, columns, re, im }: SparseMatrix, { row, column, sizes }: Scaling): void {
  for (let i = 0; i < size; i++) {
    const rowFactor = row[i] as number;
    const to = end[i] as number;
    for (let t = start[i] as number; t < to; t++) {
      const factor = rowFactor * (column[columns[t] as number] as number);
      re[t] = (re[t] as number) * factor;
      im[t] = (im[t] as number) * factor;
      sizes[t] = (sizes[t] as number) * factor;
    }
  }
}
