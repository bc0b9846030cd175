/** Computed quantities as one says them: '7.2 kV open-circuit, 9.5 A through the body for 5 s, fibrillation possible from 52 mA'. */
import type { Quantity } from '../hazards/types.ts';
import { format, formatNumber, type UnitSystem } from '../units/formatQuantity.ts';
import type { Dimension } from '../units/unitTable.ts';

const dimensions: Readonly<Record<string, Dimension>> = {
  V: 'voltage',
  A: 'current',
  m: 'length',
  s: 'time',
  'm/s': 'speed',
  kg: 'mass',
  N: 'force',
  'N m': 'moment',
  J: 'energy',
  'cal/cm2': 'arcEnergy',
  ohm: 'resistance',
};

/** A computed figure is no truer than this, significant digits. */
const digits = 2;
/** What comes from a table or is written on a thing is told as it stands there. */
const asWritten: ReadonlySet<string> = new Set([
  'minimum approach distance',
  'voltage to ground',
  'voltage across',
  'open-circuit voltage',
  'limit for going aloft',
]);
/** Arc energy below this is nothing to anybody and is not told to the last digit, cal/cm². */
const LEAST_ENERGY = 0.01;
/** Distance of the working tables that an arc's class is read from (29 CFR 1910.269 App. E), metres. */
const TABLE_DISTANCE = 0.38;

const valueText = ({ name, value, unit }: Quantity, system: UnitSystem): string => {
  const dimension = dimensions[unit];
  if (!Number.isFinite(value)) return 'without limit';
  if (unit === 'cal/cm2' && value < LEAST_ENERGY) return `under ${format(LEAST_ENERGY, 'arcEnergy', system)}`;
  const precise = asWritten.has(name) ? 3 : digits;
  return dimension === undefined ? formatNumber(value, precise) : format(value, dimension, system, precise);
};

type Phrase = (value: string, quantity: Quantity, system: UnitSystem) => string;

/** How each is said, by its name in the engine; one that is not here is said by that name. */
const phrases: Readonly<Record<string, Phrase>> = {
  'voltage to ground': (value) => `${value} to ground`,
  'voltage across': (value) => `${value} across it`,
  'voltage to remote earth': (value) => `${value} to remote earth`,
  'open-circuit voltage': (value) => `${value} open-circuit`,
  current: (value) => `a current of ${value}`,
  'current through the body': (value) => `${value} through the body`,
  'current through the body, worst case': (value) => `${value} through the body at the worst`,
  'fibrillation threshold': (value) => `fibrillation possible from ${value}`,
  distance: (value) => (value.startsWith('0 ') ? 'within touch' : `${value} away`),
  'distance from it': (value) => `${value} from it`,
  'distance from below it': (value) => `${value} from below it`,
  'distance from beneath the work': (value) => `${value} from beneath the work`,
  'distance from its foot': (value) => `${value} from its foot`,
  'distance from where it can be': (value) =>
    value.startsWith('0 ') ? 'it can reach you' : `it can come within ${value}`,
  'distance where a pace is tolerable': (value) => `a pace is tolerable from ${value} on`,
  'distance in which it stops': (value) => `it stops in ${value}`,
  'height at rest': (value) => `${value} up at rest`,
  'height it falls': (value) => `it falls ${value}`,
  'height of fall': (value) => `a fall of ${value}`,
  height: (value) => `${value} up`,
  'height of the pole': (value) => `a pole of ${value}`,
  mass: (value) => `a mass of ${value}`,
  'incident energy at the face, estimate': (value) =>
    `${value.startsWith('under') ? value : `about ${value}`} at the face`,
  'energy of a tool of 1 kg': (value, _, system) => `a tool of ${format(1, 'mass', system, 2)} arrives with ${value}`,
  'arc drawn, estimate': (value) => `an arc of about ${value}`,
  'class of the rule’s table at 0.38 m': (value, _, system) =>
    `${value} by the rule’s table at ${format(TABLE_DISTANCE, 'length', system, 2)}`,
  'bending the pole withstands': (value) => `the pole withstands ${value} of bending`,
  'bending asked of it': (value) => `${value} is asked of it`,
  'of that, pull that nothing takes': (value) => `${value} of that by a pull that nothing takes`,
  'current into the ground': (value) => `${value} into the ground`,
  'step voltage': (value) => `${value} from foot to foot`,
  'tolerable step voltage': (value) => `${value} tolerable`,
  'speed of the traffic': (value) => `traffic at ${value}`,
  'share of people struck who die': (_, { value }) =>
    `of people struck at that speed ${format(value, 'percent', 'us', digits)} die`,
  'times that it closes again': (value) => `it closes again ${value === '1' ? 'once' : `${value} times`}`,
  'time since the last thunder': (_, { value }) => `${format(value / 60, 'duration', 'us')} since the last thunder`,
};

/** A duration belongs to the quantity before it. */
const isDuration = ({ name }: Quantity): boolean => name === 'duration';

const said = (quantity: Quantity, system: UnitSystem): string => {
  const value = valueText(quantity, system);
  if (isDuration(quantity)) return `for ${value}`;
  return phrases[quantity.name]?.(value, quantity, system) ?? `${quantity.name} ${value}`;
};

/** All of them in one run of words. */
export const quantitiesText = (quantities: readonly Quantity[], system: UnitSystem): string =>
  quantities.reduce(
    (text, quantity) => `${text}${text === '' ? '' : isDuration(quantity) ? ' ' : ', '}${said(quantity, system)}`,
    '',
  );
