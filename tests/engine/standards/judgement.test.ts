/** Brier score with its parts, and the area under the ROC curve, beside published and independently computed values. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brier, type Judgement } from '../../../src/engine/standards/brier.ts';
import { rankArea, rankAreaError } from '../../../src/engine/standards/rankArea.ts';

const called = (sure: number, count: number, right: number): readonly Judgement[] =>
  Array.from({ length: count }, (_, i) => ({ sure, right: i < right }));

describe('the Brier score', () => {
  it('of 5 at 0.9 (4 right), 5 at 0.6 (3), 5 at 0.2 (1) is 0.19 = 0.003333 - 0.062222 + 0.248889 (scipy and numpy)', () => {
    const parts = brier([...called(0.9, 5, 4), ...called(0.6, 5, 3), ...called(0.2, 5, 1)]);
    expect(parts?.score).toBeCloseTo(0.19, 12);
    expect(parts?.reliability).toBeCloseTo(0.0033333, 7);
    expect(parts?.resolution).toBeCloseTo(0.0622222, 7);
    expect(parts?.uncertainty).toBeCloseTo(0.2488889, 7);
    expect(parts?.skill).toBeCloseTo(0.2366071, 7);
  });

  it('of 0.1, 0.9, 0.8, 0.3 with outcomes 0, 1, 1, 0 is 0.0375 (documentation of a widely used library)', () => {
    const sure = [0.1, 0.9, 0.8, 0.3];
    expect(brier(sure.map((each, i) => ({ sure: each, right: i === 1 || i === 2 })))?.score).toBeCloseTo(0.0375, 12);
  });

  it('is reliability - resolution + uncertainty (Murphy 1973), whatever was stated', () => {
    const judgement = fc.record({ sure: fc.constantFrom(0, 0.55, 0.7, 0.85, 0.95, 1), right: fc.boolean() });
    fc.assert(
      fc.property(fc.array(judgement, { minLength: 1, maxLength: 30 }), (list) => {
        const parts = brier(list);
        if (parts === null) return false;
        const sum = parts.reliability - parts.resolution + parts.uncertainty;
        return Math.abs(parts.score - sum) < 1e-12 && parts.score >= 0 && parts.score <= 1;
      }),
      { seed: 9 },
    );
    expect(brier([])).toBeNull();
    expect(brier(called(0.9, 3, 3))?.skill).toBeNull();
  });
});

describe('the area under the ROC curve', () => {
  // Data of ClickHouse's own test of mannWhitneyUTest (tests/queries/0_stateless/01560_mann_whitney.sql), U = 223.0.
  const left = [310, 195, 530, 155, 530, 245, 385, 450, 465, 545, 170, 180, 125, 180, 230, 75, 430, 480, 495, 295];
  const right = [116, 171, 176, 421, 111, 326, 481, 111, 346, 441, 261, 411, 206, 521, 456, 446, 296, 51, 426, 261];

  it('times the pairs is the Mann-Whitney U of 223 that another program gives for two lists of twenty', () => {
    expect((rankArea(left, right) ?? 0) * left.length * right.length).toBeCloseTo(223, 9);
  });

  // Ratings of 58 normal and 51 abnormal CT images (Hanley and McNeil 1982, Table I, counts from memory): 0.893, error 0.032.
  const ratings = (counts: readonly number[]): number[] =>
    counts.flatMap((count, i) => Array.from({ length: count }, () => i + 1));
  it('of the ratings of Hanley and McNeil is 0.893 with a standard error of 0.032', () => {
    const area = rankArea(ratings([3, 2, 2, 11, 33]), ratings([33, 6, 6, 11, 2]));
    expect(area).toBeCloseTo(0.893, 3);
    expect(rankAreaError(area ?? 0, 51, 58)).toBeCloseTo(0.032, 3);
  });

  it('is the share of pairs in order with ties counted half, by counting every pair', () => {
    const list = fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(list, list, (high, low) => {
        const won = high.flatMap((a) => low.map((b) => (a > b ? 1 : a === b ? 0.5 : 0)));
        const counted = won.reduce<number>((sum, each) => sum + each, 0) / won.length;
        const area = rankArea(high, low) ?? Number.NaN;
        return Math.abs(area - counted) < 1e-12 && Math.abs(area + (rankArea(low, high) ?? Number.NaN) - 1) < 1e-12;
      }),
      { seed: 9 },
    );
    expect(rankArea([], [1])).toBeNull();
  });
});
