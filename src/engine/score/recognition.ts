/**
 * Recognition: causes found, weighted by severity, against false calls. Sensitivity and bias by signal detection with the
 * log-linear correction (standards/signalDetection.ts), Wilson intervals beside the rates, counts always. Calling everything
 * gains nothing: the share of calls that were right multiplies what was found.
 */

import type { Replay } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Severity } from '../catalogue/types.ts';
import type { Hazard } from '../hazards/types.ts';
import { detection } from '../standards/signalDetection.ts';
import { wilsonInterval } from '../standards/wilson.ts';
import { findPart } from '../world/edit.ts';
import type { World } from '../world/types.ts';
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
  const isLooked = looks.some(({ part }) => part === laid.on) || tests.some(({ on }) => on === laid.on);
  return isLooked ? 'looked-in-vain' : 'never-looked';
};

/** Each look-alike: left alone, or something else called on it or, at a customer's, on those premises. */
export const judgeLookAlikes = (
  world: World,
  lookAlikes: readonly Laid[],
  findings: readonly JudgedFinding[],
): readonly JudgedLookAlike[] =>
  lookAlikes.map((laid) => {
    const { on, fault } = laid;
    const premises = premisesOf(world, laid);
    const isThere = (id: string): boolean =>
      id === on || (premises !== null && findPart(world, id)?.premises === premises);
    return {
      lookAlike: fault.id,
      kind: fault.kind,
      on,
      called: findings.some((finding) => finding.outcome === 'false-call' && isThere(finding.on)),
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
  const [hitLow, hitHigh] = ends(hits, causes.length);
  const [falseLow, falseHigh] = ends(called, lookAlikes.length);
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
    says: [foundWords(hits, causes.length, falseCalls), lookAlikeWords(called, lookAlikes.length)],
  };
};

const foundWords = (hits: number, causes: number, falseCalls: number): string => {
  const some = hits === causes ? `all ${causes}` : `${hits === 0 ? 'none' : hits} of ${causes}`;
  const one = hits === 1 ? 'found' : 'did not find';
  const found = causes === 1 ? `${one} the one cause` : `found ${some} causes`;
  const wrong =
    falseCalls === 0
      ? 'called nothing that was not there'
      : `made ${falseCalls} call${falseCalls === 1 ? '' : 's'} of something that was not there`;
  return causes === 0 ? `Nothing was wrong here; you ${wrong}.` : `You ${found} of hazards and ${wrong}.`;
};

const lookAlikeWords = (called: number, all: number): string => {
  if (all === 0) return 'Nothing here only looked wrong.';
  return called === 0
    ? `You let be what only looked wrong, ${all} thing${all === 1 ? '' : 's'}.`
    : `Of ${all} things that only looked wrong you called ${called}.`;
};

const ends = (hits: number, trials: number): readonly [number | null, number | null] => {
  if (trials === 0) return [null, null];
  const { lower, upper } = wilsonInterval(hits, trials);
  return [lower, upper];
};
