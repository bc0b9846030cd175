/** Zod's issues in the form's own words: what was found, what was expected, the nearest word. */
import { z } from 'zod';
import { oneOf, type Path, type Refusal, shown } from './problem.ts';
import { type FieldNote, fieldNotes, type IssueParams } from './schema/field.ts';
import { keysAt, schemaAt } from './schemaAt.ts';

type Issue = z.core.$ZodIssue;

const valueAt = (data: unknown, path: Path): unknown => {
  let value = data;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Readonly<Record<string | number, unknown>>)[step];
  }
  return value;
};

const expectedAt = (root: z.ZodType, path: Path, found: unknown): { expected: string; nearest?: string } => {
  const schema = schemaAt(root, path);
  const note: FieldNote | undefined = schema && fieldNotes.get(schema);
  if (note?.words)
    return { ...oneOf(note.words, found), ...(note.expected.startsWith('one of') ? {} : { expected: note.expected }) };
  if (note) return { expected: note.expected };
  if (schema instanceof z.ZodObject) return { expected: `a group of the keys ${Object.keys(schema.shape).join(', ')}` };
  throw new Error(`the field at ${JSON.stringify(path)} does not say what it expects`);
};

const isParams = (params: unknown): params is IssueParams =>
  typeof params === 'object' && params !== null && 'found' in params && 'expected' in params;

const foundAt = (value: unknown, schema: z.ZodType | undefined): string =>
  Array.isArray(value) && schema instanceof z.ZodArray ? `a list of ${value.length}` : shown(value);

const refusalsOf = (issue: Issue, root: z.ZodType, data: unknown): Refusal[] => {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  if (issue.code === 'unrecognized_keys') {
    const keys = keysAt(root, path);
    return issue.keys.map((key) => {
      const found = `the unknown key ${shown(key)}`;
      return { path: [...path, key], atKey: true, found, ...oneOf(keys, key) };
    });
  }
  if (issue.code === 'invalid_key') {
    const key = path.at(-1);
    const record = schemaAt(root, path.slice(0, -1));
    const keySchema = record instanceof z.ZodRecord ? fieldNotes.get(record.keyType as z.ZodType) : undefined;
    return [{ path, atKey: true, found: `the key ${shown(key)}`, expected: keySchema?.expected ?? 'another key' }];
  }
  if (issue.code === 'custom' && isParams(issue.params)) {
    const { found, expected, nearest } = issue.params;
    return [nearest === undefined ? { path, found, expected } : { path, found, expected, nearest }];
  }
  const value = valueAt(data, path);
  return [{ path, found: foundAt(value, schemaAt(root, path)), ...expectedAt(root, path, value) }];
};

/** All refusals of one reading; one for each place, the first if there are several. */
export const refusalsFrom = (issues: readonly Issue[], root: z.ZodType, data: unknown): Refusal[] => {
  const seen = new Set<string>();
  return issues
    .flatMap((issue) => refusalsOf(issue, root, data))
    .filter(({ path }) => {
      const name = JSON.stringify(path);
      if (seen.has(name)) return false;
      seen.add(name);
      return true;
    });
};
