import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalJson, hashOf, type KeptTexts, shortHash } from '../../../src/engine/math/hash.ts';

fc.configureGlobal({ seed: 20 });

describe('canonicalJson', () => {
  test('keys are sorted by code unit', () => {
    expect(canonicalJson({ b: 1, a: [true, null, 'x'], B: 2, é: 3 })).toBe('{"B":2,"a":[true,null,"x"],"b":1,"é":3}');
  });

  test('minus zero is written as zero', () => {
    expect(canonicalJson([-0, 0])).toBe('[0,0]');
  });

  test('a value and its parsed canonical text have the same text', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = canonicalJson(value);
        expect(canonicalJson(JSON.parse(text))).toBe(text);
      }),
    );
  });

  test('the order in which keys were written does not matter', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.integer()), (record) => {
        const entries = Object.entries(record);
        const turned = Object.fromEntries(entries.slice().reverse());
        expect(hashOf(turned)).toBe(hashOf(Object.fromEntries(entries)));
      }),
    );
  });

  const self: Record<string, unknown> = {};
  self.me = self;
  test.each([
    ['NaN', { a: [1, Number.NaN] }, '$.a[1]: the number NaN'],
    ['infinity', [Number.POSITIVE_INFINITY], '$[0]: the number Infinity'],
    ['undefined', { a: { b: undefined } }, '$.a.b: undefined'],
    ['a hole in an array', new Array(1), '$[0]: undefined'],
    ['a function', { f: () => 1 }, '$.f: function'],
    ['a bigint', 1n, '$: bigint'],
    ['a Map', { m: new Map() }, '$.m: an object of a class'],
    ['a date', [new Date(0)], '$[0]: an object of a class'],
    ['a symbol key', { [Symbol.iterator]: 1 }, '$: a key that is a symbol'],
    ['a cycle', self, '$.me: a value that holds itself'],
  ])('%s is refused with its path', (_, value, message) => {
    expect(() => canonicalJson(value)).toThrow(message);
  });

  test('the same object in two places is no cycle', () => {
    const shared = { x: 1 };
    expect(canonicalJson([shared, shared])).toBe('[{"x":1},{"x":1}]');
  });
});

describe('hashOf', () => {
  test('agrees with SHA-256 as computed by Node', async () => {
    const { createHash } = await import('node:crypto');
    for (const value of ['', 'abc', { name: 'Zürich – 漢字', list: [1.5, -2e-7] }]) {
      expect(hashOf(value)).toBe(createHash('sha256').update(canonicalJson(value), 'utf8').digest('hex'));
    }
  });

  test('shortHash is its first 16 digits', () => {
    expect(shortHash({ a: 1 })).toBe(hashOf({ a: 1 }).slice(0, 16));
  });

  test('kept texts change no hash, whichever members are new', () => {
    const kept: KeptTexts = new WeakMap();
    fc.assert(
      fc.property(fc.array(fc.record({ x: fc.jsonValue() }), { minLength: 1 }), fc.nat(), (parts, which) => {
        const before = { parts, more: { deep: parts } };
        expect(hashOf(before, kept)).toBe(hashOf(before));
        const after = { parts: parts.with(which % parts.length, { x: 'new' }), more: { deep: parts } };
        expect(hashOf(after, kept)).toBe(hashOf(after));
      }),
      { numRuns: 60 },
    );
  });
});
