/** Code-unit order, the same on every machine, for lists whose order means nothing. */

/** Compares two texts by their UTF-16 code units. */
export const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Rows in code-unit order of their ids. */
export const byId = <T extends { readonly id: string }>(rows: readonly T[]): T[] =>
  [...rows].sort((a, b) => byCodeUnit(a.id, b.id));
