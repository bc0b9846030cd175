/**
 * Gaussian elimination in flat arrays, one pivot at a time: threshold pivoting, Markowitz's count choosing among pivots
 * that are large enough in their row (H. M. Markowitz, Management Science 3, 1957; Duff, Erisman & Reid, Direct Methods
 * for Sparse Matrices, 1986). A row that outgrows its room moves to the end of the arrays.
 */
import { longer } from './longer.ts';
import type { SparseMatrix } from './sparseMatrix.ts';
import { TriangleBuilder } from './triangle.ts';

/** A pivot is at least this fraction of the largest entry left in its row. */
export const THRESHOLD = 0.1;
/** So many of the shortest rows are searched for a pivot. */
export const LOOKED_AT = 6;
/** What is left of a row below this fraction of what it once held is rounding, not a pivot. */
export const ROUNDING = 1e-14;
/** Room left in a row for what fills in. */
const SPARE = 4;

const ints = (length: number): Int32Array => new Int32Array(length);
const reals = (length: number): Float64Array => new Float64Array(length);

/** A matrix on its way to its factors; the arrays serve one matrix after another. */
export class Elimination {
  /** Row and place in the arrays of the pivot chosen last. */
  pivotRow = -1;
  pivotAt = -1;
  columns = ints(0);
  re = reals(0);
  im = reals(0);
  readonly lower = new TriangleBuilder();
  readonly upper = new TriangleBuilder();
  private size = 0;
  private used = 0;
  private start = ints(0);
  private length = ints(0);
  private room = ints(0);
  /** Rows left, ascending, the first `left` of them. */
  private active = ints(0);
  private left = 0;
  private rowLeft = ints(0);
  private columnLeft = ints(0);
  private rowPeak = reals(0);
  private columnCount = ints(0);
  private place = ints(0);
  /** Rows of each column in a chain, oldest first; rows that have gone stay in it. */
  private chainHead = ints(0);
  private chainTail = ints(0);
  private chainRow = ints(0);
  private chainNext = ints(0);
  private chained = 0;

  /** Takes up a matrix, forgetting the one before. */
  begin(matrix: SparseMatrix): void {
    const { size } = matrix;
    this.size = size;
    if (size > this.start.length) this.makeRows(2 * size);
    const entries = matrix.columns.length + SPARE * size;
    if (entries > this.columns.length) this.makeEntries(2 * entries);
    this.lower.begin();
    this.upper.begin();
    this.used = 0;
    this.chained = 0;
    this.left = size;
    this.rowLeft.fill(1, 0, size);
    this.columnLeft.fill(1, 0, size);
    this.columnCount.fill(0, 0, size);
    this.place.fill(0, 0, size);
    this.chainHead.fill(-1, 0, size);
    for (let i = 0; i < size; i++) this.take(matrix, i);
  }

  /** The first column without a pivot. */
  get freeColumn(): number {
    return this.columnLeft.indexOf(1);
  }

  private makeRows(size: number): void {
    this.start = ints(size);
    this.length = ints(size);
    this.room = ints(size);
    this.active = ints(size);
    this.rowLeft = ints(size);
    this.columnLeft = ints(size);
    this.rowPeak = reals(size);
    this.columnCount = ints(size);
    this.place = ints(size);
    this.chainHead = ints(size);
    this.chainTail = ints(size);
  }

  private makeEntries(room: number): void {
    this.columns = ints(room);
    this.re = reals(room);
    this.im = reals(room);
    this.chainRow = ints(room);
    this.chainNext = ints(room);
  }

  private take(matrix: SparseMatrix, i: number): void {
    const { columns, re, im } = this;
    const from = matrix.start[i] as number;
    const length = (matrix.end[i] as number) - from;
    const to = this.used;
    for (let t = 0; t < length; t++) {
      const j = matrix.columns[from + t] as number;
      columns[to + t] = j;
      re[to + t] = matrix.re[from + t] as number;
      im[to + t] = matrix.im[from + t] as number;
      this.chain(i, j);
    }
    this.start[i] = to;
    this.length[i] = length;
    this.room[i] = length + SPARE;
    this.used = to + length + SPARE;
    this.active[i] = i;
    this.rowPeak[i] = this.rowMax(i);
  }

  private chain(i: number, j: number): void {
    if (this.chained === this.chainRow.length) {
      this.chainRow = longer(this.chainRow, 2 * this.chained);
      this.chainNext = longer(this.chainNext, 2 * this.chained);
    }
    const link = this.chained++;
    this.chainRow[link] = i;
    this.chainNext[link] = -1;
    if (this.chainHead[j] === -1) this.chainHead[j] = link;
    else this.chainNext[this.chainTail[j] as number] = link;
    this.chainTail[j] = link;
    this.columnCount[j] = (this.columnCount[j] as number) + 1;
  }

  private rowMax(i: number): number {
    const { re, im } = this;
    const from = this.start[i] as number;
    const to = from + (this.length[i] as number);
    let max = 0;
    for (let t = from; t < to; t++) {
      const entry = Math.abs(re[t] as number) + Math.abs(im[t] as number);
      if (entry > max) max = entry;
    }
    return max;
  }

  private shortestLength(): number {
    const { active, length } = this;
    let shortest = this.size + 1;
    for (let a = 0; a < this.left; a++) {
      const each = length[active[a] as number] as number;
      if (each < shortest) shortest = each;
    }
    return shortest;
  }

