/** Low Meadow: a wire down, water over the ground. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Drills } from '../drills.ts';
import { acknowledge, ask, find, go, guard, handOver, look, park, plan, tell, touch } from '../shorthand.ts';

const survey: readonly Act[] = [
  ...ask('dispatcher', 'history', 'upstream'),
  ...ask('caller', 'noticed', 'generator'),
  acknowledge,
  park('clear'),
  { act: 'engine', on: false },
  ...look('eyes', 'site', 'angler'),
  ...look('glass', 's2.phase', 's1.phase', 'p2.pole', 'p2.tie', 'p2.insulator', 'p1.tap-cutout'),
  find('site', 'flooded', 1),
  find('s2.phase', 'broken-strands', 0.9),
];

export const drills: Drills = {
  careful: {
    acts: [
      ...survey,
      plan('f1', 'stand-dry'),
      plan('f2', 'keep-clear'),
      ...guard('chocks', 'cones', 'keep-out'),
      { act: 'order', device: 'p1.recloser', step: 'open' },
      tell('dispatcher', 'cause-found'),
      tell('dispatcher', 'public-danger'),
      handOver,
    ],
    verdict: 'pass',
    end: 'handed-over',
  },
  'picks-it-up': {
    acts: [acknowledge, park('clear'), go('p2.butt'), touch('s2.phase/down-a')],
    verdict: 'fail',
    end: 'struck',
  },
  'wades-to-the-pole': {
    acts: [acknowledge, park('clear'), go('p2.butt'), touch('p2.ground-lead/low')],
    verdict: 'fail',
    end: 'struck',
  },
  'leaves-the-angler': {
    acts: [acknowledge, park('clear'), ...look('glass', 's2.phase'), handOver],
    verdict: 'fail',
    end: 'handed-over',
  },
};
