/** The crew and what is on the truck, as written. */
import type { z } from 'zod';
import type { ScenarioTool } from '../types.ts';
import { day, defined, group, id, kind, quantity, text, words } from './field.ts';

/** Crew of the written form; `today` is the day of the call if left out. */
export const crewSchema = group('The crew. The trainee is the first worker.', {
  'second-after': quantity('duration', {
    doc: 'When the second worker is there, after the call was acknowledged; 0 min: already there.',
    example: '15 min',
    from: '0 min',
    to: '8 h',
  }).prefault('0 min'),
  'second-name': text({
    doc: 'What the second worker is called on the radio, without a name.',
    example: 'the second worker',
    most: 60,
  }).prefault('the second worker'),
  today: day({
    doc: 'Day on which test dates are judged; the day of the call if left out.',
    example: '2026-10-13',
  }).optional(),
}).transform((crew) => ({ secondMin: crew['second-after'], secondName: crew['second-name'], today: crew.today }));

/** A tool of the written form to `ScenarioTool`. */
export const toolSchema = group('A tool on the truck.', {
  id: id({ doc: 'Short id.', example: 'stick-1' }),
  kind: kind('tool', { doc: 'Kind of tool, from the catalogue.', example: 'stick' }),
  rated: quantity('voltage', {
    doc: 'Voltage that it is rated for.',
    example: '15 kV',
    from: '50 V',
    to: '800 kV',
  }).optional(),
  tested: day({ doc: 'Day of its last electrical test.', example: '2025-09-15' }).optional(),
  note: text({ doc: 'What else is known of it.', example: 'class 2', most: 160 }).optional(),
  words: words({ doc: 'Words of its kind.', example: { links: '10K' }, most: 80 }).optional(),
}).transform(
  ({ rated, ...tool }): ScenarioTool => defined({ ...tool, ratedVolts: rated }),
) satisfies z.ZodType<ScenarioTool>;
