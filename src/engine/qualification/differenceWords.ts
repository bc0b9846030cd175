/**
 * A difference as it is read: a part of the reference in per cent, two digits, since a reader weighs it against the quantity
 * and not against the machine's last bits; in the unit where the reference is zero. What rounding of numbers alone can
 * make is called so.
 */
import { formatNumber } from '../units/formatQuantity.ts';
import { allowedDifference } from './runChecks.ts';
import type { QualifiedCheck } from './types.ts';

/** Parts of the reference below which a difference says nothing of a model. */
const negligible = 1e-6;

/** Below this a difference against zero is the machine's last bits. */
const lastBits = 1e-12;

/** A number with its unit; pure numbers have none. */
export const withUnit = (figure: string, unit: string): string => (unit === '1' ? figure : `${figure} ${unit}`);

const plain = (value: number, unit: string): string => {
  const size = Math.abs(value);
  if (size < lastBits) return 'under 1e-12';
  return withUnit(size < 1e-3 ? value.toExponential(1).replace('.0e', 'e') : formatNumber(value, 2), unit);
};

const perCent = (part: number): string => `${formatNumber(100 * part, 2)} %`;

type Told = Pick<QualifiedCheck, 'difference' | 'reference' | 'tolerance' | 'unit'>;

/** Ours less the reference. */
export function differenceWords({ difference, reference, unit }: Told): string {
  if (!Number.isFinite(difference)) return 'no number';
  if (difference === 0) return 'none';
  if (reference === 0) return plain(difference, unit);
  const part = difference / Math.abs(reference);
  if (Math.abs(part) < negligible) return 'under 0.0001 %';
  return `${part > 0 ? '+' : ''}${perCent(part)}`;
}

/** What the check allows, in the same terms. */
export function allowedWords(check: Told): string {
  const allowed = allowedDifference(check);
  if (check.reference === 0) return plain(allowed, check.unit);
  const part = allowed / Math.abs(check.reference);
  return part < negligible ? 'rounding' : perCent(part);
}
