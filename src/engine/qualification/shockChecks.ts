/**
 * Shocks as a scene computes them (hazards/contact.ts over the solved circuit): a source, bare metal and somebody on the
 * ground beside it, their other hand on more metal, a wire on the ground, a device that ends it. What is published are the
 * body's resistance and the thresholds; the scene must give them back. Gloves and tools: barrierChecks.ts.
 */
import { electrodesOf } from '../circuit/localEarth.ts';
import type { Meeting } from '../hazards/meeting.ts';
import { momentOf } from '../hazards/moment.ts';
import { step } from '../hazards/step.ts';
import type { World } from '../world/types.ts';
import { bare, bareWorld } from './bareWorld.ts';
import { asPrinted, checkWriter, relative } from './checkWriter.ts';
import { leastFor } from './leastFor.ts';
import {
  bareHand,
  bodyOhms,
  current,
  first,
  hand,
  metal,
  one,
  reaching,
  SOURCE,
  shocked,
  source,
  table,
  touch,
} from './shockScenes.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const touches: readonly Check[] = (
  [
    [125, 1125],
    [220, 1000],
    [7200, 650],
  ] as const
).map(([volts, reference]) =>
  table('touch')({
    id: `ohms-${volts}`,
    quantity: 'resistance of the body, hand to feet',
    input: `${volts} V behind 3 ohm, bare hand, on the ground`,
    ours: () => bodyOhms(touch(volts), SOURCE),
    reference,
    unit: 'ohm',
    tolerance: relative(0.001),
  }),
);

const legs = (volts: number): World =>
  bareWorld([
    source('s', 'line', volts / 2),
    source('t', 'other', -volts / 2),
    metal('c', 'line'),
    metal('d', 'other'),
  ]);
const handToHand: readonly Check[] = [
  ...(
    [
      [100, 1200],
      [220, 1000],
    ] as const
  ).map(([volts, reference]) =>
    table('hand to hand')({
      id: `ohms-${volts}`,
      quantity: 'resistance of the body, hand to hand',
      input: `${volts} V between two legs of half as much to earth, 3 ohm each`,
      ours: () => bodyOhms(shocked(legs(volts), ['c/top', 'd/top']), 2 * SOURCE),
      reference,
      unit: 'ohm',
      tolerance: relative(0.001),
    }),
  ),
  hand(
    'hand to hand',
    'no current without two voltages: birds on a wire',
  )({
    id: 'one-metal',
    quantity: 'shocks by both hands on one conductor',
    input: '7200 V, aloft, no other metal in reach',
    ours: () => shocked(one(7200), ['c/top', 'c/top'], bareHand, true).length,
    reference: 0,
    unit: '1',
    tolerance: { kind: 'absolute', value: 1e-9, because: 'a count; none has no part to be off by' },
  }),
];

const bands = 'effect bands of a touch';
const dalziel = checkWriter(bands, 'published value', sources.dalziel);
const appendix = checkWriter(bands, 'published value', `${sources.rule269}, Appendix C, III.D.1`);
/** Milliamperes of the weakest touch of 7200 V behind a resistance that is called so. */
const least = (is: (meetings: readonly Meeting[]) => boolean): number => {
  const siemens = leastFor(1e-8, 1e-3, (y) => is(touch(7200, 1 / y)));
  return 1000 * current(touch(7200, 1 / siemens));
};
const reached = [
  appendix({
    id: 'minor',
    quantity: 'least current that is a hazard at all',
    input: '7200 V behind more and more ohms',
    ours: () => least((meetings) => meetings.length > 0),
    reference: 1,
    unit: 'mA',
    tolerance: relative(0.001),
  }),
  dalziel({
    id: 'serious',
    quantity: 'least current that is called serious',
    input: 'the same: what 99.5 % of women let go',
    ours: () => least((meetings) => meetings.some(({ severity }) => severity !== 'minor')),
    reference: 6,
    unit: 'mA',
    tolerance: relative(0.001),
  }),
  dalziel({
    id: 'fatal',
    quantity: 'least current that is called fatal',
    input: 'the same: 116/sqrt(5 s), nothing clears it and nobody lets go',
    ours: () => least((meetings) => meetings.some(({ severity }) => severity === 'fatal')),
    reference: 51.877,
    unit: 'mA',
    tolerance: relative(0.001),
  }),
];

