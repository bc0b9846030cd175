/** A conductor that has lost one tie or two, against the single case and lengths that can be worked out. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/engine/math/vec3.ts';
import { looseConductor, restHeight, swingRadius } from '../../../src/engine/mechanics/looseConductor.ts';
import { looseOver } from '../../../src/engine/mechanics/lostTies.ts';
import { parabolicLength } from '../../../src/engine/standards/sag.ts';

const at = (x: number, z = 10): Vec3 => [x, 0, z];

describe('a conductor over level supports', () => {
  test('that has lost one tie is the double span of the simple model', () => {
    const { conductor, lostAt } = looseOver([at(0), at(50), at(90)], [0.6, 0.5]);
    const simple = looseConductor({ far: at(0), near: at(50), sag: 0.6 }, { far: at(90), near: at(50), sag: 0.5 });
    expect(conductor.length).toBeCloseTo(simple.length, 12);
    expect(conductor.sag).toBeCloseTo(simple.sag, 9);
    expect(lostAt).toEqual([50]);
  });

  test('that has lost two of equal spans sags three times as deep as one of them', () => {
    // Three spans S with sag D: spare 3 (8 D2/3S), and sqrt(3 (3S) (8 D2/S)/8) = 3 D.
    const { conductor, lostAt } = looseOver([at(0), at(50), at(100), at(150)], [0.6, 0.6, 0.6]);
    expect(conductor.sag).toBeCloseTo(1.8, 9);
    expect(conductor.length).toBeCloseTo(3 * parabolicLength(50, 0.6), 9);
    expect(lostAt).toEqual([50, 100]);
    expect(restHeight(conductor, 75)).toBeCloseTo(8.2, 9);
  });

  test('hangs lower and swings farther with each tie that is lost', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 90, noNaN: true }),
        fc.double({ min: 0.2, max: 1.5, noNaN: true }),
        (span, sag) => {
          const one = looseOver([at(0), at(span), at(2 * span)], [sag, sag]).conductor;
          const two = looseOver([at(0), at(span), at(2 * span), at(3 * span)], [sag, sag, sag]).conductor;
          expect(two.sag).toBeGreaterThan(one.sag);
          expect(swingRadius(two, span)).toBeGreaterThan(swingRadius(one, span));
        },
      ),
      { numRuns: 50, seed: 3 },
    );
  });
});

test('a support that stood higher than its neighbours gives more length', () => {
  const flat = looseOver([at(0), at(50), at(100)], [0.5, 0.5]).conductor.sag;
  expect(looseOver([at(0), at(50, 11), at(100)], [0.5, 0.5]).conductor.sag).toBeGreaterThan(flat);
});

test('supports without a lost one, spans without length and missing sags are refused', () => {
  expect(() => looseOver([at(0), at(50)], [0.5])).toThrow(RangeError);
  expect(() => looseOver([at(0), at(0), at(50)], [0.5, 0.5])).toThrow(RangeError);
  expect(() => looseOver([at(0), at(50), at(100)], [0.5])).toThrow(RangeError);
});
