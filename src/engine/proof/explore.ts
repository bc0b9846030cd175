/**
 * Exhaustive weighted exploration: states by least cost first (Dijkstra 1959), told apart by a key, until a state is
 * done, none is left, or a bound is reached. Says which of the three it was. Ties go to what was found first, so the
 * same start gives the same route. A binary heap and a map of keys; whoever calls owns key, steps and costs.
 */

/** A step out of a state. */
export interface Edge<S, L> {
  readonly to: S;
  readonly cost: number;
  readonly by: L;
}

export interface Space<S, L> {
  readonly start: S;
  /** Equal keys mean: whatever can follow is the same. */
  readonly key: (state: S) => string;
  readonly next: (state: S) => readonly Edge<S, L>[];
  readonly done: (state: S) => boolean;
  /** States expanded at most. */
  readonly limit?: number;
  /** Asked now and then: true stops it. */
  readonly stop?: (states: number, transitions: number) => boolean;
  /** Told of every state when it is reached at its least cost. */
  readonly visit?: (state: S, cost: number) => void;
}

export interface Explored<S, L> {
  /** 'done': the route leads to a state that is; 'exhausted': there is none; 'stopped': not known. */
  readonly end: 'done' | 'exhausted' | 'stopped';
  readonly cost: number;
  readonly route: readonly { readonly from: S; readonly by: L; readonly to: S }[];
  readonly states: number;
  readonly transitions: number;
}

interface Reached<S, L> {
  readonly state: S;
  readonly cost: number;
  readonly from: Reached<S, L> | null;
  readonly by: L | null;
  readonly key: string;
  readonly rank: number;
}

/** Least first; equal cost by order of arrival. */
class Heap<S, L> {
  private readonly items: Reached<S, L>[] = [];

  get size(): number {
    return this.items.length;
  }

  private before(a: number, b: number): boolean {
    const [one, other] = [this.items[a], this.items[b]];
    if (one === undefined || other === undefined) return one !== undefined;
    return one.cost !== other.cost ? one.cost < other.cost : one.rank < other.rank;
  }

  private swap(a: number, b: number): void {
    const [one, other] = [this.items[a], this.items[b]];
    if (one === undefined || other === undefined) return;
    this.items[a] = other;
    this.items[b] = one;
  }

  push(item: Reached<S, L>): void {
    this.items.push(item);
    let i = this.items.length - 1;
    while (i > 0 && this.before(i, (i - 1) >> 1)) {
      this.swap(i, (i - 1) >> 1);
      i = (i - 1) >> 1;
    }
  }

  pop(): Reached<S, L> | undefined {
    const [first] = this.items;
    const last = this.items.pop();
    if (first === undefined || last === undefined || this.items.length === 0) return first;
    this.items[0] = last;
    for (let i = 0; ; ) {
      const left = 2 * i + 1;
      const least = left + 1 < this.items.length && this.before(left + 1, left) ? left + 1 : left;
      if (left >= this.items.length || !this.before(least, i)) return first;
      this.swap(i, least);
      i = least;
    }
  }
}

function routeTo<S, L>(end: Reached<S, L>): Explored<S, L>['route'] {
  const route: { from: S; by: L; to: S }[] = [];
  for (let at: Reached<S, L> | null = end; at?.from; at = at.from) {
    if (at.by !== null || at.from !== null) route.push({ from: at.from.state, by: at.by as L, to: at.state });
  }
  return route.reverse();
}

/** States between two questions whether to stop. */
const ASK_EVERY = 64;

/** Explores the space; the route is empty unless a state was done. */
export function explore<S, L>(space: Space<S, L>): Explored<S, L> {
  const { start, key, next, done, limit = Number.POSITIVE_INFINITY } = space;
  const least = new Map<string, number>();
  const closed = new Set<string>();
  const open = new Heap<S, L>();
  let rank = 0;
  let transitions = 0;
  const first: Reached<S, L> = { state: start, cost: 0, from: null, by: null, key: key(start), rank };
  least.set(first.key, 0);
  open.push(first);
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    if (closed.has(at.key)) continue;
    closed.add(at.key);
    space.visit?.(at.state, at.cost);
    const counts = { states: closed.size, transitions };
    if (done(at.state)) return { end: 'done', cost: at.cost, route: routeTo(at), ...counts };
    const isTold = closed.size % ASK_EVERY === 0 && space.stop?.(closed.size, transitions) === true;
    if (closed.size >= limit || isTold) return { end: 'stopped', cost: at.cost, route: [], ...counts };
    for (const { to, cost, by } of next(at.state)) {
      transitions++;
      const name = key(to);
      const total = at.cost + cost;
      if (total >= (least.get(name) ?? Number.POSITIVE_INFINITY)) continue;
      least.set(name, total);
      rank++;
      open.push({ state: to, cost: total, from: at, by, key: name, rank });
    }
  }
  return { end: 'exhausted', cost: Number.POSITIVE_INFINITY, route: [], states: closed.size, transitions };
}
