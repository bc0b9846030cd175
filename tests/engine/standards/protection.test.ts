import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mayTrip, mayTripAtOnce, tripTime } from '../../../src/engine/standards/breaker.ts';
import {
  clearTime,
  linkPoints,
  linkSizes,
  meltingCurrent,
  meltTime,
  parseFuseLink,
} from '../../../src/engine/standards/fuseLinks.ts';
import { referenceValue, type Table } from './reference.ts';

const tenK = { speed: 'K', rating: 10 } as const;

describe('fuse links', () => {
  const both = ['K', 'T'] as const;
  const table = (speed: 'K' | 'T') => referenceValue<Table>('fuseLinks', `${speed.toLowerCase()}-table`).rows;

  it('melt and clear at the points of their size (ANSI C37.42, from memory)', () => {
    for (const speed of both) {
      expect(table(speed).map(([rating]) => rating)).toEqual([...linkSizes]);
      for (const [rating = 0, low, high, low10, high10, low01, high01] of table(speed).map((row) => row.map(Number))) {
        const link = { speed, rating };
        const long = rating > 100 ? 600 : 300;
        const at = Number(low);
        if (at >= 2 * rating) expect(meltTime(link, at), `${rating}${speed}`).toBeCloseTo(long, 6);
        expect(meltTime(link, Number(low10))).toBeCloseTo(10, 9);
        expect(meltTime(link, Number(low01))).toBeCloseTo(0.1, 12);
        expect(clearTime(link, Number(high))).toBeCloseTo(long + 1 / 60, 6);
        expect(clearTime(link, Number(high) * 0.999)).toBe(Number.POSITIVE_INFINITY);
        expect(clearTime(link, Number(high10))).toBeCloseTo(10 + 1 / 60, 9);
        expect(clearTime(link, Number(high01))).toBeCloseTo(0.1 + 1 / 60, 12);
      }
    }
  });

  it('melt within a quarter of the current of the coarse curve in print, up to 100 A (OpenDSS TCC_Curve library)', () => {
    for (const speed of both) {
      const { rows } = referenceValue<Table>('fuseLinks', `tcc-${speed.toLowerCase()}`);
      for (const rating of linkSizes.filter((size) => size <= 100)) {
        for (const [multiple, seconds] of rows) {
          const ratio = meltingCurrent({ speed, rating }, Number(seconds)) / (rating * Number(multiple));
          expect(ratio, `${rating}${speed} ${seconds} s`).toBeGreaterThan(0.8);
          expect(ratio, `${rating}${speed} ${seconds} s`).toBeLessThan(1.25);
        }
      }
    }
  });

  it('say of each point whether it is remembered or read, in rising amperes and falling seconds', () => {
    for (const speed of both) {
      for (const rating of linkSizes) {
        for (const which of ['least', 'most'] as const) {
          const points = linkPoints({ speed, rating }, which);
          expect(points.filter(({ basis }) => basis.includes('memory')).length).toBe(3);
          expect(points.filter(({ basis }) => basis.startsWith('published')).length).toBeGreaterThan(1);
          for (const [k, point] of points.slice(1).entries()) {
            expect(point.amperes).toBeGreaterThan(points[k]?.amperes ?? 0);
            expect(point.seconds).toBeLessThan(points[k]?.seconds ?? 0);
          }
        }
      }
    }
  });

  it('carry less than 200 % of rating for ever (notes on a curve sheet for ANSI C37.42 links)', () => {
    const carried = referenceValue<number>('fuseLinks', 'k-200pct');
    for (const speed of both) {
      for (const rating of linkSizes) {
        expect(meltTime({ speed, rating }, carried * rating * 0.999)).toBe(Number.POSITIVE_INFINITY);
        expect(meltTime({ speed, rating }, 1.25 * carried * rating)).toBeLessThan(600);
      }
    }
  });

  it('of 11 A are not made: their points are an error, not a guess', () => {
    expect(() => linkPoints({ speed: 'K', rating: 11 }, 'least')).toThrow('11 A');
  });

  it('of 10K do not open on the 6.1 A that a 6.5 kVA household set drives through a 25 kVA transformer', () => {
    expect(meltTime(tenK, referenceValue<{ HV_short_A: number }>('fuseLinks', 'backfeed-fuse').HV_short_A)).toBe(
      Number.POSITIVE_INFINITY,
    );
  });

  it('come in the published sizes and are read from text', () => {
    expect([...linkSizes]).toEqual(referenceValue('fuseLinks', 'sizes'));
    expect(parseFuseLink('10K')).toEqual(tenK);
    expect(parseFuseLink(' 15 t')).toEqual({ speed: 'T', rating: 15 });
    expect(parseFuseLink('11K')).toBeUndefined();
    expect(parseFuseLink('10Q')).toBeUndefined();
    expect(parseFuseLink('')).toBeUndefined();
  });

  it('melt sooner with more current, and clear later than they melt', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('K' as const, 'T' as const),
        fc.constantFrom(...linkSizes),
        fc.double({ min: 2, max: 300, noNaN: true }),
        fc.double({ min: 1.001, max: 3, noNaN: true }),
        (speed, rating, multiple, more) => {
          const link = { speed, rating };
          const current = multiple * rating;
          const [sooner, melts, clears] = [
            meltTime(link, current * more),
            meltTime(link, current),
            clearTime(link, current),
          ];
          const never = Number.POSITIVE_INFINITY;
          return (sooner < melts || melts === never) && (clears > melts || clears === never);
        },
      ),
      { seed: 20 },
    );
  });
});

