/** Church Close: a service without its neutral. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Drills } from '../drills.ts';
import {
  acknowledge,
  arrive,
  ask,
  byHand,
  check,
  closeOut,
  find,
  go,
  handOver,
  look,
  onTransformerPole,
  owner,
  park,
  plan,
  secondary,
  tell,
  tools,
  touch,
} from '../shorthand.ts';

const survey: readonly Act[] = [
  ...ask('caller', 'noticed', 'generator'),
  ...ask('dispatcher', 'history', 'eta'),
  ...arrive,
  ...look('glass', ...onTransformerPole('p2'), 'a.drop', 'b.drop'),
  go('p2.field'),
  ...look('glass', ...onTransformerPole('p2'), 'a.drop', 'b.drop'),
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator', 'main'),
  ...look('eyes', 'a.drop', 'a.meter', 'a.main', 'a.house'),
];

export const drills: Drills = {
  careful: {
    acts: [
      ...survey,
      ...tools,
      ...secondary('a.meter/line1', 'a.meter/line2'),
      check('tester-1', 'self-test'),
      find('a.drop', 'open-neutral', 0.9),
      plan('f1', 'deenergize-ground'),
      owner('a.main', 'open'),
      tell('a.customer', 'keep-away'),
      tell('dispatcher', 'cause-found'),
      tell('dispatcher', 'public-danger'),
      handOver,
    ],
    verdict: 'pass',
    end: 'handed-over',
  },
  'pulls-the-meter-bare': {
    acts: [acknowledge, park('clear'), go('a.yard'), byHand('a.meter', 'pull')],
    verdict: 'fail',
    end: 'struck',
  },
  'takes-the-neutral-for-dead': {
    acts: [acknowledge, park('clear'), ...ask('caller', 'noticed'), go('a.yard'), touch('a.meter/n'), closeOut],
    verdict: 'remarks',
    end: 'closed-out',
  },
  'changes-the-lamps': {
    acts: [...arrive, go('a.yard'), ...ask('a.customer', 'noticed'), closeOut],
    verdict: 'remarks',
    end: 'closed-out',
  },
};
