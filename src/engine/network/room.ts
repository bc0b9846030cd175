/**
 * Arrays that serve one network after another: making them costs more than what is reckoned in them. Nothing in a room
 * outlives the next network that is put there.
 */

const none = new Float64Array(0);

export interface Room {
  /** Entries of the matrix. */
  re: Float64Array<ArrayBuffer>;
  im: Float64Array<ArrayBuffer>;
  /** Scaling of rows and columns, sizes of the scaled entries. */
  row: Float64Array<ArrayBuffer>;
  column: Float64Array<ArrayBuffer>;
  sizes: Float64Array<ArrayBuffer>;
  /** Factors. */
  inverseRe: Float64Array<ArrayBuffer>;
  inverseIm: Float64Array<ArrayBuffer>;
  lowerRe: Float64Array<ArrayBuffer>;
  lowerIm: Float64Array<ArrayBuffer>;
  upperRe: Float64Array<ArrayBuffer>;
  upperIm: Float64Array<ArrayBuffer>;
}

export const emptyRoom = (): Room => ({
  re: none,
  im: none,
  row: none,
  column: none,
  sizes: none,
  inverseRe: none,
  inverseIm: none,
  lowerRe: none,
  lowerIm: none,
  upperRe: none,
  upperIm: none,
});

/** The array, or a new one if it is too short. */
export const fitting = (array: Float64Array<ArrayBuffer>, length: number): Float64Array<ArrayBuffer> =>
  array.length < length ? new Float64Array(length) : array;

/** The same for whole numbers. */
export const fittingInts = (array: Int32Array<ArrayBuffer>, length: number): Int32Array<ArrayBuffer> =>
  array.length < length ? new Int32Array(length) : array;
