/**
 * Sensitivity and bias of yes/no detection: Stanislaw and Todorov 1999, Behavior Research Methods 31(1) 137-149, equal
 * variances. Counts go through the log-linear correction (Hautus 1995): (hits + 0.5)/(signals + 1). With a dozen trials
 * the figures are rough; print the counts and a Wilson interval beside them. Left out: unequal variances, graded
 * confidence (rankArea.ts, brier.ts).
 */
import { exp } from '../math/elementary.ts';
import { inverseNormal } from './inverseNormal.ts';

/** What was called of what was there. */
export interface Trials {
  readonly hits: number;
  readonly signals: number;
  readonly falseCalls: number;
  readonly noise: number;
}

/** Rates used, sensitivity d', criterion c (negative: calls readily), likelihood ratio beta. */
export interface Detection {
  readonly hitRate: number;
  readonly falseCallRate: number;
  readonly sensitivity: number;
  readonly criterion: number;
  readonly beta: number;
}

/** Indices from rates; infinite where a rate is 0 or 1. */
export const detectionFromRates = (hitRate: number, falseCallRate: number): Detection => {
  const zHit = inverseNormal(hitRate);
  const zFalse = inverseNormal(falseCallRate);
  return {
    hitRate,
    falseCallRate,
    sensitivity: zHit - zFalse,
    criterion: -(zHit + zFalse) / 2,
    beta: exp((zFalse * zFalse - zHit * zHit) / 2),
  };
};

/** Indices from counts, log-linear correction always applied. */
export const detection = ({ hits, signals, falseCalls, noise }: Trials): Detection =>
  detectionFromRates((hits + 0.5) / (signals + 1), (falseCalls + 0.5) / (noise + 1));

/** A', sensitivity without the normal model; 0.5 when the rates are equal. */
export const aPrime = (hitRate: number, falseCallRate: number): number => {
  if (hitRate === falseCallRate) return 0.5;
  const gap = hitRate - falseCallRate;
  const spread = 4 * Math.max(hitRate, falseCallRate) - 4 * hitRate * falseCallRate;
  return 0.5 + (Math.sign(gap) * (gap * gap + Math.abs(gap))) / spread;
};
