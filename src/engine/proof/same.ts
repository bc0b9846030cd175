/**
 * Equal Worlds made one object, member by member, so that what was worked out for one of them is found again for the
 * next: by the prover by World and act, by the engine with the lists of parts it has met. Worlds are plain data and acts
 * pure, so nothing can come out otherwise.
 */
import type { Act } from '../acts/types.ts';
import type { World } from '../world/types.ts';
import { Group, memberNames } from './learned/members.ts';
import { type Manner, recorded } from './learned/recording.ts';
import type { Trie } from './learned/trie.ts';

const manner: Manner = { whole: new Set(['parts', 'jumpers']), lists: new Set() };

export class Same {
  private readonly groups: readonly Group[];
  private readonly worlds = new Map<string, World>();
  private readonly known = new WeakSet<World>();
  private readonly acts = new Map<Act, string>();

  constructor(start: World) {
    this.groups = memberNames.map((name) => new Group(name, start[name]));
  }

  /** The numbers of two Worlds' members, one after the other. */
  pair(before: World, after: World): Int32Array {
    const { groups } = this;
    const pair = new Int32Array(2 * groups.length);
    for (const [i, group] of groups.entries()) {
      pair[i] = group.numberOf(before[group.name]);
      pair[groups.length + i] = group.numberOf(after[group.name]);
    }
    return pair;
  }

  /** What a function of two Worlds gives, learned by what it reads. */
  learned<T>(trie: Trie<T>, before: World, after: World, of: (before: World, after: World) => T): T {
    const pair = this.pair(before, after);
    const known = trie.find(pair);
    if (known !== undefined) return known;
    const { run, outcome } = recorded(manner, (each) =>
      each.bare(of(each.world(this.groups, pair, 0, before), each.world(this.groups, pair, this.groups.length, after))),
    );
    trie.learn(pair, run.reads, outcome as T);
    return outcome as T;
  }

  /** The one World that is equal to this one; of the same drill. */
  world(world: World): World {
    if (this.known.has(world)) return world;
    const numbers = this.groups.map((group) => group.numberOf(world[group.name]));
    const key = numbers.join();
    const kept = this.worlds.get(key);
    if (kept !== undefined) return kept;
    const members = this.groups.map((group, i) => [group.name, group.members[numbers[i] as number]] as const);
    const made = { ...world, ...Object.fromEntries(members) } as World;
    this.worlds.set(key, made);
    this.known.add(made);
    return made;
  }

  /** The act as text; equal acts have equal texts. */
  text(act: Act): string {
    const known = this.acts.get(act);
    if (known !== undefined) return known;
    const text = JSON.stringify(act);
    this.acts.set(act, text);
    return text;
  }
}

/** Results by World and name. */
export class ByWorld<T> {
  private readonly kept = new WeakMap<World, Map<string, T>>();

  get(world: World, name: string, make: () => T): T {
    const ofWorld = this.kept.get(world) ?? new Map<string, T>();
    this.kept.set(world, ofWorld);
    const known = ofWorld.get(name);
    if (known !== undefined) return known;
    const made = make();
    ofWorld.set(name, made);
    return made;
  }
}
