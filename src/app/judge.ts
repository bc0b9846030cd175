/**
 * Works out the score of a drill beside the page: a worker plays the same acts as they are done, so that at the end only
 * the judging is left. Where no worker can be had, or it fails, the page itself does it once its notice has been painted.
 */
import type { Act, Log, Replay } from '../engine/acts/types.ts';
import type { Scenario } from '../engine/scenario/types.ts';
import { score } from '../engine/score/score.ts';
import type { Score } from '../engine/score/types.ts';
import { usualWeights, type Weights } from '../engine/score/weights.ts';
import type { WorkerOf } from './beside.ts';

/** What a worker needs to play a drill from its first act. */
export interface Beginning {
  readonly scenario: Scenario;
  readonly hash: string;
  readonly seed: number;
  readonly log: Log | null;
  readonly par?: Log['par'];
  readonly weights: Weights;
}

export type ToWorker = { readonly begin: Beginning } | { readonly act: Act };
/** The score, once the drill has ended there. */
export type FromWorker = { readonly score: Score };

export interface Judge {
  /** A drill is taken; the one before is given up. */
  begin(beginning: Beginning): void;
  /** An act was sent to it. */
  act(act: Act): void;
  /** It has ended: the score is handed to `tell`, once. */
  ended(replay: Replay, tell: (score: Score) => void): void;
  /** Nobody waits for a score any more. */
  leave(): void;
}

export interface JudgeParts {
  /** A fresh worker; null where there are none. */
  readonly worker: () => WorkerOf<ToWorker, FromWorker> | null;
  /** Runs this once what is on the page has been painted. */
  readonly afterPaint: (run: () => void) => void;
}

export const createJudge = ({ worker, afterPaint }: JudgeParts): Judge => {
  let at: WorkerOf<ToWorker, FromWorker> | null = null;
  let have: Score | null = null;
  let weights = usualWeights;
  let waiting: ((by: Score | null) => void) | null = null;

  const settle = (by: Score | null): void => {
    const tell = waiting;
    waiting = null;
    tell?.(by);
  };
  const leave = (): void => {
    at?.terminate();
    at = null;
    have = null;
    waiting = null;
  };
  const lost = (): void => {
    at?.terminate();
    at = null;
    settle(null);
  };
  return {
    leave,
    begin: (beginning) => {
      leave();
      weights = beginning.weights;
      at = worker();
      if (at === null) return;
      at.onmessage = ({ data }) => {
        have = data.score;
        settle(have);
      };
      at.onerror = lost;
      at.postMessage({ begin: beginning });
    },
    act: (act) => at?.postMessage({ act }),
    ended: (replay, tell) => {
      const here = (): void =>
        afterPaint(() => {
          if (waiting === mine) waiting = null;
          tell(score(replay, weights));
        });
      const mine = (by: Score | null): void => (by === null ? here() : tell(by));
      waiting = mine;
      if (have !== null) settle(have);
      else if (at === null) settle(null);
    },
  };
};

/** Two frames on, the notice stands on the screen; a hidden page paints nothing and does not wait. */
export const afterPaint = (run: () => void): void => {
  if (document.visibilityState === 'hidden') setTimeout(run);
  else requestAnimationFrame(() => setTimeout(run));
};
