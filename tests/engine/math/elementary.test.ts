import { describe, expect, test } from 'vitest';
import * as elementary from '../../../src/engine/math/elementary.ts';
import { ELEMENTARY_BITS, elementaryBits } from './elementaryCases.ts';

const close = (value: number, reference: number) =>
  expect(Math.abs(value - reference)).toBeLessThanOrEqual(4e-16 * Math.max(1e-300, Math.abs(reference)));

describe('elementary', () => {
  // ECMAScript fixes the Math constants to the last bit; the angles are exact by geometry.
  test('known constants come out to the last digits', () => {
    close(elementary.exp(1), Math.E);
    close(elementary.ln(2), Math.LN2);
    close(elementary.ln(10), Math.LN10);
    close(elementary.log10(1000), 3);
    close(elementary.pow(2, 0.5), Math.SQRT2);
    close(elementary.sin(Math.PI / 6), 0.5);
    close(elementary.cos(Math.PI / 3), 0.5);
    close(elementary.tan(Math.PI / 4), 1);
    close(elementary.atan2(1, 1), Math.PI / 4);
    close(elementary.atan2(-1, -1), (-3 * Math.PI) / 4);
    close(elementary.acos(0.5), Math.PI / 3);
    close(elementary.asin(0.5), Math.PI / 6);
    close(elementary.hypot(3e200, 4e200), 5e200);
  });

  test('functions outside their domain answer NaN', () => {
    expect([elementary.ln(-1), elementary.acos(2), elementary.asin(-2), elementary.pow(-1, 0.5)]).toEqual([
      Number.NaN,
      Number.NaN,
      Number.NaN,
      Number.NaN,
    ]);
  });

  test('the host functions agree to a few units in the last place', () => {
    for (let i = -200; i <= 200; i++) {
      const x = i * 0.173;
      for (const [ours, host] of [
        [elementary.sin, Math.sin],
        [elementary.cos, Math.cos],
        [elementary.exp, Math.exp],
      ] as const) {
        expect(Math.abs(ours(x) - host(x))).toBeLessThanOrEqual(4e-16 * Math.max(1, host(x)));
      }
    }
  });

  test('the bits of a whole grid of results are the recorded ones', () => {
    expect(elementaryBits()).toBe(ELEMENTARY_BITS);
  });
});
