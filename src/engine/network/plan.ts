/**
 * The plan of a factorisation that has been done (elimination.ts): which pivots, before which entries they were chosen,
 * and where every product goes. It is followed by follow.ts. Entries are named by their slots: those of the matrix,
 * then what fills in.
 */
export interface Plan {
  /** Of the matrix that it was made for. */
  readonly columns: Int32Array;
  readonly end: Int32Array;
  /** Pivots in their order. */
  readonly pivotSlot: Int32Array;
  readonly pivotRow: Int32Array;
  readonly pivotColumn: Int32Array;
  /** Entries of the pivot's row that would have been chosen in each step before it, had they been large enough. */
  readonly rivalStart: Int32Array;
  readonly rivalSlot: Int32Array;
  readonly upperStart: Int32Array;
  readonly upperColumn: Int32Array;
  readonly upperSlot: Int32Array;
  readonly lowerStart: Int32Array;
  readonly lowerRow: Int32Array;
  readonly lowerSlot: Int32Array;
  /** For each lower entry and each upper entry of its step: the slot subtracted from. */
  readonly targets: Int32Array;
  /** Slots in all. */
  readonly slots: number;
}

/** One triangle of the factors, step by step: entries of step k are start[k] up to, not including, start[k + 1]. */
export interface Triangle {
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
  /** 1 / pivot. */
  readonly inverseRe: Float64Array;
  readonly inverseIm: Float64Array;
  readonly lower: Triangle;
  readonly upper: Triangle;
}
