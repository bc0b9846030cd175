/** A debrief as plain data: sentences with their numbers, in the order in which they are shown. */
import type { Severity } from '../catalogue/types.ts';
import type { Score } from '../score/types.ts';

export interface TimelineRow {
  readonly step: number;
  readonly minute: number;
  readonly words: string;
  readonly kind: 'act' | 'finding' | 'exposure' | 'event';
}

/** From where, with what, a sign of a cause could have been made out, to go there and look. */
export interface Place {
  /** Null: it is told by a tool, a question or a test, not from a stand. */
  readonly stand: string | null;
  /** Words for the stand. */
  readonly from: string | null;
  readonly aid: 'eyes' | 'lamp' | 'glass' | null;
  /** Words for the aid, the test or the question. */
  readonly how: string;
  readonly sign: string;
  /** All of it in one line. */
  readonly words: string;
}

/** One cause in the picture of order; minutes, null where it never came to that. */
export interface OrderLane {
  readonly cause: string;
  readonly title: string;
  readonly part: string;
  readonly perceived: number | null;
  readonly called: number | null;
  readonly met: number | null;
  readonly metStep: number | null;
  /** A sign of it had been perceived before an act came near its hazards. */
  readonly known: boolean;
  readonly exposures: readonly { readonly minute: number; readonly step: number; readonly fatal: boolean }[];
}

export interface OrderPicture {
  /** Time of the call, from which minutes are counted. */
  readonly call: string;
  readonly minutes: number;
  readonly handsOn: number | null;
  readonly briefings: readonly number[];
  readonly lanes: readonly OrderLane[];
}

export interface HazardCard {
  readonly cause: string;
  readonly title: string;
  readonly part: string;
  /** Id of the part or tool. */
  readonly on: string;
  readonly severity: Severity;
  readonly found: boolean;
  readonly when: string;
  readonly couldBeSeen: readonly string[];
  /** The same, to go there. */
  readonly places: readonly Place[];
  readonly wouldDo: readonly string[];
  readonly controls: readonly string[];
  readonly rule: string;
}

/** Exposures of one kind that lacked the same. */
export interface ExposureCard {
  /** Of the first of them. */
  readonly minute: number;
  readonly count: number;
  readonly severity: Severity;
  readonly title: string;
  readonly lines: readonly string[];
}

/** The numbers of one part. */
export interface NumberLines {
  readonly part: string;
  readonly lines: readonly string[];
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
  readonly exposures: readonly ExposureCard[];
  readonly lookAlikes: readonly string[];
  readonly order: OrderPicture;
  readonly briefing: readonly string[];
  /** The usual steps of the job and when each was done. */
  readonly job: readonly string[];
  readonly parts: readonly { readonly name: string; readonly value: number | null; readonly says: readonly string[] }[];
  readonly numbers: readonly NumberLines[];
  /** Which weights it was judged by. */
  readonly judgedBy: string;
  readonly caution: string;
}
