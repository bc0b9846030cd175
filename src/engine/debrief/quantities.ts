/** Computed quantities as people read them. */
import type { Quantity } from '../hazards/types.ts';
import { format, formatNumber, type UnitSystem } from '../units/formatQuantity.ts';
import type { Dimension } from '../units/unitTable.ts';

const dimensions: Readonly<Record<string, Dimension>> = {
  V: 'voltage',
  A: 'current',
  m: 'length',
  s: 'time',
  'cal/cm2': 'arcEnergy',
  ohm: 'resistance',
};

/** Arc energy below this is nothing to anybody and is not told to the last digit, cal/cm². */
const LEAST_ENERGY = 0.01;

const valueText = (value: number, unit: string, system: UnitSystem): string => {
  const dimension = dimensions[unit];
  if (!Number.isFinite(value)) return 'without limit';
  if (unit === 'cal/cm2' && value < LEAST_ENERGY) return `under ${format(LEAST_ENERGY, 'arcEnergy', system)}`;
  if (dimension !== undefined) return format(value, dimension, system);
  return unit === 'N m' ? `${formatNumber(value / 1000)} kN m` : `${formatNumber(value)} ${unit}`;
};

/** 'open-circuit voltage 7.08 kV': its name, then value and unit. */
export const quantityText = ({ name, value, unit }: Quantity, system: UnitSystem): string =>
  `${name} ${valueText(value, unit, system)}`;

export const quantitiesText = (quantities: readonly Quantity[], system: UnitSystem): string =>
  quantities.map((quantity) => quantityText(quantity, system)).join(', ');
