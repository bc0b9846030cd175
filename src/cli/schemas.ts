/** JSON Schemas that the command line can print, by name; each also lies in `shared/schema/` as `<name>.schema.json`. */
import { z } from 'zod';
import { actJsonSchema, logJsonSchema } from '../engine/acts/logForm.ts';
import { scenarioJsonSchema } from '../engine/scenario/jsonSchema.ts';
import { weightsJsonSchema } from '../engine/score/weightsForm.ts';
import { boundsJsonSchema } from '../engine/variants/boundsForm.ts';
import { catalogueReportSchema } from './schemas/catalogueReport.ts';
import { checkReportSchema } from './schemas/checkReport.ts';
import { circuitReportSchema } from './schemas/circuitReport.ts';
import { proveReportSchema } from './schemas/proveReport.ts';
import { qualifyReportSchema } from './schemas/qualifyReport.ts';
import { replayReportSchema } from './schemas/replayReport.ts';
import { sheetReportSchema } from './schemas/sheetReport.ts';
import { trialReportSchema } from './schemas/trialReport.ts';

const printed = (title: string, schema: z.ZodType) => (): object => {
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'output', target: 'draft-2020-12' });
  return { $schema, title, ...rest };
};

/** Schema makers by name: files first, then what `--json` prints by verb. */
export const schemas: Readonly<Record<string, () => object>> = {
  scenario: scenarioJsonSchema,
  log: logJsonSchema,
  act: actJsonSchema,
  weights: weightsJsonSchema,
  bounds: boundsJsonSchema,
  catalogue: printed('What loose-tie catalogue --json prints', catalogueReportSchema),
  check: printed('What loose-tie check --json prints', checkReportSchema),
  circuit: printed('What loose-tie circuit --json prints', circuitReportSchema),
  prove: printed('What loose-tie prove --json prints', proveReportSchema),
  qualify: printed('What loose-tie qualify --json prints', qualifyReportSchema),
  replay: printed('What loose-tie replay --json prints', replayReportSchema),
  sheet: printed('What loose-tie sheet --json prints', sheetReportSchema),
  trial: printed('What loose-tie trial --json prints', trialReportSchema),
};
