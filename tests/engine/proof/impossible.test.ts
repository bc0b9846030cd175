/** Jobs that no crew like this one can do: said to be so, with the reason; where every tool is there, a route is found (landmarks.test.ts). */
import { describe, expect, it } from 'vitest';
import { act, refusalOf } from '../../../src/engine/acts/act.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { restored, surveyed } from '../../../src/engine/proof/findRoute.ts';
import { deadlyFaults } from '../../../src/engine/proof/goals.ts';
import { impossibleAtOnce } from '../../../src/engine/proof/impossible.ts';
import { exploreAll } from '../../../src/engine/proof/learned/exploreAll.ts';
import { Transitions } from '../../../src/engine/proof/learned/transitions.ts';
import { routeClaims } from '../../../src/engine/proof/par.ts';
import { Means } from '../../../src/engine/proof/peek.ts';
import type { Claim } from '../../../src/engine/proof/types.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { claim, lay } from './planted.ts';
import { millLane, sceneOf } from './scenes.ts';

/** What the search for a way to restored service comes to. */
function searched(world: World): Claim {
  const means = new Means(world);
  const survey = surveyed(means, world);
  if (survey === null) throw new Error('the scene cannot be looked over');
  const found = restored(means, survey.route, deadlyFaults(hazardsIn(world)));
  return claim({ claims: routeClaims(null, found, null) }, 'restored');
}

const brokenTie = lay('{ id: tie, kind: tie-broken, on: p2.tie }');
const tieIn: Act = { act: 'repair', part: 'p2.tie', repair: 'tie-in' };

/** Tools put on the truck. */
const withTools = (...tools: readonly string[]): readonly [string, string] => [
  '  - { id: tags-1, kind: tags }',
  ['{ id: tags-1, kind: tags }', ...tools].map((tool) => `  - ${tool}`).join('\n'),
];
const bucket = '{ id: bucket-1, kind: bucket, rated: 46 kV, tested: 2026-02-01 }';
const grounds = ['{ id: ground-1, kind: ground-set }', '{ id: ground-2, kind: ground-set }'];
const arm = '{ id: arm-1, kind: auxiliary-arm, rated: 15 kV, tested: 2026-02-01 }';

it('what is done aloft, by a crew that cannot get up', () => {
  const { outcome, words } = searched(millLane(brokenTie));
  expect(outcome).toBe('holds');
  expect(words).toMatch(/done aloft, and nothing on the truck gets anybody up/);
});

it('what hangs on metal that nobody here can open', () => {
  const { outcome, words } = searched(sceneOf('hill-road-gloves'));
  expect(outcome).toBe('holds');
  expect(words).toMatch(/HL-3 stays alive whatever is opened here/);
});

it('what is done beside metal that nothing on the truck grounds', () => {
  const { outcome, words } = searched(millLane(brokenTie, withTools(bucket, arm)));
  expect(outcome).toBe('holds');
  expect(words).toMatch(/nothing on the truck to ground it with/);
});

it.each([
  ['nothing lifts anybody', millLane(brokenTie), /gets anybody up/],
  ['the source stays on it', sceneOf('beech-lane-number'), /BL-14 stays alive whatever is opened here/],
  ['what strikes', sceneOf('hill-road-gloves'), /can strike whoever goes there/],
  ['nothing grounds it', millLane(brokenTie, withTools(bucket, arm)), /nothing on the truck to ground it with/],
])('a short proof shows it before it tries anything: %s', (_what, world, why) => {
  const means = new Means(world);
  const survey = surveyed(means, world);
  if (survey === null) throw new Error('the scene cannot be looked over');
  const before = means.transitions;
  const { route, blocked } = restored(means, survey.route, deadlyFaults(hazardsIn(world)), true);
  expect(route).toBeNull();
  expect(blocked.map(({ never }) => never)).toEqual([expect.stringMatching(why)]);
  expect(means.transitions).toBe(before);
});

it('a short proof shows nothing of what this crew can do', () => {
  const world = millLane(brokenTie, withTools(bucket, ...grounds, arm));
  const survey = surveyed(new Means(world), world);
  if (survey === null) throw new Error('the scene cannot be looked over');
  expect(impossibleAtOnce(new Means(world), survey.route.stage.world, tieIn)).toBeNull();
});

describe('what can strike whoever does it', () => {
  const loose = millLane(brokenTie, withTools(bucket, ...grounds));

  it('by a crew that cannot hold it', () => {
    const { outcome, words } = searched(loose);
    expect(outcome).toBe('holds');
    expect(words).toMatch(/can strike whoever goes there, and nothing on the truck holds it/);
  });

  it('strikes in every arrangement that a search by the plain rules comes to', () => {
    const start = act(loose, { act: 'acknowledge' }).world;
    const transitions = new Transitions(start, null, ['knowledge', 'paper']);
    let looked = 0;
    exploreAll(transitions, ['park', 'go', 'aloft', 'come-down', 'operate', 'support'], {
      runs: 2500,
      leaves: (each) => each.act === 'go' && each.to !== 'p1.butt' && each.to !== 'p2.butt',
      enter: (state) => {
        const world = transitions.worldOf(state);
        if (refusalOf(world, tieIn) !== null || world.parts.find(({ id }) => id === 'p2.tie')?.faults.length === 0)
          return;
        looked++;
        const done = act(world, tieIn);
        expect(done.ok ? done.exposures.map(({ hazard }) => hazard) : []).toContain('drop:p2.tie');
      },
    });
    expect(looked).toBeGreaterThan(0);
  });
});
