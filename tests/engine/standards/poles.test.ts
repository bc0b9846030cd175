import { describe, expect, it } from 'vitest';
import {
  circumferenceAt,
  fibreStrength,
  heartRotLeaves,
  momentCapacity,
  mustReplace,
  poleClasses,
  poleDimensions,
  rejectBelow,
  shellRotLeaves,
} from '../../../src/engine/standards/poles.ts';
import { referenceValue, type Table } from './reference.ts';

const inch = 0.0254;
const foot = 0.3048;
const footPound = 1.3558179483314;

describe('poles', () => {
  it('have the tabled circumferences, setting and class loads', () => {
    const top = referenceValue<number[]>('poles', 'top-circ');
    const load = referenceValue<Record<string, number>>('poles', 'class-load');
    for (const [length, setting, ...butts] of referenceValue<Table>('poles', 'circ-6ft').rows) {
      for (const poleClass of poleClasses) {
        const pole = poleDimensions(Number(length) * foot, poleClass);
        const butt = butts[poleClass - 1];
        if (butt === null) {
          expect(pole).toBeUndefined();
          continue;
        }
        expect(pole?.buttCircumference).toBeCloseTo(Number(butt) * inch, 9);
        expect(pole?.setting).toBeCloseTo(Number(setting) * foot, 9);
        expect(pole?.topCircumference).toBeCloseTo((top[poleClass - 1] ?? 0) * inch, 9);
        expect(pole?.classLoad).toBeCloseTo((load[String(poleClass)] ?? 0) * 4.4482216152605, 6);
      }
    }
  });

  it('taper from the butt circumference to the top', () => {
    const pole = poleDimensions(40 * foot, 5);
    if (!pole) throw new Error('40 ft class 5 is tabled');
    expect(circumferenceAt(pole, 0)).toBeCloseTo(pole.buttCircumference, 9);
    expect(circumferenceAt(pole, pole.length - pole.setting)).toBeCloseTo(pole.topCircumference, 9);
  });

  it('of 37.5 in and 8000 psi withstand 111 315 ft-lb (published worked example)', () => {
    const moment = momentCapacity(37.5 * inch, fibreStrength['southern pine']);
    expect(moment / footPound).toBeCloseTo(111315, -1);
    expect(momentCapacity(36.5 * inch, fibreStrength['southern pine']) / footPound).toBeCloseTo(102645, -1);
    expect((600 * 38 * footPound) / moment).toBeCloseTo(0.205, 3);
  });

  it('carry their class load within 7 % (45 ft, southern pine)', () => {
    for (const poleClass of poleClasses) {
      const pole = poleDimensions(45 * foot, poleClass);
      if (!pole) throw new Error('45 ft is tabled');
      const arm = pole.length - pole.setting - 2 * foot;
      const load = momentCapacity(pole.buttCircumference, fibreStrength['southern pine']) / arm;
      expect(Math.abs(load / pole.classLoad - 1), `class ${poleClass}`).toBeLessThan(0.07);
    }
  });

  it('keep 0.754 with half an inch of shell rot on 35 in, 0.296 with 2 in on 12 in, 0.802 with an 8 in hollow in 12 in', () => {
    expect(shellRotLeaves(35, 35 - Math.PI)).toBeCloseTo(referenceValue('poles', 'shell-rot'), 4);
    expect(shellRotLeaves(12, 8)).toBeCloseTo(referenceValue('poles', 'surface-rot'), 4);
    expect(heartRotLeaves(12, 8)).toBeCloseTo(referenceValue('poles', 'heart-rot'), 4);
  });

  it('are replaced below two thirds of strength (GO 64-A 44.2)', () => {
    expect(rejectBelow).toBe(referenceValue('poles', 'reject-2/3'));
    expect(mustReplace(0.66)).toBe(true);
    expect(mustReplace(0.67)).toBe(false);
    expect(shellRotLeaves(1, referenceValue('poles', 'c-ratio-2/3'))).toBeCloseTo(2 / 3, 4);
  });
});
