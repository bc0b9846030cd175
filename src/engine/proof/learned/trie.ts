/**
 * A pure function of Worlds, learned. What it gives follows from the places that it read, and the place read next follows
 * from what stood in those before; so its runs make a tree: at a node a place, at its branches what stood there, at its
 * leaves what came out. A World that takes a known way down the tree has the same outcome, whatever else stands in it.
 * Places that were the same in all members met so far make no node; when one of them turns out to change, it becomes the
 * new root, with the old tree under what it always was.
 */
import type { Place, Reader } from './members.ts';

/** A place in one of the function's Worlds: where the tuple of that World begins, and the place's own member. */
interface Node<T> {
  readonly place: Place;
  readonly slot: number;
  readonly branches: Map<number, Node<T> | Leaf<T>>;
  /** The branch last taken. */
  value: number;
  next: Node<T> | Leaf<T>;
}

interface Leaf<T> {
  readonly place: null;
  readonly outcome: T;
}

/** One read of a run. */
export interface Read {
  readonly place: Place;
  /** Which member of which World in the tuple that is asked. */
  readonly slot: number;
}

export class Trie<T> implements Reader {
  private root: Node<T> | Leaf<T> | null = null;
  /** Where the places stand that are the same in all members so far. */
  private readonly fixed = new Map<Place, number[]>();
  /** Runs learned. */
  runs = 0;

  /** The outcome for the tuple; undefined when no run has come this way. */
  find(tuple: ArrayLike<number>): T | undefined {
    let at = this.root;
    while (at !== null) {
      if (at.place === null) return at.outcome;
      const value = at.place.in(tuple[at.slot] as number);
      if (value !== at.value) {
        const next = at.branches.get(value);
        if (next === undefined) return undefined;
        at.value = value;
        at.next = next;
      }
      at = at.next;
    }
    return undefined;
  }

  /** Learns a run: what it read, in order, and what came out. */
  learn(tuple: ArrayLike<number>, reads: readonly Read[], outcome: T): void {
    this.runs++;
    const left: Read[] = [];
    for (const read of reads) {
      if (read.place.others !== null) left.push(read);
      else this.rely(read);
    }
    // Down the known way first; what it has asked need not be asked again.
    const asked = new Map<Place, number[]>();
    let last: Node<T> | null = null;
    let at = this.root;
    while (at !== null && at.place !== null) {
      asked.set(at.place, [...(asked.get(at.place) ?? []), at.slot]);
      last = at;
      at = at.branches.get(at.place.in(tuple[at.slot] as number)) ?? null;
    }
    let grown: Node<T> | Leaf<T> = { place: null, outcome };
    for (const { place, slot } of left.reverse()) {
      if (asked.get(place)?.includes(slot)) continue;
      const value = place.in(tuple[slot] as number);
      grown = { place, slot, branches: new Map([[value, grown]]), value, next: grown };
    }
    if (last === null) this.root = grown;
    else last.branches.set(last.place.in(tuple[last.slot] as number), grown);
  }

  private rely({ place, slot }: Read): void {
    const slots = this.fixed.get(place);
    if (slots !== undefined) {
      if (!slots.includes(slot)) slots.push(slot);
      return;
    }
    this.fixed.set(place, [slot]);
    place.readers.add(this);
  }

  turned(place: Place, before: number): void {
    const slots = this.fixed.get(place);
    this.fixed.delete(place);
    if (slots === undefined || this.root === null) return;
    for (const slot of slots) {
      const under: Node<T> | Leaf<T> = this.root;
      this.root = { place, slot, branches: new Map([[before, under]]), value: before, next: under };
    }
  }
}
