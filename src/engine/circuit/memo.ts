/** A bounded memory of results by key; the one not used for longest is dropped. Results never depend on it. */
export class Memo<T> {
  private readonly kept = new Map<string, T>();
  private readonly limit: number;

  constructor(limit: number) {
    this.limit = limit;
  }

  /** The result kept under the key, or else made now and kept. */
  get(key: string, make: () => T): T {
    const known = this.kept.get(key);
    if (known !== undefined) {
      this.kept.delete(key);
      this.kept.set(key, known);
      return known;
    }
    const made = make();
    this.kept.set(key, made);
    const [oldest] = this.kept.keys();
    if (oldest !== undefined && this.kept.size > this.limit) this.kept.delete(oldest);
    return made;
  }
}
