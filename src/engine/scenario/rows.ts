/** Looks into data that may be wrong anywhere: checks across sections tell their problems even if a section has others. */
import type { Path } from './problem.ts';
import type { Written } from './up.ts';

/** An entry of a list as written, with its path. */
export interface Row {
  readonly path: Path;
  readonly fields: Written;
}

const isGroup = (value: unknown): value is Written =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The group under a key; empty if there is none. */
export const groupIn = (written: Written, key: string): Written => {
  const value = Object.hasOwn(written, key) ? written[key] : undefined;
  return isGroup(value) ? value : {};
};

/** Entries of the list under a key that are groups. */
export const rowsIn = (written: Written, key: string): Row[] => {
  const value = Object.hasOwn(written, key) ? written[key] : undefined;
  if (!Array.isArray(value)) return [];
  return value.flatMap((fields: unknown, at) => (isGroup(fields) ? [{ path: [key, at], fields }] : []));
};

/** The text under a key; undefined if it is none. */
export const textIn = (fields: Written, key: string): string | undefined => {
  const value = Object.hasOwn(fields, key) ? fields[key] : undefined;
  return typeof value === 'string' ? value : undefined;
};

/** Texts of one field over many rows. */
export const textsOf = (rows: readonly Row[], key: string): string[] =>
  rows.flatMap(({ fields }) => textIn(fields, key) ?? []);
