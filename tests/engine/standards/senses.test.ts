import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  acuity,
  angularSize,
  binocularTransmission,
  contrastThroughAir,
  handHeldPart,
  lampIlluminance,
  lineRatio,
  luminance,
  patchRatio,
} from '../../../src/engine/standards/acuity.ts';
import {
  heardDistance,
  heardMargin,
  isHeard,
  isUnderstood,
  levelAt,
  levelFromPower,
  sumLevels,
  windBackground,
} from '../../../src/engine/standards/hearing.ts';

/** A 3 mm mark of contrast 50 % on a ground of reflectance 0.3, 12 m away. */
const mark = (lux: number, magnification = 1, distance = 12): number =>
  patchRatio({
    size: 0.003,
    distance,
    contrast: 0.5,
    luminance: luminance(lux, 0.3, magnification === 1 ? 1 : binocularTransmission),
    magnification: magnification === 1 ? 1 : magnification * handHeldPart,
  });

describe('seeing', () => {
  it('takes a 20/20 letter of 8.87 mm at 20 ft as 5 arcmin (ophthalmic definition)', () => {
    expect(angularSize(0.00887, 6.096)).toBeCloseTo(5.0021, 4);
    expect(angularSize(0.003, 12)).toBeCloseTo(0.85944, 5);
  });

  // Computed from the published formula by another program; see shared/reference/senses.json VI-03.
  it.each([
    [0.01, 1, 0.148],
    [1, 1, 0.8475],
    [100, 1, 1.8116],
    [1, 0.5, 0.59],
    [100, 0.2, 0.9414],
    [0.003, 0.5, 0],
    [0.01, 0.2, 0],
  ])('has acuity at %f cd/m2 and contrast %f of %f', (light, contrast, expected) => {
    expect(acuity(light, contrast)).toBeCloseTo(expected, 4);
  });

  it('sees a 3 mm mark at 12 m by day, not by lamp, moon or overcast night; by lamp and 8x glass it does', () => {
    const lamp = lampIlluminance(100, 12);
    expect(lamp).toBeCloseTo(17.3611, 4);
    expect(mark(10000)).toBeCloseTo(1.429, 3);
    expect(mark(lamp)).toBeCloseTo(0.58, 3);
    expect(mark(0.25)).toBeCloseTo(0.121, 3);
    expect(mark(0.25, 8)).toBeCloseTo(0.671, 3);
    expect(mark(lamp, 8)).toBeCloseTo(3.337, 2);
    expect(mark(0.0001)).toBe(0);
  });

  it('sees the mark by a 100 m lamp from 8.29 m and no farther', () => {
    expect(mark(lampIlluminance(100, 8.28), 1, 8.28)).toBeGreaterThan(1);
    expect(mark(lampIlluminance(100, 8.3), 1, 8.3)).toBeLessThan(1);
  });

  it('sees a dark wire on the sky far below an arcmin, as Hecht and Mintz found (0.5 arcsec at best; within a factor 2)', () => {
    const arcsec = Math.PI / 648000;
    const wire = { distance: 1, contrast: 1, luminance: 1000 };
    expect(lineRatio({ ...wire, size: 1 * arcsec })).toBeGreaterThan(1);
    expect(lineRatio({ ...wire, size: 0.25 * arcsec })).toBeLessThan(1);
    expect(patchRatio({ ...wire, size: 1 * arcsec })).toBeLessThan(0.1);
  });

  it('never sees a line worse than a patch of the same width, nor anything without contrast', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.0005, max: 0.1, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.double({ min: 0.0001, max: 3000, noNaN: true }),
        (size, distance, contrast, light) => {
          const sight = { size, distance, contrast, luminance: light };
          return lineRatio(sight) >= patchRatio(sight) && patchRatio({ ...sight, contrast: 0 }) === 0;
        },
      ),
      { seed: 20 },
    );
  });

  it('loses contrast in fog to 2 % at the visibility (Koschmieder)', () => {
    expect(contrastThroughAir(1, 200, 200)).toBeCloseTo(0.02, 4);
    const sight = { size: 0.05, distance: 60, contrast: 0.5, luminance: 100 };
    expect(patchRatio({ ...sight, visibility: 50 })).toBeLessThan(patchRatio({ ...sight, visibility: 500 }));
    expect(patchRatio({ ...sight, visibility: 500 })).toBeLessThan(patchRatio(sight));
  });
});

describe('hearing', () => {
  it('has 72 dB(A) at 7 m from sound power 97 dB over hard ground (European limit sheet)', () => {
    expect(levelFromPower(97, 7, true)).toBeCloseTo(72.1, 1);
    expect(levelFromPower(97, 7, false)).toBeCloseTo(69.1, 1);
    // ISO 9613-2 worked in a noise manual: Lw 100 at 100 m, 0.2 dB of air absorption, gives 48.8.
    expect(levelFromPower(100, 100, false) - 0.2).toBeCloseTo(48.8, 6);
  });

  it('falls 6 dB a doubling: 72 dB at 7 m is 66 at 14 m and 56.9 at 40 m', () => {
    expect(levelAt(72, 7, 14)).toBeCloseTo(65.979, 3);
    expect(levelAt(72, 7, 40)).toBeCloseTo(56.861, 3);
  });

  it('loses that generator beyond 97 m in heavy rain of 55 dB', () => {
    expect(heardDistance(72, 7, 55)).toBeCloseTo(97.4, 1);
    expect(isHeard(levelAt(72, 7, 97), 55)).toBe(true);
    expect(isHeard(levelAt(72, 7, 98), 55)).toBe(false);
  });

  it('hears what raises the level by 1 dB', () => {
    expect(heardMargin).toBeCloseTo(-5.868, 3);
    expect(sumLevels([50, 50 + heardMargin])).toBeCloseTo(51, 9);
    expect(sumLevels([60, 60])).toBeCloseTo(63.01, 2);
    expect(sumLevels([])).toBe(Number.NEGATIVE_INFINITY);
    expect(isUnderstood(60, 50)).toBe(true);
    expect(isUnderstood(59, 50)).toBe(false);
  });

  it('has wind noise of 22.6 lg v + 22.7 in grassland (Boersma 1997)', () => {
    expect(windBackground(10)).toBeCloseTo(45.3, 9);
    expect(windBackground(0)).toBeCloseTo(22.7, 9);
  });
});
