/** The bound by careful drills on greater scenes: nothing is under the route, and what it found holds when `act` walks it. */
import { expect, it } from 'vitest';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { carefulOf } from '../../../src/engine/proof/careful.ts';
import { surveyed } from '../../../src/engine/proof/findRoute.ts';
import { deadlyFaults, isRestored } from '../../../src/engine/proof/goals.ts';
import { guessed } from '../../../src/engine/proof/guessed.ts';
import { Means } from '../../../src/engine/proof/peek.ts';
import { atStart, deedFurther, type Stage } from '../../../src/engine/proof/walkThrough.ts';
import { sceneOf } from './scenes.ts';

it('a street with traffic and a dog: no minute under the route', () => {
  const start = sceneOf('high-street-bucket');
  const deadly = deadlyFaults(hazardsIn(start));
  const found = carefulOf(new Means(start), start, deadly, { most: 15, runs: 6000, slack: 6 });
  expect(found).toMatchObject({ atLeast: 16, acts: null });
});

it('what it found holds when act walks it', () => {
  const start = sceneOf('sunny-bank-plant');
  const means = new Means(start);
  const deadly = deadlyFaults(hazardsIn(start));
  const survey = surveyed(means, start);
  const found = carefulOf(means, start, deadly, { most: 12, runs: 6000, slack: 6 });
  expect(found.atLeast).toBe(12);
  const looks = survey?.route.deeds.filter((deed) => deed.act.act !== 'call-finding') ?? [];
  const end = guessed(start, found.acts ?? [], looks).reduce<Stage | null>(
    (stage, deed) => stage && deedFurther(means, stage, deed, survey?.wanted ?? []),
    atStart(start),
  );
  expect(end?.world.clock.minute).toBe(12);
  expect(end !== null && isRestored(end.world, deadly)).toBe(true);
});
