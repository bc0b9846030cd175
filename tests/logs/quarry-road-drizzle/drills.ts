/** The twin of the fog: nothing to be seen at first sight, alone, dusk coming. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Drills } from '../drills.ts';
import {
  acknowledge,
  arrive,
  ask,
  closeOut,
  find,
  go,
  handOver,
  look,
  onTransformerPole,
  park,
  repair,
  tell,
  touch,
  up,
} from '../shorthand.ts';

const careful: readonly Act[] = [
  ...ask('dispatcher', 'history', 'eta'),
  ...arrive,
  ...look('glass', ...onTransformerPole('p2')),
  go('p2.field'),
  ...look('glass', ...onTransformerPole('p2')),
  find('p2.insulator', 'cracked', 0.9),
  find('p2.pole', 'burn-track', 0.9),
  find('p2.ground-bond', 'bond-missing', 0.8),
  find('p2.ground-lead', 'cut', 0.9),
  go('b.yard'),
  ...ask('b.customer', 'noticed', 'generator', 'transfer-switch'),
  tell('b.customer', 'keep-away'),
  tell('dispatcher', 'cause-found'),
  tell('dispatcher', 'public-danger'),
  handOver,
];

export const drills: Drills = {
  careful: { acts: careful, verdict: 'pass', end: 'handed-over' },
  'mends-the-copper': {
    acts: [
      acknowledge,
      park('clear'),
      go('p2.butt'),
      ...look('eyes', 'p2.ground-lead'),
      find('p2.ground-lead', 'cut', 0.9),
      repair('p2.ground-lead', 'replace-ground-lead'),
    ],
    verdict: 'fail',
    end: 'struck',
  },
  'climbs-alone': {
    acts: [acknowledge, park('clear'), go('p2.butt'), up('p2', 'below', 'hooks'), handOver],
    verdict: 'fail',
    end: 'handed-over',
  },
  'finds-nothing': {
    acts: [acknowledge, park('clear'), ...look('eyes', 'p2.insulator', 'p2.pole'), closeOut],
    verdict: 'fail',
    end: 'closed-out',
  },
  'feels-the-wire': {
    acts: [acknowledge, park('clear'), go('p2.butt'), touch('p2.ground-lead/low')],
    verdict: 'fail',
    end: 'struck',
  },
};
