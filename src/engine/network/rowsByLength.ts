/** Rows in chains, one for each number of entries that they have left; the row that changed last comes first. */
export class RowsByLength {
  private size = 0;
  private least = 0;
  private first = new Int32Array(0);
  private after = new Int32Array(0);
  private before = new Int32Array(0);

  begin(size: number): void {
    this.size = size;
    this.least = size;
    if (size > this.after.length) {
      this.first = new Int32Array(2 * size + 1);
      this.after = new Int32Array(2 * size);
      this.before = new Int32Array(2 * size);
    }
    this.first.fill(-1, 0, size + 1);
  }

  add(row: number, length: number): void {
    const next = this.first[length] as number;
    this.after[row] = next;
    this.before[row] = -1;
    if (next >= 0) this.before[next] = row;
    this.first[length] = row;
    if (length < this.least) this.least = length;
  }

  remove(row: number, length: number): void {
    const next = this.after[row] as number;
    const last = this.before[row] as number;
    if (next >= 0) this.before[next] = last;
    if (last >= 0) this.after[last] = next;
    else this.first[length] = next;
  }

  /** A row with the fewest entries, -1 when there is none. */
  shortest(): number {
    while (this.least <= this.size && this.first[this.least] === -1) this.least++;
    return this.least > this.size ? -1 : (this.first[this.least] as number);
  }
}
