/** The report as it lies on the page: what counts, what is listed apart, by model and by kind. */
import { type CheckKind, checkKinds, type QualifiedCheck } from '../../engine/qualification/types.ts';
import { formatNumber } from '../../engine/units/formatQuantity.ts';

/** What the page is narrowed to; null takes all. */
export interface Filter {
  readonly model: string | null;
  readonly kind: CheckKind | null;
  readonly failedOnly: boolean;
}

export interface Count {
  readonly checks: number;
  readonly failed: number;
}

export interface ModelGroup {
  readonly model: string;
  readonly checks: readonly QualifiedCheck[];
}

/** How many, and how many of them failed. */
export const countOf = (report: readonly QualifiedCheck[]): Count => ({
  checks: report.length,
  failed: report.filter(({ ok }) => !ok).length,
});

/** Counts of every kind, in the order of the kinds. */
export const countsByKind = (report: readonly QualifiedCheck[]): readonly (Count & { readonly kind: CheckKind })[] =>
  checkKinds.map((kind) => ({ kind, ...countOf(report.filter((check) => check.kind === kind)) }));

/** Common practice and memory are no outside evidence. */
export const isApart = (kind: CheckKind): boolean => kind === 'common practice' || kind === 'from memory';

/** Models in the order of the report. */
export const modelsOf = (report: readonly Pick<QualifiedCheck, 'model'>[]): readonly string[] => [
  ...new Set(report.map(({ model }) => model)),
];

/** Checks that the filter leaves. */
export const narrowed = (report: readonly QualifiedCheck[], filter: Filter): readonly QualifiedCheck[] =>
  report.filter(
    ({ model, kind, ok }) =>
      (filter.model === null || filter.model === model) &&
      (filter.kind === null || filter.kind === kind) &&
      !(filter.failedOnly && ok),
  );

/** Checks by model. */
export const groupsOf = (report: readonly QualifiedCheck[]): readonly ModelGroup[] =>
  modelsOf(report).map((model) => ({ model, checks: report.filter((check) => check.model === model) }));

/** A number of the report: six digits, or that there is none. */
export const figure = (value: number): string => (Number.isFinite(value) ? formatNumber(value, 6) : 'no number');

/** "12 checks, none failed". */
export const countWords = ({ checks, failed }: Count): string =>
  `${checks} ${checks === 1 ? 'check' : 'checks'}, ${failed === 0 ? 'none' : failed} failed`;
