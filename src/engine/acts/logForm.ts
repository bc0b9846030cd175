/** Reads a log from text that may come from anybody: strict, bounded, every problem at once. Its JSON Schema is drawn from here. */
import { z } from 'zod';
import { actForm } from './actForm.ts';
import type { Act, Log } from './types.ts';

/** Longest text of a log that is read, characters, and most entries. */
export const logLimits = { characters: 4 * 1024 * 1024, entries: 5000 } as const;

const minute = z.int().min(0).max(100_000);
const fullHash = z.string().regex(/^[0-9a-f]{64}$/);
const shortHash = z.string().regex(/^[0-9a-f]{16}$/);
const name = z.string().min(1).max(80);

const entry = z.strictObject({
  act: actForm,
  minute: minute.describe('Minute of the drill after the act.'),
  hash: shortHash.describe('First 16 hex digits of the SHA-256 of the World after the act.'),
});

/** The written form of a log. */
export const logForm = z.strictObject({
  format: z.literal('loose-tie-log'),
  version: z.literal(1),
  scenario: name.describe('Id of the scenario.'),
  scenarioHash: fullHash.describe('SHA-256 of the parsed scenario.'),
  variant: z
    .strictObject({
      of: name.describe('Id of the scenario that this one was drawn from.'),
      seed: z.int().min(0).describe('Seed of the draw.'),
      number: z.int().min(1).describe('Which of the variants of the seed.'),
    })
    .optional()
    .describe('Where a drawn scenario comes from; absent: it was written.'),
  engine: name.describe('Version of the engine that made it.'),
  seed: z.int(),
  par: z
    .strictObject({
      minutes: z.number().min(0),
      customerMinutes: z.number().min(0),
      scenarioHash: fullHash,
      engine: name,
    })
    .nullable()
    .describe('Proven par that Service is judged by.'),
  entries: z.array(entry).max(logLimits.entries),
});

export type ParsedLog =
  | { readonly ok: true; readonly log: Log }
  | { readonly ok: false; readonly problems: readonly string[] };

const place = (path: readonly PropertyKey[]): string =>
  path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${String(step)}`)).join('') || 'the log';

const issuesOf = (error: z.ZodError): readonly string[] =>
  error.issues.map(({ path, message }) => `${place(path).replace(/^\./, '')}: ${message}`);

/** A log from text; problems name the place and what was expected. */
export function parseLog(text: string): ParsedLog {
  if (text.length > logLimits.characters) {
    return { ok: false, problems: [`the log: ${text.length} characters, at most ${logLimits.characters} are read`] };
  }
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return { ok: false, problems: [`the log: no JSON: ${error instanceof Error ? error.message : String(error)}`] };
  }
  const read = logForm.safeParse(data);
  return read.success ? { ok: true, log: read.data } : { ok: false, problems: issuesOf(read.error) };
}

/** An act from plain data, such as a file of acts; problems as with a log. */
export function parseAct(
  data: unknown,
): { readonly ok: true; readonly act: Act } | { readonly ok: false; readonly problems: readonly string[] } {
  const read = actForm.safeParse(data);
  return read.success ? { ok: true, act: read.data } : { ok: false, problems: issuesOf(read.error) };
}

/** JSON Schemas (2020-12) of a log and of an act. */
export const logJsonSchema = (): object => ({
  $id: 'loose-tie-log',
  title: 'A drill of Loose Tie, as acts',
  ...z.toJSONSchema(logForm),
});
export const actJsonSchema = (): object => ({
  $id: 'loose-tie-act',
  title: 'One act of a drill of Loose Tie',
  ...z.toJSONSchema(actForm),
});
