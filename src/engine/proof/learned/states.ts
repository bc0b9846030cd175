/** A set of tuples, each with the number of its arrival: an open-addressed table (Knuth, vol. 3, 6.4) over one long array. */
export class States {
  private readonly size: number;
  private data: Int32Array;
  private table: Int32Array;
  private mask: number;
  count = 0;

  constructor(size: number) {
    this.size = size;
    this.data = new Int32Array(size * 1024);
    this.table = new Int32Array(4096);
    this.mask = 4095;
  }

  /** One at a time (Jenkins 1997). */
  private hash(tuple: Int32Array): number {
    let h = 0;
    for (let i = 0; i < this.size; i++) {
      h = (h + (tuple[i] as number)) | 0;
      h = (h + (h << 10)) | 0;
      h ^= h >>> 6;
    }
    h = (h + (h << 3)) | 0;
    h ^= h >>> 11;
    return (h + (h << 15)) >>> 0;
  }

  private isAt(state: number, tuple: Int32Array): boolean {
    const from = state * this.size;
    for (let i = 0; i < this.size; i++) if (this.data[from + i] !== tuple[i]) return false;
    return true;
  }

  /** The number of a tuple; a new one is `count` as it was. */
  add(tuple: Int32Array): number {
    let slot = this.hash(tuple) & this.mask;
    for (;;) {
      const there = this.table[slot] as number;
      if (there === 0) break;
      if (this.isAt(there - 1, tuple)) return there - 1;
      slot = (slot + 1) & this.mask;
    }
    const state = this.count++;
    if ((state + 1) * this.size > this.data.length) {
      const longer = new Int32Array(this.data.length * 2);
      longer.set(this.data);
      this.data = longer;
    }
    this.data.set(tuple, state * this.size);
    this.table[slot] = state + 1;
    if (2 * this.count > this.table.length) this.widen();
    return state;
  }

  private widen(): void {
    this.table = new Int32Array(this.table.length * 2);
    this.mask = this.table.length - 1;
    const tuple = new Int32Array(this.size);
    for (let state = 0; state < this.count; state++) {
      this.read(state, tuple);
      let slot = this.hash(tuple) & this.mask;
      while (this.table[slot] !== 0) slot = (slot + 1) & this.mask;
      this.table[slot] = state + 1;
    }
  }

  /** Copies a tuple out. */
  read(state: number, into: Int32Array): void {
    const from = state * this.size;
    for (let i = 0; i < this.size; i++) into[i] = this.data[from + i] as number;
  }
}
