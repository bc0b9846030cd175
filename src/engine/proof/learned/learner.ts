/** Runs parts of the engine over recording Worlds and keeps what they gave by what they read. */
import type { World } from '../../world/types.ts';
import { at, Group, type MemberName, memberNames, type Place } from './members.ts';
import { type Manner, type Run, recorded } from './recording.ts';
import type { Trie } from './trie.ts';
import { SIZE, type Tuple } from './tuples.ts';

/** For functions that solve circuits: they read the parts as one. */
export const wholeParts: ReadonlySet<MemberName> = new Set(['parts', 'jumpers']);
export const nothingWhole: ReadonlySet<MemberName> = new Set();

export class Learner {
  readonly groups: readonly Group[];
  /** Runs of the engine. */
  runs = 0;
  private readonly fixed: World;
  private readonly lists: Set<Place>;

  /** `first` is the first World in its reduced form. */
  constructor(first: World) {
    this.fixed = first;
    this.groups = memberNames.map((name) => new Group(first[name]));
    const list = (name: MemberName, key: string): Place => this.group(at[name]).root.child(key);
    this.lists = new Set([
      ...(['looks', 'heard', 'asked', 'readings', 'tests'] as const).map((key) => list('knowledge', key)),
      list('paper', 'briefings'),
    ]);
  }

  group(slot: number): Group {
    return this.groups[slot] as Group;
  }

  /** The World of a tuple. */
  worldOf(tuple: ArrayLike<number>): World {
    const members = memberNames.map((name, i) => [name, this.group(i).members[tuple[i] as number]] as const);
    return { ...this.fixed, ...Object.fromEntries(members) } as World;
  }

  /** Runs a part of the engine's step over a recording World. */
  learn<T>(
    trie: Trie<T>,
    tuple: ArrayLike<number>,
    whole: ReadonlySet<MemberName>,
    body: (world: World, run: Run) => T,
  ): T {
    this.runs++;
    const manner: Manner = { whole, lists: this.lists };
    const { run, outcome } = recorded(manner, (each) => body(each.world(this.groups, tuple, 0, this.fixed), each));
    trie.learn(tuple, run.reads, outcome);
    return outcome;
  }

  /** The same for what reads two Worlds. */
  learnTwo<T>(trie: Trie<T>, pair: Tuple, body: (before: World, after: World, run: Run) => T): T {
    this.runs++;
    const manner: Manner = { whole: wholeParts, lists: this.lists };
    const { run, outcome } = recorded(manner, (each) =>
      body(each.world(this.groups, pair, 0, this.fixed), each.world(this.groups, pair, SIZE, this.fixed), each),
    );
    trie.learn(pair, run.reads, outcome);
    return outcome;
  }
}
