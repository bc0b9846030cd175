/**
 * An instructor's file of bounds: YAML or JSON, what may be varied and how far. What is left out is as wide as it can be.
 * Read like a scenario: hostile until proved otherwise, every problem at once with line and column.
 */
import { z } from 'zod';
import { faultKinds } from '../catalogue/faults.ts';
import { byCodeUnit } from '../scenario/order.ts';
import { problemsFrom } from '../scenario/parse.ts';
import { type Problem, shown } from '../scenario/problem.ts';
import { readTree } from '../scenario/readTree.ts';
import { refusalsFrom } from '../scenario/refusalsFrom.ts';
import { choice, fieldNotes, flag, group, id, kind, list, number, refuse, text } from '../scenario/schema/field.ts';
import { nearestWord } from '../units/nearestWord.ts';
import {
  type Bounds,
  bodies,
  ends,
  framings,
  insulators,
  lights,
  plainBounds,
  type Range,
  strings,
  ties,
  weathers,
} from './types.ts';

/** Words of a list, each once; none: as the base has it. */
const words = <const W extends readonly string[]>(all: W, doc: string) =>
  list(choice(all, { doc: 'One of them.', example: all[0] }), {
    doc: `${doc} All if left out; an empty list leaves it as the base has it.`,
    most: all.length,
  }).optional();

const whole = (doc: string, example: number, to: number) => number({ doc, example, from: 0, to, whole: true });

const range = (what: string, to: number) => ({
  least: whole(`Least number of ${what}.`, 1, to).optional(),
  most: whole(`Greatest number of ${what}.`, 3, to).optional(),
});

const kinds = faultKinds
  .filter(({ benign }) => !benign)
  .map((each) => each.id)
  .sort(byCodeUnit);

const kindList = (doc: string) =>
  list(
    kind('fault', { doc: 'A kind of fault of the catalogue.', example: 'tie-broken' }).superRefine((name, context) => {
      if (kinds.includes(name)) return;
      const found = `the unknown kind ${shown(name)}`;
      const nearest = nearestWord(name, kinds);
      const expected = 'a kind of fault of the catalogue';
      refuse(context, nearest === undefined ? { found, expected } : { found, expected, nearest });
    }),
    { doc, most: 200 },
  );

const inOrder = ({ least, most }: Range, context: z.RefinementCtx): void => {
  if (least > most) refuse(context, { found: `least ${least} above most ${most}`, expected: 'least up to most' });
};

const faults = group('How many faults are laid, and which.', {
  ...range('faults', 6),
  kinds: kindList('Kinds that may be laid; all if left out.').optional(),
  not: kindList('Kinds that are not laid.').optional(),
  'of-base': number({
    doc: 'Chance that a fault is of a kind that the base has, elsewhere on the scene.',
    example: 0.5,
    from: 0,
    to: 1,
  }).optional(),
})
  .transform((given): Bounds['faults'] => ({
    least: given.least ?? Math.min(plainBounds.faults.least, given.most ?? 1),
    most: given.most ?? Math.max(plainBounds.faults.most, given.least ?? 0),
    kinds: given.kinds ?? [],
    not: given.not ?? [],
    ofBase: given['of-base'] ?? plainBounds.faults.ofBase,
  }))
  .superRefine(inOrder);

const lookAlikes = group('How many things are laid that only look wrong.', range('look-alikes', 6))
  .transform(
    (given): Range => ({
      least: given.least ?? plainBounds.lookAlikes.least,
      most: given.most ?? Math.max(plainBounds.lookAlikes.most, given.least ?? 0),
    }),
  )
  .superRefine(inOrder);

