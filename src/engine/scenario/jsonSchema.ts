/** The written form as JSON Schema 2020-12, so that an editor completes and checks a scenario while it is written. */
import { z } from 'zod';
import { faultKinds } from '../catalogue/faults.ts';
import { jobKinds } from '../catalogue/jobs.ts';
import { toolKinds } from '../catalogue/tools.ts';
import { unitTable } from '../units/unitTable.ts';
import { equipmentKinds } from './checkKinds.ts';
import { byCodeUnit } from './order.ts';
import { fieldNotes } from './schema/field.ts';
import { scenarioSchema } from './schema/scenario.ts';

type JsonSchema = z.core.JSONSchema.BaseSchema;

/** Begins like a number and does not end like one: a unit follows. Units themselves are left to the reader. */
const withUnit = '^\\s*[+\\-\\u2212\\u2013]?[\\d.].*[^\\d.,\\s]\\s*$';

const kindWords = {
  equipment: () => [...equipmentKinds],
  tool: () => toolKinds.map(({ id }) => id),
  job: () => jobKinds.map(({ id }) => id),
  fault: () => faultKinds.filter(({ benign }) => !benign).map(({ id }) => id),
  'look-alike': () => faultKinds.filter(({ benign }) => benign).map(({ id }) => id),
} as const;

const annotate = ({ zodSchema, jsonSchema }: { zodSchema: z.core.$ZodTypes; jsonSchema: JsonSchema }): void => {
  const schema = zodSchema as unknown as z.ZodType;
  const note = fieldNotes.get(schema);
  // Left out by the generator where reading changes the value; they are in the written form here.
  const examples = note && z.globalRegistry.get(schema)?.examples;
  if (Array.isArray(examples)) jsonSchema.examples = [...examples];
  if (note?.dimension !== undefined && note.dimension !== 'dimensionless') {
    delete jsonSchema.anyOf;
    Object.assign(jsonSchema, {
      type: 'string',
      pattern: withUnit,
      'x-unit': unitTable[note.dimension].units[0]?.names[0],
    });
  }
  if (note?.kinds !== undefined) jsonSchema.enum = kindWords[note.kinds]().sort(byCodeUnit);
};

/** JSON Schema of a scenario file; the same object text on every machine. */
export const scenarioJsonSchema = (): JsonSchema => {
  const { $schema, ...rest } = z.toJSONSchema(scenarioSchema, {
    io: 'input',
    target: 'draft-2020-12',
    override: annotate,
  });
  return { $schema, title: 'Loose Tie scenario, format 1', ...rest } as JsonSchema;
};
