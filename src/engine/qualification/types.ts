/** A check holds one number of ours against one from outside; the report is a list of them, run. */

/** What the outside number is. Only the first counts as published. */
export const checkKinds = ['published value', 'independent program', 'common practice', 'from memory'] as const;

/** One kind of outside number. */
export type CheckKind = (typeof checkKinds)[number];

/** How far apart they may be: in the unit of the quantity, or as a part of the reference. */
export interface Tolerance {
  readonly kind: 'absolute' | 'relative';
  readonly value: number;
  /** Why it is wider than 5 % of the reference. */
  readonly because?: string;
}

/** One check, not yet run. */
export interface Check {
  readonly id: string;
  readonly model: string;
  readonly quantity: string;
  readonly input: string;
  readonly ours: () => number;
  readonly reference: number;
  readonly unit: string;
  readonly tolerance: Tolerance;
  /** Document, edition, clause or example. */
  readonly source: string;
  readonly kind: CheckKind;
}

/** One check with its outcome. */
export interface QualifiedCheck extends Omit<Check, 'ours'> {
  readonly ours: number;
  /** Ours less the reference. */
  readonly difference: number;
  readonly ok: boolean;
}
