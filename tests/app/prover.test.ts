/** The prover's host: progress, result, cancelling, a worker that fails or cannot be had. */
import { describe, expect, it } from 'vitest';
import type { WorkerOf } from '../../src/app/beside.ts';
import { createProver, type FromProver, type ToProver } from '../../src/app/prover.ts';
import type { Proof } from '../../src/engine/proof/types.ts';
import { quarryRoad } from '../engine/acts/scene.ts';

const offered = quarryRoad();
const proof = { scenario: 'quarry-road-fog' } as Proof;

const workerFor = (): {
  worker: WorkerOf<ToProver, FromProver>;
  asked: ToProver[];
  gone: () => boolean;
  say: (told: FromProver) => void;
} => {
  const asked: ToProver[] = [];
  let ended = false;
  const worker: WorkerOf<ToProver, FromProver> = {
    postMessage: (message) => asked.push(message),
    terminate: () => {
      ended = true;
    },
    onmessage: null,
    onerror: null,
  };
  return { worker, asked, gone: () => ended, say: (data) => worker.onmessage?.({ data } as MessageEvent<FromProver>) };
};

describe('the prover', () => {
  it('tells how far it is, then the proof, and lets the worker go', () => {
    const { worker, asked, gone, say } = workerFor();
    const prover = createProver(() => worker);
    prover.start(offered);
    expect(asked).toEqual([{ scenario: offered.scenario, hash: offered.hash, seed: 1 }]);
    say({ progress: { stage: 'route', states: 3, transitions: 9 } });
    expect(prover.state.value).toMatchObject({ is: 'running', progress: { stage: 'route' } });
    say({ proof });
    expect(prover.state.value).toMatchObject({ is: 'done', proof });
    expect(gone()).toBe(true);
  });

  it('ends the worker when it is cancelled or asked for another proof', () => {
    const made = [workerFor(), workerFor()];
    let next = 0;
    const prover = createProver(() => made[next++]?.worker ?? null);
    prover.start(offered);
    prover.start(offered);
    expect(made.map(({ gone }) => gone())).toEqual([true, false]);
    prover.cancel();
    expect(made.map(({ gone }) => gone())).toEqual([true, true]);
    expect(prover.state.value).toEqual({ is: 'idle' });
  });

  it('says so when there is no worker, or it fails', () => {
    const none = createProver(() => null);
    none.start(offered);
    expect(none.state.value.is).toBe('failed');
    const { worker } = workerFor();
    const prover = createProver(() => worker);
    prover.start(offered);
    worker.onerror?.({ message: 'out of memory' } as ErrorEvent);
    expect(prover.state.value).toEqual({ is: 'failed', why: 'out of memory' });
  });
});
