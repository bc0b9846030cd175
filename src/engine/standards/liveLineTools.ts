/**
 * Live-line tools (hot sticks). 29 CFR 1910.269(j): design test, wiping and looking before use each day, examination
 * and test every two years. The rule gives no leakage or flashover figure for a wet, dirty or overdue stick; neither
 * do we. Left out: tools with a rope or hydraulic hose, and what moisture does inside a tool.
 */
import type { IsoDate, Metres, Seconds, Volts } from '../units/quantities.ts';
import { withinInterval } from './testInterval.ts';

/** What the insulating member is made of. */
export type StickMaterial = 'fibreglass' | 'wood';

/** A withstand test: volts over the whole length, and how long. */
export interface StickTest {
  readonly volts: Volts;
  readonly seconds: Seconds;
  readonly source: string;
}

/** Months between examinations: (j)(2)(iii). */
export const stickTestMonths = 24;

const foot: Metres = 0.3048;

/** Design test of a stick `length` long: (j)(1), 100 kV per foot for 5 min, wood 75 kV per foot for 3 min. */
export const designTest = (material: StickMaterial, length: Metres): StickTest =>
  material === 'fibreglass'
    ? { volts: (100000 * length) / foot, seconds: 300, source: '29 CFR 1910.269(j)(1)(i)' }
    : { volts: (75000 * length) / foot, seconds: 180, source: '29 CFR 1910.269(j)(1)(ii)' };

/** In-service test of a stick `length` long: (j)(2)(iii)(E), 75 kV per foot for 1 min, wood 50 kV per foot. */
export const inServiceTest = (material: StickMaterial, length: Metres): StickTest =>
  material === 'fibreglass'
    ? { volts: (75000 * length) / foot, seconds: 60, source: '29 CFR 1910.269(j)(2)(iii)(E)(1)' }
    : { volts: (50000 * length) / foot, seconds: 60, source: '29 CFR 1910.269(j)(2)(iii)(E)(2)' };

/** What (j)(2) asks of a stick before it protects anybody. */
export interface StickCondition {
  readonly testDate: IsoDate;
  readonly wiped: boolean;
  readonly inspected: boolean;
  readonly defect: boolean;
}

/** Why a stick may not be used on `today`, in the rule's order; empty when it may. Throws on a date that does not exist. */
export const stickFaults = (stick: StickCondition, today: IsoDate): readonly string[] => {
  const faults: string[] = [];
  if (!stick.wiped) faults.push('not wiped clean before use: (j)(2)(i)');
  if (!stick.inspected) faults.push('not inspected before use: (j)(2)(i)');
  if (stick.defect) faults.push('defect or contamination left after wiping: (j)(2)(ii)');
  if (!withinInterval(stick.testDate, today, stickTestMonths))
    faults.push('two years since the last test: (j)(2)(iii)');
  return faults;
};
