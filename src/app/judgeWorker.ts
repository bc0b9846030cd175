/** Starts the worker that judges beside the page. */
import type { WorkerLike } from './judge.ts';

/** The worker of this app; null where the browser gives none. */
export const judgeWorker = (): WorkerLike | null => {
  try {
    return new Worker(new URL('./judge.worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return null; // the page then judges by itself
  }
};
