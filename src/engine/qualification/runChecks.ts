/** Runs checks: a pure report, the same every time, in the order in which the checks stand. */
import { allChecks } from './allChecks.ts';
import type { Check, QualifiedCheck } from './types.ts';

/** Widest difference that a check allows, in its unit. */
export const allowedDifference = ({ tolerance, reference }: Pick<Check, 'tolerance' | 'reference'>): number =>
  tolerance.kind === 'absolute' ? tolerance.value : tolerance.value * Math.abs(reference);

/** Runs one; a result that is no number fails. */
export const runCheck = ({ ours, ...check }: Check): QualifiedCheck => {
  const value = ours();
  const difference = value - check.reference;
  return { ...check, ours: value, difference, ok: Math.abs(difference) <= allowedDifference(check) };
};

/** Runs the checks given, or all that need no other program. */
export const runChecks = (checks: readonly Check[] = allChecks): readonly QualifiedCheck[] => checks.map(runCheck);
