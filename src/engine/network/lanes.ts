/**
 * Complex vectors side by side, each in a lane: what is done to all of them is done in one sweep, to the same bits as
 * if each had been alone.
 */

/** The real part of number i in lane g is at 2 (i lanes + g), its imaginary part behind it. */
export interface Lanes {
  readonly lanes: number;
  readonly values: Float64Array;
}

/** Copies one lane's numbers, so many, to a lane of another. */
export function copyLane(from: Lanes, lane: number, to: Lanes, toLane: number, size: number): void {
  for (let i = 0; i < size; i++) {
    const at = 2 * (i * from.lanes + lane);
    const toAt = 2 * (i * to.lanes + toLane);
    to.values[toAt] = from.values[at] as number;
    to.values[toAt + 1] = from.values[at + 1] as number;
  }
}
