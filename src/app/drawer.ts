/** Starts and stops the worker that draws variants; one at a time, the one before is given up. */
import { signal } from '@preact/signals';
import type { ParFile } from '../engine/proof/parForm.ts';
import type { Base, Grade } from '../engine/variants/types.ts';
import type { Drawer, Drawing, Offered } from '../screens/types.ts';
import { besideOf, type WorkerOf } from './beside.ts';

export interface ToDrawer {
  readonly base: Base;
  readonly grade: Grade;
  readonly seed: number;
}

export type FromDrawer =
  | { readonly draws: number }
  | { readonly yaml: string; readonly par: ParFile | null }
  | { readonly gaveUp: number };

export interface DrawerParts {
  readonly worker: () => WorkerOf<ToDrawer, FromDrawer> | null;
  /** Lays a drawn scenario on the shelf and answers how it is offered. */
  readonly shelve: (yaml: string, par: ParFile | null) => Offered;
}

export const createDrawer = ({ worker: make, shelve }: DrawerParts): Drawer => {
  const state = signal<Drawing>({ is: 'idle' });
  const beside = besideOf(make);
  return {
    state,
    cancel: () => {
      beside.leave();
      state.value = { is: 'idle' };
    },
    start: (offered, seed) => {
      beside.leave();
      const { scenario, hash, text } = offered;
      const told = (data: FromDrawer): void => {
        if ('draws' in data) {
          state.value = { is: 'running', base: hash, seed, draws: data.draws };
          return;
        }
        beside.leave();
        state.value =
          'gaveUp' in data
            ? { is: 'failed', base: hash, why: `None of ${data.gaveUp} draws was a good one; try another number.` }
            : { is: 'done', base: hash, seed, offered: shelve(data.yaml, data.par) };
      };
      const failed = (why: string): void => {
        state.value = { is: 'failed', base: hash, why };
      };
      state.value = { is: 'running', base: hash, seed, draws: 0 };
      const asked =
        text !== undefined &&
        beside.ask({ base: { id: scenario.id, text }, grade: scenario.grade, seed }, told, failed);
      if (!asked) failed('This browser gives no worker to draw in.');
    },
  };
};