const written = group('What may be varied of a scenario, and how far.', {
  format: z
    .literal('loose-tie-bounds')
    .meta({ description: 'What the file is.', examples: ['loose-tie-bounds'] })
    .register(fieldNotes, { expected: 'the word loose-tie-bounds' }),
  version: z
    .literal(1)
    .meta({ description: 'Number of the form.', examples: [1] })
    .register(fieldNotes, { expected: 'the number 1' }),
  name: text({ doc: 'What the instructor calls it.', example: 'Wet nights for the second year', most: 60 }).optional(),
  bases: list(id({ doc: 'Id of a scenario of the library.', example: 'mill-lane-refuse' }), {
    doc: 'Scenarios to draw from, in turn; all of the library if left out.',
    least: 1,
    most: 100,
  }).optional(),
  light: words(lights, 'Light by which the scene is seen.'),
  weather: words(weathers, 'Weather; snow comes in winter months only.'),
  framing: words(framings, 'How lines of several phases run through: on an arm, in strings under it, or on brackets.'),
  insulators: words(insulators, 'What carries conductors through.'),
  ties: words(ties, 'How conductors are tied.'),
  strings: words(strings, 'What conductors end on.'),
  bodies: words(bodies, 'What cutouts and arresters are made of.'),
  sides: flag({
    doc: 'Whether equipment may hang on the other side and premises lie across the road.',
    example: true,
  }).optional(),
  'pole-feet': list(number({ doc: 'Whole length of a pole, feet.', example: 40, from: 30, to: 60, whole: true }), {
    doc: 'Lengths of poles; neighbours differ by one step of the list at most. An empty list leaves them.',
    most: 7,
  }).optional(),
  faults: faults.optional(),
  'look-alikes': lookAlikes.optional(),
  premises: flag({ doc: 'Whether loads and sets of customers may differ.', example: true }).optional(),
  'tools-less': whole('Tools left in the yard, at most.', 1, 3).optional(),
  'tools-more': whole('Tools that the truck carries beside those of the base, at most.', 4, 10).optional(),
  'second-after': list(whole('Minutes until the second worker is there.', 10, 60), {
    doc: 'Minutes until the second worker is there, one of these. An empty list leaves it.',
    most: 12,
  }).optional(),
  end: choice(ends, {
    doc: 'How the call must be able to end: restored, handed over at best, or either.',
    example: 'restored',
  }).optional(),
});

const boundsSchema = written.transform((all) => ({
  name: all.name ?? 'bounds',
  bases: all.bases ?? null,
  bounds: {
    light: all.light ?? plainBounds.light,
    weather: all.weather ?? plainBounds.weather,
    framing: all.framing ?? plainBounds.framing,
    insulators: all.insulators ?? plainBounds.insulators,
    ties: all.ties ?? plainBounds.ties,
    strings: all.strings ?? plainBounds.strings,
    bodies: all.bodies ?? plainBounds.bodies,
    sides: all.sides ?? plainBounds.sides,
    poleFeet: all['pole-feet'] ?? plainBounds.poleFeet,
    faults: all.faults ?? plainBounds.faults,
    lookAlikes: all['look-alikes'] ?? plainBounds.lookAlikes,
    premises: all.premises ?? plainBounds.premises,
    toolsLess: all['tools-less'] ?? plainBounds.toolsLess,
    toolsMore: all['tools-more'] ?? plainBounds.toolsMore,
    secondAfter: all['second-after'] ?? plainBounds.secondAfter,
    end: all.end ?? plainBounds.end,
  } satisfies Bounds,
}));

/** A file of bounds, read. */
export type BoundsFile = z.output<typeof boundsSchema>;

export type ReadBounds =
  | { readonly ok: true; readonly file: BoundsFile }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Bounds out of a file's text; `file` is only told in problems. */
export function parseBounds(text: string, file: string): ReadBounds {
  const tree = readTree(text);
  const { value } = tree;
  const placed = (path: readonly (string | number)[], found: string, expected: string) => ({
    path,
    found,
    expected,
    place: tree.placeOf(path),
  });
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    const refusals = value === undefined ? [] : [placed([], shown(value), 'a group of keys')];
    return { ok: false, problems: problemsFrom(file, [...tree.refusals, ...refusals]) };
  }
  const read = boundsSchema.safeParse(value);
  const refusals = read.success
    ? []
    : refusalsFrom(read.error.issues, boundsSchema, value).map((refusal) => ({
        ...refusal,
        place: tree.placeOf(refusal.path, refusal.atKey),
      }));
  if (!read.success || tree.refusals.length > 0) {
    return { ok: false, problems: problemsFrom(file, [...tree.refusals, ...refusals]) };
  }
  return { ok: true, file: read.data };
}

/** JSON Schema of a file of bounds; the same object text on every machine. */
export const boundsJsonSchema = (): object => {
  const { $schema, ...rest } = z.toJSONSchema(boundsSchema, { io: 'input', target: 'draft-2020-12' });
  return { $schema, title: 'Bounds of variants of Loose Tie, version 1', ...rest };
};
