/** What follows from a solved World: devices that operate one after the other, and what counts as live. */
import { settle } from '../circuit/settle.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import type { Part } from '../world/types.ts';
import { bare, bareWorld } from './bareWorld.ts';
import { asPrinted, checkWriter, relative } from './checkWriter.ts';
import { leastFor } from './leastFor.ts';
import { sources } from './sources.ts';
import type { Check } from './types.ts';

const stepped = 'protection stepped in time';
const manual = checkWriter(stepped, 'published value', sources.opendssRecloser);
const remembered = checkWriter(stepped, 'from memory', 'ANSI C37.42, tables of type K links, from memory');
const byHand = checkWriter(
  stepped,
  'common practice',
  'Ohm’s law; times of the printed curves and waits added by hand',
);
const saved = checkWriter(
  stepped,
  'common practice',
  'the link nearer to the fault clears first, the greater one is saved',
);

const source = (ohms: number, values: Readonly<Record<string, number>> = {}): Part =>
  bare('s', 'system-source', { nets: { line: 'line', neutral: 'earth' }, values: { ohms, reactance: 0, ...values } });
const rod = bare('e', 'ground-rod', { nets: { rod: 'rod' }, values: { ohms: 10 } });
const cutout = (id: string, link: string, top: string, bottom: string): Part =>
  bare(id, 'cutout', { nets: { top, bottom }, state: { position: 'closed', link: 'sound' }, words: { link } });

// 18.779 + 0.02 (contacts) + 0.001 (jumper) + 10 = 28.8 ohm: 250 A of 7200 V, 2.5 times the pick-up.
const reclosing = bareWorld(
  [source(18.779), bare('r', 'recloser', { nets: { source: 'line', load: 'load' }, values: { pickUpA: 100 } }), rod],
  [['r/load', 'e/rod']],
);
const trips = () => settle(reclosing).operations;
const onto = 'recloser of 100 A, 7200 V behind 28.8 ohm: a fault of 250 A that stays';

const recloser: readonly Check[] = [
  byHand({
    id: 'fault',
    quantity: 'current that trips it',
    input: onto,
    ours: () => trips()[0]?.amperes ?? Number.NaN,
    reference: 250,
    unit: 'A',
    tolerance: relative(1e-4),
  }),
  manual({
    id: 'trips',
    quantity: 'trips to lockout',
    input: onto,
    ours: () => trips().length,
    reference: 4,
    unit: '1',
    tolerance: asPrinted,
  }),
  ...[0.5, 2, 2].map((reference, k) =>
    manual({
      id: `wait-${k + 1}`,
      quantity: `time open after trip ${k + 1}`,
      input: onto,
      ours: () => trips()[k]?.closesAfter ?? Number.NaN,
      reference,
      unit: 's',
      tolerance: relative(1e-9),
    }),
  ),
  byHand({
    id: 'lockout',
    quantity: 'time to lockout',
    input: `${onto}; 0.07 + 0.5 + 0.7 + 2 + 0.7 + 2 + 0.7 s`,
    ours: () => trips().reduce((time, { seconds, closesAfter }) => time + seconds + (closesAfter ?? 0), 0),
    reference: 6.67,
    unit: 's',
    tolerance: relative(0.001),
  }),
];

// 191.7437 + 0.02 + 0.001 (link, jumper) + 20 = 211.7647 ohm: 34 A, the most that melts a 10K in 10 s.
const earth20 = bare('e', 'ground-rod', { nets: { rod: 'rod' }, values: { ohms: 20 } });
const fused = bareWorld([source(191.7437), cutout('c', '10K', 'line', 'load'), earth20], [['c/bottom', 'e/rod']]);
const series = bareWorld(
  [source(20), cutout('a', '40K', 'line', 'm'), cutout('b', '10K', 'm', 'load'), rod],
  [['b/bottom', 'e/rod']],
);
const melted = (part: string): number => settle(series).operations.filter((each) => each.part === part).length;

const fuses: readonly Check[] = [
  remembered({
    id: 'fuse-time',
    quantity: 'time until the link has cleared',
    input: '10K, 7200 V behind 211.76 ohm: 34 A, the most that melts it in 10 s, one cycle of arcing',
    ours: () => settle(fused).operations[0]?.seconds ?? Number.NaN,
    reference: 10.016667,
    unit: 's',
    tolerance: relative(0.001),
  }),
  ...(
    [
      ['a', '40K, toward the source', 0],
      ['b', '10K, toward the fault', 1],
    ] as const
  ).map(([part, input, reference]) =>
    saved({
      id: `series-${part}`,
      quantity: 'operations of one of two links in series',
      input,
      ours: () => melted(part),
      reference,
      unit: '1',
      tolerance: { kind: 'absolute', value: 1e-9, because: 'a count; none has no part to be off by' },
    }),
  ),
];

const live = 'what counts as live';
const table = checkWriter(live, 'published value', `${sources.rule269}, Table R-6: begins at 50 V`);
const hazard = checkWriter(live, 'published value', `${sources.rule269}, Appendix C, III.D.1`);

const atCutout = (ohms: number, volts: number) =>
  solveCircuit(bareWorld([source(ohms, { volts }), cutout('c', '10K', 'line', 'load')])).point('c/top');

const liveness: readonly Check[] = [
  table({
    id: 'volts',
    quantity: 'least volts to earth of a point that is live',
    input: 'source of 1 ohm, volts raised from 1 V',
    ours: () => leastFor(1, 1000, (volts) => atCutout(1, volts).live),
    reference: 50,
    unit: 'V',
    tolerance: relative(0.001),
  }),
  hazard({
    id: 'amperes',
    quantity: 'least current through the body of a point that is live',
    input: 'source of 7200 V, its resistance lowered from 1 gigohm',
    ours: () => {
      const weakest = 1 / leastFor(1e-9, 1e-3, (siemens) => atCutout(1 / siemens, 7200).live);
      return 1000 * atCutout(weakest, 7200).throughKilohm;
    },
    reference: 1,
    unit: 'mA',
    tolerance: relative(0.001),
  }),
  hazard({
    id: 'body',
    quantity: 'resistance of the body that is taken',
    input: 'a source of 120 V and 500 ohm: volts by current, less the source',
    ours: () => 120 / atCutout(500, 120).throughKilohm - 500,
    reference: 1000,
    unit: 'ohm',
    tolerance: relative(0.001),
  }),
];

/** Checks of devices that operate in turn, and of what is live. */
export const steppedChecks: readonly Check[] = [...recloser, ...fuses, ...liveness];
