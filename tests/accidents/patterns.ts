/**
 * Patterns of public accident reports (NIOSH FACE summaries, a NIOSH alert, an OSHA accident summary), told by their number only. What
 * the report says was done must end in an exposure of the reported kind; the same with the missed look and control, in none.
 */
import type { Act } from '../../src/engine/acts/types.ts';
import type { Mechanism } from '../../src/engine/catalogue/types.ts';
import {
  acknowledge,
  arrive,
  ask,
  assign,
  brief,
  byHand,
  byStick,
  check,
  clearance,
  down,
  go,
  ground,
  guard,
  handOver,
  look,
  owner,
  park,
  primary,
  prod,
  repair,
  secondary,
  send,
  sound,
  tag,
  tools,
  touch,
  up,
  wait,
  wear,
} from '../logs/shorthand.ts';

export interface Pattern {
  readonly report: string;
  readonly what: string;
  /** Scenario beside this file. */
  readonly scene: string;
  readonly asReported: readonly Act[];
  readonly controlled: readonly Act[];
  /** The exposure of the report: how, on which parts, and its size. */
  readonly met: {
    readonly mechanism: Mechanism;
    readonly part: RegExp;
    readonly unit: string;
    readonly from: number;
    readonly to: number;
  };
}

/** On scene, aloft in the bucket at the transformer pole, nothing asked and nothing tested. */
const straightUp: readonly Act[] = [acknowledge, park('clear'), go('p2.butt'), ...wear('belt-1'), up('p2', 'work')];

/** Guarded, gone over, briefed; the tap opened, its tube out, tagged and held. */
const tapOpen = (before: readonly Act[]): readonly Act[] => [
  ...arrive,
  ...tools,
  ...wear('belt-1'),
  ...before,
  clearance('request', 'p1.tap-cutout'),
  go('p1.butt'),
  brief,
  check('stick-1', 'wipe'),
];

const tubeOut: readonly Act[] = [
  ...tapOpen([]),
  byStick('p1.tap-cutout', 'open'),
  byStick('p1.tap-cutout', 'remove-tube'),
  tag('p1.tap-cutout'),
];

const proveAndGround: readonly Act[] = [
  check('detector-1', 'self-test'),
  primary('p1.tap-cutout/top'),
  primary('p1.tap-cutout/bottom'),
  primary('p1.tap-cutout/top'),
  ground('ground-1', 'stick-1', 'p1.neutral-spool/neutral', 's1.phase/a'),
];

/** Up below the work, tested again, grounded at the work place too. */
const upGrounded: readonly Act[] = [
  go('p2.butt'),
  sound('p2'),
  prod('p2'),
  up('p2', 'below'),
  check('stick-1', 'wipe'),
  check('detector-1', 'self-test'),
  primary('p2.clamp/line'),
  check('detector-1', 'self-test'),
  ground('ground-2', 'stick-1', 'p2.neutral-spool/neutral', 'p2.ground-bond/lead', 's1.phase/b'),
  up('p2', 'work'),
];

const setApart: readonly Act[] = [
  go('a.yard'),
  ...ask('a.customer', 'generator'),
  owner('a.generator', 'stop'),
  owner('a.main', 'open'),
  byHand('a.meter', 'pull'),
  ...secondary('a.meter/line1', 'a.meter/line2'),
  check('tester-1', 'self-test'),
  byHand('a.meter', 'blank'),
  tag('a.meter'),
];

