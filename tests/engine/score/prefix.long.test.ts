/** The careful log of every launch scenario is never beaten by a prefix of itself: not in its verdict, nor in what it found and met. */
import { expect, it } from 'vitest';
import type { Replay } from '../../../src/engine/acts/types.ts';
import { score } from '../../../src/engine/score/score.ts';
import { launchIds, launchReplay } from '../../logs/committed.ts';
import { rank, value } from './logs.ts';

const step = 6;

const prefix = (replay: Replay, count: number): Replay => ({
  log: { ...replay.log, entries: replay.log.entries.slice(0, count) },
  start: replay.start,
  steps: replay.steps.slice(0, count),
  end: replay.steps[count - 1]?.after ?? replay.start,
});

it.each(launchIds)('%s', (id) => {
  const replay = launchReplay(id, 'careful');
  const whole = score(replay);
  expect(whole.verdict).toBe('pass');
  for (let count = 0; count < replay.steps.length; count += step) {
    const part = score(prefix(replay, count));
    expect(rank[part.verdict], `${count} acts`).toBeLessThan(rank[whole.verdict]);
    for (const name of ['recognition', 'order', 'exposure'] as const) {
      const mine = value(part, name);
      if (!Number.isNaN(mine)) expect(mine, `${name} of ${count} acts`).toBeLessThanOrEqual(value(whole, name) + 1e-12);
    }
  }
});
