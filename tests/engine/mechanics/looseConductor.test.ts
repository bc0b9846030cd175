import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/engine/math/vec3.ts';
import {
  distanceToLoose,
  doubleLength,
  looseConductor,
  lowestAt,
  restHeight,
  swingRadius,
} from '../../../src/engine/mechanics/looseConductor.ts';

const joined = (left: number, leftSag: number, right: number, rightSag: number, z = 10) =>
  looseConductor(
    { far: [-left, 0, z], near: [0, 0, z], sag: leftSag },
    { far: [right, 0, z], near: [0, 0, z], sag: rightSag },
  );

describe('a conductor that has come off its tie', () => {
  test('hangs twice as deep over two equal spans (parabola: the spare length doubles, so does the span)', () => {
    expect(joined(50, 0.5, 50, 0.5).sag).toBeCloseTo(1, 12);
  });

  test('keeps the length that both spans had: S + 8D2/3S of each', () => {
    const loose = joined(55, 0.6096, 50, 0.508);
    const span = doubleLength(loose);
    expect(span + (8 * loose.sag * loose.sag) / (3 * span)).toBeCloseTo(loose.length, 12);
    expect(loose.length).toBeCloseTo(55 + (8 * 0.6096 ** 2) / 165 + 50 + (8 * 0.508 ** 2) / 150, 12);
  });

  test('reaches as low beside the lost tie as the same wire pulled into a V there (Pythagoras on both sides)', () => {
    const loose = joined(55, 0.6096, 50, 0.508);
    const depth = swingRadius(loose, 55);
    expect(Math.hypot(55, depth) + Math.hypot(50, depth)).toBeCloseTo(loose.length, 9);
    expect(lowestAt(loose, 55)).toBeCloseTo(10 - depth, 12);
  });

  test('never hangs at rest where it could not swing to', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 120, noNaN: true }),
        fc.double({ min: 20, max: 120, noNaN: true }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (left, right, sag, t) => {
          const loose = joined(left, sag, right, sag);
          const along = t * (left + right);
          expect(10 - restHeight(loose, along)).toBeLessThanOrEqual(swingRadius(loose, along) + 1e-9);
        },
      ),
    );
  });

  test('is nearer to everybody the more it sags', () => {
    fc.assert(
      fc.property(
        fc.tuple(
          fc.double({ min: -40, max: 40, noNaN: true }),
          fc.double({ min: -3, max: 3, noNaN: true }),
          fc.double({ min: 5, max: 12, noNaN: true }),
        ),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        (place, sag) => {
          const at: Vec3 = place;
          expect(distanceToLoose(joined(50, sag * 1.5, 50, sag * 1.5), at)).toBeLessThanOrEqual(
            distanceToLoose(joined(50, sag, 50, sag), at) + 1e-12,
          );
        },
      ),
    );
  });

  test('needs spans of some length', () => {
    expect(() => joined(0, 0.5, 50, 0.5)).toThrow(RangeError);
  });
});