  private drop(i: number): void {
    this.rowLeft[i] = 0;
    const { active, columns, columnCount } = this;
    let a = 0;
    while (active[a] !== i) a++;
    active.copyWithin(a, a + 1, this.left);
    this.left--;
    const from = this.start[i] as number;
    const to = from + (this.length[i] as number);
    for (let t = from; t < to; t++) {
      const j = columns[t] as number;
      columnCount[j] = (columnCount[j] as number) - 1;
    }
  }

  /** Chooses the best entry among the first few of the shortest rows left, dropping rows of mere rounding; false when none is left. */
  choosePivot(): boolean {
    for (;;) {
      const spent = this.searchRows(this.shortestLength());
      if (spent < 0) return this.pivotAt >= 0;
      this.drop(spent);
    }
  }

  /** Looks for the pivot; a row found to be mere rounding ends the search and is returned, else -1. */
  private searchRows(shortest: number): number {
    const { active, length, start, columns, columnCount, re, im } = this;
    this.pivotAt = -1;
    let bestCount = this.size + 1;
    let bestSize = 0;
    let looked = 0;
    for (let a = 0; a < this.left; a++) {
      const i = active[a] as number;
      if (length[i] !== shortest) continue;
      const max = this.rowMax(i);
      if (!(max > ROUNDING * (this.rowPeak[i] as number))) return i;
      const from = start[i] as number;
      for (let t = from; t < from + shortest; t++) {
        const entry = Math.abs(re[t] as number) + Math.abs(im[t] as number);
        if (entry < THRESHOLD * max) continue;
        const count = columnCount[columns[t] as number] as number;
        if (count < bestCount || (count === bestCount && entry > bestSize)) {
          this.pivotRow = i;
          this.pivotAt = t;
          bestCount = count;
          bestSize = entry;
        }
      }
      looked++;
      if (looked === LOOKED_AT || bestCount === 1) break;
    }
    return -1;
  }

  /** Takes the pivot row out into the upper triangle and clears the pivot column below it into the lower. */
  eliminate(): void {
    const { pivotRow, pivotAt, start, length, lower, upper } = this;
    const column = this.columns[pivotAt] as number;
    this.drop(pivotRow);
    this.columnLeft[column] = 0;
    const from = start[pivotRow] as number;
    const to = from + (length[pivotRow] as number);
    const first = upper.used;
    for (let t = from; t < to; t++) {
      if (t !== pivotAt) upper.push(this.columns[t] as number, this.re[t] as number, this.im[t] as number);
    }
    upper.closeStep();
    const pivotRe = this.re[pivotAt] as number;
    const pivotIm = this.im[pivotAt] as number;
    const square = pivotRe * pivotRe + pivotIm * pivotIm;
    for (let link = this.chainHead[column] as number; link >= 0; link = this.chainNext[link] as number) {
      const i = this.chainRow[link] as number;
      if (this.rowLeft[i] === 0) continue;
      const { columns, re, im } = this;
      let t = start[i] as number;
      while (columns[t] !== column) t++;
      const aRe = re[t] as number;
      const aIm = im[t] as number;
      const mRe = (aRe * pivotRe + aIm * pivotIm) / square;
      const mIm = (aIm * pivotRe - aRe * pivotIm) / square;
      lower.push(i, mRe, mIm);
      const rest = (length[i] as number) - 1;
      const last = (start[i] as number) + rest;
      columns[t] = columns[last] as number;
      re[t] = re[last] as number;
      im[t] = im[last] as number;
      length[i] = rest;
      if (upper.used > first) this.subtract(i, first, mRe, mIm);
    }
    lower.closeStep();
  }

  /** Subtracts a multiple of the pivot row, which lies in the upper triangle from `first` on. */
  private subtract(i: number, first: number, mRe: number, mIm: number): void {
    const { place, upper, start, length } = this;
    const { index, re: upperRe, im: upperIm, used } = upper;
    if ((length[i] as number) + used - first > (this.room[i] as number)) this.move(i, used - first);
    const { columns, re, im } = this;
    const from = start[i] as number;
    let end = from + (length[i] as number);
    let peak = this.rowPeak[i] as number;
    for (let t = from; t < end; t++) place[columns[t] as number] = t + 1;
    for (let s = first; s < used; s++) {
      const j = index[s] as number;
      const uRe = upperRe[s] as number;
      const uIm = upperIm[s] as number;
      const dRe = mRe * uRe - mIm * uIm;
      const dIm = mRe * uIm + mIm * uRe;
      const t = (place[j] as number) - 1;
      if (t >= 0) {
        re[t] = (re[t] as number) - dRe;
        im[t] = (im[t] as number) - dIm;
      } else {
        columns[end] = j;
        re[end] = -dRe;
        im[end] = -dIm;
        end++;
        this.chain(i, j);
      }
      const entry = Math.abs(dRe) + Math.abs(dIm);
      if (entry > peak) peak = entry;
    }
    for (let t = from; t < end; t++) place[columns[t] as number] = 0;
    this.rowPeak[i] = peak;
    length[i] = end - from;
  }

  /** Moves a row to where it has room for so many more entries. */
  private move(i: number, more: number): void {
    const length = this.length[i] as number;
    const room = 2 * (length + more);
    if (this.used + room > this.columns.length) {
      const all = 2 * (this.used + room);
      this.columns = longer(this.columns, all);
      this.re = longer(this.re, all);
      this.im = longer(this.im, all);
    }
    const from = this.start[i] as number;
    this.columns.copyWithin(this.used, from, from + length);
    this.re.copyWithin(this.used, from, from + length);
    this.im.copyWithin(this.used, from, from + length);
    this.start[i] = this.used;
    this.room[i] = room;
    this.used += room;
  }
}
