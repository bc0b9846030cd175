/**
 * The plan of a factorisation that has been done: which pivots, among which entries they were chosen, and where every
 * product goes. It is traced on the pattern alone, in the order in which elimination.ts works, and followed by
 * follow.ts.
 */
import { LOOKED_AT } from './elimination.ts';
import type { SparseMatrix } from './sparseMatrix.ts';

/** Pivots in their order. */
export interface Pivots {
  readonly row: Int32Array;
  readonly column: Int32Array;
}

export interface Plan {
  readonly columns: Int32Array;
  readonly end: Int32Array;
  readonly pivots: Pivots;
  readonly pivotSlot: Int32Array;
  /** Rows looked at in each step: candidateStart by step; entryStart by candidate; entries with their columns' counts. */
  readonly candidateStart: Int32Array;
  readonly candidateRow: Int32Array;
  readonly entryStart: Int32Array;
  readonly entrySlot: Int32Array;
  readonly entryCount: Int32Array;
  readonly upperStart: Int32Array;
  readonly upperColumn: Int32Array;
  readonly upperSlot: Int32Array;
  readonly lowerStart: Int32Array;
  readonly lowerRow: Int32Array;
  readonly lowerSlot: Int32Array;
  /** For each lower entry and each upper entry of its step: the slot subtracted from, or ~slot where the product fills in. */
  readonly targets: Int32Array;
  /** Slots in all: those of the matrix, then what fills in. */
  readonly slots: number;
}

/** A matrix's pattern on its way through the elimination, without values. */
class Tracing {
  readonly candidateStart = [0];
  readonly candidateRow: number[] = [];
  readonly entryStart = [0];
  readonly entrySlot: number[] = [];
  readonly entryCount: number[] = [];
  readonly upperStart = [0];
  readonly upperColumn: number[] = [];
  readonly upperSlot: number[] = [];
  readonly lowerStart = [0];
  readonly lowerRow: number[] = [];
  readonly lowerSlot: number[] = [];
  readonly targets: number[] = [];
  readonly pivotSlot: number[] = [];
  slots: number;
  private readonly columnOf: number[];
  private readonly rows: number[][];
  private readonly columnRows: number[][];
  private readonly columnCount: number[];
  private readonly active: number[];
  private readonly rowLeft: boolean[];

  constructor({ size, start, end, columns }: SparseMatrix) {
    this.slots = columns.length;
    this.columnOf = Array.from(columns);
    this.rows = [];
    this.columnRows = Array.from({ length: size }, () => []);
    this.columnCount = new Array<number>(size).fill(0);
    for (let i = 0; i < size; i++) {
      const row: number[] = [];
      for (let t = start[i] as number; t < (end[i] as number); t++) {
        row.push(t);
        this.chain(i, columns[t] as number);
      }
      this.rows.push(row);
    }
    this.active = this.rows.map((_, i) => i);
    this.rowLeft = this.rows.map(() => true);
  }

  private chain(i: number, j: number): void {
    (this.columnRows[j] as number[]).push(i);
    this.columnCount[j] = (this.columnCount[j] as number) + 1;
  }

  private rowAt = (i: number): number[] => this.rows[i] as number[];
  private columnAt = (slot: number): number => this.columnOf[slot] as number;

  step(pivotRow: number, pivotColumn: number): void {
    this.lookAtRows();
    const row = this.rowAt(pivotRow);
    this.rowLeft[pivotRow] = false;
    this.active.splice(this.active.indexOf(pivotRow), 1);
    for (const slot of row) {
      const j = this.columnAt(slot);
      this.columnCount[j] = (this.columnCount[j] as number) - 1;
      if (j === pivotColumn) this.pivotSlot.push(slot);
    }
    const upper = row.filter((slot) => this.columnAt(slot) !== pivotColumn);
    for (const slot of upper) {
      this.upperSlot.push(slot);
      this.upperColumn.push(this.columnAt(slot));
    }
    this.upperStart.push(this.upperSlot.length);
    for (const i of this.columnRows[pivotColumn] as number[])
      if (this.rowLeft[i] === true) this.clear(i, pivotColumn, upper);
    this.lowerStart.push(this.lowerRow.length);
  }

  private lookAtRows(): void {
    let shortest = Number.POSITIVE_INFINITY;
    for (const i of this.active) shortest = Math.min(shortest, this.rowAt(i).length);
    let looked = 0;
    for (const i of this.active) {
      const row = this.rowAt(i);
      if (row.length !== shortest) continue;
      this.candidateRow.push(i);
      for (const slot of row) {
        this.entrySlot.push(slot);
        this.entryCount.push(this.columnCount[this.columnAt(slot)] as number);
      }
      this.entryStart.push(this.entrySlot.length);
      looked++;
      if (looked === LOOKED_AT) break;
    }
    this.candidateStart.push(this.candidateRow.length);
  }

  private clear(i: number, pivotColumn: number, upper: readonly number[]): void {
    const row = this.rowAt(i);
    const at = row.findIndex((slot) => this.columnAt(slot) === pivotColumn);
    this.lowerRow.push(i);
    this.lowerSlot.push(row[at] as number);
    row[at] = row[row.length - 1] as number;
    row.pop();
    for (const slot of upper) {
      const j = this.columnAt(slot);
      const target = row.find((other) => this.columnAt(other) === j);
      if (target !== undefined) {
        this.targets.push(target);
        continue;
      }
      const fill = this.slots++;
      this.columnOf.push(j);
      row.push(fill);
      this.chain(i, j);
      this.targets.push(~fill);
    }
  }
}

/** The plan of a factorisation that chose these pivots. */
export function planOf(matrix: SparseMatrix, pivots: Pivots): Plan {
  const traced = new Tracing(matrix);
  for (let k = 0; k < matrix.size; k++) traced.step(pivots.row[k] as number, pivots.column[k] as number);
  return {
    columns: matrix.columns,
    end: matrix.end,
    pivots,
    pivotSlot: Int32Array.from(traced.pivotSlot),
    candidateStart: Int32Array.from(traced.candidateStart),
    candidateRow: Int32Array.from(traced.candidateRow),
    entryStart: Int32Array.from(traced.entryStart),
    entrySlot: Int32Array.from(traced.entrySlot),
    entryCount: Int32Array.from(traced.entryCount),
    upperStart: Int32Array.from(traced.upperStart),
    upperColumn: Int32Array.from(traced.upperColumn),
    upperSlot: Int32Array.from(traced.upperSlot),
    lowerStart: Int32Array.from(traced.lowerStart),
    lowerRow: Int32Array.from(traced.lowerRow),
    lowerSlot: Int32Array.from(traced.lowerSlot),
    targets: Int32Array.from(traced.targets),
    slots: traced.slots,
  };
}
