import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mayTrip, mayTripAtOnce, tripTime } from '../../../src/engine/standards/breaker.ts';
import { clearTime, linkSizes, meltTime, parseFuseLink } from '../../../src/engine/standards/fuseLinks.ts';
import { referenceValue, type Table } from './reference.ts';

const tenK = { speed: 'K', rating: 10 } as const;

describe('fuse links', () => {
  it('melt at the published points of the K and T curves (OpenDSS TCC_Curve library)', () => {
    for (const speed of ['K', 'T'] as const) {
      const { rows } = referenceValue<Table>('fuseLinks', `tcc-${speed.toLowerCase()}`);
      for (const [multiple, seconds] of rows) {
        expect(meltTime({ speed, rating: 25 }, 25 * Number(multiple))).toBeCloseTo(Number(seconds), 9);
      }
    }
  });

  it('carry less than 200 % of rating for ever (ANSI C37.42 notes)', () => {
    expect(meltTime(tenK, 19.99)).toBe(Number.POSITIVE_INFINITY);
    expect(meltTime(tenK, 20)).toBe(300);
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
          return (
            meltTime(link, current * more) < meltTime(link, current) &&
            clearTime(link, current) > meltTime(link, current)
          );
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
