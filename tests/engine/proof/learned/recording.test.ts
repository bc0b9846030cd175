/** What is read of a part is noted, also where it is handed out in one piece: no outcome is given for a World that differs there. */
import { describe, expect, it } from 'vitest';
import { Learner, nothingWhole } from '../../../../src/engine/proof/learned/learner.ts';
import { memberNames } from '../../../../src/engine/proof/learned/members.ts';
import { Trie } from '../../../../src/engine/proof/learned/trie.ts';
import { partById, withPart } from '../../../../src/engine/world/edit.ts';
import type { Part, World } from '../../../../src/engine/world/types.ts';
import { sceneOf } from '../scenes.ts';

const start = sceneOf('mill-lane-refuse') as World;
const cutout = partById(start, 'p2.cutout');

const changes: Readonly<Record<string, Partial<Part>>> = {
  at: { at: [cutout.at[0], cutout.at[1], cutout.at[2] + 1] },
  end: { end: [1, 2, 3] },
  nets: { nets: { ...cutout.nets, top: 'elsewhere' } },
  values: { values: { ...cutout.values, ratingA: 99 } },
  words: { words: { ...cutout.words, link: '99K' } },
  state: { state: { ...cutout.state, position: 'gone' } },
};

const learner = () => {
  const all = new Learner(start);
  const tuple = (world: World): Int32Array =>
    Int32Array.from(memberNames, (name, i) => all.group(i).numberOf(world[name]));
  return { all, tuple };
};

describe.each(Object.entries(changes))('%s of a part', (key, change) => {
  const other = withPart(start, cutout.id, change);
  const read = (world: World): string => JSON.stringify(partById(world, cutout.id)[key as keyof Part]);

  it('is never taken for what it was in another World', () => {
    const { all, tuple } = learner();
    const trie = new Trie<string>();
    const given = [start, other, start, other].map((world) => {
      const numbers = tuple(world);
      return trie.find(numbers) ?? all.learn(trie, numbers, nothingWhole, read);
    });
    expect(given).toEqual([read(start), read(other), read(start), read(other)]);
    expect(all.runs).toBe(2);
  });

  it('is no reason to run again where it is not read', () => {
    const { all, tuple } = learner();
    const trie = new Trie<string>();
    const id = (world: World): string => partById(world, cutout.id).kind;
    for (const world of [start, other]) {
      const numbers = tuple(world);
      if (trie.find(numbers) === undefined) all.learn(trie, numbers, nothingWhole, id);
    }
    expect(all.runs).toBe(1);
  });
});
