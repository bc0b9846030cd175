/** Whoever else is there or comes, and what happens by the clock, as written. */
import type { z } from 'zod';
import { eventWords, otherRoles, type ScenarioEvent, type ScenarioPerson } from '../types.ts';
import { choice, defined, dotted, group, id, quantity, text, topics } from './field.ts';

const stand = (doc: string) => dotted({ doc: `${doc} A pole's road, butt or field, or a yard.`, example: 'p2.butt' });

/** A person of the written form to `ScenarioPerson`. */
export const personSchema = group(
  'Somebody else at the place: a bystander, a child, a flagger, a foreman; a dog too.',
  {
    id: id({ doc: 'Short id.', example: 'neighbour' }),
    role: choice(otherRoles, { doc: 'What they are there.', example: 'bystander' }),
    name: text({ doc: 'What the crew calls them, without a name.', example: 'a neighbour', most: 60 }),
    at: stand('Where they stand when the crew comes; away if left out.').optional(),
    says: topics({
      doc: 'What they answer if asked, by topic.',
      example: { noticed: 'It sparked up there before dawn.' },
      most: 300,
    }).prefault({}),
  },
).transform((person): ScenarioPerson => defined(person)) satisfies z.ZodType<ScenarioPerson>;

/** An event of the written form to `ScenarioEvent`. */
export const eventSchema = group('Something that happens by the clock, unless the crew has seen to it.', {
  after: quantity('duration', {
    doc: 'Time since the call was acknowledged, whole minutes.',
    example: '20 min',
    from: '1 min',
    to: '24 h',
  }),
  what: choice(eventWords, {
    doc: 'Somebody comes or leaves, a customer starts a set, a device is closed, it thunders, the dispatcher calls.',
    example: 'starts-set',
  }),
  who: id({ doc: 'Who comes or leaves; of starts-set the premises.', example: 'c' }).optional(),
  to: stand('Where somebody comes to.').optional(),
  part: dotted({ doc: 'Device that is closed.', example: 'p1.tap-cutout' }).optional(),
  says: text({ doc: 'What is said.', example: 'A second call from the same road.', most: 300 }).optional(),
}).transform(
  ({ after, ...event }): ScenarioEvent => defined({ atMinute: Math.max(1, Math.round(after)), ...event }),
) satisfies z.ZodType<ScenarioEvent>;
