import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Name, Names, sortNames } from '../../../src/engine/network/names.ts';

fc.configureGlobal({ seed: 20 });

const word = fc.string({ maxLength: 4, unit: fc.constantFrom('a', 'b', '.', '-', ':', '1') });

/** The list in order, by the places of its names. */
function ordered(names: Names, list: readonly string[]): string[] {
  names.begin();
  const taken: Name[] = [];
  for (const text of list) {
    const name = names.of(text);
    if (names.take(name, taken.length)) taken.push(name);
  }
  sortNames(taken);
  return taken.map(({ text }) => text);
}

describe('names', () => {
  test('come in the order of their code units, each once, whatever was met before', () => {
    fc.assert(
      fc.property(fc.array(fc.array(word, { maxLength: 60 }), { maxLength: 12 }), (lists) => {
        const names = new Names();
        for (const list of lists) expect(ordered(names, list)).toEqual([...new Set(list)].sort());
      }),
    );
  });

  test('stay in order when thousands are met between the same two, and when they are forgotten', () => {
    const names = new Names();
    for (let n = 0; n < 9000; n += 50) {
      const between = Array.from({ length: 50 }, (_, k) => `m${String(n + k).padStart(5, '0')}`);
      expect(ordered(names, ['z', ...between, 'a'])).toEqual(['a', ...between, 'z']);
    }
  });
});
