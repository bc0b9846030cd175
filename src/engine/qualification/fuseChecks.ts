/** Fuse links by size: against the coarse curve and the rule that were read, and against the table that is remembered. */
import { clearTime, type FuseLink, type LinkSpeed, meltingCurrent, meltTime } from '../standards/fuseLinks.ts';
import { asPrinted, checkWriter, relative } from './checkWriter.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const curve = checkWriter('fuse link', 'published value', sources.opendss);
const rule = checkWriter('fuse link', 'published value', 'notes on a curve sheet for ANSI C37.42-1981 links (a maker)');
const tabled = checkWriter('fuse link', 'from memory', 'ANSI C37.42, tables of type K and T links, from memory');
const clearing = checkWriter(
  'fuse link',
  'from memory',
  'ANSI C37.42, tables of type K and T links, and one cycle of arcing, from memory',
);

/** Multiples of rating, seconds. */
const coarse: Readonly<Record<LinkSpeed, readonly (readonly [number, number])[]>> = {
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

const oneForAll = 'the printed curve is one for all sizes, and coarse: 20 % on current';
const melting = (['K', 'T'] as const).flatMap((speed) =>
  coarse[speed].map(([multiple, seconds]) =>
    curve({
      id: `${speed}-${multiple}`,
      quantity: `least current that melts in ${seconds} s`,
      input: `25${speed}, against ${multiple} times its rating`,
      ours: () => meltingCurrent({ speed, rating: 25 }, seconds),
      reference: 25 * multiple,
      unit: 'A',
      tolerance: relative(0.2, oneForAll),
    }),
  ),
);

/** Largest current at which the link carries for ever, by halving. */
const carried = (link: FuseLink): number => {
  let [low, high] = [link.rating, 3 * link.rating];
  for (let k = 0; k < 50; k++) {
    const middle = (low + high) / 2;
    if (meltTime(link, middle) === Number.POSITIVE_INFINITY) low = middle;
    else high = middle;
  }
  return low;
};

const carriesTwice = (
  [
    ['K', 6],
    ['K', 10],
    ['T', 20],
    ['K', 65],
    ['T', 100],
  ] as const
).map(([speed, rating]) =>
  rule({
    id: `carries-${rating}${speed}`,
    quantity: 'current that it carries, never less than 200 % of its rating',
    input: `${rating}${speed}`,
    ours: () => carried({ speed, rating }) / rating,
    reference: 2,
    unit: '1',
    tolerance: relative(0.041, 'sizes between are a little above 200 %'),
  }),
);

type Remembered = readonly [
  speed: LinkSpeed,
  rating: number,
  least10: number,
  most10: number,
  least01: number,
  most01: number,
];
const remembered: readonly Remembered[] = [
  ['K', 6, 13.5, 20.5, 72, 86],
  ['K', 10, 22.5, 34, 128, 154],
  ['K', 25, 60, 90, 350, 420],
  ['K', 65, 159, 237, 918, 1100],
  ['T', 6, 15.3, 23, 120, 144],
  ['T', 15, 44.5, 67, 388, 466],
  ['T', 40, 120, 178, 1040, 1240],
];
const cells = remembered.flatMap(([speed, rating, ...amperes]) => {
  const link = { speed, rating };
  return ([10, 10, 0.1, 0.1] as const).map((seconds, k) => {
    const current = amperes[k] ?? 0;
    const least = k % 2 === 0;
    return (least ? tabled : clearing)({
      id: `${rating}${speed}-${least ? 'melts' : 'clears'}-${seconds}`,
      quantity: least ? 'shortest melting time' : 'longest clearing time',
      input: `${rating}${speed} at ${current} A`,
      ours: () => (least ? meltTime(link, current) : clearTime(link, current)),
      reference: least ? seconds : seconds + 1 / 60,
      unit: 's',
      tolerance: least ? asPrinted : relative(1e-9),
    });
  });
});

const ratios = [
  tabled({
    id: 'speed-ratio-k',
    quantity: 'speed ratio: least current of 0.1 s over that of 300 s',
    input: '25K',
    ours: () => meltingCurrent({ speed: 'K', rating: 25 }, 0.1) / meltingCurrent({ speed: 'K', rating: 25 }, 300),
    reference: 7,
    unit: '1',
    tolerance: relative(0.01),
  }),
  tabled({
    id: 'speed-ratio-t',
    quantity: 'speed ratio: least current of 0.1 s over that of 300 s',
    input: '25T',
    ours: () => meltingCurrent({ speed: 'T', rating: 25 }, 0.1) / meltingCurrent({ speed: 'T', rating: 25 }, 300),
    reference: 12.7,
    unit: '1',
    tolerance: relative(0.01),
  }),
];

const secondHand = checkWriter(
  'fuse link',
  'independent program',
  'a public program for coordination studies, speed ratios after ANSI C37.42, second hand',
);
/** Speed ratio: least amperes of 0.1 s over those of the long time, 300 s, above 100 A 600 s. */
const ends = (
  [
    ['K', 6, 6],
    ['K', 200, 8.1],
    ['T', 6, 10],
    ['T', 200, 13],
  ] as const
).map(([speed, rating, reference]) =>
  secondHand({
    id: `speed-ratio-${rating}${speed}`,
    quantity: 'speed ratio',
    input: `${rating}${speed}`,
    ours: () => meltingCurrent({ speed, rating }, 0.1) / meltingCurrent({ speed, rating }, rating > 100 ? 600 : 300),
    reference,
    unit: '1',
    tolerance: relative(0.01),
  }),
);

/** Checks of fuse links. */
export const fuseChecks: readonly Check[] = [...melting, ...carriesTwice, ...cells, ...ratios, ...ends];
