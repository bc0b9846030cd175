/** Records of the project's reference tables (shared/reference), read as the outside values that tests compare with. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export interface ReferenceRecord {
  readonly id: string;
  readonly value: unknown;
  readonly confirmed: boolean;
  readonly paragraph?: string;
  readonly [field: string]: unknown;
}

/** Records of one file, by id. */
export const referenceRecords = (file: string): readonly ReferenceRecord[] => {
  const path = fileURLToPath(new URL(`../../../shared/reference/${file}.json`, import.meta.url));
  return (JSON.parse(readFileSync(path, 'utf8')) as { records: ReferenceRecord[] }).records;
};

/** The value of one record; throws when it is missing, so that a test cannot pass on nothing. */
export const referenceValue = <Value>(file: string, id: string): Value => {
  const record = referenceRecords(file).find((entry) => entry.id === id);
  if (!record) throw new Error(`no record ${id} in ${file}`);
  return record.value as Value;
};

export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (number | string)[])[];
}
