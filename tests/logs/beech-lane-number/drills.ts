/** Beech Lane: an order that names another feeder, a helper who may not watch. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Drills } from '../drills.ts';
import {
  acknowledge,
  arrive,
  ask,
  clearance,
  closeOut,
  find,
  go,
  handOver,
  look,
  onTransformerPole,
  park,
  plan,
  repair,
  tell,
  tools,
  touch,
  up,
  wait,
  wear,
} from '../shorthand.ts';

const survey: readonly Act[] = [
  ...ask('dispatcher', 'circuit', 'history', 'upstream'),
  ...ask('caller', 'noticed'),
  ...arrive,
  ...look('eyes', 'site', 'second'),
  ...look('glass', ...onTransformerPole('p2'), 's1.phase', 's2.phase', 'p1.tap-cutout', 'p1.pole', 'p1.tag'),
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator'),
];

export const drills: Drills = {
  careful: {
    acts: [
      ...survey,
      find('s1.phase', 'limb-on-line', 1),
      find('second', 'not-qualified', 0.9),
      find('dispatcher', 'wrong-number', 0.9),
      plan('f1', 'deenergize-ground'),
      plan('f2', 'wait-second-qualified'),
      plan('f3', 'match-numbers'),
      tell('a.customer', 'keep-away'),
      tell('dispatcher', 'cause-found'),
      tell('dispatcher', 'public-danger'),
      handOver,
    ],
    verdict: 'pass',
    end: 'handed-over',
  },
  'trusts-the-clearance': {
    acts: [
      acknowledge,
      park('clear'),
      ...tools,
      ...wear('belt-1'),
      clearance('request', 'p1.tap-cutout'),
      wait(5),
      go('p1.butt'),
      up('p1', 'work'),
      touch('s1.phase/a'),
      handOver,
    ],
    verdict: 'fail',
    end: 'handed-over',
  },
  'feels-for-it': {
    acts: [acknowledge, park('clear'), go('p1.butt'), up('p1', 'work'), touch('s1.phase/a')],
    verdict: 'fail',
    end: 'struck',
  },
  'cuts-it-alive': {
    acts: [acknowledge, park('clear'), go('p1.butt'), up('p1', 'work'), repair('s1.phase', 'splice-conductor')],
    verdict: 'fail',
    end: 'struck',
  },
  'nothing-to-it': {
    acts: [...arrive, ...look('eyes', 's1.phase'), closeOut],
    verdict: 'remarks',
    end: 'closed-out',
  },
};
