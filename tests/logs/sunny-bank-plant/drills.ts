/** Sunny Bank: an inverter that holds the tap alone. Common practice; employers' rules differ. */
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
  clearance,
  closeOut,
  everyoneClear,
  find,
  go,
  ground,
  handOver,
  look,
  onTransformerPole,
  owner,
  park,
  plan,
  primary,
  secondary,
  tag,
  tell,
  tools,
} from '../shorthand.ts';

const survey: readonly Act[] = [
  ...ask('dispatcher', 'history', 'upstream', 'circuit', 'customers'),
  ...arrive,
  ...look('glass', ...onTransformerPole('p2'), 'p1.tap-cutout', 'p1.pole', 'p3.pole'),
  go('p2.field'),
  ...look('glass', ...onTransformerPole('p2')),
];

const premises: readonly Act[] = [
  go('b.yard'),
  ...ask('b.customer', 'noticed', 'generator', 'transfer-switch'),
  ...look('eyes', 'b.battery', 'b.transfer-switch', 'b.house', 'b.meter'),
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator', 'main'),
  ...look('eyes', 'a.photovoltaic', 'a.main', 'a.house', 'a.meter'),
];

const prove: readonly Act[] = [
  go('p1.butt'),
  check('stick-1', 'wipe'),
  check('detector-1', 'self-test'),
  primary('p1.tap-cutout/top'),
  primary('p1.tap-cutout/bottom'),
  primary('p1.tap-cutout/top'),
];

const apart: readonly Act[] = [
  tell('dispatcher', 'backfeed'),
  go('a.yard'),
  tell('a.customer', 'own-source'),
  owner('a.main', 'open'),
  byHand('a.meter', 'pull'),
  check('tester-1', 'self-test'),
  ...secondary('a.meter/line1', 'a.meter/line2'),
  check('tester-1', 'self-test'),
  byHand('a.meter', 'blank'),
  tag('a.meter'),
];

const restore: readonly Act[] = [
  plan('f1', 'isolate-source'),
  plan(null, 'hot-stick-only'),
  brief,
  ...prove,
  everyoneClear,
  byStick('p1.tap-cutout', 'close'),
  go('b.yard'),
  check('tester-1', 'self-test'),
  ...secondary('b.meter/line1', 'b.meter/line2'),
  owner('b.transfer-switch', 'to-line'),
  tell('b.customer', 'restored'),
  go('a.yard'),
  tell('a.customer', 'stays-out'),
  tell('dispatcher', 'stays-out'),
  tell('dispatcher', 'cause-found'),
  tell('dispatcher', 'restored'),
  closeOut,
];

export const drills: Drills = {
  careful: {
    acts: [...survey, ...premises, ...tools, ...prove, find('a.photovoltaic', 'backfed', 0.9), ...apart, ...restore],
    verdict: 'pass',
    end: 'closed-out',
  },
  'closes-at-once': {
    acts: [
      acknowledge,
      park('clear'),
      check('stick-1', 'wipe'),
      go('p1.butt'),
      byStick('p1.tap-cutout', 'close'),
      tell('dispatcher', 'restored'),
      closeOut,
    ],
    verdict: 'fail',
    end: 'closed-out',
  },
  'grounds-untested': {
    acts: [
      ...ask('dispatcher', 'history'),
      ...arrive,
      go('p1.butt'),
      check('stick-1', 'wipe'),
      clearance('request', 'p1.tap-cutout'),
      ground('ground-1', 'stick-1', 'p1.neutral-spool/neutral', 's1.phase/a'),
      handOver,
    ],
    verdict: 'remarks',
    end: 'handed-over',
  },
  'pulls-the-meter-under-load': {
    acts: [acknowledge, park('clear'), go('a.yard'), byHand('a.meter', 'pull')],
    verdict: 'fail',
    end: 'struck',
  },
};
