/** Faults, look-alikes and the job asked for, as written. */
import type { z } from 'zod';
import { byCodeUnit } from '../order.ts';
import type { ScenarioFault, ScenarioJob } from '../types.ts';
import { sideField, type WrittenValues } from './equipment.ts';
import { defined, dotted, group, id, kind, list, pattern, quantities, text } from './field.ts';

/** A fault before its values are read. */
export type WrittenFault = Omit<ScenarioFault, 'values'> & { readonly values?: WrittenValues };

const faultOf = (kinds: 'fault' | 'look-alike', doc: string, example: { id: string; kind: string; on: string }) =>
  group(doc, {
    id: id({ doc: 'Short id, used in the log.', example: example.id }),
    kind: kind(kinds, { doc: `Kind of ${kinds}, from the catalogue.`, example: example.kind }),
    on: pattern(/^[a-z][a-z0-9]*(?:-[a-z0-9]+)*(?:\.[a-z][a-z0-9]*(?:-[a-z0-9]+)*)?$/, {
      doc: 'The part, tool or person that has it, or the word site.',
      example: example.on,
      expected: 'a part such as p2.insulator, a tool, a person, or site',
    }),
    side: sideField().optional(),
    to: pattern(/^[a-z][a-z0-9-]*\.[a-z][a-z0-9-]*\/[a-z][a-z0-9-]*$/, {
      doc: 'Where a leak ends: a part, a slash, one of its terminals.',
      example: 'p2.ground-lead/top',
      expected: 'a terminal such as p2.ground-lead/top',
    }).optional(),
    values: quantities({ doc: 'Quantities of its kind, with their units.', example: { ohms: '150 kohm' } }).optional(),
    says: text({ doc: 'What somebody says because of it.', example: 'That is Feeder 4217.', most: 160 }).optional(),
  }).transform((fault): WrittenFault => defined(fault));

/** A fault of the written form. */
export const faultSchema = faultOf('fault', 'Something wrong with a part or tool.', {
  id: 'crack',
  kind: 'pin-insulator-cracked',
  on: 'p2.insulator',
});

/** A look-alike of the written form. */
export const lookAlikeSchema = faultOf('look-alike', 'Something that only looks wrong.', {
  id: 'stain',
  kind: 'water-stain',
  on: 'p2.pole',
});

/** `job` of the written form to `ScenarioJob`. */
export const jobSchema = group('The job asked for.', {
  id: id({ doc: 'Short id.', example: 'restore-tap' }),
  kind: kind('job', { doc: 'The job of the catalogue that it is.', example: 'refuse-after-patrol' }).optional(),
  words: text({ doc: 'What the crew is asked to do.', example: 'Find the cause, make it right, restore.', most: 300 }),
  restores: list(dotted({ doc: 'A part.', example: 'b.meter' }), {
    doc: 'Parts whose supply must be back and measured.',
    least: 1,
    most: 20,
  }),
}).transform(
  ({ restores, ...job }): ScenarioJob => defined({ ...job, restores: [...restores].sort(byCodeUnit) }),
) satisfies z.ZodType<ScenarioJob>;
