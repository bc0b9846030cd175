/** The set of tuples against a set of their texts. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { States } from '../../../../src/engine/proof/learned/states.ts';

it('numbers each tuple once, in order of arrival, and gives it back', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(30), fc.nat(30), fc.nat(30)), { maxLength: 6000, size: 'max' }), (tuples) => {
      const states = new States(3);
      const numbers = new Map<string, number>();
      for (const tuple of tuples) {
        const known = numbers.get(tuple.join()) ?? numbers.size;
        numbers.set(tuple.join(), known);
        expect(states.add(Int32Array.from(tuple))).toBe(known);
      }
      expect(states.count).toBe(numbers.size);
      const out = new Int32Array(3);
      for (const [text, number] of numbers) {
        states.read(number, out);
        expect(out.join()).toBe(text);
      }
    }),
    { numRuns: 8 },
  );
});