describe('breakers', () => {
  it('hold 100 %, trip at 135 % within 1 h and at 200 % within 2 min for 30 A and less (UL 489)', () => {
    const hold = referenceValue<number>('breakers', 'brk-hold') / 100;
    expect(tripTime(30, 30 * hold)).toBe(Number.POSITIVE_INFINITY);
    expect(mayTrip(30, 30 * hold)).toBe(false);
    expect(tripTime(30, 30 * 1.35)).toBeCloseTo(referenceValue<number>('breakers', 'brk-135') * 3600, 6);
    expect(tripTime(30, 60)).toBeCloseTo(referenceValue<number>('breakers', 'brk-200') * 60, 6);
  });

  it('of larger frames have the recalled points, which stand unconfirmed in the reference', () => {
    const at200 = referenceValue<Record<string, number>>('breakers', 'brk-200-big');
    const at300 = referenceValue<Record<string, number>>('breakers', 'brk-300-max');
    expect(tripTime(50, 100)).toBeCloseTo((at200['31-50 A'] ?? 0) * 60, 6);
    expect(tripTime(100, 200)).toBeCloseTo((at200['51-100 A'] ?? 0) * 60, 6);
    expect(tripTime(100, 135)).toBeCloseTo(referenceValue<number>('breakers', 'brk-135-big') * 3600, 6);
    expect(tripTime(20, 60)).toBeCloseTo(at300['15-30 A'] ?? 0, 6);
  });

  it('trip magnetically within a cycle at ten times rating, and may from five times', () => {
    expect(tripTime(30, 300)).toBeCloseTo(1 / 60, 9);
    expect(mayTripAtOnce(30, 150)).toBe(true);
    expect(mayTripAtOnce(30, 149)).toBe(false);
  });

  it('never trip later with more current', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 15, max: 225, noNaN: true }),
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (rating, multiple, more) =>
          tripTime(rating, rating * multiple * more) <= tripTime(rating, rating * multiple) * (1 + 1e-12),
      ),
      { seed: 20 },
    );
  });

  it('have no points above 225 A', () => {
    expect(() => tripTime(400, 1000)).toThrow(RangeError);
    expect(() => tripTime(0, 10)).toThrow(RangeError);
  });
});
