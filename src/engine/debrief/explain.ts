/** Score and replay as a debrief: verdict and reasons, what went well, the one thing to take along, then all there is to explore. */
import type { Replay } from '../acts/types.ts';
import type { JudgedExposure, Score } from '../score/types.ts';
import type { UnitSystem } from '../units/formatQuantity.ts';
import { formatNumber } from '../units/formatQuantity.ts';
import { caution } from './caution.ts';
import { hazardCards, nameOf } from './hazardCards.ts';
import { quantitiesText } from './quantities.ts';
import { timelineOf } from './timeline.ts';
import type { Debrief } from './types.ts';

const verdictWords: Readonly<Record<Score['verdict'], string>> = {
  pass: 'Passed',
  remarks: 'Passed with remarks',
  fail: 'Not passed',
};

const didWell = (score: Score): readonly string[] => {
  const found = score.causes.filter((cause) => cause.found);
  const held = score.controls.filter(({ worked, planned }) => worked && planned);
  const left = score.lookAlikes.filter(({ called }) => !called);
  return [
    ...(found.length > 0 ? [`You found ${found.length} of ${score.causes.length} causes.`] : []),
    ...(held.length > 0 ? [`${held.length} control${held.length === 1 ? '' : 's'} that you had planned held.`] : []),
    ...(score.exposures.length === 0 ? ['Nobody came in reach of a hazard that was not controlled.'] : []),
    ...(score.lookAlikes.length > 0 && left.length === score.lookAlikes.length
      ? ['You left alone what only looked wrong.']
      : []),
    ...(score.end === 'handed-over' ? ['You knew when to stop.'] : []),
  ];
};

const takeAlong = (replay: Replay, score: Score, system: UnitSystem): string => {
  const worst = [...score.exposures].sort((a, b) => Number(b.potentiallyFatal) - Number(a.potentiallyFatal))[0];
  if (worst !== undefined)
    return `At minute ${worst.minute}: ${exposureTitle(replay, worst)} (${quantitiesText(worst.quantities, system)}).`;
  const missed = hazardCards(replay, score, system).find(({ found }) => !found);
  if (missed !== undefined) {
    return `${missed.title}, ${missed.part}: ${missed.when} ${missed.couldBeSeen[0] ?? ''}`.trim();
  }
  return 'Survey first, control each source, test, ground, and only then work. You did.';
};

const exposureTitle = (replay: Replay, { mechanism, part }: JudgedExposure): string => {
  const words: Readonly<Record<JudgedExposure['mechanism'], string>> = {
    contact: 'current through the body',
    approach: 'inside the minimum approach distance',
    flash: 'electric arc',
    drop: 'conductor that can come down',
    fall: 'fall from height',
    'struck-by': 'struck by something moving',
    'barrier-loss': 'a barrier that does not hold',
  };
  return `${words[mechanism]}, ${nameOf(replay.start, part)}`;
};

const exposureLines = (exposure: JudgedExposure, system: UnitSystem): readonly string[] => [
  `Credible worst: ${quantitiesText(exposure.quantities, system)}.`,
  ...(exposure.now.length > 0 ? [`As it stood then: ${quantitiesText(exposure.now, system)}.`] : []),
  ...(exposure.failed.length > 0
    ? [`Missing: ${exposure.failed.map((id) => id.replaceAll('-', ' ')).join(', ')}.`]
    : []),
  `Limit: ${exposure.limit} (${exposure.source}).`,
  exposure.known ? 'You knew of its cause before.' : 'You did not know of all its causes before.',
];

const numbersOf = (score: Score): readonly string[] =>
  score.parts.flatMap(({ name, numbers }) =>
    Object.entries(numbers).map(
      ([label, value]) =>
        `${name}: ${label.replace(/([A-Z])/g, ' $1').toLowerCase()} ${value === null ? 'none' : formatNumber(value)}`,
    ),
  );

/** The debrief of a scored replay, in the trainee's system of units. */
export const explain = (replay: Replay, score: Score, system: UnitSystem = 'us'): Debrief => ({
  title: replay.start.given.title,
  verdict: score.verdict,
  verdictWords: verdictWords[score.verdict],
  reasons: score.reasons.slice(0, 3),
  didWell: didWell(score),
  takeAlong: takeAlong(replay, score, system),
  timeline: timelineOf(replay, score),
  hazards: hazardCards(replay, score, system),
  exposures: score.exposures.map((exposure) => ({
    minute: exposure.minute,
    severity: exposure.severity,
    title: exposureTitle(replay, exposure),
    lines: exposureLines(exposure, system),
  })),
  lookAlikes: score.lookAlikes.map(
    ({ on, called, tellApart }) =>
      `${nameOf(replay.start, on)}: ${called ? 'you called something on it that was not there' : 'you let it be'}. ${tellApart}`,
  ),
  parts: score.parts.map(({ name, value, says }) => ({ name, value, says })),
  numbers: numbersOf(score),
  caution,
});
