/** What `qualify --json` prints, as a schema that its JSON Schema is generated from. */
import { z } from 'zod';
import { checkKinds } from '../../engine/qualification/types.ts';

const text = z.string().min(1);

const tolerance = z.strictObject({
  kind: z.enum(['absolute', 'relative']).describe('in the unit of the quantity, or as a part of the reference'),
  value: z.number().positive(),
  because: text.optional().describe('why it is wider than 5 % of the reference'),
});

/** Schema of the qualification report: one object a check. */
export const qualifyReportSchema = z
  .array(
    z.strictObject({
      ok: z.boolean().describe('whether the difference is within the tolerance'),
      id: text,
      model: text,
      quantity: text,
      input: text,
      ours: z.number().nullable().describe('our result; null if there is none'),
      reference: z.number().describe('the outside value'),
      unit: text,
      difference: z.number().nullable().describe('ours less the reference; null if there is none'),
      tolerance,
      source: text.describe('document, edition, clause or example'),
      kind: z.enum(checkKinds).describe('only the first counts as published'),
    }),
  )
  .describe('What `loose-tie qualify --json` prints: one object a check.');

export type QualifyReport = z.infer<typeof qualifyReportSchema>;
