/** The bound by careful drills: held against a search of all that a drill can do, and against routes. */
import { expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { kinds } from '../../../src/engine/acts/kinds.ts';
import type { Act, ActName } from '../../../src/engine/acts/types.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { carefulOf } from '../../../src/engine/proof/careful.ts';
import { deadlyFaults, isRestored } from '../../../src/engine/proof/goals.ts';
import { exploreAll } from '../../../src/engine/proof/learned/exploreAll.ts';
import { Transitions } from '../../../src/engine/proof/learned/transitions.ts';
import { Means } from '../../../src/engine/proof/peek.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { millLane, sceneOf } from './scenes.ts';

const careful = (start: World, most: number, slack = 20) =>
  carefulOf(new Means(start), start, deadlyFaults(hazardsIn(start)), { most, runs: 6000, slack });

/** Kinds by which nothing of a drill can come but words on paper. */
const paper: readonly ActName[] = ['call-finding', 'withdraw-finding', 'plan', 'withdraw-plan', 'hand-over'];
const all = (Object.keys(kinds) as ActName[]).filter((name) => !paper.includes(name));

/** The least minutes in which anything that the engine offers ends restored with nobody exposed, between few places. */
function leastOf(start: World, stands: readonly string[], leaves: (each: Act) => boolean): number | null {
  const { met } = new Means(start).step;
  const deadly = deadlyFaults(hazardsIn(start));
  const transitions = new Transitions(act(start, { act: 'acknowledge' }).world, met);
  let least: number | null = null;
  exploreAll(transitions, all, {
    states: 60_000,
    leaves: (each) => (each.act === 'go' && !stands.includes(each.to)) || leaves(each),
    counts: (_, { judged }) => judged.every(({ meetings }) => meetings.length === 0),
    enter: (tuple, minute) => {
      const world = transitions.worldOf(tuple);
      if (world.ended === 'closed-out' && isRestored(world, deadly)) least = minute;
      return least !== null;
    },
  });
  return least;
}

/** The tap's cutout found open, its link whole, and of the tools only those that close it. */
const leftOpen = (): World =>
  millLane(
    ['state: { position: open, link: blown }', 'state: { position: open }'],
    ['  - { id: hammer-1, kind: hammer }\n', ''],
    ['  - { id: prod-1, kind: prod }\n', ''],
    ['  - { id: shield-1, kind: face-shield }\n', ''],
    ['  - { id: tester-1, kind: low-voltage-tester, rated: 600 V }\n', ''],
    ['  - { id: detector-1, kind: detector, rated: 15 kV }\n', ''],
  );

it('no drill is shorter by a search of all that it can do', () => {
  const start = leftOpen();
  const knows: readonly ActName[] = [
    'look',
    'listen',
    'ask',
    'brief',
    'sound',
    'prod',
    'count-grounds',
    'everyone-clear',
  ];
  const least = leastOf(
    start,
    ['p2.butt'],
    ({ act: name }) => knows.includes(name) || name === 'tell' || name === 'touch',
  );
  expect(least).not.toBeNull();
  const { atLeast, acts } = careful(start, 20);
  expect(atLeast).toBeLessThanOrEqual(least ?? 0);
  // Parked, the gloves tested or the stick wiped, closed from where the truck stands, closed out.
  expect(atLeast).toBe(least);
  expect(acts?.map((each) => each.act).sort()).toEqual(['check-tool', 'close-out', 'operate', 'park']);
});

it('what it finds no minute under is what a route takes', () => {
  const start = sceneOf('mill-lane-refuse');
  expect(careful(start, 13)).toMatchObject({ atLeast: 14, acts: null });
  expect(careful(start, 14).acts?.length).toBeGreaterThan(0);
});

it('a stick that is dry and gloves that are tested cost the minute that nothing is done without', () => {
  // Nobody is exposed where nothing is alive: then no check is asked for, and the bound is a minute less.
  const start = sceneOf('mill-lane-refuse');
  const means = new Means(start, { ...new Means(start).step, met: () => [] });
  expect(carefulOf(means, start, new Set(), { most: 20, runs: 6000, slack: 20 }).atLeast).toBe(13);
});

it('where more minutes are open than it is asked to close, it says what is known to come', () => {
  const start = sceneOf('quarry-road-fog');
  expect(careful(start, 112, 6)).toMatchObject({ acts: null, states: 0 });
});
