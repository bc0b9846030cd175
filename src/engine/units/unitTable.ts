/**
 * The units people write, by dimension, and the factor to the engine's own unit.
 * Factors: NIST SP 811 (2008) appendix B.8, exact where it prints them in bold (foot, inch, mile, pound, calorie).
 */

/** One unit: engine value = written value * factor + offset. */
export interface Unit {
  readonly factor: number;
  readonly offset: number;
  /** Spellings; the first is the one printed. */
  readonly names: readonly string[];
}

/** What a dimension is called, an example a reader can copy, and its units. */
export interface DimensionEntry {
  readonly called: string;
  readonly example: string;
  readonly units: readonly Unit[];
}

const unit = (factor: number, ...names: readonly string[]): Unit => ({ factor, offset: 0, names });
const inch = 0.0254;
const foot = 0.3048;
const pound = 0.45359237;
const poundForce = 4.4482216152605;

/** Dimension words, in the order they are listed to people. */
export const dimensions = [
  'length',
  'voltage',
  'current',
  'resistance',
  'resistivity',
  'capacitance',
  'power',
  'apparentPower',
  'time',
  'duration',
  'frequency',
  'speed',
  'temperature',
  'illuminance',
  'level',
  'angle',
  'mass',
  'force',
  'moment',
  'energy',
  'arcEnergy',
  'percent',
  'dimensionless',
] as const;

/** A dimension word. */
export type Dimension = (typeof dimensions)[number];

