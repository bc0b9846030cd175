/** Plays the page's drill along, act by act, and hands its score back when it has ended. */
import { createDrill } from '../drill/createDrill.ts';
import type { Drill } from '../drill/types.ts';
import { build } from '../engine/world/build.ts';
import type { Beginning, FromWorker, ToWorker } from './judge.ts';

let drill: Drill | null = null;

const begin = ({ scenario, hash, seed, log, par, weights }: Beginning): void => {
  const created = createDrill({ world: build(scenario, hash, seed), seed, par, log: log ?? undefined, weights });
  if (!created.ok) throw new Error(created.problem.words);
  drill = created.drill;
};

self.onmessage = ({ data }: MessageEvent<ToWorker>) => {
  if ('begin' in data) begin(data.begin);
  else drill?.send(data.act);
  const score = drill?.snapshot().score ?? null;
  if (score === null) return;
  const told: FromWorker = { score };
  self.postMessage(told);
};
