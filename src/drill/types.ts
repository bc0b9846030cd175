/** What screens and scene get: a snapshot, and one way to send an act. */
import type { Act, Log, OfferedAct, Replay, WorldEvent } from '../engine/acts/types.ts';
import type { Score } from '../engine/score/types.ts';
import type { Heard, Look, Sign } from '../engine/senses/types.ts';
import type { World } from '../engine/world/types.ts';

export const stages = ['call', 'survey', 'briefing', 'make-safe', 'work', 'restore', 'debrief'] as const;
export type Stage = (typeof stages)[number];

export interface Snapshot {
  readonly stage: Stage;
  readonly world: World;
  /** Stand id of the trainee. */
  readonly stand: string;
  readonly heard: readonly Heard[];
  readonly events: readonly WorldEvent[];
  /** All that was perceived since the start, in order, for the radio and notes. */
  readonly journal: readonly { readonly minute: number; readonly event: WorldEvent }[];
  readonly customersOut: number;
  /** Why the last act was refused. */
  readonly refused: string | null;
  readonly log: Log;
  /** Null until the drill has ended and was judged. */
  readonly score: Score | null;
}

export interface Drill {
  snapshot(): Snapshot;
  subscribe(listener: (snapshot: Snapshot) => void): () => void;
  send(act: Act): void;
  /** Hands an ended drill the score that was worked out elsewhere. */
  judged(score: Score): void;
  /** Computed on demand from the present world. */
  offers(): readonly OfferedAct[];
  look(part: string, aid: 'eyes' | 'lamp' | 'glass'): Look;
  signs(aid: 'eyes' | 'lamp' | 'glass'): readonly Sign[];
  /** All steps so far, for the debrief. */
  replay(): Replay;
}
