/** Mill Lane: nothing is wrong but the job. Common practice; employers' rules differ. */
import type { Act } from '../../../src/engine/acts/types.ts';
import { briefingTopics } from '../../../src/engine/catalogue/controls.ts';
import type { Drills } from '../drills.ts';
import {
  acknowledge,
  arrive,
  ask,
  byHand,
  byStick,
  check,
  closeOut,
  everyoneClear,
  find,
  go,
  look,
  park,
  plan,
  primary,
  repair,
  secondary,
  tell,
  wear,
} from '../shorthand.ts';

const onPole = ['p2.insulator', 'p2.tie', 'p2.pole', 'p2.cutout', 'p2.arrester', 'p2.transformer', 'p2.ground-lead'];

const survey: readonly Act[] = [
  ...arrive,
  ...ask('dispatcher', 'history', 'upstream', 'circuit'),
  ...look('glass', ...onPole, 'p1.pole', 'p1.tap-cutout', 'p3.pole'),
  go('p2.field'),
  ...look('glass', ...onPole, 'p1.pole', 'p3.deadend'),
  find('p2.cutout', 'fuse-operated', 1),
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator'),
  ...look('eyes', 'a.house', 'a.meter', 'a.main', 'a.drop'),
];

const tools: readonly Act[] = [
  check('stick-1', 'read-tag'),
  check('stick-1', 'wipe'),
  check('gloves-1', 'read-tag'),
  check('gloves-1', 'air-test'),
  check('tester-1', 'self-test'),
  check('detector-1', 'self-test'),
  ...wear('gloves-1', 'shield-1'),
];

const careful: readonly Act[] = [
  ...survey,
  ...tools,
  ...secondary('a.meter/line1', 'a.meter/line2'),
  plan('f1', 'hot-stick-only'),
  plan(null, 'face-and-arc-wear'),
  { act: 'brief', topics: [...briefingTopics], rescue: true },
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
  tell('dispatcher', 'cause-found'),
  tell('dispatcher', 'restored'),
  closeOut,
];

export const drills: Drills = {
  careful: { acts: careful, verdict: 'pass', end: 'closed-out' },
  'calls-everything': {
    acts: [
      ...survey,
      find('p2.pole', 'burn-track', 0.9),
      find('p1.pole', 'shell-rot', 0.7),
      find('p2.insulator', 'cracked', 0.6),
      ...careful.slice(survey.length),
    ],
    verdict: 'remarks',
    end: 'closed-out',
  },
  'closes-unready': {
    acts: [acknowledge, park('clear'), go('p2.butt'), byStick('p2.cutout', 'remove-tube'), closeOut],
    verdict: 'fail',
    end: 'closed-out',
  },
  'bare-hands': {
    acts: [acknowledge, park('clear'), go('a.yard'), byHand('a.meter', 'pull'), closeOut],
    verdict: 'fail',
    end: 'closed-out',
  },
};
