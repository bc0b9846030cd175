/** Leads that hang by one end: right triangles and spheres. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { distance, type Vec3 } from '../../../src/engine/math/vec3.ts';
import { distanceToLead, groundReach, restingEnd, swingAt } from '../../../src/engine/mechanics/hangingLead.ts';

test('a lead of 13 m from 12 m high reaches 5 m along the ground, one of 11 m nowhere', () => {
  expect(groundReach({ held: [0, 0, 12], length: 13 })).toBeCloseTo(5, 12);
  expect(groundReach({ held: [0, 0, 12], length: 11 })).toBe(0);
});

test('its end hangs straight down, or lies on the ground', () => {
  expect(restingEnd({ held: [3, 4, 10], length: 2 })).toEqual([3, 4, 8]);
  expect(restingEnd({ held: [3, 4, 10], length: 20 })).toEqual([3, 4, 0]);
});

test('a jumper of 0.9 m swings as far as it is long at the height where it is held, and not beyond', () => {
  const lead = { held: [0, 0, 9] as Vec3, length: 0.9 };
  expect(swingAt(lead, 9)).toBeCloseTo(0.9, 12);
  expect(swingAt(lead, 8)).toBe(0);
  expect(distanceToLead(lead, [1.5, 0, 9])).toBeCloseTo(0.6, 12);
  expect(distanceToLead(lead, [0.3, 0.3, 8.6])).toBe(0);
});

test('every place on its swing is within reach, and a step outward is not', () => {
  const height = fc.double({ min: 0, max: 9, noNaN: true });
  fc.assert(
    fc.property(height, fc.double({ min: 9.1, max: 20, noNaN: true }), (z, length) => {
      const lead = { held: [0, 0, 9] as Vec3, length };
      const edge: Vec3 = [swingAt(lead, z), 0, z];
      expect(distance(lead.held, edge)).toBeCloseTo(length, 9);
      expect(distanceToLead(lead, edge)).toBeCloseTo(0, 9);
      expect(distanceToLead(lead, [edge[0] + 0.5, 0, z])).toBeGreaterThan(0);
    }),
    { numRuns: 50, seed: 4 },
  );
});
