/** Starts the worker that proves beside the page. */
import type { ProverWorker } from './prover.ts';

/** The worker of this app; null where the browser gives none. */
export const proverWorker = (): ProverWorker | null => {
  try {
    return new Worker(new URL('./prove.worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return null; // the page then says that it cannot
  }
};
