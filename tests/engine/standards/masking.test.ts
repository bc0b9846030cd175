import { describe, expect, it } from 'vitest';
import { bark, maskAt } from '../../../src/engine/standards/masking.ts';

describe('critical-band rate', () => {
  // Zwicker's table of band edges (1961): 100 Hz 1, 510 Hz 5, 1270 Hz 10, 2700 Hz 15, 6400 Hz 20 Bark.
  it.each([
    [510, 5],
    [1270, 10],
    [2700, 15],
    [6400, 20],
  ])('at %d Hz is %d Bark within 0.15 of Zwicker 1961', (frequency, z) => {
    expect(Math.abs(bark(frequency) - z)).toBeLessThan(0.15);
  });
});

describe('spread of masking', () => {
  it('is the whole level at its own frequency', () => {
    expect(maskAt(60, 1000, 1000)).toBe(60);
  });

  it('reaches further up than down, and further up the louder it is (Terhardt 1979)', () => {
    const up = maskAt(80, 1000, 1600);
    const down = maskAt(80, 1000, 620);
    expect(up).toBeGreaterThan(down);
    expect(80 - maskAt(80, 1000, 1600)).toBeLessThan(40 - maskAt(40, 1000, 1600));
    // One Bark above 1 kHz at 60 dB: 24 + 0.23 - 12 = 12.23 dB less.
    const oneUp = (1960 * (bark(1000) + 1 + 0.53)) / (26.81 - (bark(1000) + 1 + 0.53));
    expect(60 - maskAt(60, 1000, oneUp)).toBeCloseTo(12.23, 9);
  });
});
