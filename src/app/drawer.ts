/** Starts and stops the worker that draws variants; one at a time, the one before is given up. */
import { signal } from '@preact/signals';
import type { ParFile } from '../engine/proof/parForm.ts';
import type { Base, Grade } from '../engine/variants/types.ts';
import type { Drawer, Drawing, Offered } from '../screens/types.ts';

export interface ToDrawer {
  readonly base: Base;
  readonly grade: Grade;
  readonly seed: number;
}

export type FromDrawer =
  | { readonly draws: number }
  | { readonly yaml: string; readonly par: ParFile | null }
  | { readonly gaveUp: number };

/** As much of a Worker as is used. */
export interface DrawerWorker {
  postMessage(message: ToDrawer): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<FromDrawer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

export interface DrawerParts {
  readonly worker: () => DrawerWorker | null;
  /** Lays a drawn scenario on the shelf and answers how it is offered. */
  readonly shelve: (yaml: string, par: ParFile | null) => Offered;
}

export const createDrawer = ({ worker: make, shelve }: DrawerParts): Drawer => {
  const state = signal<Drawing>({ is: 'idle' });
  let at: DrawerWorker | null = null;
  const leave = (): void => {
    at?.terminate();
    at = null;
  };
  return {
    state,
    cancel: () => {
      leave();
      state.value = { is: 'idle' };
    },
    start: (offered, seed) => {
      leave();
      const { scenario, hash, text } = offered;
      const worker = text === undefined ? null : make();
      if (worker === null || text === undefined) {
        state.value = { is: 'failed', base: hash, why: 'This browser gives no worker to draw in.' };
        return;
      }
      at = worker;
      state.value = { is: 'running', base: hash, seed, draws: 0 };
      worker.onmessage = ({ data }) => {
        if ('draws' in data) {
          state.value = { is: 'running', base: hash, seed, draws: data.draws };
          return;
        }
        leave();
        state.value =
          'gaveUp' in data
            ? { is: 'failed', base: hash, why: `None of ${data.gaveUp} draws was a good one; try another number.` }
            : { is: 'done', base: hash, seed, offered: shelve(data.yaml, data.par) };
      };
      worker.onerror = ({ message }) => {
        leave();
        state.value = { is: 'failed', base: hash, why: message };
      };
      worker.postMessage({ base: { id: scenario.id, text }, grade: scenario.grade, seed });
    },
  };
};
