import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { format, formatNumber } from '../../../src/engine/units/formatQuantity.ts';
import { parseQuantity } from '../../../src/engine/units/parseQuantity.ts';
import { type Dimension, dimensions } from '../../../src/engine/units/unitTable.ts';

describe('format', () => {
  it.each<[number, Dimension, string, string]>([
    [7200, 'voltage', '7.2 kV', '7.2 kV'],
    [7121.8, 'voltage', '7.12 kV', '7.12 kV'],
    [120, 'voltage', '120 V', '120 V'],
    [999.9, 'voltage', '1 kV', '1 kV'],
    [0, 'voltage', '0 V', '0 V'],
    [-120, 'voltage', '\u2212120 V', '\u2212120 V'],
    [0.041, 'current', '41 mA', '41 mA'],
    [0.652272, 'length', '2.14 ft', '0.652 m'],
    [0.3046, 'length', '0.999 ft', '0.305 m'],
    [0.05, 'length', '1.97 in', '50 mm'],
    [12000, 'length', '7.46 mi', '12 km'],
    [15, 'duration', '15 min', '15 min'],
    [80, 'duration', '1 h 20 min', '1 h 20 min'],
    [119.7, 'duration', '2 h', '2 h'],
    [0.5, 'duration', '30 s', '30 s'],
    [20, 'temperature', '68 °F', '20 °C'],
    [-40, 'temperature', '\u221240 °F', '\u221240 °C'],
    [0.0083, 'time', '8.3 ms', '8.3 ms'],
    [100000, 'resistance', '100 kΩ', '100 kΩ'],
    [25000, 'apparentPower', '25 kVA', '25 kVA'],
    [2.68224, 'speed', '6 mph', '2.68 m/s'],
    [0.05, 'percent', '5 %', '5 %'],
    [48400, 'moment', '35700 ft·lbf', '48.4 kN·m'],
    [300, 'energy', '221 ft·lbf', '300 J'],
    [1.24, 'arcEnergy', '1.24 cal/cm²', '1.24 cal/cm²'],
  ])('prints %f %s as %s and %s', (value, dimension, us, metric) => {
    expect(format(value, dimension, 'us')).toBe(us);
    expect(format(value, dimension, 'metric')).toBe(metric);
  });

  it('throws rather than print a number that is not one', () => {
    expect(() => format(Number.NaN, 'voltage', 'us')).toThrow(RangeError);
    expect(() => format(Number.POSITIVE_INFINITY, 'duration', 'us')).toThrow(RangeError);
  });

  it('never prints a voltage that is there as zero', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e6, noNaN: true }),
        (volts) => !format(volts, 'voltage', 'us').startsWith('0 '),
      ),
    );
  });

  it('rounds to three significant digits', () => {
    expect(formatNumber(1234.5)).toBe('1230');
    expect(formatNumber(0.0012345)).toBe('0.00123');
  });

  it('prints what parseQuantity reads back to within the rounding', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...dimensions),
        fc.constantFrom('us' as const, 'metric' as const),
        fc.double({ min: 0.001, max: 1e5, noNaN: true }),
        fc.boolean(),
        (dimension, system, size, negative) => {
          const value = negative && dimension !== 'duration' ? -size : size;
          const back = parseQuantity(format(value, dimension, system), dimension);
          if (!back.ok) throw new Error(back.message);
          const slack = dimension === 'temperature' ? 0.005 * (size + 32) : dimension === 'duration' ? 0.51 : 0;
          return Math.abs(back.value - value) <= 0.0051 * size + slack;
        },
      ),
      { numRuns: 500, seed: 20 },
    );
  });

  it('prints a canonical text that survives parse and format unchanged', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...dimensions.filter((dimension) => dimension !== 'temperature')),
        fc.constantFrom('us' as const, 'metric' as const),
        fc.double({ min: 0.001, max: 1e5, noNaN: true }),
        (dimension, system, value) => {
          const text = format(value, dimension, system);
          const back = parseQuantity(text, dimension);
          if (!back.ok) throw new Error(back.message);
          expect(format(back.value, dimension, system)).toBe(text);
        },
      ),
      { numRuns: 500, seed: 20 },
    );
  });
});
