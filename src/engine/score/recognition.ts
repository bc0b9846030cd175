/**
 * Recognition: causes found, weighted by severity, against false calls. Sensitivity and bias by signal detection with the
 * log-linear correction (standards/signalDetection.ts), Wilson intervals beside the rates, counts always. Calling everything
 * gains nothing: the share of calls that were right multiplies what was found.
 */

import { everyoneClearTest } from '../acts/everyoneClear.ts';
import type { Replay } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Severity } from '../catalogue/types.ts';
import type { Hazard } from '../hazards/types.ts';
import { detection } from '../standards/signalDetection.ts';
import { rateInterval } from '../standards/wilson.ts';
import { findPart } from '../world/edit.ts';
import { type Laid, perceivableFrom, perceived, premisesOf } from './known.ts';
import type { JudgedCause, JudgedFinding, JudgedLookAlike, Part } from './types.ts';
import type { Weights } from './weights.ts';

/** Each cause: found or missed, and from where it could have been perceived. */
export const judgeCauses = (
  replay: Replay,
  causes: readonly Laid[],
  findings: readonly JudgedFinding[],
  hazards: readonly Hazard[],
  { values }: Weights,
): readonly JudgedCause[] => {
  const vantages = perceivableFrom(replay.start);
  return causes.map((laid) => {
    const mine = hazards.filter(({ causes: ids }) => ids.includes(laid.fault.id));
    const severity = worstOf(mine, laid);
    const hit = findings.find(({ outcome, cause }) => outcome === 'hit' && cause === laid.fault.id);
    const missedBy = hit === undefined ? howMissed(replay, laid) : null;
    return {
      cause: laid.fault.id,
      kind: laid.fault.kind,
      on: laid.on,
      severity,
      weight: values[`miss-${severity}`],
      found: hit !== undefined,
      minute: hit?.minute ?? null,
      lookedNotCalled: missedBy === 'perceived',
      missedBy,
      perceivableFrom: vantages(laid),
      hazards: mine.map(({ id }) => id),
    };
  });
};

const severities: readonly Severity[] = ['fatal', 'serious', 'minor', 'damage'];

/** The worst that it does here, not what its kind does elsewhere. */
const worstOf = (mine: readonly Hazard[], { fault }: Laid): Severity =>
  severities.find((each) => mine.some(({ severity }) => severity === each)) ?? faultKind(fault.kind).severity;

/** Looking is not finding: a sign perceived and not called, a look from where none could be told, no look at all. */
const howMissed = (replay: Replay, laid: Laid): NonNullable<JudgedCause['missedBy']> => {
  if (perceived(replay.end, replay, laid)) return 'perceived';
  const { looks, tests } = replay.end.knowledge;
  const isLooked =
    looks.some(({ part }) => part === laid.on) ||
    tests.some(({ on, test }) => on === laid.on && test !== everyoneClearTest);
  return isLooked ? 'looked-in-vain' : 'never-looked';
};

/** Its sign was perceived; one that shows by its state alone was looked at. */
const isCameUpon = (replay: Replay, laid: Laid): boolean => {
  const { looks } = replay.end.knowledge;
  const isShown = faultKind(laid.fault.kind).signs.length === 0 && looks.some(({ part }) => part === laid.on);
  return isShown || perceived(replay.end, replay, laid);
};

/** Each look-alike: left alone, or something else called on it or, at a customer's, on those premises. */
export const judgeLookAlikes = (
  replay: Replay,
  lookAlikes: readonly Laid[],
  findings: readonly JudgedFinding[],
): readonly JudgedLookAlike[] =>
  lookAlikes.map((laid) => {
    const { on, fault } = laid;
    const premises = premisesOf(replay.start, laid);
    const isThere = (id: string): boolean =>
      id === on || (premises !== null && findPart(replay.start, id)?.premises === premises);
    return {
      lookAlike: fault.id,
      kind: fault.kind,
      on,
      called: findings.some((finding) => finding.outcome === 'false-call' && isThere(finding.on)),
      perceived: isCameUpon(replay, laid),
      tellApart: faultKind(fault.kind).tellApart,
    };
  });