/** Units by dimension. Engine units: m, V, A, ohm, ohm m, F, W, VA, s, min (duration), Hz, m/s, C, lx, dB, rad, kg, N, N m, J, cal/cm2, part of one. */
export const unitTable: Readonly<Record<Dimension, DimensionEntry>> = {
  length: {
    called: 'a length',
    example: '40 ft or 12.2 m',
    units: [
      unit(1, 'm', 'metre', 'metres', 'meter', 'meters'),
      unit(foot, 'ft', 'foot', 'feet', "'"),
      unit(inch, 'in', 'inch', 'inches', '"'),
      unit(0.001, 'mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'),
      unit(0.01, 'cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
      unit(1000, 'km', 'kilometre', 'kilometres', 'kilometer', 'kilometers'),
      unit(0.9144, 'yd', 'yard', 'yards'),
      unit(1609.344, 'mi', 'mile', 'miles'),
    ],
  },
  voltage: {
    called: 'a voltage',
    example: '7.2 kV or 120 V',
    units: [
      unit(1, 'V', 'volt', 'volts'),
      unit(1000, 'kV', 'kilovolt', 'kilovolts'),
      unit(0.001, 'mV'),
      unit(1e-6, 'µV'),
    ],
  },
  current: {
    called: 'a current',
    example: '30 A or 6 mA',
    units: [unit(1, 'A', 'amp', 'amps', 'ampere', 'amperes'), unit(0.001, 'mA'), unit(1e-6, 'µA'), unit(1000, 'kA')],
  },
  resistance: {
    called: 'a resistance',
    example: '25 ohm or 100 kΩ',
    units: [
      unit(1, 'Ω', 'ohm', 'ohms'),
      unit(1000, 'kΩ', 'kohm', 'kohms', 'kiloohm'),
      unit(1e6, 'MΩ', 'Mohm', 'Mohms', 'megohm', 'megohms', 'megaohm'),
      unit(0.001, 'mΩ', 'mohm', 'milliohm', 'milliohms'),
      unit(1e-6, 'µΩ', 'µohm', 'uohm', 'microhm'),
    ],
  },
  resistivity: {
    called: 'a resistivity',
    example: '100 ohm m',
    units: [
      unit(1, 'Ω·m', 'ohm m', 'ohm-m', 'ohm·m', 'Ω m', 'Ωm', 'ohm metre', 'ohm metres', 'ohm meter', 'ohm meters'),
      unit(0.01, 'Ω·cm', 'ohm cm', 'ohm-cm', 'ohm·cm', 'Ω cm'),
    ],
  },
  capacitance: {
    called: 'a capacitance',
    example: '8 pF or 0.1 µF',
    units: [
      unit(1, 'F', 'farad', 'farads'),
      unit(1e-3, 'mF'),
      unit(1e-6, 'µF', 'uF', 'microfarad', 'microfarads'),
      unit(1e-9, 'nF'),
      unit(1e-12, 'pF'),
    ],
  },
  power: {
    called: 'a real power',
    example: '5 kW',
    units: [
      unit(1, 'W', 'watt', 'watts'),
      unit(1000, 'kW', 'kilowatt', 'kilowatts'),
      unit(0.001, 'mW'),
      unit(1e6, 'MW'),
    ],
  },
  apparentPower: {
    called: 'an apparent power',
    example: '25 kVA',
    units: [unit(1, 'VA', 'volt-ampere', 'volt-amperes'), unit(1000, 'kVA'), unit(1e6, 'MVA')],
  },
  time: {
    called: 'a time',
    example: '0.5 s or 10 cycles',
    units: [
      unit(1, 's', 'sec', 'second', 'seconds'),
      unit(0.001, 'ms', 'millisecond', 'milliseconds'),
      unit(1e-6, 'µs', 'us'),
      unit(60, 'min', 'minute', 'minutes'),
      unit(3600, 'h', 'hr', 'hour', 'hours'),
      unit(1 / 60, 'cycles', 'cycle'),
    ],
  },
  duration: {
    called: 'a duration',
    example: '15 min or 1 h 20 min',
    units: [
      unit(1, 'min', 'mins', 'minute', 'minutes'),
      unit(60, 'h', 'hr', 'hrs', 'hour', 'hours'),
      unit(1440, 'd', 'day', 'days'),
      unit(1 / 60, 's', 'sec', 'second', 'seconds'),
    ],
  },
  frequency: { called: 'a frequency', example: '60 Hz', units: [unit(1, 'Hz', 'hertz'), unit(1000, 'kHz')] },
  speed: {
    called: 'a speed',
    example: '6 mph or 3 m/s',
    units: [
      unit(1, 'm/s'),
      unit(0.44704, 'mph', 'mi/h'),
      unit(1 / 3.6, 'km/h', 'kph', 'kmh'),
      unit(foot, 'ft/s', 'fps'),
      unit(1852 / 3600, 'kn', 'kt', 'knot', 'knots'),
    ],
  },
  temperature: {
    called: 'a temperature',
    example: '20 °C or 68 °F',
    units: [
      unit(1, '°C', 'C', 'degC', 'deg C', '° C', 'celsius'),
      { factor: 5 / 9, offset: -160 / 9, names: ['°F', 'F', 'degF', 'deg F', '° F', 'fahrenheit'] },
      { factor: 1, offset: -273.15, names: ['K', 'kelvin'] },
    ],
  },
  illuminance: {
    called: 'an illuminance',
    example: '10 lx',
    units: [
      unit(1, 'lx', 'lux'),
      unit(1000, 'klx'),
      unit(0.001, 'mlx'),
      unit(1 / (foot * foot), 'fc', 'footcandle', 'footcandles', 'foot-candle'),
    ],
  },
  level: {
    called: 'a sound level',
    example: '72 dB',
    units: [unit(1, 'dB', 'dBA', 'dB(A)', 'decibel', 'decibels')],
  },
  angle: {
    called: 'an angle',
    example: '50 deg',
    units: [
      unit(Math.PI / 180, '°', 'deg', 'degree', 'degrees'),
      unit(1, 'rad', 'radian', 'radians'),
      unit(Math.PI / 10800, 'arcmin'),
      unit(Math.PI / 648000, 'arcsec'),
    ],
  },
  mass: {
    called: 'a mass',
    example: '300 lb or 140 kg',
    units: [
      unit(1, 'kg', 'kilogram', 'kilograms'),
      unit(pound, 'lb', 'lbs', 'pound', 'pounds'),
      unit(0.001, 'g', 'gram', 'grams'),
      unit(1000, 't', 'tonne', 'tonnes'),
    ],
  },
  force: {
    called: 'a force',
    example: '600 lbf or 2.7 kN',
    units: [
      unit(1, 'N', 'newton', 'newtons'),
      unit(1000, 'kN', 'kilonewton', 'kilonewtons'),
      unit(poundForce, 'lbf', 'lb', 'lbs', 'pound', 'pounds'),
      unit(9.80665, 'kgf'),
    ],
  },
  moment: {
    called: 'a bending moment',
    example: '30000 ft·lbf or 40 kN·m',
    units: [
      unit(1, 'N·m', 'N m', 'Nm'),
      unit(1000, 'kN·m', 'kN m', 'kNm'),
      unit(foot * poundForce, 'ft·lbf', 'ft lbf', 'ft-lbf', 'ft-lb', 'lbf ft'),
    ],
  },
  energy: {
    called: 'an energy',
    example: '300 J or 220 ft·lbf',
    units: [
      unit(1, 'J', 'joule', 'joules'),
      unit(1000, 'kJ'),
      unit(1e6, 'MJ'),
      unit(foot * poundForce, 'ft·lbf', 'ft lbf', 'ft-lbf', 'ft-lb', 'lbf ft'),
    ],
  },
  arcEnergy: {
    called: 'an incident energy',
    example: '8 cal/cm2',
    units: [unit(1, 'cal/cm²', 'cal/cm2', 'cal/cm^2', 'cal'), unit(1 / 4.184, 'J/cm²', 'J/cm2', 'J/cm^2')],
  },
  percent: { called: 'a percentage', example: '5 %', units: [unit(0.01, '%', 'percent', 'per cent')] },
  dimensionless: { called: 'a plain number', example: '0.85', units: [] },
};
