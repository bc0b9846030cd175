/** What the folder of a scenario's committed logs exports: named lists of acts, and what each must come to. */
import type { Act } from '../../src/engine/acts/types.ts';
import type { Mechanism } from '../../src/engine/catalogue/types.ts';
import type { Score } from '../../src/engine/score/types.ts';

export interface Drill {
  readonly acts: readonly Act[];
  readonly verdict: Score['verdict'];
  readonly end: Score['end'];
  /** Mechanisms by which it exposes somebody; none if left out. */
  readonly meets?: readonly Mechanism[];
  /** Ids of the scenario's faults that it leaves uncalled; none if left out. */
  readonly misses?: readonly string[];
  /** Parts that it calls though nothing is wrong with them; none if left out. */
  readonly falselyCalls?: readonly string[];
}

export type Drills = Readonly<Record<string, Drill>>;
