/** What `replay --json` prints, as a schema that its JSON Schema is generated from. SI units. */
import { z } from 'zod';
import { mechanisms } from '../../engine/catalogue/types.ts';

const text = z.string().min(1);
const minute = z.number().nonnegative().describe('minutes since the call came in');
const names = z.array(text);

const quantity = z.strictObject({ name: text, value: z.number(), unit: text.describe('SI unit, or cal/cm2') });
const mechanism = z.enum(mechanisms);
const severity = z.enum(['fatal', 'serious', 'minor', 'damage']);

const part = z.strictObject({
  name: z.enum(['recognition', 'order', 'control', 'exposure', 'service']),
  value: z.number().min(0).max(1).nullable().describe('null: nothing to judge'),
  numbers: z.record(z.string(), z.number().nullable()),
  says: z.array(text),
});

const finding = z.strictObject({
  finding: text,
  on: text,
  condition: text,
  minute,
  outcome: z.enum(['hit', 'false-call', 'correct-no-hazard', 'not-perceivable']),
  cause: text.nullable(),
});

const exposure = z.strictObject({
  hazard: text,
  mechanism,
  part: text,
  who: text,
  severity,
  potentiallyFatal: z.boolean(),
  quantities: z.array(quantity).describe('at the credible worst'),
  now: z.array(quantity).describe('as it stood at that moment'),
  strikes: z.boolean().describe('really reached somebody'),
  causes: names,
  failed: names.describe('preconditions that did not hold'),
  limit: text,
  source: text,
  minute,
  step: z.int().nonnegative().describe('index of the log entry'),
  act: text,
  known: z.boolean().describe('signs of all its causes, if it has any, had been perceived before'),
});

const cause = z.strictObject({
  cause: text,
  kind: text,
  on: text,
  severity: severity.describe('the worst of the hazards that it causes'),
  weight: z.number().positive(),
  found: z.boolean(),
  minute: minute.nullable(),
  lookedNotCalled: z.boolean(),
  missedBy: z.enum(['perceived', 'looked-in-vain', 'never-looked']).nullable(),
  perceivableFrom: z.array(z.strictObject({ stand: z.string(), aid: text, sign: text })),
  hazards: names,
});

const lookAlike = z.strictObject({
  lookAlike: text,
  kind: text,
  on: text,
  called: z.boolean(),
  perceived: z.boolean().describe('what looks wrong of it had been perceived'),
  tellApart: z.string(),
});

const control = z.strictObject({
  hazard: text,
  control: text,
  act: text.describe('kind of act that met the hazard'),
  precaution: z.boolean().describe('a test, a ground or an opening: never too much'),
  minute,
  worked: z.boolean(),
  level: text,
  planned: z.boolean(),
  failed: names,
});

const overControl = z.strictObject({ control: text, on: text, minute, minutes: z.number().nonnegative() });

const precedence = z.strictObject({
  cause: text,
  step: z.int().nonnegative().describe('index of the first log entry that would have met a hazard of it, bare'),
  minute,
  act: text,
  known: z.boolean().describe('a sign of it had been perceived before'),
  exposed: z.boolean(),
});

const confidence = z
  .strictObject({
    asked: z.int().positive().describe('findings called with a confidence and judged right or wrong'),
    right: z.int().nonnegative(),
    rightLow: z.number().min(0).max(1).describe('Wilson 95 % of the share that was right'),
    rightHigh: z.number().min(0).max(1),
    meanSure: z.number().min(0).max(1),
    score: z.number().describe('Brier: mean of (p - o)^2 = reliability - resolution + uncertainty (Murphy 1973)'),
    reliability: z.number(),
    resolution: z.number(),
    uncertainty: z.number(),
    skill: z.number().nullable(),
    says: z.array(text),
  })
  .describe('stated confidence against what was right; null: none stated');

const weights = z.strictObject({
  name: text.describe("'usual', or the name of an instructor's file"),
  changed: z.record(z.string(), z.number()).describe('weights that differ from the usual ones'),
});

const hazard = z.strictObject({
  id: text,
  mechanism,
  part: text,
  point: text.nullable(),
  severity,
  potentiallyFatal: z.boolean(),
  quantities: z.array(quantity),
  causes: names,
  words: text,
});

export const replayReportSchema = z.strictObject({
  scenario: text,
  scenarioHash: text,
  engine: text,
  weights,
  verdict: z.enum(['pass', 'remarks', 'fail']),
  reasons: z.array(text).min(1),
  parts: z.array(part).length(5),
  findings: z.array(finding),
  causes: z.array(cause),
  lookAlikes: z.array(lookAlike),
  exposures: z.array(exposure),
  controls: z.array(control),
  overControls: z.array(overControl),
  precedence: z.array(precedence),
  confidence: confidence.nullable(),
  hazards: z.array(hazard),
  worldHash: text,
  end: z.enum(['closed-out', 'handed-over', 'struck']).nullable(),
});

export type ReplayReport = z.infer<typeof replayReportSchema>;
