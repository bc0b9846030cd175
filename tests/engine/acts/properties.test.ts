import { describe, expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { looksFrom, possibleActs } from '../../../src/engine/acts/possibleActs.ts';
import { canonicalJson } from '../../../src/engine/math/hash.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { offersHold, replaysAlike, staysValid } from './properties.ts';
import { onScene } from './scene.ts';

const seed = 20261013;

describe('any sequence of acts', () => {
  it('leaves a valid, plain World whose circuit can be solved, and a refused act changes nothing', () => {
    staysValid({ numRuns: 12, seed, length: 20 });
  });

  it('replays from its log to the very same World', () => {
    replaysAlike({ numRuns: 5, seed, length: 15 });
  });
});

describe('what is on offer', () => {
  it('is never refused when sent, is offered once, and takes the minutes that it says', () => {
    offersHold({ numRuns: 5, seed, length: 10 }, 23);
  });

  it('is in the same order for the same World', () => {
    const labels = (world: World) => possibleActs(world).map(({ label }) => label);
    expect(labels(onScene())).toEqual(labels(structuredClone(onScene())));
  });

  it('is nothing once the drill has ended', () => {
    const over = act(onScene(), { act: 'close-out' }).world;
    expect([...possibleActs(over), ...looksFrom(over)]).toEqual([]);
  });

  it('names the foolish with the wise: both sticks, both detectors, climbing and closing', () => {
    const all = possibleActs(onScene())
      .map(({ act }) => canonicalJson(act))
      .join('\n');
    for (const id of ['stick-1', 'stick-2', 'detector-1', 'detector-2', 'under-line']) expect(all).toContain(id);
  });
});
