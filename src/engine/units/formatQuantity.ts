/**
 * Numbers into text, the one place where they are rounded: three significant digits unless told, no locale,
 * a true minus sign, and a unit chosen so that the figure reads well (7.2 kV, 41 mA, 2.14 ft or 0.65 m).
 */

import { type Dimension, type Unit, unitTable } from './unitTable.ts';

/** Which units people read: feet and pounds, or metres and kilograms. */
export type UnitSystem = 'us' | 'metric';

/** Printed units from large to small, by first spelling. */
const printed: Readonly<Record<Dimension, { readonly us: readonly string[]; readonly metric: readonly string[] }>> = {
  length: { us: ['mi', 'ft', 'in'], metric: ['km', 'm', 'mm'] },
  voltage: { us: ['kV', 'V', 'mV', 'µV'], metric: ['kV', 'V', 'mV', 'µV'] },
  current: { us: ['kA', 'A', 'mA', 'µA'], metric: ['kA', 'A', 'mA', 'µA'] },
  resistance: { us: ['MΩ', 'kΩ', 'Ω', 'mΩ', 'µΩ'], metric: ['MΩ', 'kΩ', 'Ω', 'mΩ', 'µΩ'] },
  resistivity: { us: ['Ω·m'], metric: ['Ω·m'] },
  capacitance: { us: ['F', 'mF', 'µF', 'nF', 'pF'], metric: ['F', 'mF', 'µF', 'nF', 'pF'] },
  power: { us: ['MW', 'kW', 'W', 'mW'], metric: ['MW', 'kW', 'W', 'mW'] },
  apparentPower: { us: ['MVA', 'kVA', 'VA'], metric: ['MVA', 'kVA', 'VA'] },
  time: { us: ['s', 'ms', 'µs'], metric: ['s', 'ms', 'µs'] },
  duration: { us: ['min'], metric: ['min'] },
  frequency: { us: ['Hz'], metric: ['Hz'] },
  speed: { us: ['mph'], metric: ['m/s'] },
  temperature: { us: ['°F'], metric: ['°C'] },
  illuminance: { us: ['lx', 'mlx'], metric: ['lx', 'mlx'] },
  level: { us: ['dB'], metric: ['dB'] },
  angle: { us: ['°'], metric: ['°'] },
  mass: { us: ['lb'], metric: ['kg', 'g'] },
  force: { us: ['lbf'], metric: ['kN', 'N'] },
  moment: { us: ['ft·lbf'], metric: ['kN·m', 'N·m'] },
  energy: { us: ['ft·lbf'], metric: ['kJ', 'J'] },
  arcEnergy: { us: ['cal/cm²'], metric: ['cal/cm²'] },
  percent: { us: ['%'], metric: ['%'] },
  dimensionless: { us: [], metric: [] },
};

const requireFinite = (value: number): void => {
  if (!Number.isFinite(value)) throw new RangeError(`cannot print ${value} as a quantity`);
};

/** `value` with at most `digits` significant digits, no trailing zeros, U+2212 for minus. Throws on NaN and infinity. */
export const formatNumber = (value: number, digits = 3): string => {
  requireFinite(value);
  const rounded = Number(value.toPrecision(digits));
  return rounded === 0 ? '0' : String(rounded).replace('-', '\u2212');
};

const unitNamed = (dimension: Dimension, name: string): Unit => {
  const unit = unitTable[dimension].units.find((candidate) => candidate.names[0] === name);
  if (!unit) throw new Error(`no unit ${name} of ${dimension}`);
  return unit;
};

const formatDuration = (minutes: number): string => {
  const sign = minutes < 0 ? '\u2212' : '';
  const size = Math.abs(minutes);
  if (size > 0 && size < 1) return `${sign}${formatNumber(size * 60, 2)} s`;
  const whole = Math.round(size);
  if (whole < 60) return `${sign}${whole} min`;
  const rest = whole % 60;
  return `${sign}${Math.floor(whole / 60)} h${rest === 0 ? '' : ` ${rest} min`}`;
};

/** Smallest figure shown in a unit that has a lesser one below it; metres go down to 0.1. */
const smallestShown = (dimension: Dimension, unit: Unit): number =>
  dimension === 'length' && unit.factor === 1 ? 0.1 : 1;

/** `value` (engine unit of `dimension`) as text with its unit. Throws on NaN and infinity: say "never" instead. */
export const format = (value: number, dimension: Dimension, system: UnitSystem, digits = 3): string => {
  requireFinite(value);
  if (dimension === 'duration') return formatDuration(value);
  const units = printed[dimension][system].map((name) => unitNamed(dimension, name));
  const last = units.at(-1);
  if (!last) return formatNumber(value, digits);
  const zero = value === 0 ? units.find((unit) => unit.factor === 1 && unit.offset === 0) : undefined;
  const scaled = (unit: Unit): number => (value - unit.offset) / unit.factor;
  const reads = (unit: Unit, index: number): boolean => {
    const lesser = units[index + 1] ?? unit;
    const rounded = Math.abs(Number(scaled(lesser).toPrecision(digits))) * lesser.factor;
    return rounded >= smallestShown(dimension, unit) * unit.factor * (1 - 1e-9);
  };
  const unit = zero ?? units.find(reads) ?? last;
  const name = unit.names[0] ?? '';
  return `${formatNumber(scaled(unit), digits)}${name === '°' ? '' : ' '}${name}`;
};
