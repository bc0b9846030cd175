/** What a proof says: claims with their outcome, par, traps, and how much was looked at. Plain data. */
import type { Act } from '../acts/types.ts';

/** 'fails' comes with acts where there is something to replay; 'not finished' says how far it went. */
export type Outcome = 'holds' | 'fails' | 'not finished';

export interface Claim {
  /** `<kind>` or `<kind>:<hazard, fault or control>`. */
  readonly id: string;
  readonly outcome: Outcome;
  /** One plain sentence. */
  readonly words: string;
  /** A route that shows it, or the shortest found that breaks it; empty where there is none to show. */
  readonly acts: readonly Act[];
}

/** A route with what it costs. */
export interface Priced {
  readonly minutes: number;
  readonly customerMinutes: number;
  readonly acts: readonly Act[];
}

export interface Par extends Priced {
  readonly end: 'restored' | 'handed-over';
  /** No route of this kind can be shorter than this; equal to `minutes` where par is exact. */
  readonly atLeast: number;
  /** Routes found that no other found beats in both minutes and customer-minutes. */
  readonly front: readonly Priced[];
}

/** A short way into harm. */
export interface Trap {
  readonly hazard: string;
  readonly minutes: number;
  readonly acts: readonly Act[];
  readonly words: string;
}

export interface Proof {
  readonly scenario: string;
  readonly scenarioHash: string;
  readonly engine: string;
  readonly seed: number;
  /** No claim fails. Claims that are not finished are listed and leave this true. */
  readonly ok: boolean;
  readonly par: Par | null;
  readonly claims: readonly Claim[];
  /** The ten shortest, one a hazard. */
  readonly traps: readonly Trap[];
  readonly states: number;
  readonly transitions: number;
  /** By the host's clock; 0 without one. */
  readonly seconds: number;
}
