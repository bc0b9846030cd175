import { describe, expect, test } from 'vitest';
import { nextInteger, nextUniform, type RandomState, seedFrom } from '../../../src/engine/math/random.ts';

const draw = (state: RandomState, count: number): number[] => {
  const values: number[] = [];
  let now = state;
  for (let i = 0; i < count; i++) {
    const [value, next] = nextUniform(now);
    values.push(value);
    now = next;
  }
  return values;
};

describe('random', () => {
  // The reference algorithm on 64-bit whole numbers, as PractRand writes it.
  test('words follow sfc32 computed with big integers', () => {
    let [a, b, c, n] = seedFrom('reference').map(BigInt) as [bigint, bigint, bigint, bigint];
    const mask = 0xffffffffn;
    let state = seedFrom('reference');
    for (let i = 0; i < 1000; i++) {
      const word = (a + b + n) & mask;
      n = (n + 1n) & mask;
      a = b ^ (b >> 9n);
      b = (c + (c << 3n)) & mask;
      c = (((c << 21n) | (c >> 11n)) + word) & mask;
      const [value, next] = nextInteger(state, 0, 4294967295);
      expect(value).toBe(Number(word));
      state = next;
    }
  });

  test('the same state gives the same values and stays untouched', () => {
    const state = seedFrom('fog');
    const before = JSON.stringify(state);
    expect(draw(state, 5)).toEqual(draw(state, 5));
    expect(JSON.stringify(state)).toBe(before);
  });

  test('state survives JSON', () => {
    const [, state] = nextUniform(seedFrom(7));
    expect(draw(JSON.parse(JSON.stringify(state)), 5)).toEqual(draw(state, 5));
  });

  test('different seeds give different values', () => {
    expect(draw(seedFrom('1'), 3)).not.toEqual(draw(seedFrom(1), 3));
    expect(draw(seedFrom(2), 3)).not.toEqual(draw(seedFrom(1), 3));
  });

  test('uniform values lie in [0, 1) with mean and variance of the uniform distribution', () => {
    const values = draw(seedFrom('spread'), 20000);
    const mean = values.reduce((sum, x) => sum + x, 0) / values.length;
    const variance = values.reduce((sum, x) => sum + (x - mean) * (x - mean), 0) / values.length;
    expect(Math.min(...values)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...values)).toBeLessThan(1);
    expect(mean).toBeCloseTo(0.5, 2);
    expect(variance).toBeCloseTo(1 / 12, 2);
  });

  test('whole numbers reach both ends about equally often', () => {
    const counts = new Map<number, number>();
    let state = seedFrom('dice');
    for (let i = 0; i < 6000; i++) {
      const [value, next] = nextInteger(state, 1, 6);
      counts.set(value, (counts.get(value) ?? 0) + 1);
      state = next;
    }
    expect([...counts.keys()].sort()).toEqual([1, 2, 3, 4, 5, 6]);
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });

  test.each([
    [2, 1],
    [0, 0.5],
    [0, 4294967296],
  ])('a span from %d to %d is refused', (low, high) => {
    expect(() => nextInteger(seedFrom(1), low, high)).toThrow(RangeError);
  });
});
