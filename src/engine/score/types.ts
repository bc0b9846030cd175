/** Score = f(scenario, log): five parts, each in words and numbers, then the verdict. */
import type { Severity } from '../catalogue/types.ts';
import type { Exposure, Hazard } from '../hazards/types.ts';
import type { WeightId } from './weights.ts';

export interface Part {
  readonly name: 'recognition' | 'order' | 'control' | 'exposure' | 'service';
  /** 0..1, or null when nothing was there to judge. */
  readonly value: number | null;
  readonly numbers: Readonly<Record<string, number | null>>;
  /** Plain sentences, second person. */
  readonly says: readonly string[];
}

export interface JudgedFinding {
  readonly finding: string;
  readonly on: string;
  readonly condition: string;
  readonly minute: number;
  readonly outcome: 'hit' | 'false-call' | 'correct-no-hazard' | 'not-perceivable';
  readonly cause: string | null;
}

export interface JudgedCause {
  /** Laid fault id. */
  readonly cause: string;
  readonly kind: string;
  readonly on: string;
  /** The worst of the hazards that it causes. */
  readonly severity: Severity;
  readonly weight: number;
  readonly found: boolean;
  readonly minute: number | null;
  /** Looked at when a sign could be made out, but not called. */
  readonly lookedNotCalled: boolean;
  /** Of a missed one: a sign was perceived, the part was looked at from where none could be told, or never; null if found. */
  readonly missedBy: 'perceived' | 'looked-in-vain' | 'never-looked' | null;
  /** From where, with what, a sign of it can be perceived. */
  readonly perceivableFrom: readonly { readonly stand: string; readonly aid: string; readonly sign: string }[];
  readonly hazards: readonly string[];
}

export interface JudgedLookAlike {
  readonly lookAlike: string;
  readonly kind: string;
  readonly on: string;
  readonly called: boolean;
  /** What looks wrong of it had been perceived. */
  readonly perceived: boolean;
  readonly tellApart: string;
}

export interface JudgedExposure extends Exposure {
  readonly minute: number;
  readonly step: number;
  readonly act: string;
  /** Signs of all its causes had been perceived before the act; true where it has none. */
  readonly known: boolean;
}

export interface JudgedControl {
  readonly hazard: string;
  readonly control: string;
  /** Kind of act that met the hazard. */
  readonly act: string;
  /** A test, a ground, an opening: never too much, so it cannot lower the part. */
  readonly precaution: boolean;
  readonly minute: number;
  readonly worked: boolean;
  readonly level: string;
  readonly planned: boolean;
  readonly failed: readonly string[];
}

/** A cause and the first act that would have met a hazard of it, bare. */
export interface JudgedPrecedence {
  readonly cause: string;
  readonly step: number;
  readonly minute: number;
  readonly act: string;
  /** A sign of it had been perceived before. */
  readonly known: boolean;
  /** The act exposed somebody to it. */
  readonly exposed: boolean;
}

/** A control that held nothing in this drill and only cost time. */
export interface OverControl {
  readonly control: string;
  readonly on: string;
  readonly minute: number;
  readonly minutes: number;
}

/** Stated confidence against what was right, by the Brier score and its parts. */
export interface Confidence {
  readonly asked: number;
  readonly right: number;
  /** Wilson interval of the share that was right. */
  readonly rightLow: number;
  readonly rightHigh: number;
  readonly meanSure: number;
  readonly score: number;
  readonly reliability: number;
  readonly resolution: number;
  readonly uncertainty: number;
  readonly skill: number | null;
  readonly says: readonly string[];
}

export interface Score {
  readonly scenario: string;
  readonly scenarioHash: string;
  readonly engine: string;
  /** The weights that it was made with: 'usual' or an instructor's, and those that differ from the usual ones. */
  readonly weights: { readonly name: string; readonly changed: Readonly<Partial<Record<WeightId, number>>> };
  readonly verdict: 'pass' | 'remarks' | 'fail';
  readonly reasons: readonly string[];
  readonly parts: readonly Part[];
  readonly findings: readonly JudgedFinding[];
  readonly causes: readonly JudgedCause[];
  readonly lookAlikes: readonly JudgedLookAlike[];
  readonly exposures: readonly JudgedExposure[];
  readonly controls: readonly JudgedControl[];
  readonly overControls: readonly OverControl[];
  readonly precedence: readonly JudgedPrecedence[];
  readonly confidence: Confidence | null;
  readonly hazards: readonly Hazard[];
  readonly worldHash: string;
  readonly end: 'closed-out' | 'handed-over' | 'struck' | null;
}
