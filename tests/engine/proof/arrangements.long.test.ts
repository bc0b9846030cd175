/** In every shipped scenario, drills drawn at random have their doubles among the arrangements. */
import { expect, it } from 'vitest';
import { strayed } from './doubles.ts';
import { sceneOf, shipped } from './scenes.ts';

it.each(shipped)('%s', (name) => {
  for (const seed of [1, 2, 3]) expect(strayed(sceneOf(name), { seed, steps: 60 })).toBeNull();
});
