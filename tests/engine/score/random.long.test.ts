/** Ten thousand random drills over every launch scenario: each is scored, none throws, none has a part outside 0 to 1. */
import { expect, it } from 'vitest';
import { score } from '../../../src/engine/score/score.ts';
import { launchIds, launchWorld } from '../../logs/committed.ts';
import { randomDrill, wellFormed } from './randomDrill.ts';

const worlds = launchIds.map((id) => launchWorld(id));

it('10,000 random drills are scored', () => {
  const bad: string[] = [];
  for (let seed = 1; seed <= 10_000; seed++) {
    const world = worlds[seed % worlds.length];
    if (world === undefined) throw new Error('no scenario');
    bad.push(...wellFormed(score(randomDrill(world, seed, 10))).map((each) => `seed ${seed}: ${each}`));
  }
  expect(bad).toEqual([]);
});
