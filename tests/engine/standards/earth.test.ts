import { describe, expect, it } from 'vitest';
import {
  hemispherePotential,
  hemisphereResistance,
  hemisphereStep,
  rodPotential,
  rodResistance,
  rodStepFromRod,
  surfaceDerating,
  tolerableStep,
  tolerableTouch,
} from '../../../src/engine/standards/electrode.ts';
import {
  meltingCurrent,
  requiredGroundingCable,
  withstandCurrent,
} from '../../../src/engine/standards/groundingCable.ts';
import { referenceValue, type Table } from './reference.ts';

const foot = 0.3048;

describe('electrode', () => {
  it('has 33.49 ohm for a 3 m, 16 mm rod in 100 ohm m (Dwight, with the - 1; published calculator example)', () => {
    expect(rodResistance(100, 3, 0.016)).toBeCloseTo(33.49, 2);
  });

  it('takes a step of 41.4 kV beside a 10 ft, 1 in rod with 20 kA in 10 ohm m (MIL-HDBK-419A 2.8.1.2.1)', () => {
    const step = rodStepFromRod(10, 20000, 10 * foot, 0.0254, 3 * foot);
    expect(Math.abs(step / 41400 - 1)).toBeLessThan(0.002);
  });

  it('takes the step ratios of MIL-HDBK-419A Table 2-7 within 0.01', () => {
    for (const [feet, ratio] of Object.entries(referenceValue<Record<string, number>>('grounding', 'step.rod-ratio'))) {
      const length = Number(feet) * foot;
      const part = rodStepFromRod(100, 1, length, 0.0254, 3 * foot) / rodResistance(100, length, 0.0254);
      expect(Math.abs(part - ratio), `${feet} ft`).toBeLessThan(0.0105);
    }
  });

  it('falls off from a hemisphere as 1/x, from its own voltage at its radius', () => {
    expect(hemispherePotential(100, 10, 0.5)).toBeCloseTo(10 * hemisphereResistance(100, 0.5), 9);
    expect(hemispherePotential(100, 10, 4)).toBeCloseTo(hemispherePotential(100, 10, 2) / 2, 9);
    expect(hemisphereStep(100, 10, 1)).toBeCloseTo((100 * 10) / (2 * Math.PI) / 2, 9);
  });

  it('looks like a hemisphere from far away', () => {
    expect(rodPotential(100, 10, 2.4, 200) / hemispherePotential(100, 10, 200)).toBeCloseTo(1, 4);
  });

  it('allows 838.2 V touch and 2686.6 V step in the IEEE Std 80-2013 example', () => {
    const footing = { soil: 400, surface: { resistivity: 2500, depth: 0.102 } };
    expect(surfaceDerating(footing)).toBeCloseTo(0.74, 2);
    // The example rounds Cs to 0.74.
    expect(Math.abs(tolerableTouch(footing, 0.5, 70) / 838.2 - 1)).toBeLessThan(0.005);
    expect(Math.abs(tolerableStep(footing, 0.5, 70) / 2686.6 - 1)).toBeLessThan(0.005);
    expect(tolerableTouch({ soil: 0 }, 1)).toBeCloseTo(116, 9);
  });
});

describe('grounding cable', () => {
  const { rows } = referenceValue<Table>('grounding', 'f855-table1');
  const names = ['#2', '1/0', '2/0', '3/0', '4/0', '250 kcmil', '350 kcmil'] as const;

  it('withstands and melts as ASTM F855 Table 1 says', () => {
    names.forEach((cable, index) => {
      const row = rows[index] ?? [];
      expect(withstandCurrent(cable, 15 / 60)).toBe(Number(row[2]) * 1000);
      expect(withstandCurrent(cable, 30 / 60)).toBe(Number(row[3]) * 1000);
      // The ultimate column is Onderdonk cut to whole kA, but for one cell: 350 kcmil at 60 cycles prints 48, not 49.
      expect(Math.floor(meltingCurrent(cable, 15 / 60) / 1000)).toBe(row[4]);
      expect(Math.floor(meltingCurrent(cable, 30 / 60) / 1000)).toBe(row[5]);
      expect(Math.floor(meltingCurrent(cable, 60 / 60) / 1000)).toBe(cable === '350 kcmil' ? 49 : row[6]);
    });
  });

  it('is chosen by fault current and clearing time', () => {
    expect(requiredGroundingCable(8000, 0.25)).toBe('#2');
    expect(requiredGroundingCable(16000, 0.5)).toBe('2/0');
    expect(requiredGroundingCable(80000, 0.25)).toBeUndefined();
    expect(requiredGroundingCable(1000, 2)).toBeUndefined();
  });
});
