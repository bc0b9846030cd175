/** Stopping sight distance and the risk of whoever is struck, against the published tables (figures from memory). */
import { describe, expect, it } from 'vitest';
import { deathRisk, stoppingDistance } from '../../../src/engine/standards/stoppingDistance.ts';

const mph = (speed: number): number => speed * 0.44704;
const feet = (metres: number): number => metres / 0.3048;

describe('stopping sight distance, AASHTO Green Book design values (from memory)', () => {
  it.each([
    [25, 155],
    [35, 250],
    [45, 360],
    [55, 495],
    [65, 645],
  ])('at %d mph rounds up to %d ft', (speed, design) => {
    const computed = feet(stoppingDistance(mph(speed)));
    expect(computed).toBeLessThanOrEqual(design);
    expect(computed).toBeGreaterThan(design - 6);
  });
});

it('one in ten dies at 23 mph, half at 42, nine in ten at 58 (Tefft 2011, from memory); more never dies fewer', () => {
  expect(deathRisk(mph(23))).toBeCloseTo(0.1, 3);
  expect(deathRisk(mph(42))).toBeCloseTo(0.5, 3);
  expect(deathRisk(mph(70))).toBe(0.9);
  const rising = Array.from({ length: 60 }, (_, i) => deathRisk(i));
  expect(rising.every((risk, i) => i === 0 || risk >= (rising[i - 1] ?? 0))).toBe(true);
});
