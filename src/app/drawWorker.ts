/** Starts the worker that draws beside the page. */
import { started, type WorkerOf } from './beside.ts';
import type { FromDrawer, ToDrawer } from './drawer.ts';

/** The worker of this app; null where the browser gives none. */
export const drawWorker = (): WorkerOf<ToDrawer, FromDrawer> | null =>
  started<ToDrawer, FromDrawer>(() => new Worker(new URL('./draw.worker.ts', import.meta.url), { type: 'module' }));
