/** Starts and stops the worker that proves a scenario; one proof at a time, the one before is given up. */
import { signal } from '@preact/signals';
import type { Progress } from '../engine/proof/prove.ts';
import type { Proof } from '../engine/proof/types.ts';
import type { Scenario } from '../engine/scenario/types.ts';
import type { Prover, Proving } from '../screens/types.ts';
import { besideOf, type WorkerOf } from './beside.ts';

export interface ToProver {
  readonly scenario: Scenario;
  readonly hash: string;
  readonly seed: number;
}

export type FromProver = { readonly progress: Progress } | { readonly proof: Proof };

/** Seed of the drill that is proved; the proof takes chance for an adversary whatever it is. */
export const SEED = 1;

export const createProver = (make: () => WorkerOf<ToProver, FromProver> | null): Prover => {
  const state = signal<Proving>({ is: 'idle' });
  const beside = besideOf(make);
  return {
    state,
    cancel: () => {
      beside.leave();
      state.value = { is: 'idle' };
    },
    start: (offered) => {
      const { scenario, hash } = offered;
      const { title } = scenario;
      const told = (data: FromProver): void => {
        if ('progress' in data) {
          state.value = { is: 'running', title, progress: data.progress };
          return;
        }
        beside.leave();
        state.value = { is: 'done', title, offered, proof: data.proof };
      };
      const failed = (why: string): void => {
        state.value = { is: 'failed', why };
      };
      state.value = { is: 'running', title, progress: null };
      if (!beside.ask({ scenario, hash, seed: SEED }, told, failed))
        failed('This browser gives no worker to prove in.');
    },
  };
};
