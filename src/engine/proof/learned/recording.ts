/**
 * Worlds that note what is read of them. Every member is handed out behind a proxy made for the one run, so nothing that
 * the engine keeps by object from an earlier run can hide a read; members asked for whole (the parts, for functions that
 * solve circuits) count as read as soon as they are touched and are handed out bare. What comes out is taken apart again:
 * what is still a proxy in its own place was left as it was; a proxy anywhere else counts as read to its last leaf. Lists
 * of what was perceived are mostly added to: their members may be passed on in bulk unread; whoever looks at one of those
 * makes the run start over with that list read whole.
 */
import type { World } from '../../world/types.ts';
import { at, type Group, type Member, type MemberName, memberNames, type Place } from './members.ts';
import type { Read } from './trie.ts';

type Holder = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Holder => typeof value === 'object' && value !== null;

/** Small things that seldom change: handed out bare, read as one. */
const entire: ReadonlySet<string> = new Set(['at', 'end', 'nets', 'values', 'words', 'state']);

/** Asked of a proxy, it gives what is behind it. */
const behind = Symbol('what is behind');

/** What a proxy looks like from outside; nothing is ever written to these. */
const asList: object = [];
const asThing: object = {};

/** A proxy's handler: what is behind it, and where that stands. */
class Seat implements ProxyHandler<object> {
  readonly run: Run;
  readonly place: Place;
  readonly slot: number;
  readonly raw: object;

  constructor(run: Run, place: Place, slot: number, raw: object) {
    this.run = run;
    this.place = place;
    this.slot = slot;
    this.raw = raw;
  }

  get(_: object, key: string | symbol, self: unknown): unknown {
    const { run, place, slot, raw } = this;
    if (typeof key === 'symbol') {
      if (key === behind) return this;
      return key === Symbol.iterator && run.passesOn(place) ? run.bulk(place) : Reflect.get(raw, key, self);
    }
    const isOwn = Object.hasOwn(raw, key);
    if (!isOwn && (key === 'toJSON' || key in raw)) return Reflect.get(raw, key, self);
    const child = place.child(key);
    const value = isOwn ? (raw as Holder)[key] : undefined;
    if (isObject(value) && entire.has(key)) {
      run.read(child.child('', 'whole'), slot);
      return value;
    }
    run.read(child, slot);
    return isObject(value) ? run.proxy(child, slot, value) : value;
  }

  has(_: object, key: string | symbol): boolean {
    if (typeof key === 'string') this.run.read(this.place.child(key), this.slot);
    return key in this.raw;
  }

  ownKeys(): (string | symbol)[] {
    this.run.read(this.place.child('', 'keys'), this.slot);
    return Reflect.ownKeys(this.raw);
  }

  getOwnPropertyDescriptor(_: object, key: string | symbol): PropertyDescriptor | undefined {
    if (typeof key === 'symbol') return undefined;
    const child = this.place.child(key);
    this.run.read(child, this.slot);
    const found = Reflect.getOwnPropertyDescriptor(this.raw, key);
    if (found === undefined) return undefined;
    const value: unknown = isObject(found.value) ? this.run.proxy(child, this.slot, found.value) : found.value;
    const isLength = Array.isArray(this.raw) && key === 'length';
    return { value, writable: true, enumerable: !isLength, configurable: !isLength };
  }

  set(): never {
    throw new Error(`something changes ${this.place.key} in place`);
  }

  deleteProperty(): never {
    throw new Error(`something deletes from ${this.place.key} in place`);
  }
}

/** Stands for all that a list held before. */
class Bulk {
  readonly place: Place;
  constructor(place: Place) {
    this.place = place;
  }
}

/** What is behind a proxy; undefined for what is none. */
const seatOf = (value: object): Seat | undefined => {
  const found: unknown = (value as { readonly [behind]?: unknown })[behind];
  return found instanceof Seat ? found : undefined;
};
const bulkOf = (value: object): Bulk | undefined => {
  const found: unknown = (value as { readonly [behind]?: unknown })[behind];
  return found instanceof Bulk ? found : undefined;
};

