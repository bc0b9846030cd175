/**
 * LU factorisation of a sparse complex matrix: Gaussian elimination with threshold pivoting, Markowitz's count choosing
 * among pivots that are large enough in their row (H. M. Markowitz, Management Science 3, 1957; Duff, Erisman & Reid,
 * Direct Methods for Sparse Matrices, 1986). Factor once, solve for many right-hand sides.
 */
import { type ComplexVector, type SparseMatrix, type SparseRow, size1, zeroVector } from './sparseMatrix.ts';

/** A pivot is at least this fraction of the largest entry left in its row. */
const THRESHOLD = 0.1;
/** So many of the shortest rows are searched for a pivot. */
const LOOKED_AT = 6;
/** What is left of a row below this fraction of what it once held is rounding, not a pivot. */
const ROUNDING = 1e-14;

interface Triangle {
  readonly start: Int32Array;
  readonly index: Int32Array;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export interface Factors {
  readonly singular: false;
  readonly size: number;
  readonly pivotRow: Int32Array;
  readonly pivotColumn: Int32Array;
  readonly pivotRe: Float64Array;
  readonly pivotIm: Float64Array;
  readonly lower: Triangle;
  readonly upper: Triangle;
}

/** Fewer independent equations than unknowns: this column is free. */
export interface Singular {
  readonly singular: true;
  readonly column: number;
}

class TriangleBuilder {
  private readonly start: number[] = [0];
  private readonly index: number[] = [];
  private readonly re: number[] = [];
  private readonly im: number[] = [];

  push(index: number, re: number, im: number): void {
    this.index.push(index);
    this.re.push(re);
    this.im.push(im);
  }

  closeStep(): void {
    this.start.push(this.index.length);
  }

  build(): Triangle {
    return {
      start: Int32Array.from(this.start),
      index: Int32Array.from(this.index),
      re: Float64Array.from(this.re),
      im: Float64Array.from(this.im),
    };
  }
}

class Elimination {
  readonly rows: SparseRow[];
  readonly columnRows: number[][];
  readonly columnCount: Int32Array;
  readonly rowLeft: Uint8Array;
  private readonly active: number[];
  private readonly rowLength: Int32Array;
  readonly columnLeft: Uint8Array;
  readonly rowPeak: Float64Array;
  private readonly place: Int32Array;

  constructor(matrix: SparseMatrix) {
    const size = matrix.length;
    this.rows = matrix.map(({ columns, re, im }) => ({ columns: columns.slice(), re: re.slice(), im: im.slice() }));
    this.columnRows = Array.from({ length: size }, () => []);
    this.columnCount = new Int32Array(size);
    this.rowLeft = new Uint8Array(size).fill(1);
    this.active = Array.from({ length: size }, (_, i) => i);
    this.rowLength = Int32Array.from(this.rows, ({ columns }) => columns.length);
    this.columnLeft = new Uint8Array(size).fill(1);
    this.rowPeak = new Float64Array(size);
    this.place = new Int32Array(size);
    for (let i = 0; i < size; i++) {
      for (const j of (this.rows[i] as SparseRow).columns) {
        (this.columnRows[j] as number[]).push(i);
        this.columnCount[j] = (this.columnCount[j] as number) + 1;
      }
      this.rowPeak[i] = this.rowMax(i);
    }
  }

  rowMax(i: number): number {
    const { re, im } = this.rows[i] as SparseRow;
    let max = 0;
    for (let t = 0; t < re.length; t++) {
      const size = size1(re[t] as number, im[t] as number);
      if (size > max) max = size;
    }
    return max;
  }

  private shortestLength(): number {
    let shortest = this.rows.length + 1;
    for (const i of this.active) {
      const length = this.rowLength[i] as number;
      if (length < shortest) shortest = length;
    }
    return shortest;
  }

  private drop(i: number): void {
    this.rowLeft[i] = 0;
    this.active.splice(this.active.indexOf(i), 1);
    for (const j of (this.rows[i] as SparseRow).columns) this.columnCount[j] = (this.columnCount[j] as number) - 1;
  }

  /** The best entry [row, place in row] among the first few of the shortest rows left; drops rows of mere rounding. */
  choosePivot(): [number, number] | undefined {
    const shortest = this.shortestLength();
    let best: [number, number] | undefined;
    let bestCount = this.rows.length + 1;
    let bestSize = 0;
    let looked = 0;
    for (const i of this.active) {
      if (this.rowLength[i] !== shortest) continue;
      const { columns, re, im } = this.rows[i] as SparseRow;
      const max = this.rowMax(i);
      if (!(max > ROUNDING * (this.rowPeak[i] as number))) {
        this.drop(i);
        return this.choosePivot();
      }
      for (let t = 0; t < shortest; t++) {
        const size = size1(re[t] as number, im[t] as number);
        if (size < THRESHOLD * max) continue;
        const count = this.columnCount[columns[t] as number] as number;
        if (count < bestCount || (count === bestCount && size > bestSize)) {
          best = [i, t];
          bestCount = count;
          bestSize = size;
        }
      }
      looked++;
      if (looked === LOOKED_AT || bestCount === 1) break;
    }
    return best;
  }

