import { describe, expect, it } from 'vitest';
import {
  cuffGap,
  type GloveClass,
  gloveClasses,
  gloveRatings,
  glovesInDate,
  requiredGloveClass,
  rubberTestMonths,
  voltageToCover,
} from '../../../src/engine/standards/gloves.ts';
import { designTest, inServiceTest, stickFaults } from '../../../src/engine/standards/liveLineTools.ts';
import { dueDate, isIsoDate, withinInterval } from '../../../src/engine/standards/testInterval.ts';
import { referenceValue } from './reference.ts';

const foot = 0.3048;

describe('gloves', () => {
  it('have the use and retest voltages of 1910.137 Table I-4', () => {
    for (const name of gloveClasses) {
      const value = referenceValue<{ max_use_ac_V: number; retest_ac_V: number }>(
        'insulatingEquipment',
        `i4.class${name}`,
      );
      expect(gloveRatings[name]).toEqual({ maxUse: value.max_use_ac_V, retest: value.retest_ac_V });
    }
  });

  it('are chosen as Class 2 for 12.47 kV between phases, Class 1 to ground only, none for 46 kV (Table I-4 note 1)', () => {
    expect(requiredGloveClass(voltageToCover(12470, true))).toBe('2');
    expect(requiredGloveClass(voltageToCover(12470, false))).toBe('1');
    expect(requiredGloveClass(46000)).toBeUndefined();
    expect(requiredGloveClass(500)).toBe('00');
    expect(requiredGloveClass(501)).toBe('0');
  });

  it('have the test intervals of 1910.137 Table I-5', () => {
    expect(rubberTestMonths.gloves).toBe(referenceValue('insulatingEquipment', 'i5.gloves'));
    expect(rubberTestMonths.sleeves).toBe(referenceValue('insulatingEquipment', 'i5.sleeves'));
    expect(rubberTestMonths.blankets).toBe(referenceValue('insulatingEquipment', 'i5.blankets'));
    expect(rubberTestMonths.unissued).toBe(referenceValue('insulatingEquipment', 'i5.shelf'));
  });

  it('keep the cuff gaps of MIL-HDBK-1025/10 Table 3', () => {
    for (const name of ['0', '1', '2', '3', '4'] as const satisfies readonly GloveClass[]) {
      const { mm } = referenceValue<{ mm: number }>('insulatingEquipment', `cuff-gap.class${name}`);
      expect(cuffGap[name]).toBeCloseTo(mm / 1000, 9);
    }
  });

  it('tested on 15 January are due on 15 July and out of date on 20 July', () => {
    expect(dueDate('2026-01-15', 6)).toBe('2026-07-15');
    expect(glovesInDate('2026-01-15', '2026-07-15')).toBe(true);
    expect(glovesInDate('2026-01-15', '2026-07-20')).toBe(false);
  });
});

describe('live-line tools', () => {
  it('of 8 ft fibreglass stand 800 kV for 5 min as new and 600 kV for 1 min in service (1910.269(j))', () => {
    expect(designTest('fibreglass', 8 * foot).volts).toBeCloseTo(800000, 6);
    expect(designTest('fibreglass', 8 * foot).seconds).toBe(300);
    expect(inServiceTest('fibreglass', 8 * foot).volts).toBeCloseTo(600000, 6);
    expect(inServiceTest('fibreglass', 8 * foot).seconds).toBe(60);
  });

  it('agree with the metric figures printed in 1910.269(j) to their four digits', () => {
    const tests = { frp: 'fibreglass', wood: 'wood' } as const;
    for (const [id, material] of Object.entries(tests)) {
      const design = referenceValue<{ V_per_m: number }>('insulatingEquipment', `design.${id}`);
      const service = referenceValue<{ V_per_m: number }>('insulatingEquipment', `inservice.${id}`);
      expect(Math.abs(designTest(material, 1).volts / design.V_per_m - 1)).toBeLessThan(3e-4);
      expect(Math.abs(inServiceTest(material, 1).volts / service.V_per_m - 1)).toBeLessThan(3e-4);
    }
  });

  it('are refused when unwiped, not inspected, defective or past two years, each with its paragraph', () => {
    const good = { testDate: '2025-02-01', wiped: true, inspected: true, defect: false };
    expect(stickFaults(good, '2026-11-24')).toEqual([]);
    expect(stickFaults({ ...good, wiped: false, inspected: false, defect: true }, '2027-02-02')).toHaveLength(4);
    expect(stickFaults(good, '2027-02-01')).toEqual([]);
    expect(stickFaults(good, '2027-02-02')[0]).toMatch(/\(j\)\(2\)\(iii\)/);
  });
});

describe('test dates', () => {
  it('fall back to the last day of a short month', () => {
    expect(dueDate('2025-08-31', 6)).toBe('2026-02-28');
    expect(dueDate('2027-08-31', 6)).toBe('2028-02-29');
    expect(dueDate('2024-02-29', 24)).toBe('2026-02-28');
    expect(dueDate('2025-12-15', 1)).toBe('2026-01-15');
  });

  it('do not count when they lie in the future', () => {
    expect(withinInterval('2026-05-02', '2026-05-01', 6)).toBe(false);
  });

  it('must exist', () => {
    for (const text of [
      '2026-02-29',
      '2026-13-01',
      '2026-00-10',
      '2026-04-31',
      '26-01-01',
      '2026-1-1',
      '',
      '1900-02-29',
    ]) {
      expect(isIsoDate(text), text).toBe(false);
    }
    expect(isIsoDate('2000-02-29')).toBe(true);
    expect(() => dueDate('2026-02-30', 6)).toThrow(RangeError);
    expect(() => withinInterval('2026-01-01', 'tomorrow', 6)).toThrow(RangeError);
  });
});
