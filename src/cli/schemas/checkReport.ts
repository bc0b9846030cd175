/** What `check --json` prints, as a schema that its JSON Schema is generated from. */
import { z } from 'zod';

const problem = z
  .strictObject({
    file: z.string().describe('The file as it was named.'),
    line: z.int().min(1).describe('Line, from 1.'),
    column: z.int().min(1).describe('Column, from 1.'),
    path: z.string().describe('Where in the form, such as poles[1].length; empty for the file as a whole.'),
    found: z.string().describe('What stands there.'),
    expected: z.string().describe('What should stand there.'),
    nearest: z.string().optional().describe('The nearest word that is allowed, if one is near.'),
    message: z.string().describe('All of it in one sentence.'),
  })
  .describe('One problem of a file.');

/** Schema of the report on scenario files. */
export const checkReportSchema = z
  .array(
    z
      .strictObject({
        file: z.string().describe('The file as it was named.'),
        ok: z.boolean().describe('Whether it is a good scenario.'),
        problems: z.array(problem).describe('Its problems in order of place; empty if it is good.'),
      })
      .describe('One file.'),
  )
  .describe('What `loose-tie check --json` prints: one object a file.');

export type CheckReport = z.infer<typeof checkReportSchema>;
