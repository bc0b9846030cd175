/**
 * Gaussian elimination that finds its pivots as it goes: of the shortest rows left one, and in it the entry, among those
 * that are large enough, whose column has the fewest rows left (threshold pivoting and Markowitz's counts; H. M.
 * Markowitz, Management Science 3, 1957; Duff, Erisman & Reid, Direct Methods for Sparse Matrices, 1986). It writes down
 * what it did as a plan (plan.ts). Every entry has a slot: those of the matrix, then what fills in.
 */
import { longer } from './longer.ts';
import type { Plan } from './plan.ts';
import { RowsByLength } from './rowsByLength.ts';
import type { SparseMatrix } from './sparseMatrix.ts';

/** A pivot is at least this fraction of the largest entry left in its row. */
export const THRESHOLD = 0.1;
/**
 * What is left of a row below this fraction of what it has swallowed is rounding, not a pivot: of its largest entry, or of
 * what the rows subtracted from it had swallowed themselves, times their multiplier.
 */
export const ROUNDING = 1e-14;

const ints = (length: number): Int32Array => new Int32Array(length);
const reals = (length: number): Float64Array => new Float64Array(length);

/** A matrix on its way to its factors; the arrays serve one matrix after another. */
export class Elimination {
  /** By slot: what is left of the entry, in the end an entry of the upper triangle, a pivot or a multiplier. */
  re = reals(0);
  im = reals(0);
  private size = 0;
  private slots = 0;
  private row = ints(0);
  private column = ints(0);
  /** The next slot of the same row, and of the same column, where those of rows that have gone stay; -1 ends a chain. */
  private beside = ints(0);
  private below = ints(0);
  private left = ints(0);
  private top = ints(0);
  /** Entries left in each row; rows left in each column. */
  private length = ints(0);
  private count = ints(0);
  private hasPivot = ints(0);
  private isLeft = ints(0);
  /** The square of what each row has swallowed. */
  private swallowed = reals(0);
  private readonly rowsLeft = new RowsByLength();
  /** What a pivot must have at least in the row taken out last. */
  private least = 0;
  /** The plan as far as it goes. */
  private pivotSlot = ints(0);
  private rivalStart = ints(0);
  private rivalSlot = ints(0);
  private rivals = 0;
  private upperStart = ints(0);
  private upperSlot = ints(0);
  private lowerStart = ints(0);
  private lowerSlot = ints(0);
  private targets = ints(0);
  private targeted = 0;

  /** The plan of the matrix, or a column that is free because there is no pivot for it. */
  run(matrix: SparseMatrix): Plan | number {
    this.begin(matrix);
    for (let k = 0; k < this.size; k++) {
      const row = this.shortestRow();
      if (row < 0) return this.hasPivot.indexOf(0);
      this.eliminate(k, this.choose(k, row));
    }
    return this.planOf(matrix);
  }

  private begin({ size, start, end, columns, re, im }: SparseMatrix): void {
    this.size = size;
    this.slots = columns.length;
    this.rivals = 0;
    this.targeted = 0;
    if (size > this.left.length) this.makeRows(2 * size);
    if (2 * this.slots > this.row.length) this.makeSlots(3 * this.slots);
    this.count.fill(0, 0, size);
    this.hasPivot.fill(0, 0, size);
    this.isLeft.fill(1, 0, size);
    this.left.fill(-1, 0, size);
    this.top.fill(-1, 0, size);
    this.rowsLeft.begin(size);
    // Backward, so that chains begin with what comes first.
    for (let i = size - 1; i >= 0; i--) {
      let peak = 0;
      const from = start[i] as number;
      const to = end[i] as number;
      for (let slot = to - 1; slot >= from; slot--) {
        const vRe = re[slot] as number;
        const vIm = im[slot] as number;
        this.put(slot, i, columns[slot] as number, vRe, vIm);
        const entry = Math.abs(vRe) + Math.abs(vIm);
        if (entry > peak) peak = entry;
      }
      this.swallowed[i] = peak * peak;
      this.length[i] = to - from;
      this.rowsLeft.add(i, to - from);
    }
  }