  /** Takes the pivot row out and clears the pivot column below it. */
  eliminate(pivot: number, at: number, lower: TriangleBuilder): void {
    const row = this.rows[pivot] as SparseRow;
    const column = row.columns[at] as number;
    this.drop(pivot);
    this.columnLeft[column] = 0;
    const pivotRe = row.re[at] as number;
    const pivotIm = row.im[at] as number;
    const square = pivotRe * pivotRe + pivotIm * pivotIm;
    for (const i of this.columnRows[column] as number[]) {
      if (this.rowLeft[i] === 0) continue;
      const { columns, re, im } = this.rows[i] as SparseRow;
      const t = columns.indexOf(column);
      const aRe = re[t] as number;
      const aIm = im[t] as number;
      const mRe = (aRe * pivotRe + aIm * pivotIm) / square;
      const mIm = (aIm * pivotRe - aRe * pivotIm) / square;
      lower.push(i, mRe, mIm);
      const last = columns.length - 1;
      columns[t] = columns[last] as number;
      re[t] = re[last] as number;
      im[t] = im[last] as number;
      columns.pop();
      re.pop();
      im.pop();
      this.subtract(i, row, at, mRe, mIm);
    }
  }

  private subtract(i: number, pivotRow: SparseRow, skip: number, mRe: number, mIm: number): void {
    const { columns, re, im } = this.rows[i] as SparseRow;
    const place = this.place;
    for (let t = 0; t < columns.length; t++) place[columns[t] as number] = t + 1;
    for (let s = 0; s < pivotRow.columns.length; s++) {
      if (s === skip) continue;
      const j = pivotRow.columns[s] as number;
      const uRe = pivotRow.re[s] as number;
      const uIm = pivotRow.im[s] as number;
      const dRe = mRe * uRe - mIm * uIm;
      const dIm = mRe * uIm + mIm * uRe;
      const t = (place[j] as number) - 1;
      if (t >= 0) {
        re[t] = (re[t] as number) - dRe;
        im[t] = (im[t] as number) - dIm;
      } else {
        columns.push(j);
        re.push(-dRe);
        im.push(-dIm);
        (this.columnRows[j] as number[]).push(i);
        this.columnCount[j] = (this.columnCount[j] as number) + 1;
      }
      const size = size1(dRe, dIm);
      if (size > (this.rowPeak[i] as number)) this.rowPeak[i] = size;
    }
    for (const j of columns) place[j] = 0;
    this.rowLength[i] = columns.length;
  }
}

/** Factors of a square matrix whose rows and columns are of comparable size. */
export function factor(matrix: SparseMatrix): Factors | Singular {
  const size = matrix.length;
  const state = new Elimination(matrix);
  const lower = new TriangleBuilder();
  const upper = new TriangleBuilder();
  const pivotRow = new Int32Array(size);
  const pivotColumn = new Int32Array(size);
  const pivotRe = new Float64Array(size);
  const pivotIm = new Float64Array(size);
  for (let k = 0; k < size; k++) {
    const pivot = state.choosePivot();
    if (pivot === undefined) return { singular: true, column: state.columnLeft.indexOf(1) };
    const [p, at] = pivot;
    const row = state.rows[p] as SparseRow;
    pivotRow[k] = p;
    pivotColumn[k] = row.columns[at] as number;
    pivotRe[k] = row.re[at] as number;
    pivotIm[k] = row.im[at] as number;
    for (let t = 0; t < row.columns.length; t++) {
      if (t !== at) upper.push(row.columns[t] as number, row.re[t] as number, row.im[t] as number);
    }
    state.eliminate(p, at, lower);
    lower.closeStep();
    upper.closeStep();
  }
  const factors = { size, pivotRow, pivotColumn, pivotRe, pivotIm, lower: lower.build(), upper: upper.build() };
  return { singular: false, ...factors };
}

/** Solution for one right-hand side, which stays untouched. */
export function backSubstitute(factors: Factors, b: ComplexVector): ComplexVector {
  const { size, pivotRow, pivotColumn, pivotRe, pivotIm, lower, upper } = factors;
  const re = Float64Array.from(b.re);
  const im = Float64Array.from(b.im);
  for (let k = 0; k < size; k++) {
    const p = pivotRow[k] as number;
    const bRe = re[p] as number;
    const bIm = im[p] as number;
    if (bRe === 0 && bIm === 0) continue;
    for (let t = lower.start[k] as number; t < (lower.start[k + 1] as number); t++) {
      const i = lower.index[t] as number;
      const mRe = lower.re[t] as number;
      const mIm = lower.im[t] as number;
      re[i] = (re[i] as number) - (mRe * bRe - mIm * bIm);
      im[i] = (im[i] as number) - (mRe * bIm + mIm * bRe);
    }
  }
  const x = zeroVector(size);
  for (let k = size - 1; k >= 0; k--) {
    const p = pivotRow[k] as number;
    let sRe = re[p] as number;
    let sIm = im[p] as number;
    for (let t = upper.start[k] as number; t < (upper.start[k + 1] as number); t++) {
      const j = upper.index[t] as number;
      const uRe = upper.re[t] as number;
      const uIm = upper.im[t] as number;
      const xRe = x.re[j] as number;
      const xIm = x.im[j] as number;
      sRe -= uRe * xRe - uIm * xIm;
      sIm -= uRe * xIm + uIm * xRe;
    }
    const dRe = pivotRe[k] as number;
    const dIm = pivotIm[k] as number;
    const square = dRe * dRe + dIm * dIm;
    x.re[pivotColumn[k] as number] = (sRe * dRe + sIm * dIm) / square;
    x.im[pivotColumn[k] as number] = (sIm * dRe - sRe * dIm) / square;
  }
  return x;
}
