/** The trouble report that starts the drill, as written. */
import type { z } from 'zod';
import type { ScenarioCall } from '../types.ts';
import { day, group, list, number, pattern, text, topics } from './field.ts';

const written = group('The trouble report that starts the drill.', {
  date: day({ doc: 'Day of the call; tools are in test or past it on this day.', example: '2026-10-13' }),
  time: pattern(/^(?:[01]\d|2[0-3]):[0-5]\d$/, {
    doc: 'Local time of the call, in quotes.',
    example: '05:52',
    expected: 'a time as "HH:MM" in quotes, for example "05:52"',
  }),
  place: text({ doc: 'Where to go, as the ticket says it.', example: 'Quarry Road, dead end', most: 160 }),
  from: text({ doc: 'Who called, without a name.', example: 'the owner of the second house', most: 80 }),
  said: text({ doc: 'What the caller said.', example: 'Lights out since five this morning.', most: 600 }),
  'customers-out': number({ doc: 'Customers without supply.', example: 2, from: 0, to: 100_000, whole: true }),
  'ticket-history': list(text({ doc: 'An earlier entry.', example: '19 days ago: radios hiss.', most: 300 }), {
    doc: 'Earlier entries of the ticket, oldest first; their order is kept.',
    most: 20,
  }).prefault([]),
  caller: topics({
    doc: 'What the caller answers if asked, by topic.',
    example: { noticed: 'The buzz is still there.' },
    most: 300,
  }).prefault({}),
  dispatcher: topics({
    doc: 'What the dispatcher answers if asked, by topic.',
    example: { history: 'It was closed once on trial and held.' },
    most: 300,
  }).prefault({}),
});

/** `call` of the written form to `ScenarioCall`. */
export const callSchema = written.transform(
  (call): ScenarioCall => ({
    date: call.date,
    time: call.time,
    place: call.place,
    from: call.from,
    said: call.said,
    customersOut: call['customers-out'],
    ticketHistory: call['ticket-history'],
    caller: call.caller,
    dispatcher: call.dispatcher,
  }),
) satisfies z.ZodType<ScenarioCall>;
