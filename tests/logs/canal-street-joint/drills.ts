/** Canal Street: a live lamp bracket and a cabinet that feeds back. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Drills } from '../drills.ts';
import {
  acknowledge,
  arrive,
  ask,
  brief,
  byStick,
  check,
  closeOut,
  find,
  go,
  handOver,
  look,
  onTransformerPole,
  park,
  plan,
  tell,
  tools,
  touch,
  up,
  wear,
} from '../shorthand.ts';

const survey: readonly Act[] = [
  ...ask('dispatcher', 'history', 'upstream'),
  ...ask('caller', 'noticed', 'generator'),
  ...arrive,
  ...look('glass', ...onTransformerPole('p2'), 'p2.streetlight', 'p2.enclosure', 'p1.pole', 'p3.pole'),
  go('p2.field'),
  ...look('glass', ...onTransformerPole('p2'), 'p2.streetlight', 'p2.enclosure'),
  go('p2.butt'),
  ...look('eyes', 'p2.streetlight', 'p2.enclosure', 'p2.ground-lead'),
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator'),
];

export const drills: Drills = {
  careful: {
    acts: [
      ...survey,
      find('p2.streetlight', 'bracket-live', 0.9),
      find('p2.enclosure', 'foreign-source', 0.8),
      plan('f1', 'keep-clear'),
      plan('f2', 'isolate-source'),
      tell('dispatcher', 'backfeed'),
      tell('dispatcher', 'cause-found'),
      tell('dispatcher', 'public-danger'),
      handOver,
    ],
    verdict: 'pass',
    end: 'handed-over',
  },
  'climbs-past-the-lamp': {
    acts: [acknowledge, park('clear'), go('p2.butt'), up('p2', 'below', 'hooks'), touch('p2.streetlight/bracket')],
    verdict: 'fail',
    end: 'struck',
  },
  'opens-it-and-calls-it-dead': {
    acts: [
      ...arrive,
      ...tools,
      ...wear('belt-1'),
      brief,
      go('p2.butt'),
      check('stick-1', 'wipe'),
      byStick('p2.cutout', 'open'),
      up('p2', 'work'),
      touch('p2.transformer/x1'),
      handOver,
    ],
    verdict: 'fail',
    end: 'handed-over',
  },
  'not-ours': {
    acts: [...arrive, ...look('eyes', 'p2.streetlight'), closeOut],
    verdict: 'remarks',
    end: 'closed-out',
  },
};
