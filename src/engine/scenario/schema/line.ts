/** Poles and spans, as written. */
import { z } from 'zod';
import { conductorNames } from '../../catalogue/conductorNames.ts';
import { phaseWords } from '../../catalogue/phaseNets.ts';
import { byCodeUnit } from '../order.ts';
import type { ScenarioCable, ScenarioPole, ScenarioSecondary, ScenarioSpan } from '../types.ts';
import { choice, defined, dotted, fieldNotes, group, id, quantity, text } from './field.ts';

/** ANSI O5.1 pole classes, strongest first. */
export const poleClasses = ['H6', 'H5', 'H4', 'H3', 'H2', 'H1', '1', '2', '3', '4', '5', '6', '7', '9', '10'] as const;

const poleClass = z
  .union([z.enum(poleClasses), z.literal([1, 2, 3, 4, 5, 6, 7, 9, 10])])
  .transform(String)
  .meta({ description: 'Class of the pole (ANSI O5.1), H6 to H1 and 1 to 10.', examples: [4] })
  .register(fieldNotes, { expected: 'a pole class: H6 to H1, 1 to 7, 9 or 10', words: poleClasses });

const codeWords = Object.keys(conductorNames).sort(byCodeUnit);

const place = (doc: string, example: string) => quantity('length', { doc, example, from: '-2 km', to: '2 km' });

/** A pole of the written form to `ScenarioPole`. */
export const poleSchema = group('A pole and how it is framed.', {
  id: id({ doc: 'Short id; parts on the pole begin with it.', example: 'p2' }),
  number: text({ doc: 'Number on its tag.', example: 'QR-14', most: 24 }),
  x: place('Position along the line, from source to load.', '-55 m'),
  y: place('Position across the line, toward the field side; minus is the road side.', '0 m').prefault('0 m'),
  length: quantity('length', { doc: 'Whole length, butt to top.', example: '40 ft', from: '5 m', to: '30 m' }),
  class: poleClass.prefault(4),
  framing: choice(['tap', 'tangent', 'deadend', 'arm', 'arm-tap', 'arm-deadend', 'arm-suspension', 'armless'], {
    doc: 'How the phase is framed: where a tap begins, straight through, or where the line ends with a guy; on an arm alike; straight through in strings under the ends of the arm; three phases on brackets without an arm.',
    example: 'tangent',
  }),
  insulator: choice(['pin', 'post', 'polymer-post'], {
    doc: 'What carries conductors through; a pin insulator if left out.',
    example: 'post',
  }).optional(),
  tie: choice(['preformed', 'hand'], {
    doc: 'How conductors are tied; preformed if left out.',
    example: 'hand',
  }).optional(),
  strings: choice(['porcelain', 'polymer', 'glass'], {
    doc: 'What strings are made of; at a dead end or tap one polymer insulator, under an arm porcelain if left out.',
    example: 'porcelain',
  }).optional(),
}).transform(
  (pole): ScenarioPole =>
    defined({
      id: pole.id,
      number: pole.number,
      x: pole.x,
      y: pole.y,
      lengthM: pole.length,
      class: pole.class,
      framing: pole.framing,
      insulator: pole.insulator,
      tie: pole.tie,
      strings: pole.strings,
    }),
) satisfies z.ZodType<ScenarioPole>;

const beside = group('Where a single conductor hangs that is not the only one; it brings its insulators along.', {
  across: place('From the middle of the pole toward the field side; minus is the road side.', '0.6 m'),
  below: quantity('length', { doc: 'How far below the roof of the pole.', example: '1.2 m', from: '0 m', to: '10 m' }),
});

/** Secondary conductors of the written form. */
export const secondarySchema = group("Secondary conductors from pole to pole, between two transformers' low sides.", {
  id: id({ doc: 'Short id.', example: 'q1' }),
  from: id({ doc: 'Pole toward the source.', example: 'p2' }),
  to: id({ doc: 'Pole toward the load.', example: 'p3' }),
  sag: quantity('length', { doc: 'Sag at mid-span.', example: '2 ft', from: '1 cm', to: '20 m' }),
}).transform(({ sag, ...ends }): ScenarioSecondary => ({ ...ends, sagM: sag })) satisfies z.ZodType<ScenarioSecondary>;

/** A communication cable of the written form. */
export const cableSchema = group(
  'A communication cable on its strand from pole to pole, below secondary and services.',
  {
    id: id({ doc: 'Short id.', example: 'j1' }),
    from: id({ doc: 'Pole toward the source.', example: 'p1' }),
    to: id({ doc: 'Pole toward the load.', example: 'p2' }),
    sag: quantity('length', { doc: 'Sag at mid-span.', example: '2 ft', from: '1 cm', to: '20 m' }),
  },
).transform(({ sag, ...ends }): ScenarioCable => ({ ...ends, sagM: sag })) satisfies z.ZodType<ScenarioCable>;

/** A span of the written form to `ScenarioSpan`. */
export const spanSchema = group('A span between two poles: a phase conductor, and the neutral below it.', {
  id: id({ doc: 'Short id; its conductors begin with it.', example: 's1' }),
  from: dotted({ doc: 'Net at the end toward the source.', example: 'p1.tap' }),
  to: dotted({ doc: 'Net at the end toward the load.', example: 'p2.phase' }),
  conductor: choice(codeWords, { doc: 'Phase conductor, by its code word.', example: 'Swan' }),
  neutral: choice(codeWords, {
    doc: 'Neutral, by its code word; like the phase if left out.',
    example: 'Swan',
  }).optional(),
  sag: quantity('length', { doc: 'Sag at mid-span.', example: '2 ft', from: '1 cm', to: '20 m' }),
  phases: choice(phaseWords, {
    doc: 'Phases that it carries, each between the nets with its letter; one between the nets themselves if left out.',
    example: 'abc',
  }).optional(),
  beside: beside.optional(),
}).transform(
  (span): ScenarioSpan =>
    defined({
      id: span.id,
      from: span.from,
      to: span.to,
      conductor: span.conductor,
      neutral: span.neutral ?? span.conductor,
      sagM: span.sag,
      phases: span.phases,
      beside: span.beside,
    }),
) satisfies z.ZodType<ScenarioSpan>;
