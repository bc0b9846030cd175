/** Complex vectors side by side: the real part of number i in lane g is at 2 (i lanes + g), its imaginary part behind it. */
export interface Lanes {
  readonly lanes: number;
  readonly values: Float64Array;
}

/** One number of one lane. */
export interface LaneEntry {
  readonly row: number;
  readonly lane: number;
  readonly re: number;
  readonly im: number;
}

/** Vectors that are nearly all zeros: what is not; entries at one place add up. */
export interface SparseLanes {
  readonly lanes: number;
  readonly entries: readonly LaneEntry[];
}
