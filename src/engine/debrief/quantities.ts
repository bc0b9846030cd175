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

/** '7.08 kV open-circuit volts': value with unit, then its name. */
export const quantityText = ({ name, value, unit }: Quantity, system: UnitSystem): string => {
  const dimension = dimensions[unit];
  if (!Number.isFinite(value)) return name;
  return `${dimension === undefined ? `${formatNumber(value)} ${unit}` : format(value, dimension, system)} ${name}`;
};

export const quantitiesText = (quantities: readonly Quantity[], system: UnitSystem): string =>
  quantities.map((quantity) => quantityText(quantity, system)).join(', ');
