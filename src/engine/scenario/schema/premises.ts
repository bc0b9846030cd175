/** Customers' premises with their load and their own sets, as written. */
import type { z } from 'zod';
import type { ScenarioPremises } from '../types.ts';
import { choice, defined, flag, group, id, quantity, text, topics } from './field.ts';

const place = (doc: string, example: string) => quantity('length', { doc, example, from: '-2 km', to: '2 km' });
const watts = (doc: string, example: string) =>
  quantity('power', { doc, example, from: '0 W', to: '50 kW' }).prefault('0 W');

const load = group('What is switched on.', {
  'leg-1': watts('Load at 120 V on the first leg.', '300 W'),
  'leg-2': watts('Load at 120 V on the second leg.', '450 W'),
  both: watts('Load at 240 V across both legs.', '600 W'),
});

const own = group("The customer's own source.", {
  kind: choice(['generator', 'governed-generator', 'photovoltaic', 'battery'], {
    doc: 'What it is; a governed generator has an engine that can be overloaded.',
    example: 'generator',
  }),
  rating: quantity('apparentPower', { doc: 'Rated output.', example: '7 kVA', from: '0.5 kVA', to: '100 kVA' }),
  connection: choice(
    ['panel-cord', 'transfer-switch', 'neutral-transfer-switch', 'interlock', 'panel-breaker', 'none'],
    {
      doc: 'Cabled into the panel with nothing between, through a transfer switch (one may take the neutral along), an interlocked inlet, a breaker of the panel (inverters), or not at all.',
      example: 'panel-cord',
    },
  ),
  transfer: choice(['utility', 'generator'], {
    doc: 'Where the transfer switch or interlock stands; needed with those only.',
    example: 'generator',
  }).optional(),
  running: flag({ doc: 'Whether it runs when the crew arrives.', example: true }),
  islands: flag({ doc: 'Whether an inverter holds its voltage without the line.', example: false }).optional(),
  place: text({ doc: 'Where it stands.', example: 'in the outbuilding', most: 80 }),
}).transform(({ kind, rating, connection, transfer, running, islands, place: where }) =>
  defined({ kind, kva: rating / 1000, connection, transfer, running, islands, place: where }),
);

/** Premises of the written form to `ScenarioPremises`. */
export const premisesSchema = group("A customer's premises.", {
  id: id({ doc: 'Short id; parts there begin with it.', example: 'a' }),
  name: text({ doc: 'What the crew calls it.', example: 'first house', most: 40 }),
  x: place('Position along the line, from source to load.', '12 m'),
  y: place('Position across the line; plus is the field side, minus the road side.', '35 m'),
  from: id({ doc: 'Pole whose transformer serves it.', example: 'p2' }),
  customer: text({ doc: 'Who answers there, without a name.', example: 'the owner', most: 80 }),
  load: load.prefault({}),
  main: choice(['closed', 'open'], { doc: 'Main breaker of the panel.', example: 'closed' }).prefault('closed'),
  own: own.optional(),
  says: topics({
    doc: 'What the customer answers if asked, by topic.',
    example: { generator: 'It runs in the outbuilding.' },
    most: 300,
  }).prefault({}),
}).transform(
  (premises): ScenarioPremises =>
    defined({
      id: premises.id,
      name: premises.name,
      x: premises.x,
      y: premises.y,
      from: premises.from,
      customer: premises.customer,
      loadW: [premises.load['leg-1'], premises.load['leg-2'], premises.load.both],
      main: premises.main,
      own: premises.own,
      says: premises.says,
    }),
) satisfies z.ZodType<ScenarioPremises>;
