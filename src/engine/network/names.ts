/**
 * Names put in order by numbers: every name met has a place among the others, so that lists of names met before are
 * put in order without comparing text. The order is that of the code units, whatever was met when.
 */
export interface Name {
  readonly text: string;
  /** Ascends in the order of the names, until others are met. */
  place: number;
  /** The list in which it was met last, and its number there. */
  list: number;
  index: number;
}

const APART = 1024 * 1024;
const MOST = 4096;
/** So many moves a name are thought worth less than sorting anew. */
const MOVES = 16;

export class Names {
  private known = new Map<string, Name>();
  private sorted: Name[] = [];
  private list = 0;

  /** Begins a list. Names taken into the one before are not to be asked any longer. */
  begin(): void {
    this.list++;
    if (this.sorted.length < MOST) return;
    this.known = new Map();
    this.sorted = [];
  }

  of(text: string): Name {
    return this.known.get(text) ?? this.meet(text);
  }

  /** Gives a name its number in the list; false if it has one already. */
  take(name: Name, index: number): boolean {
    if (name.list === this.list) return false;
    name.list = this.list;
    name.index = index;
    return true;
  }

  private meet(text: string): Name {
    const { sorted } = this;
    let low = 0;
    let high = sorted.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if ((sorted[middle] as Name).text < text) low = middle + 1;
      else high = middle;
    }
    const after = sorted[low]?.place ?? (sorted[low - 1]?.place ?? 0) + 2 * APART;
    const before = sorted[low - 1]?.place ?? after - 2 * APART;
    const name = { text, place: (before + after) / 2, list: 0, index: -1 };
    sorted.splice(low, 0, name);
    this.known.set(text, name);
    if (!(name.place > before && name.place < after)) {
      for (let i = 0; i < sorted.length; i++) (sorted[i] as Name).place = i * APART;
    }
    return name;
  }
}

/** Puts names in order in place; lists come in nearly that order. */
export function sortNames(names: Name[]): void {
  let moves = 0;
  for (let i = 1; i < names.length; i++) {
    const name = names[i] as Name;
    let at = i;
    while (at > 0 && (names[at - 1] as Name).place > name.place) {
      names[at] = names[at - 1] as Name;
      at--;
    }
    names[at] = name;
    moves += i - at;
    if (moves <= MOVES * names.length) continue;
    names.sort((a, b) => a.place - b.place);
    return;
  }
}
