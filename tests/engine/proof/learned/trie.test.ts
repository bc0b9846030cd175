/** A function of one member, learned: it gives what the function gives, from no more runs than what it reads has forms. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { Group } from '../../../../src/engine/proof/learned/members.ts';
import { type Manner, recorded } from '../../../../src/engine/proof/learned/recording.ts';
import { Trie } from '../../../../src/engine/proof/learned/trie.ts';
import type { Guards, World } from '../../../../src/engine/world/types.ts';
import { sceneOf } from '../scenes.ts';

const guards: fc.Arbitrary<Guards> = fc.record({
  chocks: fc.boolean(),
  cones: fc.boolean(),
  keepOut: fc.boolean(),
  barrier: fc.boolean(),
  truckGround: fc.boolean(),
});

/** Reads cones only with chocks, else keepOut; never the others: eight forms of what is read, of 32. */
const asked = ({ chocks, cones, keepOut }: Guards): string => (chocks ? `cones ${cones}` : `keep out ${keepOut}`);

const start = sceneOf('mill-lane-refuse');
const manner: Manner = { whole: new Set(), lists: new Set() };

it('gives what the function gives, whenever a place turns out to change', () => {
  fc.assert(
    fc.property(fc.array(guards, { minLength: 1, maxLength: 40 }), (list) => {
      const group = new Group(list[0] as Guards);
      const groups = Object.keys({
        clock: 0,
        site: 0,
        truck: 0,
        parts: 0,
        people: 0,
        tools: 0,
        jumpers: 0,
        covers: 0,
      }).map((name) => new Group(start[name as 'clock']));
      groups.push(group);
      const trie = new Trie<string>();
      for (const each of list) {
        const tuple = Int32Array.from(groups, (other) => (other === group ? group.numberOf(each) : 0));
        let given = trie.find(tuple);
        if (given === undefined) {
          const { run, outcome } = recorded(manner, (all) => asked(all.world(groups, tuple, 0, start as World).guards));
          trie.learn(tuple, run.reads, outcome);
          given = outcome;
        }
        expect(given).toBe(asked(each));
      }
      expect(trie.runs).toBeLessThanOrEqual(8);
    }),
  );
});
