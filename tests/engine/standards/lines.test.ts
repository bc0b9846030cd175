import { describe, expect, it } from 'vitest';
import { conductorById, conductors, resistancePerMetre } from '../../../src/engine/standards/conductors.ts';
import {
  capacitanceToEarth,
  mutualImpedance,
  selfImpedance,
  singlePhaseLine,
} from '../../../src/engine/standards/lineImpedance.ts';
import {
  catenaryLength,
  catenarySag,
  parabolicLength,
  parabolicSag,
  rulingSpan,
  sagAt,
  tensionForSag,
  weightPerMetre,
} from '../../../src/engine/standards/sag.ts';
import { referenceValue, type Table } from './reference.ts';

const mile = 1609.344;
const foot = 0.3048;
const linnet = { ohmsPerMetre: 0.306 / mile, gmr: 0.0244 * foot };
const penguin = { ohmsPerMetre: 0.592 / mile, gmr: 0.00814 * foot };

describe('line impedance', () => {
  it('gives self 0.4013 + j1.4133 and mutual 0.0953 + j0.8515 ohm a mile (IEEE 4-node feeder, Kersting example 4.1)', () => {
    const self = selfImpedance(linnet.ohmsPerMetre, linnet.gmr);
    const mutual = mutualImpedance(2.5 * foot);
    expect(self.re * mile).toBeCloseTo(0.4013, 4);
    expect(self.im * mile).toBeCloseTo(1.4133, 3);
    expect(mutual.re * mile).toBeCloseTo(0.0953, 4);
    expect(mutual.im * mile).toBeCloseTo(0.8515, 3);
  });

  it('gives 0.4576 + j1.0780 ohm a mile with the neutral reduced (entry aa of the same feeder)', () => {
    const { reduced } = singlePhaseLine(linnet, penguin, Math.sqrt(32) * foot);
    expect(reduced.re * mile).toBeCloseTo(0.4576, 3);
    expect(reduced.im * mile).toBeCloseTo(1.078, 3);
  });

  it('gives about 6 pF a metre for a thin wire 10 m up (2 pi e0/ln(2h/r))', () => {
    expect(capacitanceToEarth(10, 0.005)).toBeCloseTo(55.632503e-12 / Math.log(4000), 16);
  });
});

describe('conductors', () => {
  it('have the GMR, size and weight of the published tables', () => {
    const gmr = referenceValue<Record<string, number>>('conductors', 'gmr');
    const small = referenceValue<Table>('conductors', 'acsr-small').rows;
    const sparrow = small.find(([code]) => code === 'Sparrow') ?? [];
    const two = conductorById('acsr-2');
    expect(two?.gmr).toBeCloseTo((gmr['#2 6/1'] ?? 0) * foot, 12);
    expect(two?.diameter).toBeCloseTo(Number(sparrow[3]) * 0.0254, 12);
    expect(two?.kilogramsPerMetre).toBeCloseTo((Number(sparrow[4]) * 0.45359237) / 304.8, 12);
    expect(two?.strength).toBeCloseTo(Number(sparrow[5]) * 4.4482216152605, 6);
    for (const [id, size] of [
      ['acsr-1/0', '1/0'],
      ['acsr-2/0', '2/0'],
      ['acsr-4/0', '4/0'],
    ] as const) {
      const resistance = referenceValue<Record<string, number>>('conductors', 'r-mile')[size] ?? 0;
      expect(conductorById(id)?.ohmsPerMetre).toBeCloseTo(resistance / mile, 12);
    }
  });

  it('weigh and conduct as a solid of their metal within 3 % (copper)', () => {
    for (const conductor of conductors.filter((entry) => entry.id.startsWith('copper'))) {
      const area = (Math.PI / 4) * conductor.diameter * conductor.diameter;
      expect(Math.abs(conductor.kilogramsPerMetre / (8890 * area) - 1), conductor.id).toBeLessThan(0.03);
      expect(Math.abs(conductor.ohmsPerMetre / (1.7241e-8 / area) - 1), conductor.id).toBeLessThan(0.03);
    }
  });

  it('of 1/0 aluminium have 0.16 ohm per 1000 ft at 20 C as the ACSR table prints for Raven', () => {
    const raven = referenceValue<Table>('conductors', 'acsr-small').rows.find(([code]) => code === 'Raven') ?? [];
    expect(
      Math.abs(resistancePerMetre('aluminium', 105500) * 304.8 - Number(raven[6])) / Number(raven[6]),
    ).toBeLessThan(0.03);
  });

  it('are unique, and unknown ids answer nothing', () => {
    expect(new Set(conductors.map((entry) => entry.id)).size).toBe(conductors.length);
    expect(conductorById('acsr-9')).toBeUndefined();
  });
});

describe('sag', () => {
  it('is 3.125 m for 500 m, 1 kg/m and 10 000 kg (published example)', () => {
    const weight = weightPerMetre(1);
    const tension = weightPerMetre(10000);
    expect(parabolicSag(weight, 500, tension)).toBeCloseTo(3.125, 9);
    expect(catenarySag(weight, 500, tension)).toBeCloseTo(3.12516, 5);
    expect(tensionForSag(weight, 500, 3.125)).toBeCloseTo(tension, 6);
  });

  it('agrees with the reference cases computed apart from this code', () => {
    const { rows } = referenceValue<Table>('sag', 'computed');
    for (const [name, weight, span, tension, parabola, catenary] of rows) {
      const [w, s, h] = [Number(weight), Number(span), Number(tension)];
      expect(parabolicSag(w, s, h), String(name)).toBeCloseTo(Number(parabola), 3);
      expect(catenarySag(w, s, h), String(name)).toBeCloseTo(Number(catenary), 3);
    }
  });

  it('lengthens the span alike by parabola and catenary', () => {
    const sag = parabolicSag(10, 100, 5000);
    expect(catenaryLength(10, 100, 5000)).toBeCloseTo(parabolicLength(100, sag), 3);
    expect(sagAt(100, sag, 50)).toBeCloseTo(sag, 9);
    expect(sagAt(100, sag, 100)).toBe(0);
  });

  it('has a ruling span between the mean and the longest span', () => {
    expect(rulingSpan([80, 80, 80])).toBeCloseTo(80, 9);
    expect(rulingSpan([60, 100])).toBeCloseTo(Math.sqrt((216000 + 1000000) / 160), 9);
  });
});
