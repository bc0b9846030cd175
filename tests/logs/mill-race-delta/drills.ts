/** The mill race: a ground on one phase of a delta. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import type { Drills } from '../drills.ts';
import {
  acknowledge,
  arrive,
  ask,
  check,
  closeOut,
  find,
  go,
  ground,
  handOver,
  look,
  park,
  plan,
  prod,
  tell,
  touch,
  up,
} from '../shorthand.ts';

const onArm = (pole: string): readonly string[] =>
  ['insulator-a', 'insulator-c', 'tie-a', 'tie-c', 'crossarm', 'pole'].map((name) => `${pole}.${name}`);

const survey: readonly Act[] = [
  ...ask('dispatcher', 'history', 'upstream', 'circuit'),
  ...arrive,
  ...look('glass', ...onArm('p1'), ...onArm('p2'), 's1.phase-a', 's1.phase-b', 's1.phase-c'),
  go('p2.field'),
  ...look('glass', ...onArm('p2'), 's2.phase-a', 's2.phase-c'),
  go('p3.road'),
  ...look('glass', 'p3.pole', 'p3.transformer', 'p3.cutout-a', 'p3.cutout-c', 's2.phase-c'),
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator'),
  go('p2.butt'),
  ...look('eyes', 'p2.pole'),
  prod('p2'),
];

export const drills: Drills = {
  careful: {
    acts: [
      ...survey,
      find('s2.phase-c', 'limb-on-line', 1),
      find('p2.pole', 'shell-rot', 0.9),
      plan('f1', 'deenergize-ground'),
      plan('f2', 'keep-clear'),
      tell('dispatcher', 'cause-found'),
      tell('dispatcher', 'public-danger'),
      handOver,
    ],
    verdict: 'pass',
    end: 'handed-over',
  },
  'takes-it-for-dead': {
    acts: [acknowledge, park('clear'), go('p3.butt'), up('p3', 'work'), touch('s2.phase-a/b')],
    verdict: 'fail',
    end: 'struck',
  },
  'grounds-the-other-phase': {
    acts: [
      ...arrive,
      go('p1.butt'),
      check('stick-1', 'wipe'),
      ground('ground-1', 'stick-1', 'p1.ground-bond/neutral', 's1.phase-a/a'),
      handOver,
    ],
    verdict: 'remarks',
    end: 'handed-over',
  },
  'climbs-the-middle-pole': {
    acts: [acknowledge, park('clear'), go('p2.butt'), up('p2', 'below', 'hooks'), handOver],
    verdict: 'fail',
    end: 'handed-over',
  },
  'sees-nothing': {
    acts: [...arrive, ...look('eyes', 'p1.pole'), closeOut],
    verdict: 'remarks',
    end: 'closed-out',
  },
};
