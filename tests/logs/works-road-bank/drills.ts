/** Works Road: a bank beside the substation. Common practice; employers' rules differ. */
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
  park,
  plan,
  repair,
  tell,
  tools,
  touch,
  up,
  wear,
} from '../shorthand.ts';

const onBank: readonly string[] = [
  'insulator-a',
  'insulator-b',
  'insulator-c',
  'tie-a',
  'tie-b',
  'tie-c',
  'crossarm',
  'pole',
  'cutout-a',
  'cutout-b',
  'cutout-c',
  'unit-a',
  'unit-b',
  'unit-c',
].map((name) => `p2.${name}`);

const survey: readonly Act[] = [
  ...ask('dispatcher', 'history', 'upstream', 'reclosing', 'circuit'),
  ...arrive,
  tell('dispatcher', 'block-reclosing'),
  ...look('glass', ...onBank, 'p1.pole', 'p3.pole'),
  go('p2.field'),
  ...look('glass', ...onBank),
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator', 'main'),
];

export const drills: Drills = {
  careful: {
    acts: [
      ...survey,
      ...tools,
      check('stick-2', 'read-tag'),
      find('stick-2', 'out-of-test', 1),
      find('p2.insulator-b', 'contaminated', 0.9),
      find('p2.crossarm', 'burn-track', 0.9),
      find('p2.cutout-c', 'oversize-link', 0.7),
      find('p2.cutout-b', 'fuse-operated', 1),
      plan('f1', 'reject-tool'),
      plan('f2', 'deenergize-ground'),
      plan('f3', 'deenergize-ground'),
      brief,
      tell('dispatcher', 'cause-found'),
      tell('dispatcher', 'public-danger'),
      handOver,
    ],
    verdict: 'pass',
    end: 'handed-over',
  },
  'one-more-link': {
    acts: [
      acknowledge,
      park('clear'),
      check('stick-2', 'wipe'),
      go('p2.butt'),
      byStick('p2.cutout-b', 'remove-tube', 'stick-2'),
      repair('p2.cutout-b', 'fit-link'),
      byStick('p2.cutout-b', 'hang-tube', 'stick-2'),
      byStick('p2.cutout-b', 'close', 'stick-2'),
      tell('dispatcher', 'restored'),
      closeOut,
    ],
    verdict: 'fail',
    end: 'closed-out',
  },
  'two-phases-are-none': {
    acts: [acknowledge, park('clear'), ...wear('gloves-1'), go('p2.butt'), up('p2', 'work'), touch('p2.unit-b/h1'), handOver],
    verdict: 'fail',
    end: 'handed-over',
  },
  'looks-once': {
    acts: [...arrive, ...look('eyes', 'p2.cutout-b'), closeOut],
    verdict: 'remarks',
    end: 'closed-out',
  },
};