const duration = 'time of a shock';
const trip = checkWriter(duration, 'published value', sources.opendss);
const range = checkWriter(duration, 'published value', sources.dalziel);
/** 7200 V behind 3 ohm and a recloser into 650 ohm of body: 11.03 A. */
const reclosing = (pickUpA: number): World =>
  bareWorld([
    source('s', 'line', 7200),
    bare('r', 'recloser', { nets: { source: 'line', load: 'load' }, values: { pickUpA } }),
    metal('c', 'load'),
  ]);
const lasts = (pickUpA: number): number => first(shocked(reclosing(pickUpA), ['c/top']), 'duration');
const times: readonly Check[] = [
  trip({
    id: 'recloser',
    quantity: 'time until a recloser ends it',
    input: '11.03 A through the body, 2.5 times the pick-up: fast curve',
    ours: () => lasts(7200 / 653.02 / 2.5),
    reference: 0.07,
    unit: 's',
    tolerance: relative(0.001),
  }),
  range({
    id: 'not-cleared',
    quantity: 'longest time that is taken',
    input: 'pick-up of 100 A: 11.03 A trips nothing',
    ours: () => lasts(100),
    reference: 5,
    unit: 's',
    tolerance: asPrinted,
  }),
  range({
    id: 'threshold',
    quantity: 'threshold that the time gives: 116/sqrt(0.07 s)',
    input: 'the recloser’s fast trip',
    ours: () => 1000 * first(shocked(reclosing(7200 / 653.02 / 2.5), ['c/top']), 'fibrillation threshold'),
    reference: 438.44,
    unit: 'mA',
    tolerance: relative(0.001),
  }),
];

const pace = checkWriter('step', 'published value', 'IEEE Std 80-2013, eq. 29: (1000 + 6 rho) 0.116/sqrt(t)');
const surface = hand('step', 'rho I/(2 pi) (1/r - 1/(r + 1)), worked by hand');
/** A wire that hangs from the pole and lies with its end on the ground, so many ohms to earth; somebody beyond that end. */
const paced = (groundOhms: number, beyond: number): readonly Meeting[] => {
  const span = bare('w', 'phase-span', {
    at: [0, 0, 10],
    end: [60, 0, 10],
    nets: { a: 'line', b: 'far' },
    values: { lengthM: 60, sagM: 0.6 },
    words: { conductor: 'Swan' },
  });
  const values = { breakM: 20, groundOhms, credibleGroundOhms: groundOhms };
  const parted = { id: 'parted', kind: 'conductor-broken', side: 'any', to: null, values } as const;
  const world = bareWorld([source('s', 'line', 7200), { ...span, faults: [parted] }]);
  const lies = electrodesOf(world).find(({ element }) => element.endsWith('soil-a'));
  const [x = Number.NaN, y = Number.NaN] = lies?.to ?? [];
  return step({ ...reaching([], bareHand, false), at: [x + beyond, y, 0] }, momentOf(world));
};
const steps: readonly Check[] = [
  pace({
    id: 'least',
    quantity: 'least step voltage that is called fatal',
    input: 'soil of 100 ohm m, 3 s, 50 kg: a wire on the ground, its resistance to earth lowered',
    ours: () => {
      const siemens = leastFor(1e-5, 0.05, (y) => paced(1 / y, 3).length > 0);
      return first(paced(1 / siemens, 3), 'step voltage');
    },
    reference: 107.16,
    unit: 'V',
    tolerance: relative(0.001),
  }),
  ...(
    [
      [3, 31.831],
      [5, 9.5493],
    ] as const
  ).map(([beyond, reference]) =>
    surface({
      id: `pace-${beyond}`,
      quantity: 'step voltage for each 12 A into the ground',
      input: `100 ohm m, one pace nearer than ${beyond} m beyond the end of a wire that lies`,
      ours: () => {
        const found = paced(40, beyond);
        return (12 * first(found, 'step voltage')) / first(found, 'current into the ground');
      },
      reference,
      unit: 'V',
      tolerance: relative(0.001),
    }),
  ),
];

/** Checks of touch, hand to hand, bands, step and time. */
export const shockChecks: readonly Check[] = [...touches, ...handToHand, ...reached, ...steps, ...times];
