import { describe, expect, test } from 'vitest';
import { checkPole } from '../../../src/engine/mechanics/poleStrength.ts';
import { circumferenceAt, poleDimensions } from '../../../src/engine/standards/poles.ts';

const foot = 0.3048;
const size = poleDimensions(40 * foot, 4);
if (size === undefined) throw new Error('no 40 ft class 4');
const buttRadius = circumferenceAt(size, 0) / (2 * Math.PI);
const sound = { buttRadius, left: 1, pull: 0, pullHeight: 0 };

describe('a pole with a climber on it', () => {
  test('a sound 40 ft class 4 carries about its class load two feet from the top (ANSI O5.1: 2400 lb, from memory)', () => {
    const arm = size.length - size.setting - 2 * foot;
    expect(checkPole(sound).capacity / (size.classLoad * arm)).toBeGreaterThan(0.95);
    expect(checkPole(sound).capacity / (size.classLoad * arm)).toBeLessThan(1.1);
  });

  test('suffices when sound, and no longer under two thirds of its strength (GO 64-A 44.2)', () => {
    expect(checkPole(sound).suffices).toBe(true);
    expect(checkPole({ ...sound, left: 0.67 }).suffices).toBe(true);
    expect(checkPole({ ...sound, left: 0.66 }).suffices).toBe(false);
  });

  test('is asked for more by conductors that pull one way', () => {
    const pulled = checkPole({ ...sound, pull: 20000, pullHeight: 10 });
    expect(pulled.demand - checkPole(sound).demand).toBeCloseTo(200000, 6);
    expect(pulled.suffices).toBe(false);
  });
});
