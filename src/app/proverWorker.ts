/** Starts the worker that proves beside the page. */
import { started, type WorkerOf } from './beside.ts';
import type { FromProver, ToProver } from './prover.ts';

/** The worker of this app; null where the browser gives none. */
export const proverWorker = (): WorkerOf<ToProver, FromProver> | null =>
  started<ToProver, FromProver>(() => new Worker(new URL('./prove.worker.ts', import.meta.url), { type: 'module' }));