/** The part of the score. Where nothing is wrong it is lost by what is called all the same: half by one, two thirds by two. */
export const recognitionPart = (
  causes: readonly JudgedCause[],
  lookAlikes: readonly JudgedLookAlike[],
  findings: readonly JudgedFinding[],
): Part => {
  const hits = causes.filter(({ found }) => found).length;
  const falseCalls = findings.filter(({ outcome }) => outcome === 'false-call').length;
  const called = lookAlikes.filter((each) => each.called).length;
  const all = causes.reduce((sum, { weight }) => sum + weight, 0);
  const found = causes.reduce((sum, cause) => sum + (cause.found ? cause.weight : 0), 0);
  const right = hits + falseCalls === 0 ? 1 : hits / (hits + falseCalls);
  const indices = detection({ hits, signals: causes.length, falseCalls: called, noise: lookAlikes.length });
  const [hitLow, hitHigh] = rateInterval(hits, causes.length);
  const [falseLow, falseHigh] = rateInterval(called, lookAlikes.length);
  const missedBy = (how: JudgedCause['missedBy']): number => causes.filter((cause) => cause.missedBy === how).length;
  const missed = causes.filter((cause) => !cause.found);
  const fatal = missed.filter(({ severity }) => severity === 'fatal').length;
  return {
    name: 'recognition',
    value: all === 0 ? 1 / (1 + falseCalls) : (found / all) * right,
    numbers: {
      hits,
      misses: missed.length,
      missesFatal: fatal,
      missesOther: missed.length - fatal,
      falseCalls,
      lookAlikes: lookAlikes.length,
      lookAlikesCalled: called,
      lookAlikesLetBe: lookAlikes.length - called,
      lookAlikesNotMet: lookAlikes.filter((each) => !each.called && !each.perceived).length,
      strayCalls: Math.max(0, falseCalls - called),
      hitRateLow: hitLow,
      hitRateHigh: hitHigh,
      falseCallRateLow: falseLow,
      falseCallRateHigh: falseHigh,
      sensitivity: indices.sensitivity,
      criterion: indices.criterion,
      lookedNotCalled: missedBy('perceived'),
      lookedInVain: missedBy('looked-in-vain'),
      neverLooked: missedBy('never-looked'),
    },
    says: [
      foundWords(hits, causes.length, falseCalls),
      ...(causes.length > hits ? [missedWords(missedBy)] : []),
      ...lookAlikeWords(called, lookAlikes),
    ],
  };
};

const foundWords = (hits: number, causes: number, falseCalls: number): string => {
  const some =
    hits === causes ? (causes === 2 ? 'both' : `all ${causes}`) : `${hits === 0 ? 'none' : hits} of ${causes}`;
  const one = hits === 1 ? 'found' : 'did not find';
  const found = causes === 1 ? `${one} the one cause` : `found ${some} causes`;
  const wrong =
    falseCalls === 0
      ? 'called nothing that was not there'
      : `made ${falseCalls} call${falseCalls === 1 ? '' : 's'} of something that was not there`;
  return causes === 0 ? `Nothing was wrong here; you ${wrong}.` : `You ${found} of hazards and ${wrong}.`;
};

/** Looked and not called is another thing than never looked. */
const missedWords = (missedBy: (how: JudgedCause['missedBy']) => number): string => {
  const told = [
    [missedBy('perceived'), 'with a sign of it perceived'],
    [missedBy('looked-in-vain'), 'after a look that could not tell'],
    [missedBy('never-looked'), 'without a look'],
  ] as const;
  return `Missed: ${told.flatMap(([count, how]) => (count === 0 ? [] : [`${count} ${how}`])).join(', ')}.`;
};

const lookAlikeWords = (called: number, lookAlikes: readonly JudgedLookAlike[]): readonly string[] => {
  const all = lookAlikes.length;
  if (all === 0) return [];
  const met = lookAlikes.filter((each) => each.called || each.perceived).length;
  if (met === 0) return [];
  if (met === 1)
    return [`You ${called === 1 ? 'called' : 'let be'} the one thing you came upon that only looked wrong.`];
  const some = called === 0 ? 'none' : called === met ? (met === 2 ? 'both' : 'all') : String(called);
  return [`Of ${met} things you came upon that only looked wrong you called ${some}.`];
};
