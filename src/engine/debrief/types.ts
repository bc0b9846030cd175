/** A debrief as plain data: sentences with their numbers, in the order in which they are shown. */
import type { Severity } from '../catalogue/types.ts';
import type { Score } from '../score/types.ts';

export interface TimelineRow {
  readonly step: number;
  readonly minute: number;
  readonly words: string;
  readonly kind: 'act' | 'finding' | 'exposure' | 'event';
}

export interface HazardCard {
  readonly cause: string;
  readonly title: string;
  readonly part: string;
  readonly severity: Severity;
  readonly found: boolean;
  readonly when: string;
  readonly couldBeSeen: readonly string[];
  readonly wouldDo: readonly string[];
  readonly controls: readonly string[];
  readonly rule: string;
}

export interface Debrief {
  readonly title: string;
  readonly verdict: Score['verdict'];
  readonly verdictWords: string;
  readonly reasons: readonly string[];
  readonly didWell: readonly string[];
  readonly takeAlong: string;
  readonly timeline: readonly TimelineRow[];
  readonly hazards: readonly HazardCard[];
  readonly exposures: readonly {
    readonly minute: number;
    readonly severity: Severity;
    readonly title: string;
    readonly lines: readonly string[];
  }[];
  readonly lookAlikes: readonly string[];
  readonly parts: readonly { readonly name: string; readonly value: number | null; readonly says: readonly string[] }[];
  readonly numbers: readonly string[];
  /** Which weights it was judged by. */
  readonly judgedBy: string;
  readonly caution: string;
}
