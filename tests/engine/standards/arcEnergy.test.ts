import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateArcEnergy, leeArcEnergy, tabledArcEnergy } from '../../../src/engine/standards/arcEnergy.ts';
import { referenceRecords } from './reference.ts';

const rows = referenceRecords('arcEnergy').filter((row) => /^t6\.\d/.test(row.id));

describe('arc energy', () => {
  it('reads every entry of 1910.269 Appendix E Table 6 at its limit and the next column past it', () => {
    expect(rows).toHaveLength(16);
    for (const row of rows) {
      const volts = Number(row.max_kV) * 1000;
      const amperes = Number(row.fault_kA) * 1000;
      const times = row.value as Record<string, number>;
      for (const [calories, cycles] of Object.entries(times)) {
        // Where two columns print the same time the lower one is the answer.
        const lowest = Math.min(
          ...Object.keys(times)
            .filter((key) => (times[key] ?? 0) >= cycles)
            .map(Number),
        );
        expect(tabledArcEnergy(volts, amperes, cycles / 60)?.calories, `${row.id} ${calories}`).toBe(lowest);
      }
      expect(tabledArcEnergy(volts, amperes, ((times['12'] ?? 0) + 1) / 60)).toBeUndefined();
    }
  });

  it("answers the rule's own example: 12.47 kV, 8 kA, 10 cycles is the 10 kA row and 4 cal/cm2", () => {
    expect(tabledArcEnergy(12470, 8000, 10 / 60)).toMatchObject({ calories: 4, rowAmperes: 10000 });
  });

  it('answers nothing beyond the table', () => {
    expect(tabledArcEnergy(24900, 18000, 20 / 60)).toBeUndefined();
    expect(tabledArcEnergy(12470, 25000, 1 / 60)).toBeUndefined();
    expect(tabledArcEnergy(480, 5000, 1 / 60)).toBeUndefined();
    expect(estimateArcEnergy(480, 5000, 1)).toBeUndefined();
    expect(estimateArcEnergy(69000, 5000, 1)).toBeUndefined();
  });

  it('estimates 12 cal/cm2 at each 12 cal/cm2 entry, a quarter at twice the distance, and says it is an estimate', () => {
    for (const row of rows) {
      const seconds = ((row.value as Record<string, number>)['12'] ?? 0) / 60;
      const volts = Number(row.max_kV) * 1000;
      const amperes = Number(row.fault_kA) * 1000;
      expect(estimateArcEnergy(volts, amperes, seconds)?.calories, row.id).toBeCloseTo(12, 9);
      expect(estimateArcEnergy(volts, amperes, seconds, 0.76)?.calories, row.id).toBeCloseTo(3, 9);
    }
    expect(estimateArcEnergy(12470, 1000, 1)).toMatchObject({ estimate: true, extrapolated: true });
    expect(estimateArcEnergy(12470, 8000, 1)).toMatchObject({ extrapolated: false });
  });

  it('never estimates less for more current or more time', () => {
    const calories = (amperes: number, seconds: number): number =>
      estimateArcEnergy(12470, amperes, seconds)?.calories ?? -1;
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 19000, noNaN: true }),
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        fc.double({ min: 1.01, max: 3, noNaN: true }),
        (amperes, seconds, more) =>
          calories(amperes * more, seconds) > calories(amperes, seconds) &&
          calories(amperes, seconds * more) > calories(amperes, seconds),
      ),
      { seed: 20 },
    );
  });

  it('follows the Lee equation to 600 V: half the voltage and twice the time cancel', () => {
    const base = leeArcEnergy(240, 200, 0.1, 0.455);
    expect(leeArcEnergy(120, 200, 0.2, 0.455).calories).toBeCloseTo(base.calories, 9);
    expect(base.calories).toBeCloseTo((2.142e6 * 0.24 * 0.2 * 0.1) / (455 * 455) / 4.184, 9);
    expect(base.estimate).toBe(true);
  });
});
