/** Score and replay as a debrief: verdict and reasons, what went well, the one thing to take along, then all there is to explore. */
import type { Replay } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { JudgedExposure, Score } from '../score/types.ts';
import type { UnitSystem } from '../units/formatQuantity.ts';
import { briefingLines } from './briefing.ts';
import { caution } from './caution.ts';
import { hazardCards } from './hazardCards.ts';
import { jobLines } from './jobSteps.ts';
import { confidenceLines, numbersOf } from './numbers.ts';
import { orderPicture } from './orderPicture.ts';
import { quantitiesText } from './quantities.ts';
import { timelineOf } from './timeline.ts';
import type { Debrief, HazardCard } from './types.ts';
import { capital, lackingWords, mechanismWords, nameOf, placeOf, sentence } from './words.ts';

const verdictWords: Readonly<Record<Score['verdict'], string>> = {
  pass: 'Passed',
  remarks: 'Passed with remarks',
  fail: 'Not passed',
};

const didWell = (score: Score): readonly string[] => {
  const found = score.causes.filter((cause) => cause.found);
  const held = score.controls.filter(({ worked, planned }) => worked && planned);
  const isWorked = score.controls.some(({ worked }) => worked);
  const left = score.lookAlikes.filter(({ called }) => !called);
  const [all, some] = [score.causes.length, found.length];
  return [
    ...(some > 0
      ? [
          `You found ${all === 1 ? 'the one cause' : `${some === all ? `all ${all}` : `${some} of ${all}`} causes`} of hazards.`,
        ]
      : []),
    ...(held.length > 0 ? [`${held.length === 1 ? 'One control' : `${held.length} controls`} held as planned.`] : []),
    ...(score.exposures.length === 0 && (isWorked || score.end === 'handed-over')
      ? ['Nobody came in reach of a hazard that was not controlled.']
      : []),
    ...(some > 0 && score.lookAlikes.length > 0 && left.length === score.lookAlikes.length
      ? ['You let be what only looked wrong.']
      : []),
    ...(score.end === 'handed-over' && score.verdict === 'pass' ? ['You knew when to stop.'] : []),
  ];
};

const exposureTitle = (replay: Replay, { hazard, mechanism, part }: JudgedExposure): string =>
  `${mechanismWords[mechanism]}, ${placeOf(replay.start, hazard, part)}`;

/** Worst first: what could have killed, then what came first. */
const worstExposure = ({ exposures }: Score): JudgedExposure | undefined =>
  [...exposures].sort((a, b) => Number(b.potentiallyFatal) - Number(a.potentiallyFatal))[0];

const lookAgain = ({ title, part, couldBeSeen: [place] }: HazardCard): string =>
  `Look again for this: ${title} (${part}).${place === undefined ? '' : ` ${/[.!?]”$/.test(place) ? place : `${place}.`}`}`;

const takeAlong = (replay: Replay, score: Score, cards: readonly HazardCard[], system: UnitSystem): string => {
  const worst = worstExposure(score);
  if (worst !== undefined) {
    const cause = score.causes.find(({ cause: id }) => worst.causes.includes(id));
    const happened = `At minute ${worst.minute}: ${exposureTitle(replay, worst)} (${quantitiesText(worst.quantities, system)}).`;
    return cause === undefined ? happened : `${happened} ${faultKind(cause.kind).harm}`;
  }
  const missed = cards.find(({ found }) => !found);
  if (missed !== undefined) return lookAgain(missed);
  return 'Survey first, keep every source apart, test, ground, and only then work.';
};

const knownWords = ({ causes, known }: JudgedExposure): string => {
  if (causes.length === 0) return 'No fault is needed for it: the work itself brings it.';
  return known
    ? 'You had perceived signs of its causes before.'
    : 'You had not perceived signs of all its causes before.';
};

const exposureLines = (exposure: JudgedExposure, system: UnitSystem): readonly string[] => [
  ...(exposure.quantities.length > 0 ? [`Credible worst: ${quantitiesText(exposure.quantities, system)}.`] : []),
  ...(exposure.now.length > 0 ? [`As it stood then: ${quantitiesText(exposure.now, system)}.`] : []),
  ...(exposure.failed.length > 0 ? [`Missing: ${exposure.failed.map(lackingWords).join(', ')}.`] : []),
  `Limit: ${exposure.limit} (${exposure.source}).`,
  knownWords(exposure),
];

const lookAlikeLine = (replay: Replay, { kind, on, called, tellApart }: Score['lookAlikes'][number]): string =>
  `${capital(faultKind(kind).name)} (${nameOf(replay.start, on)}): ${called ? 'you called something that was not there' : 'you let it be'}. ${sentence(tellApart)}`;

const judgedBy = ({ weights }: Score): string => {
  const changed = Object.entries(weights.changed).map(([id, value]) => `${id.replaceAll('-', ' ')} ${value}`);
  if (weights.name === 'usual') return 'Judged by the usual weights.';
  return `Judged by the weights \u201c${weights.name}\u201d${changed.length === 0 ? ', which are the usual ones' : `: ${changed.join(', ')}`}.`;
};

/** The debrief of a scored replay, in the trainee's system of units. */
export const explain = (replay: Replay, score: Score, system: UnitSystem = 'us'): Debrief => {
  const hazards = hazardCards(replay, score, system);
  return {
    title: replay.start.given.title,
    verdict: score.verdict,
    verdictWords: verdictWords[score.verdict],
    reasons: score.reasons.slice(0, 3),
    didWell: didWell(score),
    takeAlong: takeAlong(replay, score, hazards, system),
    timeline: timelineOf(replay, score),
    hazards,
    exposures: score.exposures.map((exposure) => ({
      minute: exposure.minute,
      severity: exposure.severity,
      title: exposureTitle(replay, exposure),
      lines: exposureLines(exposure, system),
    })),
    lookAlikes: score.lookAlikes.map((each) => lookAlikeLine(replay, each)),
    order: orderPicture(replay, score),
    briefing: briefingLines(replay, score),
    job: jobLines(replay),
    parts: score.parts.map(({ name, value, says }) => ({
      name,
      value,
      says: name === 'recognition' && score.confidence !== null ? [...says, ...score.confidence.says] : says,
    })),
    numbers: [...numbersOf(score.parts), ...confidenceLines(score)],
    judgedBy: judgedBy(score),
    caution,
  };
};
