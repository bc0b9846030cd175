import { describe, expect, test } from 'vitest';
import * as vec3 from '../../../src/engine/math/vec3.ts';

describe('vec3', () => {
  test('the cross product of two axes is the third', () => {
    expect(vec3.cross([1, 0, 0], [0, 1, 0])).toEqual([0, 0, 1]);
    expect(vec3.dot([1, 2, 3], [4, -5, 6])).toBe(12);
  });

  test('a normalised vector has length one and the zero vector is refused', () => {
    expect(vec3.length(vec3.normalise([3, 4, 12]))).toBeCloseTo(1, 15);
    expect(vec3.length([3, 4, 12])).toBe(13);
    expect(() => vec3.normalise([0, 0, 0])).toThrow(RangeError);
  });

  test('lerp ends where it should', () => {
    expect(vec3.lerp([1, 2, 3], [3, 2, 1], 0)).toEqual([1, 2, 3]);
    expect(vec3.lerp([1, 2, 3], [3, 2, 1], 1)).toEqual([3, 2, 1]);
    expect(vec3.lerp([1, 2, 3], [3, 2, 1], 0.5)).toEqual([2, 2, 2]);
  });

  test.each([
    ['beside the middle', [5, 3, 0], 3],
    ['beyond the start', [-3, 4, 0], 5],
    ['beyond the end', [13, 0, -4], 5],
    ['on it', [2, 0, 0], 0],
  ] as const)('distance to a segment: %s', (_, point, metres) => {
    expect(vec3.distanceToSegment(point, [0, 0, 0], [10, 0, 0])).toBeCloseTo(metres, 12);
  });

  test('a segment without length is a point', () => {
    expect(vec3.distanceToSegment([1, 2, 2], [0, 0, 0], [0, 0, 0])).toBe(3);
    expect(vec3.distance([1, 2, 2], vec3.scale([1, 1, 1], 0))).toBe(3);
  });
});
