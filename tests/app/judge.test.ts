/** A score comes once, from the worker or from the page, and is the same from both. */
import { describe, expect, test } from 'vitest';
import type { WorkerOf } from '../../src/app/beside.ts';
import { createJudge, type FromWorker, type ToWorker } from '../../src/app/judge.ts';
import type { Replay } from '../../src/engine/acts/types.ts';
import { score } from '../../src/engine/score/score.ts';
import type { Score } from '../../src/engine/score/types.ts';
import { usualWeights } from '../../src/engine/score/weights.ts';
import { makeDesk } from './makeDesk.ts';
import { quarryRoad } from './quarryRoad.ts';

const ended = (): Replay => {
  const playing = makeDesk(quarryRoad).take();
  playing.send({ act: 'acknowledge' });
  playing.send({ act: 'hand-over' });
  return playing.drill.replay();
};
const replay = ended();
const worked = score(replay);
const offered = quarryRoad.offered[0];
if (!offered) throw new Error('no drill in the library');
const beginning = { scenario: offered.scenario, hash: offered.hash, seed: 7, log: null, weights: usualWeights };

const fake = () => {
  const sent: ToWorker[] = [];
  let over = false;
  const worker: WorkerOf<ToWorker, FromWorker> = {
    postMessage: (message) => sent.push(message),
    terminate: () => {
      over = true;
    },
    onmessage: null,
    onerror: null,
  };
  return {
    worker,
    sent,
    isOver: () => over,
    answers: (data: FromWorker) => worker.onmessage?.({ data } as MessageEvent<FromWorker>),
    fails: () => worker.onerror?.({} as ErrorEvent),
  };
};

const judging = (worker: WorkerOf<ToWorker, FromWorker> | null) => {
  const told: Score[] = [];
  const judge = createJudge({ worker: () => worker, afterPaint: (run) => run() });
  judge.begin(beginning);
  return { judge, told, ask: () => judge.ended(replay, (one) => told.push(one)) };
};

describe('the judge', () => {
  test('hands every act to the worker and its score back, whichever comes first', () => {
    for (const early of [true, false]) {
      const other = fake();
      const { judge, told, ask } = judging(other.worker);
      judge.act({ act: 'acknowledge' });
      expect(other.sent).toEqual([{ begin: beginning }, { act: { act: 'acknowledge' } }]);
      if (early) other.answers({ score: worked });
      ask();
      if (!early) {
        expect(told).toEqual([]);
        other.answers({ score: worked });
      }
      expect(told).toEqual([worked]);
    }
  });

  test('judges in the page where there is no worker', () => {
    const { told, ask } = judging(null);
    ask();
    expect(told).toEqual([worked]);
  });

  test.each([true, false])('judges in the page when the worker fails, before the end: %s', (before) => {
    const other = fake();
    const { told, ask } = judging(other.worker);
    if (before) other.fails();
    ask();
    if (!before) other.fails();
    expect(told).toEqual([worked]);
    expect(other.isOver()).toBe(true);
  });

  test('tells nothing more once the drill was left', () => {
    const other = fake();
    const { judge, told, ask } = judging(other.worker);
    ask();
    judge.leave();
    other.answers({ score: worked });
    expect(told).toEqual([]);
    expect(other.isOver()).toBe(true);
  });
});
