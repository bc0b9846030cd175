/** What `trial --json` prints, as a schema that its JSON Schema is generated from. */
import { z } from 'zod';
import { wheres } from '../../engine/trainees/types.ts';

const text = z.string().min(1);
const share = z.number().min(0).max(1);
const partName = z.enum(['recognition', 'order', 'control', 'exposure', 'service']);

const estimate = z.strictObject({
  judged: z.int().nonnegative().describe('trainees for whom there was something to judge'),
  mean: share.nullable(),
  low: share.nullable().describe('95 % interval'),
  high: share.nullable(),
});

const habit = z.strictObject({
  habit: text,
  words: text,
  trainees: z.int().nonnegative(),
  parts: z.record(partName, estimate),
  passed: z.strictObject({ count: z.int().nonnegative(), low: share, high: share }).describe('Wilson 95 %'),
});

const pair = z.strictObject({
  habit: text,
  against: text,
  part: partName,
  expected: z.enum(['differs', 'same', 'no-gain']),
  where: z.enum(wheres),
  scenes: z.array(text).describe('scenes in which the habit can show'),
  compared: z.int().nonnegative().describe('pairs of trainees of one scene in which both had something to judge'),
  auc: share.nullable().describe('share of pairs in the same scene in which habit scores above against, ties half'),
  low: share.nullable(),
  high: share.nullable(),
});

export const trialReportSchema = z.strictObject({
  trainees: z.int().nonnegative(),
  seed: z.int(),
  weights: text,
  seconds: z.number().nonnegative(),
  scenes: z.array(
    z.strictObject({
      scene: text,
      parMinutes: z.number().positive().nullable(),
      par: z.enum(['proven', 'careful', 'none']).describe('careful: the fewest minutes of a careful trainee here'),
    }),
  ),
  habits: z.array(habit),
  pairs: z.array(pair),
});

export type TrialReport = z.infer<typeof trialReportSchema>;
