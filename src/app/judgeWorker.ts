/** Starts the worker that judges beside the page. */
import { started, type WorkerOf } from './beside.ts';
import type { FromWorker, ToWorker } from './judge.ts';

/** The worker of this app; null where the browser gives none. */
export const judgeWorker = (): WorkerOf<ToWorker, FromWorker> | null =>
  started<ToWorker, FromWorker>(() => new Worker(new URL('./judge.worker.ts', import.meta.url), { type: 'module' }));
