/** What a learned function does to a member, applied to any member: a copy with the writes, worked out once for each. */
import type { Group, Member } from './members.ts';
import type { Change, Write } from './recording.ts';

type Tree = unknown;

function written(tree: Tree, { path, value, how }: Write, depth = 0): Tree {
  if (depth === path.length) return how === 'add' ? [...(tree as readonly unknown[]), value] : value;
  const key = path[depth] as string;
  if (Array.isArray(tree)) {
    const copy: unknown[] = [...tree];
    copy[Number(key)] = written(copy[Number(key)], { path, value, how }, depth + 1);
    return copy;
  }
  const holder = tree as Readonly<Record<string, unknown>>;
  if (how === 'delete' && depth === path.length - 1) {
    const { [key]: _, ...rest } = holder;
    return rest;
  }
  return { ...holder, [key]: written(holder[key], { path, value, how }, depth + 1) };
}

/** A change of one member, with what it made of those it was applied to. */
export class Effect {
  private readonly change: Change;
  private readonly group: Group;
  private made = new Int32Array(64).fill(-1);

  constructor(group: Group, change: Change) {
    this.group = group;
    this.change = change;
  }

  /** The number of what it makes of a member. */
  of(member: number): number {
    const known = member < this.made.length ? (this.made[member] as number) : -1;
    if (known >= 0) return known;
    const from: Tree = this.group.members[member];
    const number = this.group.numberOf(this.change.reduce<Tree>((tree, write) => written(tree, write), from) as Member);
    if (member >= this.made.length) {
      const longer = new Int32Array(Math.max(2 * this.made.length, member + 1)).fill(-1);
      longer.set(this.made);
      this.made = longer;
    }
    this.made[member] = number;
    return number;
  }
}

/** Effects by member; null for those that stay. */
export type Effects = readonly { readonly slot: number; readonly effect: Effect }[];

/** Keeps one effect for equal changes. */
export class EffectBook {
  private readonly groups: readonly Group[];
  private readonly kept: Map<string, Effect>[];

  constructor(groups: readonly Group[]) {
    this.groups = groups;
    this.kept = groups.map(() => new Map());
  }

  of(changes: readonly (Change | null)[]): Effects {
    return changes.flatMap((change, slot) => {
      if (change === null) return [];
      const kept = this.kept[slot] as Map<string, Effect>;
      const text = JSON.stringify(change);
      const effect = kept.get(text) ?? new Effect(this.groups[slot] as Group, change);
      kept.set(text, effect);
      return [{ slot, effect }];
    });
  }
}
