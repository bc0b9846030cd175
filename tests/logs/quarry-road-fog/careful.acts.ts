/** What a careful crew does here: common practice, employers' rules differ. */

import type { Act } from '../../../src/engine/acts/types.ts';
import { briefingTopics } from '../../../src/engine/catalogue/controls.ts';
import {
  aloft,
  ask,
  byHand,
  byStick,
  check,
  find,
  go,
  ground,
  look,
  owner,
  plan,
  primary,
  repair,
  secondary,
  support,
  tag,
  tell,
  unground,
  wait,
  wear,
} from './shorthand.ts';

const onPole = [
  'p2.insulator',
  'p2.tie',
  'p2.pole',
  'p2.cutout',
  'p2.arrester',
  'p2.transformer',
  'p2.ground-bond',
  'p2.ground-lead',
];

const call: readonly Act[] = [
  { act: 'acknowledge' },
  ...ask('dispatcher', 'history', 'upstream', 'circuit', 'reclosing', 'eta'),
  tell('dispatcher', 'block-reclosing'),
];

const survey: readonly Act[] = [
  { act: 'park', at: 'clear' },
  { act: 'engine', on: false },
  ...look('eyes', 's1.phase', 's2.phase', 's1.neutral', 's2.neutral'),
  { act: 'listen' },
  { act: 'guard', with: 'chocks' },
  { act: 'guard', with: 'cones' },
  { act: 'guard', with: 'keep-out' },
  ...look('glass', ...onPole, 'p1.tap-cutout', 'p1.pole', 'p3.pole'),
  go('p2.field'),
  ...look('glass', ...onPole, 'p1.tie', 'p3.deadend', 'p3.guy'),
  find('p2.insulator', 'cracked', 0.9),
  find('p2.tie', 'tie-broken', 0.9),
  find('p2.pole', 'burn-track', 0.9),
  find('p2.ground-bond', 'bond-missing', 0.8),
  find('p2.ground-lead', 'cut', 0.9),
];

const premises: readonly Act[] = [
  go('a.yard'),
  ...ask('a.customer', 'noticed', 'generator', 'main', 'transfer-switch'),
  ...look('eyes', 'a.generator', 'a.cord', 'a.main', 'a.meter', 'a.house'),
  find('a.cord', 'feeding-panel', 0.95),
  go('b.yard'),
  ...ask('b.customer', 'noticed', 'generator', 'transfer-switch'),
  ...look('eyes', 'b.generator', 'b.transfer-switch', 'b.main', 'b.meter', 'b.house'),
];

const tools: readonly Act[] = [
  check('stick-1', 'read-tag'),
  check('stick-2', 'read-tag'),
  find('stick-2', 'out-of-test', 1),
  check('stick-1', 'wipe'),
  check('detector-1', 'self-test'),
  check('detector-2', 'self-test'),
  find('detector-2', 'fails-self-test', 1),
  check('gloves-1', 'read-tag'),
  check('gloves-1', 'air-test'),
  check('tester-1', 'self-test'),
  check('arm-1', 'read-tag'),
  check('arm-1', 'inspect'),
  ...wear('gloves-1', 'shield-1'),
];

const proveTap: readonly Act[] = [
  go('p1.butt'),
  primary('p1.tap-cutout/top'),
  primary('p1.tap-cutout/bottom'),
  primary('p1.tap-cutout/top'),
  tell('dispatcher', 'backfeed'),
  tell('dispatcher', 'public-danger'),
];

const isolate: readonly Act[] = [
  go('a.yard'),
  tell('a.customer', 'own-source'),
  owner('a.generator', 'stop'),
  owner('a.main', 'open'),
  byHand('a.meter', 'pull'),
  ...secondary('a.meter/line1', 'a.meter/line2', 'a.meter/load1', 'a.meter/load2'),
  check('tester-1', 'self-test'),
  byHand('a.meter', 'blank'),
  tag('a.meter'),
  tell('a.customer', 'keep-away'),
  go('b.yard'),
  check('tester-1', 'self-test'),
  ...secondary('b.meter/line1', 'b.meter/line2', 'b.meter/load1', 'b.meter/load2'),
  check('tester-1', 'self-test'),
  byHand('b.meter', 'pull'),
  byHand('b.meter', 'blank'),
  tag('b.meter'),
];