/** Thrown when a list that was to be passed on unread is looked into after all. */
class LookedInto extends Error {
  readonly place: Place;
  constructor(place: Place) {
    super('a list is read that was to be passed on');
    this.place = place;
  }
}

/** A change of a member: a path and what is to stand there; `adds` puts it behind what a list holds. */
export interface Write {
  readonly path: readonly string[];
  readonly value: unknown;
  readonly how: 'set' | 'delete' | 'add';
}

/** What a run makes of a member: nothing, some writes, or the whole of it. */
export type Change = readonly Write[];

/** How members are handed out. */
export interface Manner {
  /** Members handed out bare, read as one. */
  readonly whole: ReadonlySet<MemberName>;
  /** Places of lists that may be passed on unread; shrinks as they turn out to be read. */
  readonly lists: Set<Place>;
}

/** Runs so far. */
let serials = 0;

export class Run {
  readonly reads: Read[] = [];
  private readonly manner: Manner;
  private readonly serial: number;
  private isOver = false;

  constructor(manner: Manner) {
    this.manner = manner;
    this.serial = ++serials;
  }

  read(place: Place, slot: number): void {
    if (this.isOver) return;
    const which = slot < memberNames.length ? 0 : 1;
    if (place.readBy[which] === this.serial) return;
    place.readBy[which] = this.serial;
    this.reads.push({ place, slot });
  }

  hasRead(place: Place, slot: number): boolean {
    return place.readBy[slot < memberNames.length ? 0 : 1] === this.serial;
  }

  /** What is kept beyond the run reads on without being noted. */
  end(): void {
    this.isOver = true;
  }

  /** The World of a tuple that begins at `from`. */
  world(groups: readonly Group[], tuple: ArrayLike<number>, from: number, fixed: World): World {
    const numbers = memberNames.map((_, i) => tuple[from + i] as number);
    const member = <N extends MemberName>(name: N): World[N] => {
      const group = groups[at[name]] as Group;
      const raw = group.members[numbers[at[name]] as number] as Member;
      return this.handedOut(group, name, from + at[name], raw) as World[N];
    };
    const { scenario, scenarioHash, stands, given } = fixed;
    return {
      scenario,
      scenarioHash,
      stands,
      given,
      get clock() {
        return member('clock');
      },
      get site() {
        return member('site');
      },
      get truck() {
        return member('truck');
      },
      get parts() {
        return member('parts');
      },
      get people() {
        return member('people');
      },
      get tools() {
        return member('tools');
      },
      get jumpers() {
        return member('jumpers');
      },
      get covers() {
        return member('covers');
      },
      get guards() {
        return member('guards');
      },
      get orders() {
        return member('orders');
      },
      get knowledge() {
        return member('knowledge');
      },
      get paper() {
        return member('paper');
      },
      get chance() {
        return member('chance');
      },
      get ended() {
        return member('ended');
      },
    };
  }

  private handedOut(group: Group, name: MemberName, slot: number, raw: Member): unknown {
    if (!isObject(raw)) {
      this.read(group.root, slot);
      return raw;
    }
    if (!this.manner.whole.has(name)) return this.proxy(group.root, slot, raw);
    this.read(group.number, slot);
    return raw;
  }

  proxy(place: Place, slot: number, raw: object): object {
    const which = slot < memberNames.length ? 0 : 1;
    const known = place.given[which];
    if (place.givenTo[which] === this.serial && known !== null) return known;
    const seat = new Seat(this, place, slot, raw);
    const made = new Proxy(Array.isArray(raw) ? asList : asThing, seat);
    place.givenTo[which] = this.serial;
    place.given[which] = made;
    return made;
  }

  /** Whether the list may be passed on unread. */
  passesOn(place: Place): boolean {
    return this.manner.lists.has(place);
  }

