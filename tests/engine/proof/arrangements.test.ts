/**
 * The arrangements of a scene: every drill has its double among them, their least minute is that of a plain search by
 * `act`, and a planted state from which stopping hurts is found and named.
 */
import { describe, expect, it } from 'vitest';
import { act, minutesOf } from '../../../src/engine/acts/act.ts';
import { possibleActs } from '../../../src/engine/acts/possibleActs.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { hashOf } from '../../../src/engine/math/hash.ts';
import { arrangementsOf } from '../../../src/engine/proof/arrangements.ts';
import { deadlyFaults, isWhole } from '../../../src/engine/proof/goals.ts';
import { reduced, timingOf } from '../../../src/engine/proof/learned/reduced.ts';
import { Means, plainStep } from '../../../src/engine/proof/peek.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { arranged, called, moves, on, strayed } from './doubles.ts';
import { stuckOnceOpen } from './planted.ts';
import { millLane, sceneOf } from './scenes.ts';

describe('a drill drawn at random moves the same as when all that moves nothing is waited for instead:', () => {
  it.each([
    ['high-street-bucket', 2],
    ['beech-lane-number', 3],
  ])('%s', (name, seed) => {
    expect(strayed(sceneOf(name), { seed, steps: 50 })).toBeNull();
  });
});

/** The tap's cutout found open, the link whole: closing it brings the cottage back. */
const leftOpen = (): World => millLane(['state: { position: open, link: blown }', 'state: { position: open }']);

/** The least minute at which a search by `act` alone finds the line whole (by rounds of a minute). */
function leastByAct(start: World): number {
  const first = called(start);
  const timing = timingOf(first);
  const deadly = deadlyFaults(hazardsIn(start));
  const seen = new Set<string>();
  const rounds: World[][] = [[first]];
  for (const [minute, round] of rounds.entries()) {
    for (const world of round ?? []) {
      const hash = hashOf(arranged(reduced(world, timing)));
      if (seen.has(hash)) continue;
      seen.add(hash);
      if (isWhole(world, deadly)) return minute;
      for (const { act: each } of possibleActs(world)) {
        if (!moves(each) || each.act === 'wait') continue;
        const to = minute + minutesOf(world, each);
        const later = rounds[to] ?? [];
        later.push(on(world, each));
        for (let i = rounds.length; i < to; i++) rounds[i] = [];
        rounds[to] = later;
      }
    }
  }
  return Number.POSITIVE_INFINITY;
}

it('the line is whole at the least minute of a plain search by act', () => {
  const start = leftOpen();
  const { wholeAt } = arrangementsOf(new Means(start), start, deadlyFaults(hazardsIn(start)), 2000);
  expect(wholeAt).not.toBeNull();
  expect(wholeAt).toBe(leastByAct(start));
});

it('what is explored grows with the bound, and all under its minutes is among it', () => {
  const start = millLane();
  const explored = [200, 800].map((runs) => arrangementsOf(new Means(start), start, new Set(), runs));
  expect(explored.map(({ end }) => end)).toEqual(['stopped', 'stopped']);
  const [few, more] = explored as [(typeof explored)[0], (typeof explored)[0]];
  expect(more.states).toBeGreaterThan(few.states);
  expect(more.minutes).toBeGreaterThanOrEqual(few.minutes);
  expect(few.stuck).toBeNull();
});

it('a state from which stopping hurts is found, by a way that act can go', () => {
  const start = millLane();
  const means = new Means(start, { ...plainStep, met: stuckOnceOpen });
  const { stuck } = arrangementsOf(means, start, new Set(), 4000);
  expect(stuck).toMatchObject({ isReached: true, hazards: expect.arrayContaining(['approach:everywhere']) });
  expect(stuck?.acts.at(-1)).toMatchObject({ act: 'operate', part: 'p1.tap-cutout', operation: 'open' });
  expect(stuck?.acts.reduce((world, each) => act(world, each).world, start).ended).toBeNull();
});
