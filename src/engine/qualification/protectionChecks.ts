/** Breakers, reclosers: times as printed, and what a sequence adds up to. */
import { tripTime } from '../standards/breaker.ts';
import {
  lockoutTime,
  type RecloserCurve,
  recloserSequence,
  recloserTrip,
  timeFed,
  usualSequence,
} from '../standards/recloser.ts';
import { asPrinted, checkWriter, relative } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const ul489 = checkWriter(
  'breaker',
  'published value',
  'UL 489 calibration, published UL 489 / UL 1077 comparison table',
);
const ab4 = checkWriter('breaker', 'from memory', 'NEMA AB 4 maximum trip times, from memory');
const recloser = checkWriter('recloser', 'published value', sources.opendss);
const sequence = checkWriter('recloser', 'published value', sources.opendssRecloser);
const summed = checkWriter('recloser', 'common practice', 'times of the printed curves and waits added by hand');

/** Multiples, seconds. */
type Points = readonly (readonly [number, number])[];

const breakers = [
  ...(
    [
      [20, 1.35, 3600],
      [50, 1.35, 3600],
      [20, 2, 120],
      [30, 2, 120],
    ] as const
  ).map(([rating, multiple, reference]) =>
    ul489({
      id: `${rating}-${multiple}`,
      quantity: 'latest trip',
      input: `${rating} A breaker at ${multiple} times rating`,
      ours: () => tripTime(rating, rating * multiple),
      reference,
      unit: 's',
      tolerance: relative(1e-9),
    }),
  ),
  ...(
    [
      [20, 50],
      [50, 80],
      [100, 140],
    ] as const
  ).map(([rating, reference]) =>
    ab4({
      id: `${rating}-3`,
      quantity: 'latest trip',
      input: `${rating} A breaker at 3 times rating`,
      ours: () => tripTime(rating, rating * 3),
      reference,
      unit: 's',
      tolerance: relative(1e-9),
    }),
  ),
];

const curves: Readonly<Record<RecloserCurve, Points>> = {
  fast: [
    [1, 0.15],
    [2.5, 0.07],
    [4.5, 0.05],
    [8, 0.045],
    [14, 0.045],
  ],
  slow: [
    [1, 6],
    [2.5, 0.7],
    [4.5, 0.2],
    [8, 0.06],
    [14, 0.02],
  ],
};
const trips = (['fast', 'slow'] as const).flatMap((name) =>
  curves[name].map(([multiple, reference]) =>
    recloser({
      id: `${name}-${multiple}`,
      quantity: `trip on the ${name} curve`,
      input: `${multiple} times a pick-up of 100 A`,
      ours: () => recloserTrip(name, 100, 100 * multiple),
      reference,
      unit: 's',
      tolerance: relative(1e-9),
    }),
  ),
);

const shots = () => recloserSequence({ ...usualSequence, pickUp: 100 }, 250);
const sequences = [
  sequence({
    id: 'shots',
    quantity: 'trips to lockout',
    input: 'usual sequence, 250 A at a pick-up of 100 A',
    ours: () => shots().length,
    reference: 4,
    unit: '1',
    tolerance: asPrinted,
  }),
  ...[0.5, 2, 2].map((reference, k) =>
    sequence({
      id: `wait-${k + 1}`,
      quantity: `wait after trip ${k + 1}`,
      input: 'the same',
      ours: () => (shots()[k]?.closesAgain ?? Number.NaN) - (shots()[k]?.trips ?? Number.NaN),
      reference,
      unit: 's',
      tolerance: relative(1e-9),
    }),
  ),
  summed({
    id: 'lockout',
    quantity: 'time to lockout',
    input: 'the same: 0.07 + 0.5 + 0.7 + 2 + 0.7 + 2 + 0.7 s',
    ours: () => lockoutTime(shots()) ?? Number.NaN,
    reference: 6.67,
    unit: 's',
    tolerance: relative(1e-9),
  }),
  summed({
    id: 'fed',
    quantity: 'time that the fault is fed',
    input: 'the same: 0.07 + 3 times 0.7 s',
    ours: () => timeFed(shots()),
    reference: 2.17,
    unit: 's',
    tolerance: relative(1e-9),
  }),
];

/** Checks of protection. */
export const protectionChecks: readonly Check[] = [...breakers, ...trips, ...sequences];
