/**
 * What a 60 Hz current through the body can do, in five bands. Adults of 50 kg or more; children, other paths and
 * illness may be worse. Left out: burns, falls and secondary
 * injuries, other frequencies, direct current.
 *   perceived      0.5 mA   IEC 479-1, end of zone AC-1
 *   startle        1 mA     1910.269 Appendix C, III.D.1: the hazard criterion when reactions are not guarded against
 *   cannot let go  6 mA     same paragraph; Dalziel and Lee 1968: 99.5 % of women let go 6 mA, of men 9 mA
 *   fibrillation   116/sqrt(t) mA   Dalziel and Lee 1968, 8.3 ms to 5 s (Appendix C uses it to 3 s)
 */
import type { Amperes, Seconds } from '../units/quantities.ts';

/** Effect bands from harmless to worst. */
export const effectBands = ['none', 'perceived', 'startle', 'cannot-let-go', 'possible-fibrillation'] as const;

/** One effect band. */
export type EffectBandName = (typeof effectBands)[number];

/** A threshold with its document. */
export interface CurrentThreshold {
  readonly band: EffectBandName;
  readonly amperes: Amperes;
  readonly source: string;
}

/** The band reached, the thresholds used, and the one that set the band. */
export interface EffectBand {
  readonly band: EffectBandName;
  readonly thresholds: readonly CurrentThreshold[];
  readonly reached: CurrentThreshold | undefined;
}

/** Let-go current of 99.5 % of men and of women: Dalziel and Lee 1968. */
export const letGo = { men: 0.009, women: 0.006 } as const;

/** Fibrillation threshold 116/sqrt(t) mA; outside 8.3 ms to 5 s the value at the nearer end, so that it is never extrapolated. */
export const fibrillationThreshold = (duration: Seconds): Amperes =>
  0.116 / Math.sqrt(Math.min(5, Math.max(0.0083, duration)));

/** Effect band of `current` flowing for `duration`. */
export const effectBand = (current: Amperes, duration: Seconds): EffectBand => {
  const thresholds: readonly CurrentThreshold[] = [
    { band: 'perceived', amperes: 0.0005, source: 'IEC 479-1, zone AC-1' },
    { band: 'startle', amperes: 0.001, source: '29 CFR 1910.269 Appendix C, III.D.1' },
    {
      band: 'cannot-let-go',
      amperes: letGo.women,
      source: '29 CFR 1910.269 Appendix C, III.D.1; Dalziel and Lee 1968',
    },
    { band: 'possible-fibrillation', amperes: fibrillationThreshold(duration), source: 'Dalziel and Lee 1968' },
  ];
  const reached = thresholds.filter((threshold) => current >= threshold.amperes).at(-1);
  return { band: reached?.band ?? 'none', thresholds, reached };
};
