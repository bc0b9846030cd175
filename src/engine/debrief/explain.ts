/** Score and replay as a debrief: verdict and reasons, what went well, the one thing to take along, then all there is to explore. */
import type { Replay } from '../acts/types.ts';
import { controlKind } from '../catalogue/controls.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { JudgedExposure, Score } from '../score/types.ts';
import type { UnitSystem } from '../units/formatQuantity.ts';
import { briefingLines } from './briefing.ts';
import { caution } from './caution.ts';
import { clockAt } from './clock.ts';
import { exposureCards } from './exposureCards.ts';
import { hazardCards } from './hazardCards.ts';
import { jobLines } from './jobSteps.ts';
import { numbersOf } from './numbers.ts';
import { orderPicture } from './orderPicture.ts';
import { quantitiesText } from './quantities.ts';
import { timelineOf } from './timeline.ts';
import type { Debrief, HazardCard } from './types.ts';
import { capital, metWords, nameOf, placeOf, sentence } from './words.ts';

const verdictWords: Readonly<Record<Score['verdict'], string>> = {
  pass: 'Passed',
  remarks: 'Passed with remarks',
  fail: 'Not passed',
};

const controlWords = (id: string): string => {
  const { name } = controlKind(id);
  return name.slice(0, 1).toLowerCase() + name.slice(1);
};

const didWell = (score: Score): readonly string[] => {
  const found = score.causes.filter((cause) => cause.found);
  const held = score.controls.filter(({ worked, planned }) => worked && planned);
  const isWorked = score.controls.some(({ worked }) => worked);
  const left = score.lookAlikes.filter(({ called, perceived }) => !called && perceived);
  const [all, some] = [score.causes.length, found.length];
  return [
    ...(some > 0
      ? [
          `You found ${all === 1 ? 'the one cause' : `${some < all ? `${some} of ${all}` : all === 2 ? 'both' : `all ${all}`} causes`} of hazards.`,
        ]
      : []),
    ...(held.length > 0
      ? [`Held as planned: ${[...new Set(held.map(({ control }) => controlWords(control)))].join('; ')}.`]
      : []),
    ...(score.exposures.length === 0 && (isWorked || score.end === 'handed-over')
      ? ['Nobody came in reach of a hazard that was not controlled.']
      : []),
    ...(some > 0 && score.lookAlikes.length > 0 && left.length === score.lookAlikes.length
      ? ['You let be what only looked wrong.']
      : []),
    ...(score.end === 'handed-over' && score.verdict === 'pass' ? ['You knew when to stop.'] : []),
  ];
};

const happenedWords = (
  replay: Replay,
  { hazard, mechanism, part, minute, quantities }: JudgedExposure,
  system: UnitSystem,
): string => {
  const numbers = quantities.length === 0 ? '' : ` (${quantitiesText(quantities, system)})`;
  return `At ${clockAt(replay.start, minute)}: ${metWords(mechanism, placeOf(replay.start, hazard, part))}${numbers}.`;
};

/** Worst first: what could have killed, then what came first. */
const worstExposure = ({ exposures }: Score): JudgedExposure | undefined =>
  [...exposures].sort((a, b) => Number(b.potentiallyFatal) - Number(a.potentiallyFatal))[0];

const lookAgain = ({ title, part, couldBeSeen: [place] }: HazardCard): string =>
  `Look again for this: ${title} (${part}).${place === undefined ? '' : ` ${/[.!?]”$/.test(place) ? place : `${place}.`}`}`;

const takeAlong = (replay: Replay, score: Score, cards: readonly HazardCard[], system: UnitSystem): string => {
  const worst = worstExposure(score);
  if (worst !== undefined) {
    const cause = score.causes.find(({ cause: id }) => worst.causes.includes(id));
    const happened = happenedWords(replay, worst, system);
    return cause === undefined ? happened : `${happened} ${faultKind(cause.kind).harm}`;
  }
  const missed = cards.find(({ found }) => !found);
  if (missed !== undefined) return lookAgain(missed);
  return 'Survey first, keep every source apart, test, ground, and only then work.';
};

const leftWords = ({ called, perceived }: Score['lookAlikes'][number]): string => {
  if (called) return 'you called something that was not there';
  return perceived ? 'you let it be' : 'you did not come upon it';
};

const lookAlikeLine = (replay: Replay, each: Score['lookAlikes'][number]): string =>
  `${capital(faultKind(each.kind).name)} (${nameOf(replay.start, each.on)}): ${leftWords(each)}. ${sentence(each.tellApart)}`;

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
    exposures: exposureCards(replay, score, system),
    lookAlikes: score.lookAlikes.map((each) => lookAlikeLine(replay, each)),
    order: orderPicture(replay, score),
    briefing: briefingLines(replay, score),
    job: jobLines(replay),
    parts: score.parts.map(({ name, value, says }) => ({
      name,
      value,
      says: name === 'recognition' && score.confidence !== null ? [...says, ...score.confidence.says] : says,
    })),
    numbers: numbersOf(score),
    judgedBy: judgedBy(score),
    caution,
  };
};
