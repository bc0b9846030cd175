/**
 * The fields that sections of the form are made of. Each says what it is for, shows an example, and tells a refusal
 * what was expected; quantities are written with their units and read into the engine's own.
 */
import { z } from 'zod';
import { parseQuantity } from '../../units/parseQuantity.ts';
import { type Dimension, unitTable } from '../../units/unitTable.ts';
import { shown } from '../problem.ts';

// Compiled checks need eval, which a strict content security policy forbids.
z.config({ jitless: true });

/** What a field expects, beyond what its schema says. */
export interface FieldNote {
  /** 'a length from 5 m to 30 m', 'text of 1 to 80 characters'. */
  readonly expected: string;
  readonly dimension?: Dimension;
  /** Which kinds of the catalogue may stand here. */
  readonly kinds?: 'equipment' | 'tool' | 'fault' | 'look-alike' | 'job';
  /** The only words allowed. */
  readonly words?: readonly string[];
}

/** Notes by schema. */
export const fieldNotes = z.registry<FieldNote>();

/** What every field states: its purpose and at least one example in the written form. */
export interface FieldDoc {
  readonly doc: string;
  readonly example: unknown;
}

const meta = ({ doc, example }: FieldDoc) => ({ description: doc, examples: [example] });

/** Params of a custom issue, read back by `refusalsFrom`. */
export interface IssueParams {
  readonly found: string;
  readonly expected: string;
  readonly nearest?: string;
}

/** Reports an issue in the form's own words. */
export const refuse = (context: z.RefinementCtx, params: IssueParams, path: (string | number)[] = []): void => {
  context.addIssue({ code: 'custom', message: params.expected, params: { ...params }, path });
};

const read = (text: string, dimension: Dimension): number => {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new Error(parsed.message);
  return parsed.value;
};

/** A quantity with its unit, between two bounds written the same way; the value is in the engine's unit. */
export const quantity = (
  dimension: Dimension,
  { from, to, ...docs }: FieldDoc & { readonly from: string; readonly to: string },
) => {
  const [least, most] = [read(from, dimension), read(to, dimension)];
  const note: FieldNote = { expected: `${unitTable[dimension].called} from ${from} to ${to}`, dimension };
  return z
    .union([z.string(), z.number()])
    .transform((written, context) => {
      const parsed = parseQuantity(written, dimension);
      if (!parsed.ok) {
        const found = parsed.message.slice(
          'found '.length,
          parsed.message.lastIndexOf(`; expected ${parsed.expected}`),
        );
        const { expected, nearest } = parsed;
        refuse(context, nearest === undefined ? { found, expected } : { found, expected, nearest });
        return z.NEVER;
      }
      if (parsed.value >= least && parsed.value <= most) return parsed.value;
      refuse(context, { found: shown(written), expected: note.expected });
      return z.NEVER;
    })
    .meta(meta({ ...docs, doc: `${docs.doc} From ${from} to ${to}.` }))
    .register(fieldNotes, note);
};

/** A plain number between two bounds. */
export const number = ({ from, to, whole, ...docs }: FieldDoc & { from: number; to: number; whole?: boolean }) => {
  const plain = z.number().min(from).max(to);
  return (whole ? plain.int() : plain)
    .meta(meta(docs))
    .register(fieldNotes, { expected: `a ${whole ? 'whole ' : ''}number from ${from} to ${to}` });
};

/** Words for people, of at most `most` characters. */
export const text = ({ most, ...docs }: FieldDoc & { readonly most: number }) =>
  z
    .string()
    .regex(/^\S(?:[\s\S]*\S)?$/)
    .max(most)
    .meta(meta(docs))
    .register(fieldNotes, { expected: `text of 1 to ${most} characters, in quotes if it looks like a number` });

/** A string of a given pattern. */
export const pattern = (shape: RegExp, { expected, ...docs }: FieldDoc & { readonly expected: string }) =>
  z.string().regex(shape).max(64).meta(meta(docs)).register(fieldNotes, { expected });

const idShape = '[a-z][a-z0-9]*(?:-[a-z0-9]+)*';

