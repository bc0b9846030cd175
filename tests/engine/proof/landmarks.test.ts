/** Minutes that no route to restored service does without, held against routes and against a search by the plain rules. */
import { expect, it } from 'vitest';
import { act, minutesOf } from '../../../src/engine/acts/act.ts';
import type { ActName } from '../../../src/engine/acts/types.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { restored, surveyed } from '../../../src/engine/proof/findRoute.ts';
import { deadlyFaults, isWhole } from '../../../src/engine/proof/goals.ts';
import { landmarkMinutes } from '../../../src/engine/proof/landmarks.ts';
import { exploreAll } from '../../../src/engine/proof/learned/exploreAll.ts';
import { Transitions } from '../../../src/engine/proof/learned/transitions.ts';
import { Means } from '../../../src/engine/proof/peek.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { lay } from './planted.ts';
import { millLane } from './scenes.ts';

const tags = '  - { id: tags-1, kind: tags }';
const tools = [
  tags,
  '  - { id: bucket-1, kind: bucket, rated: 46 kV, tested: 2026-02-01 }',
  '  - { id: belt-1, kind: climbing-set }',
  '  - { id: arm-1, kind: auxiliary-arm, rated: 15 kV, tested: 2026-02-01 }',
  '  - { id: ground-1, kind: ground-set }',
  '  - { id: ground-2, kind: ground-set }',
];
const brokenTie = (...others: readonly string[]): World =>
  millLane(lay('{ id: tie, kind: tie-broken, on: p2.tie }'), [tags, [...tools, ...others].join('\n')]);

const looked = (world: World) => {
  const means = new Means(world);
  const survey = surveyed(means, world);
  if (survey === null) throw new Error('the scene cannot be looked over');
  const deadly = deadlyFaults(hazardsIn(world));
  return { means, survey, deadly, least: landmarkMinutes(means, survey.route.stage.world, deadly) };
};

/** Kinds of act that are counted. */
const counted: readonly ActName[] = [
  'repair',
  'operate',
  'aloft',
  'come-down',
  'brief',
  'wear',
  'clearance',
  'tag',
  'test',
  'check-tool',
  'ground',
  'unground',
];

it('the route of a crew that can get up, open, ground and hold it does at least as much of what is counted', () => {
  const world = brokenTie();
  const { means, survey, deadly, least } = looked(world);
  const { route } = restored(means, survey.route, deadly);
  expect(route).not.toBeNull();
  let now = world;
  let sum = 0;
  for (const each of route?.stage.acts ?? []) {
    if (counted.includes(each.act)) sum += minutesOf(now, each);
    now = act(now, each).world;
  }
  // Tying in 6, up by hooks and down 7, briefing 5, what is owed to the metal 9, the link that hangs open 8.
  expect(least).toBe(35);
  expect(sum).toBeGreaterThanOrEqual(least);
});

it('metal that the crew has covers for is owed nothing for certain', () => {
  const covers = [1, 2, 3, 4].map((n) => `  - { id: hose-${n}, kind: line-hose, rated: 17 kV, tested: 2026-02-01 }`);
  expect(looked(brokenTie(...covers)).least).toBe(26);
});

it('no search by the plain rules is sooner', () => {
  const world = millLane();
  const { survey, deadly, least } = looked(world);
  const transitions = new Transitions(act(world, { act: 'acknowledge' }).world, null, ['knowledge', 'paper']);
  let wholeAt: number | null = null;
  exploreAll(transitions, ['park', 'go', 'operate', 'repair'], {
    runs: 2000,
    leaves: (each) => each.act === 'go' && each.to !== 'p2.butt',
    enter: (state, minute) => {
      if (wholeAt === null && isWhole(transitions.worldOf(state), deadly)) wholeAt = minute;
    },
  });
  expect(wholeAt).not.toBeNull();
  expect(survey.minutes + least).toBeLessThanOrEqual(wholeAt ?? 0);
});
