/** Proves a scenario beside the page, telling how far it is. */
import { prove } from '../engine/proof/prove.ts';
import { build } from '../engine/world/build.ts';
import type { FromProver, ToProver } from './prover.ts';

const tell = (told: FromProver): void => self.postMessage(told);

self.onmessage = ({ data: { scenario, hash, seed } }: MessageEvent<ToProver>) => {
  const proof = prove(build(scenario, hash, seed), {
    seed,
    now: () => performance.now() / 1000,
    tell: (progress) => tell({ progress }),
  });
  tell({ proof });
};
