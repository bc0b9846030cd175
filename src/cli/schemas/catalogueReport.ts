/** What `catalogue --json` prints, as a schema that its JSON Schema is generated from. */
import { z } from 'zod';

const kind = z
  .strictObject({
    id: z.string().describe('As a scenario or log writes it.'),
    name: z.string().describe('What the trade calls it.'),
    source: z.string().describe('Document, or the honest words common practice, estimate, from memory.'),
  })
  .describe('One kind.');

const list = z
  .strictObject({
    name: z.string().describe('What is listed.'),
    count: z.int().min(0).describe('How many.'),
    kinds: z.array(kind).describe('In the order of the catalogue.'),
  })
  .describe('One list.');

/** Schema of the list of kinds. */
export const catalogueReportSchema = z
  .strictObject({ lists: z.array(list).describe('Every list of the catalogue.') })
  .describe('What `loose-tie catalogue --json` prints.');

export type CatalogueReport = z.infer<typeof catalogueReportSchema>;
