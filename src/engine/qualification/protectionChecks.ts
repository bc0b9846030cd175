/** Fuse links, breakers, reclosers: times as printed, and what a sequence adds up to. */
import { tripTime } from '../standards/breaker.ts';
import { clearTime, type LinkSpeed, meltTime } from '../standards/fuseLinks.ts';
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

const curve = checkWriter('fuse link', 'published value', sources.opendss);
const tabled = checkWriter('fuse link', 'from memory', 'ANSI C37.42 melting currents of K links, from memory');
const clearing = checkWriter(
  'fuse link',
  'common practice',
  'minimum melt at 1/1.2 of the current and one cycle of arcing',
);
const ul489 = checkWriter(
  'breaker',
  'published value',
  'UL 489 calibration, published UL 489 / UL 1077 comparison table',
);
const ab4 = checkWriter('breaker', 'from memory', 'NEMA AB 4 maximum trip times, from memory');
const recloser = checkWriter('recloser', 'published value', sources.opendss);
const sequence = checkWriter('recloser', 'published value', sources.opendssRecloser);
const summed = checkWriter('recloser', 'common practice', 'times of the printed curves and waits added by hand');

/** Multiples of rating, seconds. */
type Points = readonly (readonly [number, number])[];
const links: Readonly<Record<LinkSpeed, Points>> = {
  K: [
    [2, 300],
    [2.2, 20],
    [3, 4],
    [4, 1.3],
    [6, 0.41],
    [30, 0.02],
  ],
  T: [
    [2, 300],
    [2.1, 100],
    [3, 10.1],
    [4, 4],
    [6, 1.4],
    [22, 0.1],
    [50, 0.02],
  ],
};
const melting = (['K', 'T'] as const).flatMap((speed) =>
  links[speed].map(([multiple, reference]) =>
    curve({
      id: `${speed}-${multiple}`,
      quantity: `shortest melting time, type ${speed}`,
      input: `${multiple} times the rating of a 10 A link`,
      ours: () => meltTime({ speed, rating: 10 }, 10 * multiple),
      reference,
      unit: 's',
      tolerance: relative(1e-9),
    }),
  ),
);

// Coarse curve for all sizes: at 0.1 s it wants 12.7 times rating, the table about 14.
const coarse = 'one coarse curve stands for all sizes: 10 % on current';
const remembered = (
  [
    [15, 215],
    [25, 350],
  ] as const
).map(([rating, amperes]) =>
  tabled({
    id: `k-table-${rating}`,
    quantity: 'current that melts in 0.1 s',
    input: `${rating}K`,
    ours: () => {
      let low = rating * 6;
      let high = rating * 30;
      for (let k = 0; k < 50; k++) {
        const middle = (low + high) / 2;
        if (meltTime({ speed: 'K', rating }, middle) > 0.1) low = middle;
        else high = middle;
      }
      return low;
    },
    reference: amperes,
    unit: 'A',
    tolerance: relative(0.12, coarse),
  }),
);

const total = clearing({
  id: 'clear-10k',
  quantity: 'longest clearing time',
  input: '10K at 36 A: melts as at 30 A in 4 s, one cycle of arcing',
  ours: () => clearTime({ speed: 'K', rating: 10 }, 36),
  reference: 4.016667,
  unit: 's',
  tolerance: relative(1e-6),
});

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
export const protectionChecks: readonly Check[] = [
  ...melting,
  ...remembered,
  total,
  ...breakers,
  ...trips,
  ...sequences,
];
