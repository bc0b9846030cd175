import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { captionFor, directionOf } from '../../src/sound/captionFor.ts';
import { gainOf, panOf } from '../../src/sound/ear.ts';

describe('gain', () => {
  it.each([
    [60, 1],
    [40, 0.1],
    [54, 0.501187],
    [0, 0.001],
    [95, 1],
  ])('a level of %d dB(A) plays at %d', (level, gain) => {
    expect(gainOf(level)).toBeCloseTo(gain, 6);
  });
});

describe('pan', () => {
  it('goes with the ear, not with the map: a sound on the right is ahead once the view has turned to it', () => {
    expect(panOf(Math.PI / 2, 0)).toBeCloseTo(0.85, 9);
    expect(panOf(Math.PI / 2, Math.PI / 2)).toBeCloseTo(0, 9);
    expect(panOf(Math.PI / 2, Math.PI)).toBeCloseTo(-0.85, 9);
  });

  it('is the middle for what comes from all round, whatever the view', () => {
    expect(panOf(null, 1.3)).toBe(0);
  });
});

describe('captionFor', () => {
  const heard = { bearing: -Math.PI / 2, caption: 'steady engine, some way off' };

  it('puts the direction after the first clause', () => {
    expect(captionFor(heard, 0)).toBe('steady engine, left, some way off');
    expect(captionFor({ ...heard, caption: 'buzzing' }, 0)).toBe('buzzing, left');
  });

  it('turns with the view', () => {
    const words = [0, 1, 2, 3].map((quarter) => directionOf(-Math.PI / 2, (quarter * Math.PI) / 2));
    expect(words).toEqual(['left', 'behind', 'right', 'ahead']);
  });

  it('says no direction for what has none', () => {
    expect(captionFor({ bearing: null, caption: 'birds' }, 2)).toBe('birds');
  });

  it('says the same after any number of full turns, and agrees with the ear on left and right', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3.1, max: 3.1, noNaN: true }),
        fc.integer({ min: -9, max: 9 }),
        (bearing, turns) => {
          fc.pre(Math.abs((Math.abs(bearing) % (Math.PI / 2)) - Math.PI / 4) > 1e-6);
          const word = directionOf(bearing, 0);
          expect(directionOf(bearing, turns * 2 * Math.PI)).toBe(word);
          if (word === 'left') expect(panOf(bearing, 0)).toBeLessThan(-0.6);
          if (word === 'right') expect(panOf(bearing, 0)).toBeGreaterThan(0.6);
        },
      ),
    );
  });
});
