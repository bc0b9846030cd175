/** What the prover takes an act to meet, learned mechanism by mechanism, against what the engine's mechanisms meet together. */
import { expect, it } from 'vitest';
import { act, carryOut } from '../../../src/engine/acts/act.ts';
import { possibleActs } from '../../../src/engine/acts/possibleActs.ts';
import type { Act, ActName } from '../../../src/engine/acts/types.ts';
import { met } from '../../../src/engine/hazards/exposuresOf.ts';
import { nextInteger, seedFrom } from '../../../src/engine/math/random.ts';
import { Means } from '../../../src/engine/proof/peek.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { sceneOf } from './scenes.ts';

const arriving: readonly Act[] = [{ act: 'acknowledge' }, { act: 'park', at: 'clear' }];
const nearing: readonly ActName[] = ['go', 'aloft', 'come-down', 'operate', 'wear', 'repair'];
const handling: readonly ActName[] = ['operate', 'touch', 'ground', 'repair', 'test', 'cover', 'sound', 'aloft'];
const LOOKS = 8;

type Told = readonly (readonly [string, readonly string[]])[];

/** What an act meets by the engine: by what it does to the metal as well, and in the World before alone. */
function byEngine(world: World, each: Act): { readonly all: Told; readonly before: Told } {
  const { passed, settled, reach } = carryOut(world, each);
  const metIn = (later: World): Told =>
    reach.flatMap((by) => met(by, passed, later).map(({ hazard, failed }) => [hazard, failed] as const));
  return { all: metIn(settled), before: metIn(passed) };
}

const byProver = (means: Means, world: World, each: Act): Told =>
  means
    .peek(world, each)
    .obstacles.filter(({ is }) => is === 'exposed')
    .map(({ id, failed }) => [id, failed]);

const done = (world: World, acts: readonly Act[]): World => acts.reduce((now, each) => act(now, each).world, world);

it('an act meets what the engine says it meets, along a drill drawn at random', () => {
  const start = sceneOf('mill-lane-refuse');
  const means = new Means(start);
  let random = seedFrom(1);
  const draw = <T>(list: readonly T[]): T => {
    const [drawn, next] = nextInteger(random, 0, list.length - 1);
    random = next;
    return list[drawn] as T;
  };
  let meeting = 0;
  let world = done(start, arriving);
  for (let step = 0; step < 8; step++) {
    const offers = possibleActs(world, handling);
    for (let i = 0; i < LOOKS && offers.length > 0; i++) {
      const { act: each } = draw(offers);
      const { all } = byEngine(world, each);
      expect(byProver(means, world, each), JSON.stringify(each)).toEqual(all);
      if (all.length > 0) meeting++;
    }
    const next = act(world, draw(possibleActs(world, nearing)).act);
    if (next.world.ended === null) world = next.world;
  }
  expect(meeting).toBeGreaterThan(5);
});

it('and so does one that meets it only by what it does to the metal', () => {
  const start = sceneOf('beech-lane-number');
  const means = new Means(start);
  const there = done(start, [...arriving, { act: 'go', to: 'p2.butt' }]);
  const clamped = possibleActs(there, ['ground']).filter(
    ({ act: each }) => each.act === 'ground' && each.points.includes('p2.insulator/pin'),
  );
  const only = clamped.filter(({ act: each }) => {
    const { all, before } = byEngine(there, each);
    expect(byProver(means, there, each), JSON.stringify(each)).toEqual(all);
    return all.length > before.length;
  });
  expect(only.length).toBeGreaterThan(0);
});
