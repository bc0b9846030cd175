import { describe, expect, it } from 'vitest';
import {
  type GrownCell,
  growBreakdown,
  growInDisc,
  massDimension,
  trunkOf,
} from '../../../src/engine/standards/breakdownGrowth.ts';

const between = (seed: number, eta = 1): readonly GrownCell[] =>
  growBreakdown({
    width: 21,
    height: 31,
    start: [10, 0],
    target: (_, row) => row === 30,
    eta,
    seed,
  });

describe('a breakdown pattern', () => {
  it('is the same for the same seed and another for another', () => {
    expect(between(1)).toEqual(between(1));
    expect(between(1)).not.toEqual(between(2));
  });

  it('grows from its start, cell beside cell, each place once, until it touches the target', () => {
    const grown = between(3);
    expect(grown[0]).toEqual({ at: [10, 0], from: -1 });
    expect(new Set(grown.map(({ at }) => at.join())).size).toBe(grown.length);
    for (const [k, { at, from }] of grown.entries()) {
      if (k === 0) continue;
      expect(from).toBeLessThan(k);
      const parent = grown[from]?.at ?? [99, 99];
      expect(Math.abs(at[0] - parent[0]) + Math.abs(at[1] - parent[1])).toBe(1);
    }
    expect(grown.at(-1)?.at[1]).toBe(29);
  });

  it('has a trunk from the target back to the start', () => {
    const trunk = trunkOf(between(4));
    expect(trunk.at(-1)).toEqual([10, 0]);
    expect(trunk[0]?.[1]).toBe(29);
    expect(trunk.length).toBeGreaterThanOrEqual(30);
  });

  it('is the thinner the stronger the field counts', () => {
    const cells = (eta: number): number => [1, 2, 3].reduce((sum, seed) => sum + between(seed, eta).length, 0);
    expect(cells(0.5)).toBeGreaterThan(cells(1));
    expect(cells(1)).toBeGreaterThan(cells(3));
  });

  it('ends when there is nowhere left to grow', () => {
    const nowhere = growBreakdown({ width: 3, height: 3, start: [1, 1], target: () => false, eta: 1, seed: 1 });
    expect(nowhere.length).toBe(9);
  });

  it('measures a full disc as two and a line as one', () => {
    const disc = Array.from(
      { length: 61 * 61 },
      (_, k): GrownCell => ({ at: [(k % 61) - 30, Math.floor(k / 61) - 30], from: -1 }),
    );
    const centred = [{ at: [0, 0] as const, from: -1 }, ...disc.filter(({ at }) => at[0] !== 0 || at[1] !== 0)];
    expect(massDimension([centred], 5, 25)).toBeCloseTo(2, 1);
    const line = Array.from({ length: 40 }, (_, k): GrownCell => ({ at: [k, 0], from: k - 1 }));
    expect(massDimension([line], 5, 30)).toBeCloseTo(0.95, 1);
    expect(growInDisc(6, 1, 1)[0]?.at).toEqual([6, 6]);
  });
});