/** An id: small letters, digits and hyphens, first a letter. */
export const id = (docs: FieldDoc) =>
  pattern(new RegExp(`^${idShape}$`), { ...docs, expected: `an id such as ${String(docs.example)}` });

/** A kind of the catalogue. */
export const kind = (kinds: NonNullable<FieldNote['kinds']>, docs: FieldDoc) =>
  z
    .string()
    .regex(new RegExp(`^${idShape}$`))
    .max(64)
    .meta(meta(docs))
    .register(fieldNotes, { expected: `a ${kinds} kind such as ${String(docs.example)}`, kinds });

/** A part, or a net: the pole or premises, a dot, and its name there. */
export const dotted = (docs: FieldDoc) =>
  pattern(new RegExp(`^${idShape}\\.${idShape}$`), {
    ...docs,
    expected: `a dotted id such as ${String(docs.example)}`,
  });

/** One of a list of words. */
export const choice = <const W extends readonly string[]>(words: W, docs: FieldDoc) =>
  z.enum(words).meta(meta(docs)).register(fieldNotes, { expected: 'one of the words', words });

/** Yes or no. */
export const flag = (docs: FieldDoc) =>
  z.boolean().meta(meta(docs)).register(fieldNotes, { expected: 'true or false' });

const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const isDay = (written: string): boolean => {
  const [year = 0, month = 0, day = 0] = written.split('-').map(Number);
  const leap = month === 2 && year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 1 : 0;
  return day >= 1 && day <= (monthDays[month - 1] ?? 0) + leap;
};

/** A calendar day. */
export const day = (docs: FieldDoc) =>
  z
    .string()
    .regex(/^[12]\d{3}-\d{2}-\d{2}$/)
    .refine(isDay)
    .meta(meta(docs))
    .register(fieldNotes, { expected: `a day as YYYY-MM-DD, for example ${String(docs.example)}` });

/** Values by a name or topic. */
const named = <T extends z.ZodType<unknown, unknown>>(name: FieldDoc, value: T, docs: FieldDoc, expected: string) =>
  z.record(id(name), value).meta(meta(docs)).register(fieldNotes, { expected });

/** Texts by topic: what somebody answers if asked. */
export const topics = ({ most, ...docs }: FieldDoc & { readonly most: number }) =>
  named(
    { doc: 'Topic.', example: 'history' },
    text({ doc: 'What is said.', example: 'It was closed once on trial and held.', most }),
    docs,
    'a group of topics with a text each',
  );

/** Words by the name that their kind gives them. */
export const words = ({ most, ...docs }: FieldDoc & { readonly most: number }) =>
  named(
    { doc: 'Name.', example: 'link' },
    text({ doc: 'Word.', example: '10K', most }),
    docs,
    'a group of names with a word each',
  );

/** Nets by terminal. */
export const nets = (docs: FieldDoc) =>
  named(
    { doc: 'Terminal.', example: 'top' },
    dotted({ doc: 'Net.', example: 'p1.main' }),
    docs,
    'a group of terminals with a net each',
  );

/** Quantities by name; the kind says of which dimension each is, so they are read once the kind is known. */
export const quantities = (docs: FieldDoc) =>
  named(
    { doc: 'Name of the value.', example: 'va' },
    z
      .union([z.string(), z.number()])
      .meta({ description: 'The value with its unit.', examples: ['25 kVA'] })
      .register(fieldNotes, { expected: 'a quantity with its unit' }),
    docs,
    'a group of values with their units',
  );

/** A group of keys. */
export const group = <S extends z.core.$ZodLooseShape>(doc: string, shape: S) =>
  z.strictObject(shape).meta({ description: doc });

/** A list of `least` to `most` entries. */
export const list = <T extends z.ZodType>(
  item: T,
  { doc, least = 0, most }: { doc: string; least?: number; most: number },
) =>
  z
    .array(item)
    .min(least)
    .max(most)
    .meta({ description: doc })
    .register(fieldNotes, { expected: `a list of ${least} to ${most} entries` });

/** The record without keys whose value is undefined. */
export const defined = <T extends object>(record: T): T =>
  Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as T;
