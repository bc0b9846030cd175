/** A copy of an array with more room behind what it holds. */
export function longer<T extends Int32Array | Float64Array>(old: T, room: number): T {
  const made = old instanceof Int32Array ? new Int32Array(room) : new Float64Array(room);
  made.set(old);
  return made as T;
}
