import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  lockoutTime,
  recloserSequence,
  recloserTrip,
  timeFed,
  usualSequence,
} from '../../../src/engine/standards/recloser.ts';

const settings = { ...usualSequence, pickUp: 100 };

describe('a recloser', () => {
  it('never trips below its pick-up', () => {
    expect(recloserTrip('fast', 100, 99.9)).toBe(Number.POSITIVE_INFINITY);
    expect(recloserTrip('slow', 100, Number.NaN)).toBe(Number.POSITIVE_INFINITY);
    expect(recloserSequence(settings, 99.9)).toEqual([]);
    expect(lockoutTime([])).toBeUndefined();
  });

  it('trips no later with more current, on either curve', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('fast', 'slow'),
        fc.double({ min: 1, max: 40, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (curve, multiple, more) =>
          recloserTrip(curve, 100, 100 * multiple * more) <= recloserTrip(curve, 100, 100 * multiple) * (1 + 1e-12),
      ),
      { seed: 20 },
    );
  });

  it('trips fast first, then slow, waits in between, and locks out after one trip more than waits', () => {
    const shots = recloserSequence({ ...settings, fast: 2, delay: 0.05 }, 800);
    expect(shots.map(({ curve }) => curve)).toEqual(['fast', 'fast', 'slow', 'slow']);
    expect(shots.map(({ closesAgain }) => closesAgain === undefined)).toEqual([false, false, false, true]);
    for (const [k, shot] of shots.entries()) {
      const next = shots[k + 1];
      if (next !== undefined) expect(next.from).toBe(shot.closesAgain);
      expect(shot.trips - shot.from).toBeCloseTo(recloserTrip(shot.curve, 100, 800) + 0.05, 12);
    }
    expect(timeFed(shots)).toBeLessThan(lockoutTime(shots) ?? 0);
    expect((lockoutTime(shots) ?? 0) - timeFed(shots)).toBeCloseTo(4.5, 12);
  });
});
