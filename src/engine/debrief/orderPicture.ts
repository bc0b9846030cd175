/**
 * Exposures against knowledge, as data for a picture: a lane a cause with the minute when a sign of it was first perceived, when it
 * was called, and when an act first came near its hazards; above them when hands first went on something and briefings were held.
 */
import type { Replay } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import { type Laid, laidIn, perceived } from '../score/known.ts';
import { firstHandsOn } from '../score/order.ts';
import type { Score } from '../score/types.ts';
import { clockFrom } from './clock.ts';
import type { OrderLane, OrderPicture } from './types.ts';
import { capital, nameOf } from './words.ts';

/** Step after which a sign of it had been perceived; -1 if never. What is once perceived stays so. */
const firstPerceived = (replay: Replay, laid: Laid): number => {
  if (!perceived(replay.end, replay, laid)) return -1;
  let [low, high] = [0, replay.steps.length - 1];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const step = replay.steps[middle];
    if (step !== undefined && perceived(step.after, replay, laid)) high = middle;
    else low = middle + 1;
  }
  return low;
};

const laneOf = (replay: Replay, score: Score, laid: Laid): OrderLane => {
  const { id, kind } = laid.fault;
  const cause = score.causes.find((each) => each.cause === id);
  const met = score.precedence.find((each) => each.cause === id);
  const step = firstPerceived(replay, laid);
  return {
    cause: id,
    title: capital(faultKind(kind).name),
    part: nameOf(replay.start, laid.on),
    perceived: replay.steps[step]?.after.clock.minute ?? null,
    called: cause?.minute ?? null,
    met: met?.minute ?? null,
    metStep: met?.step ?? null,
    known: met?.known ?? true,
    exposures: score.exposures
      .filter(({ causes }) => causes.includes(id))
      .map(({ minute, potentiallyFatal, step: at }) => ({ minute, step: at, fatal: potentiallyFatal })),
  };
};

/** Lanes worst first, in the order of the hazard cards. */
export const orderPicture = (replay: Replay, score: Score): OrderPicture => {
  const laid = laidIn(replay.start);
  const lanes = [...score.causes]
    .sort((a, b) => b.weight - a.weight || (a.cause < b.cause ? -1 : 1))
    .flatMap(({ cause }) => laid.filter(({ fault }) => fault.id === cause).slice(0, 1))
    .map((each) => laneOf(replay, score, each));
  return {
    call: replay.start.given.call.time,
    minutes: Math.max(1, replay.end.clock.minute),
    handsOn: replay.steps[firstHandsOn(replay)]?.before.clock.minute ?? null,
    briefings: replay.end.paper.briefings.map(({ minute }) => minute),
    lanes,
  };
};

const at = (words: string, call: string, minute: number | null): readonly string[] =>
  minute === null ? [] : [`${words} ${clockFrom(call, minute)}`];

/** A lane in words, one sentence. */
export const laneWords = ({ title, part, perceived, called, met, known }: OrderLane, call: string): string => {
  const told = [
    ...at('sign perceived', call, perceived),
    ...at('called', call, called),
    ...at(known ? 'work came near' : 'work came near, not yet known,', call, met),
  ];
  return `${title} (${part}): ${told.length === 0 ? 'never perceived, never met' : told.join(', ')}.`;
};
