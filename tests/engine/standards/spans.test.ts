/** Tension with temperature and ice; what bends a pole. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  climberMoment,
  conductorWind,
  momentOf,
  poleUse,
  poleWindMoment,
  windPressure,
} from '../../../src/engine/standards/poleLoad.ts';
import { circumferenceAt, fibreStrength, poleDimensions } from '../../../src/engine/standards/poles.ts';
import {
  conductorElasticity,
  iceWeight,
  resultantWeight,
  tensionAfter,
} from '../../../src/engine/standards/sagTension.ts';

const elastic = { stiffness: 79e9 * 62e-6, expansion: 19.1e-6 };
const before = { weight: 2.1, tension: 3000, celsius: 15 };

describe('a span', () => {
  it('keeps its tension when nothing changes, and comes back to it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 300, noNaN: true }),
        fc.double({ min: -30, max: 80, noNaN: true }),
        (span, celsius) => {
          expect(tensionAfter(span, before, { weight: 2.1, celsius: 15 }, elastic)).toBeCloseTo(3000, 5);
          const tension = tensionAfter(span, before, { weight: 2.1, celsius }, elastic);
          const back = tensionAfter(span, { weight: 2.1, tension, celsius }, { weight: 2.1, celsius: 15 }, elastic);
          expect(back / 3000).toBeCloseTo(1, 6);
        },
      ),
      { seed: 20 },
    );
  });

  it('slackens with heat and tightens with ice, never to nothing', () => {
    const at = (celsius: number) => tensionAfter(60, before, { weight: 2.1, celsius }, elastic);
    expect(at(-20)).toBeGreaterThan(at(15));
    expect(at(75)).toBeLessThan(at(15));
    expect(at(75)).toBeGreaterThan(0);
    const iced = resultantWeight(2.1, iceWeight(0.01, 0.0127), 4);
    expect(tensionAfter(60, before, { weight: iced, celsius: -5 }, elastic)).toBeGreaterThan(at(-5));
  });

  it('without length, weight or tension is refused', () => {
    expect(() => tensionAfter(0, before, { weight: 2.1, celsius: 15 }, elastic)).toThrow(RangeError);
    expect(() => tensionAfter(60, { ...before, tension: 0 }, before, elastic)).toThrow(RangeError);
    expect(() => tensionAfter(60, before, { weight: 0, celsius: 15 }, elastic)).toThrow(RangeError);
  });

  it('carries half an inch of ice on a 10 mm wire at about 0.8 kg/m', () => {
    expect(iceWeight(0.01, 0.0127) / 9.80665).toBeCloseTo(0.827, 2);
    expect(Object.keys(conductorElasticity)).toContain('copper');
  });
});

describe('a pole', () => {
  const pole = poleDimensions(45 * 0.3048, 4);
  if (pole === undefined) throw new Error('no 45 ft class 4');

  it('has the wind moment that a sum over thin slices gives', () => {
    const height = pole.length - pole.setting;
    const slices = 20000;
    let sum = 0;
    for (let k = 0; k < slices; k++) {
      const at = ((k + 0.5) / slices) * height;
      sum += 400 * (circumferenceAt(pole, at) / Math.PI) * (height / slices) * at;
    }
    expect(poleWindMoment(pole, 400) / sum).toBeCloseTo(1, 6);
  });

  it('holds a climber sound, and is rejected under two thirds of its strength whatever it carries', () => {
    const demand = climberMoment(120 * 9.80665, 0.6, 2);
    expect(poleUse(pole, fibreStrength['southern pine'], 1, demand)).toMatchObject({ holds: true, rejected: false });
    expect(poleUse(pole, fibreStrength['southern pine'], 0.6, 0)).toMatchObject({ holds: false, rejected: true });
    expect(poleUse(pole, fibreStrength['southern pine'], 0.7, 1e6).holds).toBe(false);
  });

  it('bends four times as much in twice the wind', () => {
    const wind = (speed: number) => momentOf([conductorWind(windPressure(speed), 0.01, 60, 10)]);
    expect(wind(30) / wind(15)).toBeCloseTo(4, 9);
    expect(windPressure(10, 1.6)).toBeCloseTo(98.08, 2);
  });
});
