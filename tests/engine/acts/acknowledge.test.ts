import { expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { build } from '../../../src/engine/world/build.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { played, quarryRoad } from './scene.ts';

const withSecondAfter = (secondMin: number): World => {
  const { scenario, hash } = quarryRoad();
  return build({ ...scenario, crew: { ...scenario.crew, secondMin } }, hash, 1);
};
const secondIn = (world: World) => world.people.find(({ role }) => role === 'second');

it('a second worker who rides along is there as soon as the truck is parked', () => {
  const parked = played(withSecondAfter(0), { act: 'acknowledge' }, { act: 'park', at: 'clear' });
  expect(secondIn(parked)?.at).not.toBeNull();
});

it('one who is to come is not there yet', () => {
  const parked = played(withSecondAfter(15), { act: 'acknowledge' }, { act: 'park', at: 'clear' });
  expect(secondIn(parked)?.at).toBeNull();
});

it('the dispatcher says which of the two it is', () => {
  const words = [0, 15].map((minutes) => {
    const result = act(withSecondAfter(minutes), { act: 'acknowledge' });
    return result.ok ? result.events[0]?.words : result.reason;
  });
  expect(words[0]).toMatch(/is with you\.$/);
  expect(words[1]).toMatch(/can be there in 15 minutes\.$/);
});