const open: readonly Act[] = [
  { act: 'clearance', step: 'request', device: 'p1.tap-cutout' },
  go('p1.butt'),
  check('stick-1', 'wipe'),
  byStick('p1.tap-cutout', 'remove-tube'),
  tag('p1.tap-cutout'),
  wait(1),
  wait(1),
];

const brief: readonly Act[] = [
  plan('f1', 'deenergize-ground'),
  plan('f2', 'support-conductor'),
  plan('f3', 'deenergize-ground'),
  plan('f4', 'bridge-bond'),
  plan('f5', 'keep-clear'),
  plan('f6', 'isolate-source'),
  plan('f7', 'reject-tool'),
  plan('f8', 'reject-tool'),
  plan(null, 'rubber-gloves'),
  plan(null, 'short-secondary'),
  plan(null, 'wait-second-qualified'),
  { act: 'brief', topics: [...briefingTopics], rescue: true },
];

const groundTap: readonly Act[] = [
  check('stick-1', 'wipe'),
  check('detector-1', 'self-test'),
  primary('p1.tap-cutout/top'),
  primary('s1.phase/a'),
  primary('p1.tap-cutout/top'),
  ground('ground-1', 'stick-1', 'p1.neutral-spool/neutral', 's1.phase/a'),
  ...look('glass', 'p1.tie', 'p1.insulator'),
];

const work: readonly Act[] = [
  go('p2.butt'),
  { act: 'sound', pole: 'p2' },
  { act: 'prod', pole: 'p2' },
  { act: 'wear', tool: 'belt-1', on: true },
  aloft('below'),
  support(true),
  check('stick-1', 'wipe'),
  check('detector-1', 'self-test'),
  primary('p2.clamp/line'),
  check('detector-1', 'self-test'),
  ground('ground-2', 'stick-1', 'p2.neutral-spool/neutral', 'p2.ground-bond/lead', 's1.phase/b'),
  aloft('work'),
  check('tester-1', 'self-test'),
  ...secondary('p2.transformer/x1', 'p2.transformer/x3'),
  check('tester-1', 'self-test'),
  ground('short-1', null, 'p2.transformer/x2', 'p2.transformer/x1', 'p2.transformer/x3'),
  repair('p2.pole', 'clean-burned-wood'),
  repair('p2.insulator', 'replace-pin-insulator'),
  repair('p2.tie', 'tie-in'),
  repair('p2.ground-bond', 'mend-ground-bond'),
  support(false),
  unground('j3', null),
  aloft('below'),
  unground('j2'),
  { act: 'come-down' },
  repair('p2.ground-lead', 'replace-ground-lead'),
];

const restore: readonly Act[] = [
  go('p1.butt'),
  check('stick-1', 'wipe'),
  unground('j1'),
  { act: 'count-grounds' },
  { act: 'everyone-clear' },
  { act: 'clearance', step: 'release', device: 'p1.tap-cutout' },
  tag('p1.tap-cutout', false),
  repair('p1.tap-cutout', 'fit-link'),
  byStick('p1.tap-cutout', 'hang-tube'),
  byStick('p1.tap-cutout', 'close'),
  go('b.yard'),
  check('tester-1', 'self-test'),
  ...secondary('b.meter/line1', 'b.meter/line2'),
  tag('b.meter', false),
  byHand('b.meter', 'set'),
  tell('b.customer', 'restored'),
  owner('b.transfer-switch', 'to-line'),
  owner('b.generator', 'stop'),
  go('a.yard'),
  tell('a.customer', 'stays-out'),
  tell('dispatcher', 'stays-out'),
  tell('dispatcher', 'cause-found'),
  tell('dispatcher', 'restored'),
  { act: 'close-out' },
];

export const careful: readonly Act[] = [
  ...call,
  ...survey,
  ...premises,
  ...tools,
  ...proveTap,
  ...isolate,
  ...open,
  ...brief,
  ...groundTap,
  ...work,
  ...restore,
];
