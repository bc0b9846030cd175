/** What the folder of a scenario's committed logs exports: named lists of acts, and what each must come to. */
import type { Act } from '../../src/engine/acts/types.ts';
import type { Score } from '../../src/engine/score/types.ts';

export interface Drill {
  readonly acts: readonly Act[];
  readonly verdict: Score['verdict'];
  readonly end: Score['end'];
}

export type Drills = Readonly<Record<string, Drill>>;