  private makeRows(size: number): void {
    this.left = ints(size);
    this.top = ints(size);
    this.length = ints(size);
    this.count = ints(size);
    this.hasPivot = ints(size);
    this.isLeft = ints(size);
    this.swallowed = reals(size);
    this.pivotSlot = ints(size);
    this.rivalStart = ints(size + 1);
    this.upperStart = ints(size + 1);
    this.lowerStart = ints(size + 1);
  }

  private makeSlots(room: number): void {
    this.re = longer(this.re, room);
    this.im = longer(this.im, room);
    this.row = longer(this.row, room);
    this.column = longer(this.column, room);
    this.beside = longer(this.beside, room);
    this.below = longer(this.below, room);
    this.rivalSlot = longer(this.rivalSlot, room);
    this.upperSlot = longer(this.upperSlot, room);
    this.lowerSlot = longer(this.lowerSlot, room);
  }

  private put(slot: number, i: number, j: number, re: number, im: number): void {
    const { left, top, count } = this;
    this.re[slot] = re;
    this.im[slot] = im;
    this.row[slot] = i;
    this.column[slot] = j;
    this.beside[slot] = left[i] as number;
    left[i] = slot;
    this.below[slot] = top[j] as number;
    top[j] = slot;
    count[j] = (count[j] as number) + 1;
  }

  private sizeOf(slot: number): number {
    return Math.abs(this.re[slot] as number) + Math.abs(this.im[slot] as number);
  }

  /** Takes a row out of those left; its largest entry. */
  private drop(i: number): number {
    const { column, count, beside } = this;
    this.rowsLeft.remove(i, this.length[i] as number);
    this.isLeft[i] = 0;
    let max = 0;
    for (let slot = this.left[i] as number; slot >= 0; slot = beside[slot] as number) {
      const j = column[slot] as number;
      count[j] = (count[j] as number) - 1;
      const entry = this.sizeOf(slot);
      if (entry > max) max = entry;
    }
    return max;
  }

  /** A shortest row left, taken out; rows of mere rounding are taken out on the way; -1 when none is left. */
  private shortestRow(): number {
    for (;;) {
      const i = this.rowsLeft.shortest();
      if (i < 0) return -1;
      const max = this.drop(i);
      if (!(max * max > ROUNDING * ROUNDING * (this.swallowed[i] as number))) continue;
      this.least = THRESHOLD * max;
      return i;
    }
  }

  /**
   * The pivot's slot; the rest of its row goes into the upper triangle. Entries that would have been chosen before it,
   * had they been large enough, are its rivals.
   */
  private choose(k: number, i: number): number {
    const { column, count, beside, least, rivalSlot, upperSlot } = this;
    const from = this.left[i] as number;
    let pivot = -1;
    let fewest = this.size + 1;
    for (let slot = from; slot >= 0; slot = beside[slot] as number) {
      const rows = count[column[slot] as number] as number;
      if (rows >= fewest || this.sizeOf(slot) < least) continue;
      pivot = slot;
      fewest = rows;
    }
    let upper = this.upperStart[k] as number;
    // Before the pivot an entry of as few rows would have been chosen, after it one of fewer.
    let isRival = fewest;
    for (let slot = from; slot >= 0; slot = beside[slot] as number) {
      if (slot === pivot) {
        isRival--;
        continue;
      }
      upperSlot[upper++] = slot;
      if ((count[column[slot] as number] as number) <= isRival) rivalSlot[this.rivals++] = slot;
    }
    this.upperStart[k + 1] = upper;
    this.rivalStart[k + 1] = this.rivals;
    return pivot;
  }

