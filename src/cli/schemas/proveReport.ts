/** What `prove --json` prints, as a schema that its JSON Schema is generated from. */
import { z } from 'zod';
import { actForm } from '../../engine/acts/actForm.ts';

const text = z.string().min(1);
const count = z.int().nonnegative();
const acts = z.array(actForm).describe('Acts that replay from the start of the drill.');

const priced = z.strictObject({
  minutes: count.describe('Minutes from the call to its end.'),
  customerMinutes: count.describe('Customers who can be restored, times the minutes that they are out.'),
  acts,
});

const par = priced.extend({
  end: z.enum(['restored', 'handed-over']),
  atLeast: count.describe('No route can be under this; equal to minutes where par is exact.'),
  front: z.array(priced).describe('Routes that no other found beats in both.'),
});

const claim = z.strictObject({
  id: text.describe('Kind of claim, with the hazard, fault or control after a colon.'),
  outcome: z.enum(['holds', 'fails', 'not finished']),
  words: text,
  acts: acts.describe('A route that shows it, or the shortest found that breaks it; may be empty.'),
});

const trap = z.strictObject({ hazard: text, minutes: count, acts, words: text });

/** Schema of the report on proofs. */
export const proveReportSchema = z
  .array(
    z.strictObject({
      file: z.string().describe('The file as it was named.'),
      ok: z.boolean().describe('No claim fails.'),
      scenario: text,
      scenarioHash: text,
      engine: text,
      seed: z.int(),
      states: count.describe('Scenes in which acts were looked at, and states of the survey.'),
      transitions: count.describe('Acts looked at.'),
      seconds: z.number().nonnegative(),
      par: par.nullable(),
      claims: z.array(claim),
      traps: z.array(trap).describe('The shortest ways into harm, each lesson once, ten at most.'),
    }),
  )
  .describe('What `loose-tie prove --json` prints: one object a file.');

export type ProveReport = z.infer<typeof proveReportSchema>;
