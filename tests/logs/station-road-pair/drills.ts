/** Station Road: two transformers on one secondary, a cracked cutout. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Drills } from '../drills.ts';
import {
  acknowledge,
  arrive,
  ask,
  brief,
  byStick,
  check,
  find,
  go,
  handOver,
  look,
  onTransformerPole,
  park,
  plan,
  sound,
  tell,
  tools,
  touch,
  up,
  wear,
} from '../shorthand.ts';

const survey: readonly Act[] = [
  ...ask('dispatcher', 'history', 'upstream', 'circuit'),
  ...arrive,
  ...look('glass', ...onTransformerPole('p2'), 'q1.secondary'),
  go('p2.field'),
  ...look('glass', ...onTransformerPole('p2')),
  go('p3.road'),
  ...look('glass', ...onTransformerPole('p3')),
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator'),
];

export const drills: Drills = {
  careful: {
    acts: [
      ...survey,
      find('p2.cutout', 'cracked', 0.9),
      find('p2.ground-bond', 'bond-missing', 0.9),
      plan('f1', 'deenergize-ground'),
      plan('f2', 'bridge-bond'),
      brief,
      tell('a.customer', 'keep-away'),
      tell('dispatcher', 'cause-found'),
      tell('dispatcher', 'public-danger'),
      handOver,
    ],
    verdict: 'pass',
    end: 'handed-over',
  },
  'opens-one-of-two': {
    acts: [
      ...arrive,
      ...tools,
      ...wear('belt-1'),
      brief,
      go('p2.butt'),
      sound('p2'),
      check('stick-1', 'wipe'),
      byStick('p2.cutout', 'open'),
      up('p2', 'work'),
      touch('p2.transformer/h1'),
      handOver,
    ],
    verdict: 'fail',
    end: 'handed-over',
  },
  'feels-the-wire': {
    acts: [acknowledge, park('clear'), go('p2.butt'), touch('p2.ground-lead/low'), handOver],
    verdict: 'fail',
    end: 'handed-over',
  },
  'climbs-at-once': {
    acts: [acknowledge, park('clear'), go('p2.butt'), up('p2', 'below', 'hooks'), handOver],
    verdict: 'fail',
    end: 'handed-over',
  },
};