  /** Clears the pivot's column below it into the lower triangle. */
  private eliminate(k: number, pivot: number): void {
    const pivotColumn = this.column[pivot] as number;
    this.pivotSlot[k] = pivot;
    this.hasPivot[pivotColumn] = 1;
    const upperFrom = this.upperStart[k] as number;
    const upperTo = this.upperStart[k + 1] as number;
    this.makeRoom((this.count[pivotColumn] as number) * (upperTo - upperFrom));
    const { re, im, row, below, length, isLeft, swallowed, lowerSlot } = this;
    const dRe = re[pivot] as number;
    const dIm = im[pivot] as number;
    const square = dRe * dRe + dIm * dIm;
    const pivotSwallowed = swallowed[row[pivot] as number] as number;
    let lower = this.lowerStart[k] as number;
    for (let slot = this.top[pivotColumn] as number; slot >= 0; slot = below[slot] as number) {
      const i = row[slot] as number;
      if (isLeft[i] === 0) continue;
      const aRe = re[slot] as number;
      const aIm = im[slot] as number;
      // Divided, so that a row like the pivot's leaves nothing: no product with the inverse does that.
      const mRe = (aRe * dRe + aIm * dIm) / square;
      const mIm = (aIm * dRe - aRe * dIm) / square;
      re[slot] = mRe;
      im[slot] = mIm;
      lowerSlot[lower++] = slot;
      const more = (mRe * mRe + mIm * mIm) * pivotSwallowed;
      if (more > (swallowed[i] as number)) swallowed[i] = more;
      this.takeOut(i, slot);
      const fills = upperTo > upperFrom ? this.subtract(i, upperFrom, upperTo, mRe, mIm) : 0;
      const before = length[i] as number;
      const after = before + fills - 1;
      length[i] = after;
      this.rowsLeft.remove(i, before);
      this.rowsLeft.add(i, after);
    }
    this.lowerStart[k + 1] = lower;
  }

  /** Room for so many more entries and targets. */
  private makeRoom(more: number): void {
    if (this.slots + more > this.row.length) this.makeSlots(2 * (this.slots + more));
    if (this.targeted + more > this.targets.length)
      this.targets = longer(this.targets, 2 * (this.targeted + more) + 256);
  }

  private takeOut(i: number, slot: number): void {
    const { left, beside } = this;
    let at = left[i] as number;
    if (at === slot) {
      left[i] = beside[slot] as number;
      return;
    }
    while (beside[at] !== slot) at = beside[at] as number;
    beside[at] = beside[slot] as number;
  }

  /** Subtracts a multiple of the pivot's row, which lies in the upper triangle; how many entries have filled in. */
  private subtract(i: number, upperFrom: number, upperTo: number, mRe: number, mIm: number): number {
    const { upperSlot, column, beside, re, im, targets } = this;
    const from = this.left[i] as number;
    const slots = this.slots;
    for (let u = upperFrom; u < upperTo; u++) {
      const upper = upperSlot[u] as number;
      const j = column[upper] as number;
      const uRe = re[upper] as number;
      const uIm = im[upper] as number;
      const pRe = mRe * uRe - mIm * uIm;
      const pIm = mRe * uIm + mIm * uRe;
      let slot = from;
      while (slot >= 0 && column[slot] !== j) slot = beside[slot] as number;
      if (slot < 0) {
        slot = this.slots++;
        this.put(slot, i, j, 0, 0);
      }
      re[slot] = (re[slot] as number) - pRe;
      im[slot] = (im[slot] as number) - pIm;
      targets[this.targeted++] = slot;
    }
    return this.slots - slots;
  }

  private planOf({ size, columns, end }: SparseMatrix): Plan {
    const { row, column } = this;
    const at = (of: Int32Array, slots: Int32Array): Int32Array => {
      const found = ints(slots.length);
      for (let t = 0; t < slots.length; t++) found[t] = of[slots[t] as number] as number;
      return found;
    };
    const pivotSlot = this.pivotSlot.slice(0, size);
    const upperSlot = this.upperSlot.slice(0, this.upperStart[size]);
    const lowerSlot = this.lowerSlot.slice(0, this.lowerStart[size]);
    return {
      columns,
      end,
      pivotSlot,
      pivotRow: at(row, pivotSlot),
      pivotColumn: at(column, pivotSlot),
      rivalStart: this.rivalStart.slice(0, size + 1),
      rivalSlot: this.rivalSlot.slice(0, this.rivals),
      upperStart: this.upperStart.slice(0, size + 1),
      upperColumn: at(column, upperSlot),
      upperSlot,
      lowerStart: this.lowerStart.slice(0, size + 1),
      lowerRow: at(row, lowerSlot),
      lowerSlot,
      targets: this.targets.slice(0, this.targeted),
      slots: this.slots,
    };
  }
}
