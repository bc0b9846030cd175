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
  /** Rows looked at in each step that have changed since they were last: by step, then slots by row. */
  readonly lookStart: Int32Array;
  readonly lookRow: Int32Array;
  readonly lookSlotStart: Int32Array;
  readonly lookSlot: Int32Array;
  /** Entries that would be chosen in each step instead, if large enough: their slots, rows and RIVAL_ kinds. */
  readonly rivalStart: Int32Array;
  readonly rivalSlot: Int32Array;
  readonly rivalRow: Int32Array;
  readonly rivalKind: Int32Array;
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

/** In a column of fewer entries than the pivot's, or one that would have ended the search: chosen whatever its size. */
export const RIVAL_FIRST = 2;
/** In a column of as many, and found before the pivot: chosen unless the pivot is larger. */
export const RIVAL_BEFORE = 1;
/** In a column of as many, and found after the pivot: chosen if larger. */
export const RIVAL_AFTER = 0;

/** A matrix's pattern on its way through the elimination, without values. */
class Tracing {
  readonly lookStart = [0];
  readonly lookRow: number[] = [];
  readonly lookSlotStart = [0];
  readonly lookSlot: number[] = [];
  readonly rivalStart = [0];
  readonly rivalSlot: number[] = [];
  readonly rivalRow: number[] = [];
  readonly rivalKind: number[] = [];
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
  /** Rows that have not changed since they were looked at. */
  private readonly rowKnown: boolean[];

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
    this.rowKnown = this.rows.map(() => false);
  }

  private chain(i: number, j: number): void {
    (this.columnRows[j] as number[]).push(i);
    this.columnCount[j] = (this.columnCount[j] as number) + 1;
  }

  private rowAt = (i: number): number[] => this.rows[i] as number[];
  private columnAt = (slot: number): number => this.columnOf[slot] as number;

  step(pivotRow: number, pivotColumn: number): void {
    this.lookAtRows(pivotRow, pivotColumn);
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

  private lookAtRows(pivotRow: number, pivotColumn: number): void {
    const pivotCount = this.columnCount[pivotColumn] as number;
    let shortest = Number.POSITIVE_INFINITY;
    for (const i of this.active) shortest = Math.min(shortest, this.rowAt(i).length);
    let looked = 0;
    let isPast = false;
    for (const i of this.active) {
      if (this.rowAt(i).length !== shortest) continue;
      this.look(i);
      // A column of one entry ends the search after its row.
      const endsSearch = pivotCount === 1 && i !== pivotRow;
      for (const slot of this.rowAt(i)) {
        const j = this.columnAt(slot);
        const count = this.columnCount[j] as number;
        if (i === pivotRow && j === pivotColumn) isPast = true;
        else if (count < pivotCount || (count === 1 && endsSearch)) this.rival(i, slot, RIVAL_FIRST);
        else if (count === pivotCount) this.rival(i, slot, isPast ? RIVAL_AFTER : RIVAL_BEFORE);
      }
      looked++;
      if (looked === LOOKED_AT || (isPast && pivotCount === 1)) break;
    }
    this.lookStart.push(this.lookRow.length);
    this.rivalStart.push(this.rivalSlot.length);
  }

  private look(i: number): void {
    if (this.rowKnown[i] === true) return;
    this.rowKnown[i] = true;
    this.lookRow.push(i);
    for (const slot of this.rowAt(i)) this.lookSlot.push(slot);
    this.lookSlotStart.push(this.lookSlot.length);
  }

  private rival(i: number, slot: number, kind: number): void {
    this.rivalSlot.push(slot);
    this.rivalRow.push(i);
    this.rivalKind.push(kind);
  }

  private clear(i: number, pivotColumn: number, upper: readonly number[]): void {
    const row = this.rowAt(i);
    this.rowKnown[i] = false;
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
    lookStart: Int32Array.from(traced.lookStart),
    lookRow: Int32Array.from(traced.lookRow),
    lookSlotStart: Int32Array.from(traced.lookSlotStart),
    lookSlot: Int32Array.from(traced.lookSlot),
    rivalStart: Int32Array.from(traced.rivalStart),
    rivalSlot: Int32Array.from(traced.rivalSlot),
    rivalRow: Int32Array.from(traced.rivalRow),
    rivalKind: Int32Array.from(traced.rivalKind),
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
