/** What `sheet --json` prints, as a schema that its JSON Schema is generated from. */
import { z } from 'zod';

const text = z.string().min(1);
const texts = z.array(text);

const cause = z
  .strictObject({
    cause: text.describe('Id of the fault in the scenario.'),
    title: text,
    part: text,
    severity: z.enum(['fatal', 'serious', 'minor', 'damage']),
    found: texts.describe('Where and with what each sign can be made out when the call comes in.'),
    does: texts,
    controls: texts,
    tempting: texts,
    tellApart: text,
    source: text,
  })
  .describe('Something that is wrong.');

const lookAlike = z
  .strictObject({
    lookAlike: text.describe('Id in the scenario.'),
    title: text,
    part: text,
    found: texts,
    mistakenFor: texts,
    tellApart: text,
  })
  .describe('Something that only looks wrong.');

/** Schema of an instructor's sheet. */
export const sheetReportSchema = z
  .strictObject({
    scenario: text,
    title: text,
    grade: z.int().min(1).max(3),
    teaches: text,
    call: text,
    job: text,
    causes: z.array(cause).describe('Worst first.'),
    lookAlikes: z.array(lookAlike),
    besides: texts.describe('What can hurt somebody though nothing is wrong with it.'),
    route: z
      .strictObject({ words: text.describe('Its par.'), rows: texts })
      .nullable()
      .describe('A proven safe route; null where no par is at hand.'),
    discussion: texts.describe("The author's notes first."),
    caution: text,
  })
  .describe('What `loose-tie sheet --json` prints.');

export type SheetReport = z.infer<typeof sheetReportSchema>;
