/** Things kept once: by a key, or numbered by their text. */

/** Finds the thing by its key, or makes it. */
export function kept<K, T>(map: Map<K, T>, key: K, make: () => T): T {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}

/** Things numbered by their text. */
export class Book<T> {
  readonly things: T[] = [];
  private readonly numbers = new Map<string, number>();

  numberOf(thing: T): number {
    const text = JSON.stringify(thing);
    const known = this.numbers.get(text);
    if (known !== undefined) return known;
    this.numbers.set(text, this.things.length);
    this.things.push(thing);
    return this.things.length - 1;
  }
}