export const patterns: readonly Pattern[] = [
  {
    report: 'FACE 90-02',
    what: 'a set with its main closed feeds a line that is off, and the wire is touched',
    scene: 'off-line-fed-by-a-set',
    asReported: [...straightUp, touch('s2.phase/a')],
    controlled: [...tapOpen(setApart), tag('p1.tap-cutout'), ...proveAndGround, ...upGrounded, touch('s2.phase/a')],
    met: { mechanism: 'contact', part: /^(s2\.phase|p2\.clamp|p2\.insulator)$/, unit: 'V', from: 6500, to: 7900 },
  },
  {
    report: 'NIOSH 88-104',
    what: 'a line is taken off, a transformer of another line feeds it back over the secondary',
    scene: 'fed-by-a-second-transformer',
    asReported: [
      acknowledge,
      park('clear'),
      check('stick-1', 'wipe'),
      clearance('request', 'p1.tap-cutout'),
      go('p1.butt'),
      byStick('p1.tap-cutout', 'open'),
      go('p2.butt'),
      ...wear('belt-1'),
      up('p2', 'work'),
      touch('p2.deadend/conductor'),
    ],
    controlled: [
      ...tubeOut,
      go('p3.butt'),
      check('stick-1', 'wipe'),
      byStick('p3.cutout', 'open'),
      byStick('p3.cutout', 'remove-tube'),
      tag('p3.cutout'),
      go('p1.butt'),
      ...proveAndGround,
    ],
    met: { mechanism: 'contact', part: /^(s1|p2)\./, unit: 'V', from: 6500, to: 7900 },
  },
  {
    report: 'FACE 92-25',
    what: 'a cutout is changed from a bucket beside the live phase, without gloves or cover',
    scene: 'plain-tap',
    asReported: [...straightUp, repair('p2.cutout', 'replace-cutout')],
    controlled: [...tubeOut, ...proveAndGround, ...upGrounded, repair('p2.cutout', 'replace-cutout')],
    met: { mechanism: 'approach', part: /^p2\./, unit: 'm', from: 0, to: 0.65 },
  },
  {
    report: 'FACE 92-12',
    what: 'a jumper is taken for dead and gripped',
    scene: 'plain-tap',
    asReported: [...straightUp, touch('p2.clamp/lead')],
    controlled: [...tubeOut, ...proveAndGround, ...upGrounded, touch('p2.clamp/lead')],
    met: { mechanism: 'contact', part: /^p2\.clamp$/, unit: 'V', from: 6500, to: 7900 },
  },
  {
    report: 'FACE 88-39',
    what: 'unbelted on the pole, a touch of 120 V at the transformer, a fall of 23 ft',
    scene: 'plain-tap',
    asReported: [acknowledge, park('clear'), go('p2.butt'), up('p2', 'work', 'hooks'), touch('p2.transformer/x1')],
    controlled: [
      ...tubeOut,
      ...proveAndGround,
      ...upGrounded,
      check('tester-1', 'self-test'),
      ...secondary('p2.transformer/x1', 'p2.transformer/x3'),
      check('tester-1', 'self-test'),
      touch('p2.transformer/x1'),
    ],
    met: { mechanism: 'fall', part: /^p2\.pole$/, unit: 'm', from: 6, to: 9 },
  },
  {
    report: 'FACE 86-26',
    what: 'the bucket is raised with a service end in the hand, into the primary above',
    scene: 'plain-tap',
    asReported: [acknowledge, park('clear'), go('p2.butt'), ...wear('belt-1'), up('p2', 'below'), up('p2', 'work')],
    controlled: [...arrive, ...tools, brief, go('p2.butt'), ...wear('belt-1'), up('p2', 'below'), down],
    met: { mechanism: 'approach', part: /^p2\./, unit: 'm', from: 0, to: 0.65 },
  },
  {
    report: 'FACE 90-27',
    what: 'the hose covers one part, the hand meets the conductor beside it, without gloves',
    scene: 'plain-tap',
    asReported: [
      acknowledge,
      park('clear'),
      go('p2.butt'),
      ...wear('belt-1'),
      up('p2', 'work'),
      { act: 'cover', part: 'p2.insulator', tool: 'hood-1', on: true },
      touch('s2.phase/a'),
    ],
    controlled: [...tubeOut, ...proveAndGround, ...upGrounded, touch('s2.phase/a')],
    met: { mechanism: 'contact', part: /^(s2\.phase|p2\.clamp)$/, unit: 'V', from: 6500, to: 7900 },
  },
  {
    report: 'FACE 91-10',
    what: 'both wires are down, nothing is opened, the supply end is taken in leather gloves',
    scene: 'wires-down',
    asReported: [...straightUp, touch('s2.phase/a')],
    controlled: [...tubeOut, ...proveAndGround, ...upGrounded, touch('s2.phase/a')],
    met: { mechanism: 'contact', part: /^(s2\.phase|p2\.clamp|p2\.insulator)$/, unit: 'V', from: 6500, to: 7900 },
  },
  {
    report: 'OSHA 998849',
    what: 'an old pole rings clear under the hammer, is climbed, and snaps',
    scene: 'decayed-light-pole',
    asReported: [
      acknowledge,
      park('clear'),
      go('p2.butt'),
      ...look('eyes', 'p2.pole'),
      sound('p2'),
      ...wear('belt-1'),
      up('p2', 'below', 'hooks'),
    ],
    controlled: [
      ...arrive,
      ...tools,
      brief,
      go('p2.butt'),
      ...look('eyes', 'p2.pole'),
      sound('p2'),
      prod('p2'),
      ...wear('belt-1'),
      up('p2', 'below'),
      down,
    ],
    met: { mechanism: 'fall', part: /^p2\.pole$/, unit: 'm', from: 4, to: 9 },
  },
  {
    report: 'FACE 88-47',
    what: 'an arm fails and drops its phases on the worker below',
    scene: 'cracked-arm',
    asReported: [acknowledge, park('clear'), go('p2.butt'), wait(5)],
    controlled: [...arrive, ...look('glass', 'p2.crossarm'), wait(5), handOver],
    met: { mechanism: 'struck-by', part: /^p2\.crossarm$/, unit: 'J', from: 500, to: 10e3 },
  },
  {
    report: 'FACE 86-46',
    what: 'a boom meets 7.2 kV, and the one on the ground at the truck is in the way to earth',
    scene: 'boom-at-the-line',
    asReported: [
      acknowledge,
      park('under-line'),
      send('second', 'p2.road'),
      go('p2.butt'),
      ...wear('belt-1'),
      up('p2', 'work'),
      repair('p2.cutout', 'replace-cutout'),
    ],
    controlled: [
      ...tubeOut,
      ...guard('truck-ground'),
      ...proveAndGround,
      ...upGrounded,
      repair('p2.cutout', 'replace-cutout'),
    ],
    met: { mechanism: 'contact', part: /^second$/, unit: 'V', from: 6500, to: 7900 },
  },
  {
    report: 'FACE 00WA040',
    what: 'signs and a flagger stand, and a car comes through to who works at the road',
    scene: 'car-through-the-cones',
    asReported: [
      acknowledge,
      park('clear'),
      ...guard('cones'),
      go('p1.butt'),
      assign('flagger', 'flag'),
      go('p2.road'),
      wait(5),
    ],
    controlled: [...arrive, ...guard('barrier'), wait(5)],
    met: { mechanism: 'struck-by', part: /^site$/, unit: 'm/s', from: 20, to: 30 },
  },
];
