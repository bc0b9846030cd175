/** Marks against distance, light, air and glass, through the senses that a drill uses. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lacking, type Mark, marginOf } from '../../../src/engine/senses/light.ts';
import { aids } from '../../../src/engine/senses/types.ts';
import { start } from '../acts/scene.ts';

const clear = { ...start().site, visibilityM: 1e9 };
const mark: Mark = { size: 0.003, shape: 'patch', contrast: 0.5, reflectance: 0.3 };
const lit = (skyLux: number) => ({ ...clear, skyLux });

describe('a 3 mm mark of contrast 50 % on reflectance 0.3 at 12 m', () => {
  // Ikeda, Noda and Yamaguchi's formula computed by another program: shared/reference/senses.json. An 8x glass by hand acts as 6x.
  it.each([
    ['by day', 10000, 'eyes', 1.429],
    ['by full moon', 0.25, 'eyes', 0.121],
    ['by full moon with the glass', 0.25, 'glass', 0.671],
    ['in an overcast night', 0.0001, 'eyes', 0],
  ] as const)('%s (%f lx, %s) shows with margin %f', (_, skyLux, aid, expected) => {
    expect(marginOf(mark, 12, lit(skyLux), aid)).toBeCloseTo(expected, 3);
  });

  it('by a lamp with a 100 m beam at night shows with margin 0.58, and is made out from 8.29 m', () => {
    expect(marginOf(mark, 12, lit(0), 'lamp')).toBeCloseTo(0.58, 3);
    expect(marginOf(mark, 8.28, lit(0), 'lamp')).toBeGreaterThan(1);
    expect(marginOf(mark, 8.3, lit(0), 'lamp')).toBeLessThan(1);
  });
});

it('a mark of 5.818 mm at 20 m, which is 1 arcmin, is just made out with glass at dawn and hopeless in a moonless night', () => {
  const arcmin = { ...mark, size: 0.005818 };
  expect(marginOf(arcmin, 20, lit(25), 'glass')).toBeGreaterThan(1);
  expect(marginOf(arcmin, 20, lit(0.001), 'glass')).toBeLessThan(1);
});

const marks = fc.record({
  size: fc.double({ min: 0.0003, max: 0.3, noNaN: true }),
  shape: fc.constantFrom('line' as const, 'patch' as const),
  contrast: fc.double({ min: 0.1, max: 1, noNaN: true }),
  reflectance: fc.double({ min: 0.05, max: 0.8, noNaN: true }),
});
const sites = fc.record({
  skyLux: fc.double({ min: 0.001, max: 20000, noNaN: true }),
  visibilityM: fc.double({ min: 30, max: 5000, noNaN: true }),
});
const far = fc.double({ min: 1, max: 80, noNaN: true });
const more = fc.double({ min: 1, max: 5, noNaN: true });
const aid = fc.constantFrom(...aids);

describe('for any mark', () => {
  const never = (what: (less: number, better: number) => boolean) => what;
  const worse = never((less, better) => better < less - 1e-12);

  it('nearer, more light, clearer air and a larger mark are never worse', () => {
    fc.assert(
      fc.property(marks, sites, far, more, aid, (each, given, distance, by, withAid) => {
        const site = { ...clear, ...given };
        const margin = marginOf(each, distance, site, withAid);
        expect(worse(margin, marginOf(each, distance / by, site, withAid))).toBe(false);
        expect(worse(margin, marginOf(each, distance, { ...site, skyLux: site.skyLux * by }, withAid))).toBe(false);
        expect(worse(margin, marginOf(each, distance, { ...site, visibilityM: site.visibilityM * by }, withAid))).toBe(
          false,
        );
        expect(worse(margin, marginOf({ ...each, size: each.size * by }, distance, site, withAid))).toBe(false);
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  it('a lamp is never worse than the eye alone, and a glass shows a patch better whenever there is light for it', () => {
    fc.assert(
      fc.property(marks, sites, far, (each, given, distance) => {
        const site = { ...clear, ...given };
        const eyes = marginOf(each, distance, site, 'eyes');
        expect(worse(eyes, marginOf(each, distance, site, 'lamp'))).toBe(false);
        if (each.shape === 'patch' && marginOf(each, distance, site, 'glass') > 0) {
          expect(marginOf(each, distance, site, 'glass')).toBeGreaterThan(eyes);
        }
      }),
      { seed: 12, numRuns: 300 },
    );
  });

  it('what is lacking is named so that it helps: light, air, or nothing but nearness', () => {
    fc.assert(
      fc.property(marks, sites, far, aid, (each, given, distance, withAid) => {
        const site = { ...clear, ...given };
        if (marginOf(each, distance, site, withAid) >= 1) return;
        const why = lacking(each, distance, site, withAid);
        const day = { ...site, skyLux: 10000 };
        const helped = { 'too dark': day, fog: { ...day, visibilityM: 50000 }, 'too small': null }[why];
        if (helped !== null) expect(marginOf(each, distance, helped, withAid)).toBeGreaterThanOrEqual(1);
        else expect(marginOf(each, distance, { ...day, visibilityM: 50000 }, withAid)).toBeLessThan(1);
      }),
      { seed: 13, numRuns: 300 },
    );
  });
});
