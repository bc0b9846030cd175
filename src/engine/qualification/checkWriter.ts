/** Writes checks of one model against one source, so that a file of them reads as a table. */
import type { Check, CheckKind, Tolerance } from './types.ts';

/** What differs from check to check. */
export interface CheckRow {
  /** Told apart within its model. */
  readonly id: string;
  readonly quantity: string;
  readonly input: string;
  readonly ours: () => number;
  readonly reference: number;
  readonly unit: string;
  readonly tolerance: Tolerance;
}

/** Tolerance in the unit of the quantity; `because` when that is more than 5 % of the reference. */
export const within = (value: number, because?: string): Tolerance =>
  because === undefined ? { kind: 'absolute', value } : { kind: 'absolute', value, because };

/** Tolerance as a part of the reference. */
export const relative = (value: number, because?: string): Tolerance =>
  because === undefined ? { kind: 'relative', value } : { kind: 'relative', value, because };

/** A table's cell must be read as it is printed. */
export const asPrinted: Tolerance = within(1e-9);

/** A writer of checks of one model, kind and source; ids become `<model>.<id>` in lower case with hyphens. */
export const checkWriter =
  (model: string, kind: CheckKind, source: string) =>
  (row: CheckRow): Check => ({
    ...row,
    id: `${model.replaceAll(' ', '-')}.${row.id}`,
    model,
    kind,
    source,
  });
