/** The whole written form, format 1. */
import { z } from 'zod';
import { byId } from '../order.ts';
import { callSchema } from './call.ts';
import { crewSchema, toolSchema } from './crew.ts';
import { equipmentSchema } from './equipment.ts';
import { faultSchema, jobSchema, lookAlikeSchema } from './faults.ts';
import { fieldNotes, group, id, list, number, text } from './field.ts';
import { cableSchema, poleSchema, secondarySchema, spanSchema } from './line.ts';
import { eventSchema, personSchema } from './people.ts';
import { premisesSchema } from './premises.ts';
import { siteSchema } from './site.ts';
import { supplySchema } from './supply.ts';

const grade = z
  .literal([1, 2, 3])
  .meta({ description: 'How hard it is: 1 for a beginner, 3 for a crew before storm season.', examples: [2] })
  .register(fieldNotes, { expected: 'a grade: 1, 2 or 3' });

/** The number of the form that this program writes and reads. */
export const format = 1;

const variant = group('Where a drawn scenario comes from.', {
  of: id({ doc: 'Id of the scenario that it was drawn from.', example: 'mill-lane-refuse' }),
  seed: number({ doc: 'Seed of the draw.', example: 7, from: 0, to: 4_294_967_295, whole: true }),
  number: number({ doc: 'Which of the variants of the seed.', example: 1, from: 1, to: 100_000, whole: true }),
});

const written = group('A drill: the scene, its faults, the call, the crew, the tools. Training aid only.', {
  format: z
    .literal(format)
    .meta({ description: 'Number of the form.', examples: [format] })
    .register(fieldNotes, { expected: `the number ${format}` }),
  id: id({ doc: 'Id of the scenario, like its file name.', example: 'quarry-road-fog' }),
  title: text({ doc: 'Title in the list of drills.', example: 'Fog on Quarry Road', most: 60 }),
  grade,
  teaches: text({ doc: 'What it teaches, one sentence.', example: 'The obvious fault is not the cause.', most: 200 }),
  variant: variant.optional(),
  call: callSchema,
  site: siteSchema,
  supply: supplySchema,
  poles: list(poleSchema, { doc: 'Poles, in any order.', least: 1, most: 40 }),
  spans: list(spanSchema, { doc: 'Spans, in any order.', most: 40 }).prefault([]),
  secondaries: list(secondarySchema, { doc: 'Secondary conductors between poles, in any order.', most: 20 }).prefault(
    [],
  ),
  communications: list(cableSchema, { doc: 'Communication cables between poles, in any order.', most: 20 }).prefault(
    [],
  ),
  equipment: list(equipmentSchema, { doc: 'Equipment on the poles, in any order.', most: 120 }).prefault([]),
  premises: list(premisesSchema, { doc: "Customers' premises, in any order.", most: 20 }).prefault([]),
  crew: crewSchema.prefault({}),
  people: list(personSchema, { doc: 'Whoever else is there or comes, in any order.', most: 20 }).prefault([]),
  events: list(eventSchema, { doc: 'What happens by the clock, in any order.', most: 24 }).prefault([]),
  tools: list(toolSchema, { doc: 'Tools on the truck, in any order.', most: 80 }).prefault([]),
  faults: list(faultSchema, { doc: 'What is wrong, in any order.', most: 60 }).prefault([]),
  'look-alikes': list(lookAlikeSchema, { doc: 'What only looks wrong, in any order.', most: 60 }).prefault([]),
  job: jobSchema,
  instructor: list(
    text({
      doc: 'One note for whoever leads the drill: what to ask, who disagrees and why.',
      example: 'Ask who would have opened the tap first, and what that leaves alive.',
      most: 400,
    }),
    { doc: "Notes for the instructor's sheet; no trainee sees them, and the drill is the same without.", most: 12 },
  ).prefault([]),
});

/** The written form, read into SI; values of equipment and faults still carry their units. */
export const scenarioSchema = written.transform((all) => ({
  format: all.format,
  id: all.id,
  title: all.title,
  grade: all.grade,
  teaches: all.teaches,
  ...(all.variant === undefined ? {} : { variant: all.variant }),
  call: all.call,
  site: all.site,
  supply: all.supply,
  poles: byId(all.poles),
  spans: byId(all.spans),
  ...(all.secondaries.length > 0 ? { secondaries: byId(all.secondaries) } : {}),
  ...(all.communications.length > 0 ? { communications: byId(all.communications) } : {}),
  equipment: byId(all.equipment),
  premises: byId(all.premises),
  crew: { ...all.crew, today: all.crew.today ?? all.call.date },
  people: byId(all.people),
  events: [...all.events].sort((a, b) => a.atMinute - b.atMinute),
  tools: byId(all.tools),
  faults: byId(all.faults),
  lookAlikes: byId(all['look-alikes']),
  job: all.job,
  ...(all.instructor.length === 0 ? {} : { instructor: all.instructor }),
}));

/** A scenario whose values still carry their units. */
export type WrittenScenario = z.output<typeof scenarioSchema>;
