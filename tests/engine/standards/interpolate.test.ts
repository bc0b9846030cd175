import { expect, it } from 'vitest';
import { interpolate, interpolateLogLog } from '../../../src/engine/standards/interpolate.ts';

const line = [
  [1, 10],
  [3, 30],
  [4, 10],
] as const;

it('reads straight between points and holds the ends', () => {
  expect(interpolate(line, 2)).toBe(20);
  expect(interpolate(line, 3)).toBe(30);
  expect(interpolate(line, 0)).toBe(10);
  expect(interpolate(line, 9)).toBe(10);
});

it('reads a power law exactly on log-log paper, also beyond the ends', () => {
  const square = [
    [1, 1],
    [10, 100],
  ] as const;
  expect(interpolateLogLog(square, 3)).toBeCloseTo(9, 12);
  expect(interpolateLogLog(square, 20)).toBeCloseTo(400, 9);
});

it('throws on a curve of fewer than two points', () => {
  expect(() => interpolate([[1, 1]], 1)).toThrow(RangeError);
});
