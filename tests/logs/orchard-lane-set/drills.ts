/** Orchard Lane: a set behind a proper switch, a spent arrester above. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Drills } from '../drills.ts';
import {
  acknowledge,
  arrive,
  ask,
  brief,
  byHand,
  byStick,
  check,
  closeOut,
  everyoneClear,
  find,
  go,
  handOver,
  look,
  onTransformerPole,
  owner,
  park,
  plan,
  primary,
  repair,
  secondary,
  tell,
  tools,
  up,
} from '../shorthand.ts';

const survey: readonly Act[] = [
  ...ask('dispatcher', 'history', 'upstream'),
  ...arrive,
  go('p2.butt'),
  ...look('lamp', 'p2.pole', 'p2.ground-lead', 'p2.arrester', 'p2.cutout'),
  go('p2.road'),
  ...look('glass', ...onTransformerPole('p2')),
  ...look('lamp', ...onTransformerPole('p2')),
  go('p2.field'),
  ...look('glass', ...onTransformerPole('p2')),
];

const premises: readonly Act[] = [
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator'),
  ...look('lamp', 'a.house', 'a.meter'),
  go('b.yard'),
  ...ask('b.customer', 'noticed', 'generator', 'transfer-switch'),
  ...look('lamp', 'b.house', 'b.generator', 'b.transfer-switch', 'b.meter'),
];

const restore: readonly Act[] = [
  ...tools,
  ...secondary('b.meter/line1', 'b.meter/line2', 'b.meter/load1', 'b.meter/load2'),
  plan('f1', 'hot-stick-only'),
  plan('f2', 'keep-clear'),
  brief,
  go('p2.butt'),
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
  go('a.yard'),
  check('tester-1', 'self-test'),
  ...secondary('a.meter/line1', 'a.meter/line2'),
  tell('a.customer', 'restored'),
  go('b.yard'),
  tell('b.customer', 'restored'),
  owner('b.transfer-switch', 'to-line'),
  owner('b.generator', 'stop'),
  tell('dispatcher', 'cause-found'),
  tell('dispatcher', 'restored'),
  closeOut,
];

const calls: readonly Act[] = [
  find('p2.cutout', 'fuse-operated', 1),
  find('p2.arrester', 'disconnector-operated', 0.8),
];

export const drills: Drills = {
  careful: { acts: [...survey, ...calls, ...premises, ...restore], verdict: 'pass', end: 'closed-out' },
  'blames-the-set': {
    acts: [
      ...survey,
      find('p2.cutout', 'fuse-operated', 1),
      ...premises,
      find('b.transfer-switch', 'miswired', 0.8),
      tell('dispatcher', 'backfeed'),
      handOver,
    ],
    verdict: 'pass',
    end: 'handed-over',
  },
  'up-to-see': {
    acts: [acknowledge, park('clear'), go('p2.butt'), up('p2', 'work', 'hooks'), handOver],
    verdict: 'fail',
    end: 'handed-over',
  },
  'sets-the-meter-bare': {
    acts: [acknowledge, park('clear'), go('b.yard'), byHand('b.meter', 'pull'), closeOut],
    verdict: 'fail',
    end: 'closed-out',
  },
};
