/** Words that every entry of the catalogue uses: sources, sides, mechanisms, severity, levels of control, and what is known of a part. */

/** A published document, or the honest words 'common practice', 'estimate', 'from memory'. */
export type Source = string;

/** Which face of a part: the road (−y), the field (+y), toward the source (−x), toward the load (+x), or all round. */
export const sides = ['road', 'field', 'source', 'load', 'top', 'under', 'any'] as const;
export type Side = (typeof sides)[number];

/** Ways in which a hazard reaches somebody. */
export const mechanisms = [
  'contact',
  'approach',
  'flash',
  'step',
  'drop',
  'fall',
  'struck-by',
  'lightning',
  'barrier-loss',
] as const;
export type Mechanism = (typeof mechanisms)[number];
export type Severity = 'fatal' | 'serious' | 'minor' | 'damage';
/** Hierarchy of controls, highest first. */
export const hierarchy = ['elimination', 'substitution', 'engineering', 'administrative', 'ppe'] as const;
export type Level = (typeof hierarchy)[number];

/** What an entry's handlers may know of a part: no World, no neighbours. */
export interface PartView {
  readonly id: string;
  readonly kind: string;
  /** Switch positions and the like, by the kind's `states`. */
  readonly state: Readonly<Record<string, string>>;
  /** Numbers in SI by the kind's `values`: kva, ohms, lengthM … */
  readonly values: Readonly<Record<string, number>>;
  /** Words by the kind's `words`: conductor, link … */
  readonly words: Readonly<Record<string, string>>;
}
