/** The acts of a breadth-first walk through a scenario, for the first time and again, beside a structured clone of a World. */
import { bench, describe } from 'vitest';
import { act } from '../../src/engine/acts/act.ts';
import { possibleActs } from '../../src/engine/acts/possibleActs.ts';
import type { Act } from '../../src/engine/acts/types.ts';
import type { World } from '../../src/engine/world/types.ts';
import { played, start } from '../engine/acts/scene.ts';
import { timed } from './timed.ts';

const parked = played(start(), { act: 'acknowledge' }, { act: 'park', at: 'clear' });

const TRANSITIONS = 200;

/** The first transitions of a breadth-first walk through all that is on offer. */
function walk(from: World): readonly { readonly world: World; readonly act: Act }[] {
  const steps: { readonly world: World; readonly act: Act }[] = [];
  const worlds = [from];
  const began = performance.now();
  for (const world of worlds) {
    for (const { act: each } of possibleActs(world)) {
      steps.push({ world, act: each });
      const after = act(world, each);
      if (after.ok && after.world.ended === null) worlds.push(after.world);
      if (steps.length === TRANSITIONS) {
        const seconds = (performance.now() - began) / 1000;
        console.log(`walked for the first time: ${(TRANSITIONS / seconds).toFixed(0)} transitions a second`);
        return steps;
      }
    }
  }
  return steps;
}

describe('acts of a breadth-first walk', () => {
  const steps = walk(parked);
  let at = 0;
  let clones = 0;
  // Every step once before: circuit solutions are remembered by what they are read from, as in a search.
  const again = { time: 0, warmupTime: 0, warmupIterations: TRANSITIONS, iterations: TRANSITIONS };
  const acting = timed('an act, its circuit met before');
  bench(
    'an act, its circuit met before',
    () => {
      const { world, act: each } = steps[at++ % steps.length] as (typeof steps)[number];
      const began = acting.begin();
      act(world, each);
      acting.end(began);
    },
    { ...acting, ...again },
  );
  const cloning = timed('a structured clone of a World');
  bench(
    'a structured clone of a World',
    () => {
      const { world } = steps[clones++ % steps.length] as (typeof steps)[number];
      const began = cloning.begin();
      structuredClone(world);
      cloning.end(began);
    },
    { ...cloning, ...again },
  );
});
