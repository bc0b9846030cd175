/**
 * Equal Worlds made one object, member by member, so that what was worked out for one of them is found again for the
 * next: by the prover by World and act, by the engine with the lists of parts it has met. Worlds are plain data and acts
 * pure, so nothing can come out otherwise.
 */
import type { Act } from '../acts/types.ts';
import type { Reach } from '../hazards/types.ts';
import type { World } from '../world/types.ts';
import { Group, type MemberName, memberNames } from './learned/members.ts';
import { type Manner, recorded } from './learned/recording.ts';
import { States } from './learned/states.ts';
import type { Trie } from './learned/trie.ts';

const manner: Manner = { whole: new Set(['parts', 'jumpers']), lists: new Set() };

const SIZE = memberNames.length;

export class Same {
  private readonly groups: readonly Group[];
  private readonly states = new States(SIZE);
  /** By state. */
  private readonly worlds: World[] = [];
  private readonly numbers = new Int32Array(SIZE);
  private readonly known = new WeakSet<World>();
  private readonly acts = new Map<Act, string>();
  private reaches: Group | null = null;

  constructor(start: World) {
    this.groups = memberNames.map((name) => new Group(start[name]));
  }

  /** The numbers of a World's members and of a reach, one after the other. */
  tuple(reach: Reach, world: World): Int32Array {
    this.reaches ??= new Group(reach);
    const tuple = new Int32Array(SIZE + 1);
    for (let i = 0; i < SIZE; i++) {
      tuple[i] = (this.groups[i] as Group).numberOf(world[memberNames[i] as MemberName]);
    }
    tuple[SIZE] = this.reaches.numberOf(reach);
    return tuple;
  }

  /** What a function of a reach and a World gives, learned by what it reads of both. */
  learned<T>(trie: Trie<T>, tuple: Int32Array, fixed: World, of: (reach: Reach, world: World) => T): T {
    const known = trie.find(tuple);
    if (known !== undefined) return known;
    const { root, members } = this.reaches as Group;
    const reach = members[tuple[SIZE] as number] as Reach;
    const { run, outcome } = recorded(manner, (each) =>
      each.bare(of(each.proxy(root, SIZE, reach) as Reach, each.world(this.groups, tuple, 0, fixed))),
    );
    trie.learn(tuple, run.reads, outcome as T);
    return outcome as T;
  }

  /** The one World that is equal to this one; of the same drill. */
  world(world: World): World {
    if (this.known.has(world)) return world;
    const { numbers, states, groups } = this;
    for (let i = 0; i < SIZE; i++) {
      numbers[i] = (groups[i] as Group).numberOf(world[memberNames[i] as MemberName]);
    }
    const before = states.count;
    const state = states.add(numbers);
    if (state < before) return this.worlds[state] as World;
    const members = memberNames.map((name, i) => [name, this.groups[i]?.members[numbers[i] as number]] as const);
    const made = { ...world, ...Object.fromEntries(members) } as World;
    this.worlds.push(made);
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
