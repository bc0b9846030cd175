import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../../src/engine/units/parseQuantity.ts';
import { type Dimension, dimensions, unitTable } from '../../../src/engine/units/unitTable.ts';

const value = (text: string | number, dimension: Dimension): number => {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new Error(parsed.message);
  return parsed.value;
};
const message = (text: string | number, dimension: Dimension): string => {
  const parsed = parseQuantity(text, dimension);
  return parsed.ok ? `read as ${parsed.value}` : parsed.message;
};

describe('parseQuantity', () => {
  // Factors by definition: foot 0.3048 m, mile 1609.344 m, pound 0.453 592 37 kg, lbf 4.448 221 615 260 5 N (NIST SP 811, B.8).
  it.each<[string, Dimension, number]>([
    ['40 ft', 'length', 12.192],
    ['40ft', 'length', 12.192],
    ['6 ft 6 in', 'length', 1.9812],
    ['6\' 6"', 'length', 1.9812],
    ['6 ft 1/2 in', 'length', 1.8415],
    ['3 1/2 in', 'length', 0.0889],
    ['12.2 m', 'length', 12.2],
    ['0.8 mm', 'length', 0.0008],
    ['-3 m', 'length', -3],
    ['7.2 kV', 'voltage', 7200],
    ['7,200 V', 'voltage', 7200],
    ['7.2 KV', 'voltage', 7200],
    ['6 mph', 'speed', 2.68224],
    ['25 kVA', 'apparentPower', 25000],
    ['5 kW', 'power', 5000],
    ['100 kΩ', 'resistance', 100000],
    ['100 kohm', 'resistance', 100000],
    ['2 mohm', 'resistance', 0.002],
    ['2 Mohm', 'resistance', 2e6],
    ['100 ohm m', 'resistivity', 100],
    ['15 min', 'duration', 15],
    ['1.5 h', 'duration', 90],
    ['1 h 20 min', 'duration', 80],
    ['15 min', 'time', 900],
    ['6 cycles', 'time', 0.1],
    ['30 A', 'current', 30],
    ['20 °C', 'temperature', 20],
    ['68 F', 'temperature', 20],
    ['\u221240 °F', 'temperature', -40],
    ['10 lx', 'illuminance', 10],
    ['72 dB', 'level', 72],
    ['180 deg', 'angle', Math.PI],
    ['600 lb', 'force', 2668.9329691563],
    ['100 lb', 'mass', 45.359237],
    ['8 pF', 'capacitance', 8e-12],
    ['8 cal/cm2', 'arcEnergy', 8],
    ['4.184 J/cm²', 'arcEnergy', 1],
    ['5 %', 'percent', 0.05],
    ['0.85', 'dimensionless', 0.85],
    ['1e3 V', 'voltage', 1000],
  ])('reads %s as %s %f', (text, dimension, expected) => {
    expect(value(text, dimension)).toBeCloseTo(expected, 11);
  });

  it('refuses a bare number unless the quantity has no dimension', () => {
    expect(message('40', 'length')).toBe('found "40" without a unit; expected a length, for example 40 ft or 12.2 m');
    expect(message(40, 'length')).toBe('found 40 without a unit; expected a length, for example 40 ft or 12.2 m');
    expect(value(0.5, 'dimensionless')).toBe(0.5);
  });

  it('names the nearest unit, or the dimension that the unit belongs to', () => {
    expect(message('40 feets', 'length')).toMatch(/did you mean "feet"\?$/);
    expect(message('7.2 kV', 'length')).toBe(
      'found "7.2 kV" which is a voltage; expected a length, for example 40 ft or 12.2 m',
    );
    expect(message('5 kW', 'apparentPower')).toMatch(/which is a real power/);
  });

  it('does not take mega for milli when the letter case is wrong', () => {
    expect(message('5 MV', 'voltage')).toMatch(/unknown unit/);
    expect(message('5 mw', 'power')).toMatch(/could be mW or MW/);
    expect(message('30 ma', 'current')).toMatch(/did you mean "mA"/);
  });

  it.each([
    'NaN m',
    'Infinity m',
    '',
    ' ',
    'm',
    '1e999 m',
    '1e99 m',
    '0x10 m',
    '12,2 m',
    '1.2.3 m',
    '6 ft 13 in',
    '6 in 6 ft',
    '-6 ft 6 in',
    '6 ft -6 in',
    '6 ft 6',
    '1/0 in',
    '5 m!',
    '4 constructor',
    '4 __proto__',
    `1${'0'.repeat(60)} m`,
  ])('refuses %j as a length', (text) => {
    const parsed = parseQuantity(text, 'length');
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(parsed.message.length).toBeLessThan(220);
  });

  it('refuses numbers that are not finite', () => {
    expect(parseQuantity(Number.NaN, 'dimensionless').ok).toBe(false);
    expect(parseQuantity(Number.POSITIVE_INFINITY, 'dimensionless').ok).toBe(false);
  });

  it('never throws and never answers a value that is not finite, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), fc.constantFrom(...dimensions), (text, dimension) => {
        const parsed = parseQuantity(text, dimension);
        return parsed.ok ? Number.isFinite(parsed.value) : parsed.message.length > 0;
      }),
      { seed: 20 },
    );
  });

  it('reads every listed spelling of every unit as that unit', () => {
    for (const dimension of dimensions) {
      for (const unit of unitTable[dimension].units) {
        for (const name of unit.names) {
          expect(value(`3 ${name}`, dimension)).toBeCloseTo(3 * unit.factor + unit.offset, 9);
        }
      }
    }
  });

  it('reads its own examples', () => {
    for (const dimension of dimensions) {
      for (const example of unitTable[dimension].example.split(' or ')) {
        expect(parseQuantity(example, dimension).ok, example).toBe(true);
      }
    }
  });
});
