import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inverseNormal } from '../../../src/engine/standards/inverseNormal.ts';
import { aPrime, detection, detectionFromRates } from '../../../src/engine/standards/signalDetection.ts';
import { wilsonInterval } from '../../../src/engine/standards/wilson.ts';

describe('inverseNormal', () => {
  // Values from scipy.special.ndtri (another algorithm, Cephes).
  it.each([
    [1e-300, -37.0470962993612],
    [1e-20, -9.262340089798409],
    [1e-10, -6.361340902404056],
    [0.00001, -4.264890793922825],
    [0.001, -3.090232306167813],
    [0.025, -1.9599639845400545],
    [0.07, -1.4757910281791706],
    [0.0749, -1.4402382675279635],
    [0.0751, -1.4388253927525403],
    [0.2, -0.8416212335729142],
    [0.4, -0.2533471031357997],
    [0.5, 0.0],
    [0.6, 0.2533471031357997],
    [0.9249, 1.4388253927525403],
    [0.9251, 1.4402382675279635],
    [0.975, 1.959963984540054],
    [0.999999, 4.753424308817087],
  ])('of %f is %f', (probability, z) => {
    expect(Math.abs(inverseNormal(probability) - z)).toBeLessThan(1e-9 * Math.max(1, Math.abs(z)));
  });

  it('is odd around one half, rises, and ends at infinity', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-12, max: 0.5, noNaN: true }), (p) => {
        expect(inverseNormal(1 - p)).toBeCloseTo(-inverseNormal(p), 3);
        expect(inverseNormal(p)).toBeLessThan(inverseNormal(p + 0.01));
      }),
      { seed: 20 },
    );
    expect(inverseNormal(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(inverseNormal(1)).toBe(Number.POSITIVE_INFINITY);
    expect(inverseNormal(1.1)).toBeNaN();
  });
});

describe('signal detection', () => {
  it("gives d' 1.002793, c -0.401960 for 82 of 100 hits and 46 of 100 false calls (statpsych manual, log-linear)", () => {
    const result = detection({ hits: 82, signals: 100, falseCalls: 46, noise: 100 });
    expect(result.sensitivity).toBeCloseTo(1.002793, 6);
    expect(result.criterion).toBeCloseTo(-0.4019603, 6);
    expect(result.hitRate).toBeCloseTo(0.8168317, 7);
    expect(result.falseCallRate).toBeCloseTo(0.460396, 6);
  });

  it("gives d' 1.094968, c -0.294137, beta 0.724647, A' 0.791667 for rates 0.8 and 0.4 (computed with scipy)", () => {
    const result = detectionFromRates(0.8, 0.4);
    expect(result.sensitivity).toBeCloseTo(1.094968, 6);
    expect(result.criterion).toBeCloseTo(-0.294137, 6);
    expect(result.beta).toBeCloseTo(0.724647, 6);
    expect(aPrime(0.8, 0.4)).toBeCloseTo(0.791667, 6);
    expect(aPrime(0.5, 0.5)).toBe(0.5);
    expect(aPrime(0, 0)).toBe(0.5);
  });

  // Computed with scipy.
  it.each([
    [8, 8, 0, 6, 3.058453, -0.063993],
    [0, 8, 0, 6, -0.127985, 1.529226],
    [5, 8, 2, 6, 0.648323, 0.041945],
  ])(
    'stays finite for %i of %i hits and %i of %i false calls',
    (hits, signals, falseCalls, noise, sensitivity, criterion) => {
      const result = detection({ hits, signals, falseCalls, noise });
      expect(result.sensitivity).toBeCloseTo(sensitivity, 6);
      expect(result.criterion).toBeCloseTo(criterion, 6);
    },
  );
});

describe('wilsonInterval', () => {
  // Newcombe 1998, Table I, method 3; the last computed with scipy.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
    [9, 10, 0.5958, 0.9821],
  ])('of %i in %i is %f to %f', (hits, trials, lower, upper) => {
    const interval = wilsonInterval(hits, trials);
    expect(interval.lower).toBeCloseTo(lower, 4);
    expect(interval.upper).toBeCloseTo(upper, 4);
  });

  it('says nothing without trials and holds the proportion otherwise', () => {
    expect(wilsonInterval(0, 0)).toEqual({ lower: 0, upper: 1 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.double({ min: 0, max: 1, noNaN: true }), (trials, part) => {
        const hits = Math.round(part * trials);
        const { lower, upper } = wilsonInterval(hits, trials);
        return lower <= hits / trials + 1e-12 && hits / trials <= upper + 1e-12 && lower >= 0 && upper <= 1;
      }),
      { seed: 20 },
    );
  });
});
