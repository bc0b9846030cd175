/**
 * Sparse complex matrix by rows. Equilibration by powers of two (no rounding), rows then columns, because one network
 * holds milliohms, picofarads and kilovolts.
 */

export interface SparseRow {
  readonly columns: number[];
  readonly re: number[];
  readonly im: number[];
}

export type SparseMatrix = readonly SparseRow[];

export interface ComplexVector {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export const emptyMatrix = (size: number): SparseMatrix =>
  Array.from({ length: size }, () => ({ columns: [], re: [], im: [] }));

export const zeroVector = (size: number): ComplexVector => ({
  re: new Float64Array(size),
  im: new Float64Array(size),
});

/** Adds to one entry, making it if need be. */
export function addEntry(matrix: SparseMatrix, row: number, column: number, re: number, im: number): void {
  const entries = matrix[row] as SparseRow;
  const at = entries.columns.indexOf(column);
  if (at < 0) {
    entries.columns.push(column);
    entries.re.push(re);
    entries.im.push(im);
  } else {
    entries.re[at] = (entries.re[at] as number) + re;
    entries.im[at] = (entries.im[at] as number) + im;
  }
}

/** |re| + |im|: within a factor of the square root of two of the magnitude, and cheaper. */
export const size1 = (re: number, im: number): number => Math.abs(re) + Math.abs(im);

/** Within 1e-150 to 1e150, so that products of factors neither overflow nor vanish. */
function powerOfTwoBelow(x: number): number {
  let power = 1;
  while (power > x && power > 1e-150) power /= 2;
  while (power * 2 <= x && power < 1e150) power *= 2;
  return power;
}

export interface Scaling {
  readonly row: Float64Array;
  readonly column: Float64Array;
}

/** Factors that bring the largest entry of each row and column near one; a row or column of zeros keeps the factor one. */
export function equilibrate(matrix: SparseMatrix): Scaling {
  const row = new Float64Array(matrix.length).fill(1);
  const column = new Float64Array(matrix.length).fill(1);
  for (let pass = 0; pass < 2; pass++) {
    const columnMax = new Float64Array(matrix.length);
    for (const [i, { columns, re, im }] of matrix.entries()) {
      let rowMax = 0;
      for (let t = 0; t < columns.length; t++) {
        const size = size1(re[t] as number, im[t] as number) * (column[columns[t] as number] as number);
        if (size > rowMax) rowMax = size;
      }
      if (rowMax > 0) row[i] = 1 / powerOfTwoBelow(rowMax);
      for (let t = 0; t < columns.length; t++) {
        const j = columns[t] as number;
        const size = size1(re[t] as number, im[t] as number) * (row[i] as number);
        if (size > (columnMax[j] as number)) columnMax[j] = size;
      }
    }
    for (let j = 0; j < matrix.length; j++) {
      if ((columnMax[j] as number) > 0) column[j] = 1 / powerOfTwoBelow(columnMax[j] as number);
    }
  }
  return { row, column };
}

/** The matrix with its rows and columns multiplied by the factors. */
export function scaled(matrix: SparseMatrix, scaling: Scaling): SparseMatrix {
  return matrix.map(({ columns, re, im }, i) => {
    const factors = columns.map((j) => (scaling.row[i] as number) * (scaling.column[j] as number));
    return {
      columns: columns.slice(),
      re: re.map((x, t) => x * (factors[t] as number)),
      im: im.map((x, t) => x * (factors[t] as number)),
    };
  });
}
