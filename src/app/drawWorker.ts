/** Starts the worker that draws beside the page. */
import type { DrawerWorker } from './drawer.ts';

/** The worker of this app; null where the browser gives none. */
export const drawWorker = (): DrawerWorker | null => {
  try {
    return new Worker(new URL('./draw.worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return null; // the page then says that it cannot
  }
};
