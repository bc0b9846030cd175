/** Night Lane: storm, backfeed, a loose wire, nobody to send. The drill is to stop. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Drills } from '../drills.ts';
import {
  acknowledge,
  arrive,
  ask,
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
  repair,
  sound,
  tell,
  touch,
  up,
} from '../shorthand.ts';

const survey: readonly Act[] = [
  ...ask('dispatcher', 'history', 'upstream', 'eta'),
  ...ask('caller', 'noticed', 'generator'),
  ...arrive,
  ...look('eyes', 'site'),
  ...look('lamp', ...onTransformerPole('p2')),
  ...look('glass', ...onTransformerPole('p2')),
  go('p2.butt'),
  { act: 'listen' },
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator', 'main'),
  ...look('lamp', 'a.cord', 'a.main', 'a.generator'),
];

export const drills: Drills = {
  careful: {
    acts: [
      ...survey,
      find('site', 'lightning', 1),
      find('a.cord', 'feeding-panel', 1),
      find('p2.insulator', 'chipped', 0.8),
      find('p2.pole', 'burn-track', 0.8),
      find('p2.tie', 'tie-broken', 0.8),
      find('second', 'alone', 1),
      plan('f1', 'postpone-lightning'),
      plan('f2', 'isolate-source'),
      tell('a.customer', 'keep-away'),
      tell('a.customer', 'own-source'),
      tell('dispatcher', 'backfeed'),
      tell('dispatcher', 'public-danger'),
      handOver,
    ],
    verdict: 'pass',
    end: 'handed-over',
  },
  'just-the-fuse': {
    acts: [
      acknowledge,
      park('clear'),
      check('stick-1', 'wipe'),
      go('p1.butt'),
      byStick('p1.tap-cutout', 'remove-tube'),
      repair('p1.tap-cutout', 'fit-link'),
      byStick('p1.tap-cutout', 'hang-tube'),
      byStick('p1.tap-cutout', 'close'),
      closeOut,
    ],
    verdict: 'fail',
    end: 'closed-out',
  },
  'sounds-the-pole': {
    acts: [acknowledge, park('clear'), go('p2.butt'), sound('p2'), touch('p2.ground-lead/low'), handOver],
    verdict: 'fail',
    end: 'handed-over',
  },
  'up-in-the-storm': {
    acts: [acknowledge, park('clear'), go('p2.butt'), up('p2', 'below', 'hooks'), handOver],
    verdict: 'fail',
    end: 'handed-over',
  },
};
