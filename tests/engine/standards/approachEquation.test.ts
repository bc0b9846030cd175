import { describe, expect, it } from 'vitest';
import { minimumApproach } from '../../../src/engine/standards/approachDistance.ts';
import { equationApproach, roundedUp } from '../../../src/engine/standards/approachEquation.ts';
import { referenceRecords } from './reference.ts';

describe('the approach distance by equation', () => {
  it('rounded up is every cell of Tables R-6 and R-7 above 300 V', () => {
    const rows = referenceRecords('approachDistance').filter(({ id }) => /^r[67]\.[\d.]+-[\d.]+kV$/.test(id));
    expect(rows.length).toBe(15);
    for (const { id, value, max_kV } of rows) {
      if (value === 'avoid contact') continue;
      const cells = value as Record<'phase_to_ground' | 'phase_to_phase', { m: number }>;
      const volts = (max_kV as number) * 1000;
      expect(roundedUp(equationApproach(volts, 'phase-to-ground')), id).toBeCloseTo(cells.phase_to_ground.m, 9);
      expect(roundedUp(equationApproach(volts, 'phase-to-phase')), id).toBeCloseTo(cells.phase_to_phase.m, 9);
    }
  });

  it('never asks for more than the table with altitude, which scales the whole distance', () => {
    for (const volts of [480, 4160, 12470, 34500, 69000, 138000, 500000]) {
      for (const altitude of [0, 1500, 4000, 6000]) {
        const tabled = minimumApproach(volts, 'phase-to-ground', altitude).metres;
        expect(equationApproach(volts, 'phase-to-ground', altitude)).toBeLessThanOrEqual(tabled + 1e-9);
      }
    }
  });

  it('is refused where the rule has none', () => {
    expect(() => equationApproach(240, 'phase-to-ground')).toThrow(RangeError);
    expect(() => equationApproach(900000, 'phase-to-ground')).toThrow(RangeError);
    expect(() => equationApproach(12470, 'phase-to-ground', 7000)).toThrow(RangeError);
  });
});
