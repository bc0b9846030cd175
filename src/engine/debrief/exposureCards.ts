/**
 * Exposures as they are told: those of one kind that lacked the same and crossed the same limit stand on one card, each place with
 * its times and the worst that would have reached the person; what stood otherwise at that moment is told beside it.
 */
import type { Replay } from '../acts/types.ts';
import type { Quantity } from '../hazards/types.ts';
import type { JudgedExposure, Score } from '../score/types.ts';
import type { UnitSystem } from '../units/formatQuantity.ts';
import { clockAt } from './clock.ts';
import { quantitiesText } from './quantities.ts';
import type { ExposureCard } from './types.ts';
import { capital, lackingWords, listed, mechanismWords, placeOf } from './words.ts';

const grouped = <T>(all: readonly T[], key: (each: T) => string): readonly (readonly T[])[] => {
  const groups = new Map<string, T[]>();
  for (const each of all) groups.set(key(each), [...(groups.get(key(each)) ?? []), each]);
  return [...groups.values()];
};

/** What of the moment differs from the worst. */
const differing = ({ quantities, now }: JudgedExposure, system: UnitSystem): string => {
  const text = (quantity: Quantity): string => quantitiesText([quantity], system);
  const worst = new Set(quantities.map(text));
  return quantitiesText(
    now.filter((quantity) => !worst.has(text(quantity))),
    system,
  );
};

const distanceOf = ({ quantities }: JudgedExposure): number =>
  quantities.find(({ name }) => name.startsWith('distance'))?.value ?? 0;

const whenWords = (replay: Replay, minutes: readonly number[]): string =>
  listed([...new Set(minutes)].sort((a, b) => a - b).map((minute) => clockAt(replay.start, minute)));

/** One place with its minutes; of several times the nearest. */
const placeLine = (replay: Replay, all: readonly JudgedExposure[], system: UnitSystem): string => {
  const [first] = [...all].sort((a, b) => distanceOf(a) - distanceOf(b));
  if (first === undefined) return '';
  const at = first.part === 'site' ? 'Here' : capital(placeOf(replay.start, first.hazard, first.part));
  const place = `${at} (${whenWords(
    replay,
    all.map(({ minute }) => minute),
  )})`;
  if (first.quantities.length === 0) return `${place}.`;
  const then = differing(first, system);
  return `${place}: ${quantitiesText(first.quantities, system)}${then === '' ? '' : `; as it stood then, ${then}`}.`;
};

const knownWords = ({ causes, known }: JudgedExposure, all: readonly JudgedExposure[]): string => {
  if (causes.length === 0) return 'No fault is needed for it: the work itself brings it.';
  const some = all.length > 1 ? 'all their causes' : causes.length > 1 ? 'all its causes' : 'its cause';
  return known ? `You had perceived signs of ${some} before.` : `You had not perceived signs of ${some} before.`;
};

/** Cards in the order in which the first of each came. */
export const exposureCards = (replay: Replay, { exposures }: Score, system: UnitSystem): readonly ExposureCard[] =>
  grouped(exposures, ({ mechanism, severity, failed, limit, known, causes }) =>
    JSON.stringify([mechanism, severity, failed, limit, known, causes.length > 0]),
  ).flatMap((all): readonly ExposureCard[] => {
    const [first] = all;
    if (first === undefined) return [];
    const places = grouped(all, ({ hazard, part }) => placeOf(replay.start, hazard, part));
    return [
      {
        minute: first.minute,
        count: all.length,
        severity: first.severity,
        title: mechanismWords[first.mechanism],
        lines: [
          ...places.map((each) => placeLine(replay, each, system)),
          ...(first.failed.length > 0 ? [`Missing: ${first.failed.map(lackingWords).join(', ')}.`] : []),
          `Limit: ${first.limit} (${first.source}).`,
          knownWords(first, all),
        ],
      },
    ];
  });
