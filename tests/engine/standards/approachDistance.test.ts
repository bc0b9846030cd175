import { describe, expect, it } from 'vitest';
import {
  altitudeFactor,
  electricalComponent,
  minimumApproach,
  unqualifiedApproach,
} from '../../../src/engine/standards/approachDistance.ts';
import { referenceRecords } from './reference.ts';

const records = referenceRecords('approachDistance');
type Distances = { phase_to_ground: { m: number }; phase_to_phase: { m: number } };

describe('minimumApproach', () => {
  it('gives every distance of 1910.269 Tables R-6 and R-7 at both ends of its range', () => {
    const rows = records.filter((row) => /^r[67]\.\d/.test(row.id) && typeof row.value === 'object');
    expect(rows).toHaveLength(14);
    for (const row of rows) {
      const value = row.value as Distances;
      for (const kilovolts of [Number(row.min_kV), Number(row.max_kV)]) {
        expect(minimumApproach(kilovolts * 1000, 'phase-to-ground').metres, row.id).toBe(value.phase_to_ground.m);
        expect(minimumApproach(kilovolts * 1000, 'phase-to-phase').metres, row.id).toBe(value.phase_to_phase.m);
      }
    }
  });

  it('asks 0.65 m (2.14 ft) at 12.47 kV to ground and 0.68 m between phases (Table R-6)', () => {
    expect(minimumApproach(12470, 'phase-to-ground').metres).toBe(0.65);
    expect(minimumApproach(12470, 'phase-to-phase').metres).toBe(0.68);
    expect(0.65 / 0.3048).toBeCloseTo(2.14, 1);
  });

  it('answers avoid contact from 50 V to 300 V and a distance from 301 V (Table R-6)', () => {
    expect(minimumApproach(240, 'phase-to-ground')).toMatchObject({ metres: 0, avoidContact: true });
    expect(minimumApproach(300, 'phase-to-ground').avoidContact).toBe(true);
    expect(minimumApproach(301, 'phase-to-ground')).toMatchObject({ metres: 0.33, avoidContact: false });
    expect(minimumApproach(48, 'phase-to-ground').avoidContact).toBe(false);
  });

  it('multiplies the whole distance by factor A above 900 m (Table R-6 footnote 1, Table R-5)', () => {
    expect(minimumApproach(12470, 'phase-to-ground', 1600).metres).toBeCloseTo(0.702, 6);
    expect(minimumApproach(12470, 'phase-to-ground', 900).metres).toBe(0.65);
    for (const row of records.filter((entry) => entry.id.startsWith('r5.'))) {
      expect(altitudeFactor(Number(row.max_altitude_m)), row.id).toBe(row.value);
      expect(altitudeFactor(Number(row.min_altitude_m)), row.id).toBe(row.value);
    }
  });

  it('throws where the tables end', () => {
    expect(() => minimumApproach(Number.NaN, 'phase-to-ground')).toThrow(RangeError);
    expect(() => minimumApproach(900000, 'phase-to-ground')).toThrow(RangeError);
    expect(() => minimumApproach(12470, 'phase-to-ground', 7000)).toThrow(RangeError);
  });
});

describe('electricalComponent', () => {
  // 1910.269 Appendix B Table 2, whose own steps are rounded to 0.1 kV.
  it.each([
    [15, 3.72],
    [36, 15.93],
    [46, 22.74],
    [72.5, 38.25],
  ])('reproduces the %f kV column of Appendix B Table 2: %f cm', (kilovolts, centimetres) => {
    expect((electricalComponent(kilovolts * 1000, 'phase-to-ground') ?? 0) * 100).toBeCloseTo(centimetres, 1);
  });

  it('rounds up to Table R-4 between phases', () => {
    for (const row of records.filter((entry) => entry.id.startsWith('r4.'))) {
      const value = row.value as { phase_to_ground: number; phase_to_phase: number };
      const volts = Number(row.max_kV) * 1000;
      const up = (metres: number | undefined): number => Math.ceil((metres ?? 0) * 100) / 100;
      expect(up(electricalComponent(volts, 'phase-to-ground')), row.id).toBeCloseTo(value.phase_to_ground, 9);
      expect(up(electricalComponent(volts, 'phase-to-phase')), row.id).toBeCloseTo(value.phase_to_phase, 9);
    }
  });

  it('answers nothing outside 5.1 to 72.5 kV', () => {
    expect(electricalComponent(5000, 'phase-to-ground')).toBeUndefined();
    expect(electricalComponent(80000, 'phase-to-ground')).toBeUndefined();
  });
});

it('keeps unqualified people 305 cm away to 50 kV and 10 cm more for each 10 kV above (1910.333(c)(3)(i))', () => {
  expect(unqualifiedApproach(7200)).toBe(3.05);
  expect(unqualifiedApproach(70000)).toBeCloseTo(3.25, 9);
});
