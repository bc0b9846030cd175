/** What must hold of any score: a careful drill is never beaten by a part of itself, random drills are scored, other versions say so. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { replay } from '../../../src/engine/acts/replay.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import { score } from '../../../src/engine/score/score.ts';
import { start } from '../acts/scene.ts';
import { committed, fresh, goOn, rank, value } from './logs.ts';
import { randomDrill, wellFormed } from './randomDrill.ts';

const careful = committed('careful');
const acts: readonly Act[] = careful.log.entries.map(({ act }) => act);
const whole = score(careful);

describe('the careful drill', () => {
  it.each([0, 20, 60, 100, 186])('is not beaten by its first %i acts', (count) => {
    const part = score(goOn(fresh(), ...acts.slice(0, count)));
    expect(rank[part.verdict]).toBeLessThanOrEqual(rank[whole.verdict]);
    if (count < acts.length) expect(part.verdict).not.toBe('pass');
    for (const name of ['recognition', 'order', 'exposure', 'service'] as const) {
      const mine = value(part, name);
      if (!Number.isNaN(mine)) expect(mine).toBeLessThanOrEqual(value(whole, name));
    }
  });
});

it('a few random drills are scored without a throw, each part between 0 and 1 or nothing to judge', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
      const scored = score(randomDrill(start(1), seed, 14));
      expect(wellFormed(scored)).toEqual([]);
    }),
    { seed: 3, numRuns: 15 },
  );
});

describe('a log of another version', () => {
  it('says so instead of failing', () => {
    const { log } = committed('stuck');
    const result = replay(start(log.seed), { ...log, engine: '0.0.9' });
    expect(result.ok).toBe(false);
    expect(!result.ok && result.problem.problem).toBe('engine');
    expect(!result.ok && result.problem.words).toMatch(/another engine version: 0\.0\.9, this is /);
  });
});
