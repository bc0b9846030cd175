import { describe, expect, it } from 'vitest';
import { abs, add, complex, scale } from '../../../src/engine/math/complex.ts';
import {
  fullLoadCurrent,
  interlacedSplit,
  magnetisingAdmittance,
  transformerRatings,
  transformerSizes,
} from '../../../src/engine/standards/transformer.ts';
import { referenceValue, type Table } from './reference.ts';

const table = referenceValue<Table>('transformers', 'xfmr-table');

describe('transformer', () => {
  it('lists the per cent values of the published table', () => {
    expect(transformerSizes).toHaveLength(table.rows.length);
    for (const [kva, percentR, percentX, percentNoLoadLoss, percentExciting] of table.rows) {
      expect(transformerRatings(Number(kva) * 1000)).toEqual({
        percentR,
        percentX,
        percentNoLoadLoss,
        percentExciting,
      });
    }
    expect(transformerRatings(30000)).toBeUndefined();
  });

  it('splits 50 kVA 1.1 % + j1.8 % as Kersting example 11.1: Z0 5.7024 + j14.9299, Z1 0.003168 + j0.0020736 ohm', () => {
    const split = interlacedSplit(50000, 7200, 120, { percentR: 1.1, percentX: 1.8 });
    expect(split.z0.re).toBeCloseTo(5.7024, 6);
    expect(split.z0.im).toBeCloseTo(14.92992, 6);
    expect(split.z1.re).toBeCloseTo(0.003168, 9);
    expect(split.z1.im).toBeCloseTo(0.0020736, 9);
    expect(split.z2).toEqual(split.z1);
  });

  it('gives 4734.8 A for a bolted 240 V fault and 6927.8 A for 120 V on 25 kVA (worked by hand: R+jX and 1.5R+j1.2X)', () => {
    const { z0, z1, z2 } = interlacedSplit(25000, 7200, 120, { percentR: 1.6, percentX: 1.51 });
    const turns = 7200 / 120;
    const whole = add(add(z1, z2), scale(z0, 4 / (turns * turns)));
    const half = add(z1, scale(z0, 1 / (turns * turns)));
    expect(240 / abs(whole)).toBeCloseTo(4734.8, 1);
    expect(120 / abs(half)).toBeCloseTo(6927.8, 1);
  });

  it('draws the no-load loss and the exciting current of its table row', () => {
    const ratings = transformerRatings(25000);
    if (!ratings) throw new Error('25 kVA is listed');
    const y = magnetisingAdmittance(25000, 7200, ratings);
    expect(y.re * 7200 * 7200).toBeCloseTo(0.0052 * 25000, 6);
    expect(abs(scale(y, 7200))).toBeCloseTo(0.0193 * fullLoadCurrent(25000, 7200), 9);
    expect(y.im).toBeLessThan(0);
    expect(magnetisingAdmittance(1000, 100, { percentNoLoadLoss: 0.5, percentExciting: 0.1 })).toEqual(
      complex(0.0005, -0),
    );
  });
});
