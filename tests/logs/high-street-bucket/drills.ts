/** High Street: the street is the larger half of the scene. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Drills } from '../drills.ts';
import {
  acknowledge,
  ask,
  brief,
  byStick,
  check,
  closeOut,
  everyoneClear,
  find,
  go,
  guard,
  handOver,
  look,
  onTransformerPole,
  park,
  plan,
  primary,
  repair,
  secondary,
  tell,
  tools,
  wear,
} from '../shorthand.ts';

const survey: readonly Act[] = [
  ...ask('dispatcher', 'history', 'upstream'),
  acknowledge,
  park('clear'),
  { act: 'engine', on: false },
  ...look('eyes', 'site', 'kid', 'dog', 'onlooker'),
  ...guard('chocks', 'cones', 'barrier', 'keep-out'),
  { act: 'listen' },
  ...look('glass', ...onTransformerPole('p2'), 'p1.pole', 'p3.pole'),
  go('p2.field'),
  ...look('glass', ...onTransformerPole('p2')),
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator'),
];

const calls: readonly Act[] = [
  find('site', 'traffic-unguarded', 1),
  find('kid', 'child-near', 1),
  find('dog', 'dog-loose', 1),
  find('p2.cutout', 'fuse-operated', 1),
];

const putBack: readonly Act[] = [
  check('stick-1', 'wipe'),
  check('detector-1', 'self-test'),
  primary('p2.cutout/top'),
  primary('p2.cutout/bottom'),
  primary('p2.cutout/top'),
  byStick('p2.cutout', 'remove-tube'),
  repair('p2.cutout', 'fit-link'),
  byStick('p2.cutout', 'hang-tube'),
  everyoneClear,
  byStick('p2.cutout', 'close'),
];

export const drills: Drills = {
  careful: {
    acts: [
      ...survey,
      ...calls,
      tell('a.customer', 'shut-dog-in'),
      ...tools,
      plan('f1', 'barrier-vehicle'),
      plan('f2', 'escort-bystanders'),
      plan('f3', 'restrain-dog'),
      plan('f4', 'hot-stick-only'),
      brief,
      go('p2.butt'),
      ...putBack,
      go('a.yard'),
      check('tester-1', 'self-test'),
      ...secondary('a.meter/line1', 'a.meter/line2'),
      tell('a.customer', 'restored'),
      go('b.yard'),
      tell('b.customer', 'restored'),
      tell('dispatcher', 'cause-found'),
      tell('dispatcher', 'restored'),
      closeOut,
    ],
    verdict: 'pass',
    end: 'closed-out',
  },
  'straight-to-the-pole': {
    acts: [acknowledge, park('clear'), go('p2.butt'), ...putBack, tell('dispatcher', 'restored'), closeOut],
    verdict: 'fail',
    end: 'closed-out',
  },
  'cones-only': {
    acts: [acknowledge, park('clear'), ...guard('cones'), ...wear('vest-1'), go('p2.butt'), ...putBack, closeOut],
    verdict: 'fail',
    end: 'closed-out',
  },
  'leaves-the-street': {
    acts: [acknowledge, park('clear'), ...look('glass', 'p2.cutout'), handOver],
    verdict: 'remarks',
    end: 'handed-over',
  },
};
