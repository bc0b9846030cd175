import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effectBand, effectBands, fibrillationThreshold } from '../../../src/engine/standards/bodyCurrent.ts';
import { bodyImpedance, internalBodyResistance } from '../../../src/engine/standards/bodyImpedance.ts';
import { referenceValue, type Table } from './reference.ts';

describe('bodyImpedance', () => {
  it('gives every value of IEC 479-1:1994 Table 1', () => {
    const { rows } = referenceValue<Table>('body', 'zt-1994');
    expect(rows).toHaveLength(9);
    for (const [volts, low, median, high] of rows) {
      const touch = volts === 'asymptote' ? 7200 : Number(volts);
      expect([bodyImpedance(touch, 5), bodyImpedance(touch), bodyImpedance(touch, 95)]).toEqual([low, median, high]);
    }
  });

  it('draws 71.6 mA at 120 V and 179.2 mA at 240 V through the median body (worked from the table)', () => {
    expect(120 / bodyImpedance(120)).toBeCloseTo(0.0716, 4);
    expect(240 / bodyImpedance(240)).toBeCloseTo(0.1792, 4);
  });

  it('never rises with voltage', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20000, noNaN: true }),
        fc.double({ min: 0, max: 5000, noNaN: true }),
        fc.constantFrom(5 as const, 50 as const, 95 as const),
        (volts, more, percentile) => bodyImpedance(volts + more, percentile) <= bodyImpedance(volts, percentile) + 1e-9,
      ),
      { seed: 20 },
    );
  });
});

describe('effectBand', () => {
  it('puts the fibrillation threshold at 367 mA for 0.1 s, 183 V over 500 ohm (116/sqrt(t), Dalziel and Lee 1968)', () => {
    expect(fibrillationThreshold(0.1)).toBeCloseTo(0.3668, 4);
    expect(fibrillationThreshold(0.1) * internalBodyResistance).toBeCloseTo(183.4, 1);
  });

  it('does not extrapolate 116/sqrt(t) beyond 8.3 ms to 5 s', () => {
    expect(fibrillationThreshold(60)).toBe(fibrillationThreshold(5));
    expect(fibrillationThreshold(0)).toBe(fibrillationThreshold(0.0083));
  });

  // 0.5 mA IEC AC-1; 1 mA and 6 mA 1910.269 Appendix C, III.D.1; 116 mA at 1 s Dalziel and Lee 1968.
  it.each([
    [0.00049, 1, 'none'],
    [0.0005, 1, 'perceived'],
    [0.001, 1, 'startle'],
    [0.0059, 1, 'startle'],
    [0.006, 1, 'cannot-let-go'],
    [0.115, 1, 'cannot-let-go'],
    [0.116, 1, 'possible-fibrillation'],
    [0.116, 0.5, 'cannot-let-go'],
    [4.18, 0.5, 'possible-fibrillation'],
  ])('calls %f A for %f s %s', (current, seconds, band) => {
    const effect = effectBand(current, seconds);
    expect(effect.band).toBe(band);
    expect(effect.reached?.band ?? 'none').toBe(band);
    expect(effect.thresholds.every((threshold) => threshold.source.length > 0)).toBe(true);
  });

  it('never calls a larger current milder', () => {
    const rank = (current: number, seconds: number): number => effectBands.indexOf(effectBand(current, seconds).band);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.double({ min: 0.001, max: 20, noNaN: true }),
        (current, more, seconds) => rank(current + more, seconds) >= rank(current, seconds),
      ),
      { seed: 20 },
    );
  });
});
