/** Starts and stops the worker that proves a scenario; one proof at a time, the one before is given up. */
import { signal } from '@preact/signals';
import type { Progress } from '../engine/proof/prove.ts';
import type { Proof } from '../engine/proof/types.ts';
import type { Scenario } from '../engine/scenario/types.ts';
import type { Prover, Proving } from '../screens/types.ts';

export interface ToProver {
  readonly scenario: Scenario;
  readonly hash: string;
  readonly seed: number;
}

export type FromProver = { readonly progress: Progress } | { readonly proof: Proof };

/** As much of a Worker as is used. */
export interface ProverWorker {
  postMessage(message: ToProver): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<FromProver>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** Seed of the drill that is proved; the proof takes chance for an adversary whatever it is. */
export const SEED = 1;

export const createProver = (make: () => ProverWorker | null): Prover => {
  const state = signal<Proving>({ is: 'idle' });
  let at: ProverWorker | null = null;
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
    start: (offered) => {
      const { scenario, hash } = offered;
      leave();
      const worker = make();
      if (worker === null) {
        state.value = { is: 'failed', why: 'This browser gives no worker to prove in.' };
        return;
      }
      at = worker;
      state.value = { is: 'running', title: scenario.title, progress: null };
      worker.onmessage = ({ data }) => {
        if ('progress' in data) {
          state.value = { is: 'running', title: scenario.title, progress: data.progress };
          return;
        }
        leave();
        state.value = { is: 'done', title: scenario.title, offered, proof: data.proof };
      };
      worker.onerror = ({ message }) => {
        leave();
        state.value = { is: 'failed', why: message };
      };
      worker.postMessage({ scenario, hash, seed: SEED });
    },
  };
};
