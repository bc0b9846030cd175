/**
 * Sparse complex matrix by rows, in flat arrays. Equilibration by powers of two (no rounding), rows then columns, because
 * one network holds milliohms, picofarads and kilovolts.
 */

/** Row i holds the entries start[i] up to, not including, end[i], in the order in which they were first added. */
export interface SparseMatrix {
  readonly size: number;
  readonly start: Int32Array;
  readonly end: Int32Array;
  readonly columns: Int32Array;
  readonly re: Float64Array;
  readonly im: Float64Array;
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

/** Within 1e-150 to 1e150, so that products of factors neither overflow nor vanish. */
function powerOfTwoBelow(x: number): number {
  if (x > 1e-149 && x < 1e149) {
    // Sign and exponent of the binary form without its fraction.
    real[0] = x;
    halves[HIGH] = (halves[HIGH] as number) & 0x7ff00000;
    halves[1 - HIGH] = 0;
    return real[0];
  }
  let power = 1;
  while (power > x && power > 1e-150) power /= 2;
  while (power * 2 <= x && power < 1e150) power *= 2;
  return power;
}

export interface Scaling {
  readonly row: Float64Array;
  readonly column: Float64Array;
}

/** Factors that bring the largest entry (|re| + |im|) of each row and column near one; a row or column of zeros keeps one. */
export function equilibrate(matrix: SparseMatrix): Scaling {
  const { size, start, end, columns, re, im } = matrix;
  const row = new Float64Array(size).fill(1);
  const column = new Float64Array(size).fill(1);
  const columnMax = new Float64Array(size);
  for (let pass = 0; pass < 2; pass++) {
    columnMax.fill(0);
    for (let i = 0; i < size; i++) {
      const from = start[i] as number;
      const to = end[i] as number;
      let rowMax = 0;
      for (let t = from; t < to; t++) {
        const entry =
          (Math.abs(re[t] as number) + Math.abs(im[t] as number)) * (column[columns[t] as number] as number);
        if (entry > rowMax) rowMax = entry;
      }
      if (rowMax > 0) row[i] = 1 / powerOfTwoBelow(rowMax);
      const factor = row[i] as number;
      for (let t = from; t < to; t++) {
        const j = columns[t] as number;
        const entry = (Math.abs(re[t] as number) + Math.abs(im[t] as number)) * factor;
        if (entry > (columnMax[j] as number)) columnMax[j] = entry;
      }
    }
    for (let j = 0; j < size; j++) {
      if ((columnMax[j] as number) > 0) column[j] = 1 / powerOfTwoBelow(columnMax[j] as number);
    }
  }
  return { row, column };
}

/** The matrix with its rows and columns multiplied by the factors. */
export function scaled(matrix: SparseMatrix, scaling: Scaling): SparseMatrix {
  const { size, start, end, columns } = matrix;
  const re = new Float64Array(columns.length);
  const im = new Float64Array(columns.length);
  for (let i = 0; i < size; i++) {
    const row = scaling.row[i] as number;
    for (let t = start[i] as number; t < (end[i] as number); t++) {
      const factor = row * (scaling.column[columns[t] as number] as number);
      re[t] = (matrix.re[t] as number) * factor;
      im[t] = (matrix.im[t] as number) * factor;
    }
  }
  return { size, start, end, columns, re, im };
}