  /** Passes a list on as one thing that says when it is looked at. */
  bulk(place: Place): () => Iterator<unknown> {
    const bulk = new Bulk(place);
    const stand = new Proxy(
      {},
      {
        get: (_, key) => {
          if (key === behind) return bulk;
          throw new LookedInto(place);
        },
        has: () => {
          throw new LookedInto(place);
        },
        ownKeys: () => {
          throw new LookedInto(place);
        },
        getOwnPropertyDescriptor: () => {
          throw new LookedInto(place);
        },
      },
    );
    return () => [stand][Symbol.iterator]();
  }

  /** The thing with every proxy replaced by what is behind it, which counts as read to the last leaf. */
  bare(value: unknown): unknown {
    if (!isObject(value)) return value;
    const bulk = bulkOf(value);
    if (bulk !== undefined) throw new LookedInto(bulk.place);
    const seat = seatOf(value);
    if (seat !== undefined) {
      this.read(seat.place.child('', 'whole'), seat.slot);
      return seat.raw;
    }
    if (Array.isArray(value)) {
      const list = value.map((each) => this.bare(each));
      return list.every((each, i) => each === value[i]) ? value : list;
    }
    const entries = Object.entries(value).map(([key, each]) => [key, this.bare(each)] as const);
    return entries.every(([key, each]) => each === value[key]) ? value : Object.fromEntries(entries);
  }

  /** What has become of the World of the tuple. */
  changes(groups: readonly Group[], tuple: ArrayLike<number>, after: World): readonly (Change | null)[] {
    return memberNames.map((name, i) => {
      const group = groups[i] as Group;
      const raw = group.members[tuple[i] as number] as Member;
      const now: unknown = after[name];
      const writes: Write[] = [];
      this.compare(group.root, i, raw, now, [], writes);
      return writes.length === 0 ? null : writes;
    });
  }

  private compare(
    place: Place,
    slot: number,
    was: unknown,
    now: unknown,
    path: readonly string[],
    writes: Write[],
  ): void {
    if (!isObject(now)) {
      if (was === now && this.hasRead(place, slot)) return;
      writes.push({ path, value: now, how: now === undefined && path.length > 0 ? 'delete' : 'set' });
      return;
    }
    const seat = seatOf(now);
    if (seat?.run === this && seat.place === place && seat.slot === slot) return;
    // Handed out bare and given back: as it was, and read as one.
    if (now === was && (this.hasRead(place.group.number, slot) || this.hasRead(place.child('', 'whole'), slot))) return;
    if (seat === undefined && isObject(was) && Array.isArray(now) === Array.isArray(was)) {
      if (Array.isArray(now)) {
        const [first, ...added] = now as readonly unknown[];
        const bulk = isObject(first) ? bulkOf(first) : undefined;
        if (bulk?.place === place) {
          for (const each of added) writes.push({ path, value: this.bare(each), how: 'add' });
          return;
        }
        if (now.length === (was as unknown as readonly unknown[]).length && this.hasRead(place.child('length'), slot)) {
          for (const [i, each] of now.entries()) {
            this.compare(place.child(`${i}`), slot, was[`${i}`], each, [...path, `${i}`], writes);
          }
          return;
        }
      } else if (this.hasRead(place.child('', 'keys'), slot)) {
        for (const key of new Set([...Object.keys(was), ...Object.keys(now)])) {
          this.compare(place.child(key), slot, was[key], now[key], [...path, key], writes);
        }
        return;
      }
    }
    writes.push({ path, value: this.bare(now), how: 'set' });
  }
}

/** Runs a function over recording Worlds until no list that is passed on is looked into. */
export function recorded<T>(manner: Manner, body: (run: Run) => T): { readonly run: Run; readonly outcome: T } {
  for (;;) {
    const run = new Run(manner);
    try {
      const outcome = body(run);
      run.end();
      return { run, outcome };
    } catch (error) {
      if (!(error instanceof LookedInto) || !manner.lists.delete(error.place)) throw error;
    }
  }
}
