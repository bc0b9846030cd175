/** Careful, alone, and not sure: guards the place, looks and asks, reports what it knows, hands over. */
import type { Act } from '../../../src/engine/acts/types.ts';
import { ask, find, go, look, tell } from './shorthand.ts';

export const stuck: readonly Act[] = [
  { act: 'acknowledge' },
  ...ask('dispatcher', 'history', 'upstream', 'circuit'),
  { act: 'park', at: 'clear' },
  { act: 'engine', on: false },
  { act: 'listen' },
  { act: 'guard', with: 'chocks' },
  { act: 'guard', with: 'cones' },
  { act: 'guard', with: 'keep-out' },
  ...look('glass', 'p2.insulator', 'p2.tie', 'p2.pole', 'p2.ground-lead', 'p2.transformer'),
  find('p2.tie', 'tie-broken', 0.6),
  go('p2.field'),
  ...look('glass', 'p2.pole', 'p2.ground-lead'),
  find('p2.ground-lead', 'cut', 0.7),
  go('a.yard'),
  ...ask('a.customer', 'generator'),
  ...look('eyes', 'a.generator', 'a.cord'),
  find('a.cord', 'feeding-panel', 0.8),
  tell('dispatcher', 'backfeed'),
  tell('dispatcher', 'public-danger'),
  { act: 'wait', minutes: 15 },
  { act: 'hand-over' },
];
