/** What a short proof leaves out, and what it does not: every way into a hazard that it tells is one. */
import { expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { prove } from '../../../src/engine/proof/prove.ts';
import type { Proof } from '../../../src/engine/proof/types.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { disconnector, lay } from './planted.ts';
import { millLane } from './scenes.ts';

const short = (world: World): Proof => prove(world, { seed: 1, tries: 1, most: 1500, inShort: true });

it('the acts that gloves which have a hole are said to bite by end in an exposure', () => {
  const start = millLane(lay('{ id: hole, kind: glove-pinhole, on: gloves-1 }'));
  const bite = short(start).claims.find(({ id }) => id === 'bites:barrier-loss:gloves-1');
  expect(bite?.outcome).toBe('holds');
  const acts = bite?.acts ?? [];
  const before = acts.slice(0, -1).reduce((world, each) => act(world, each).world, start);
  const last = act(before, acts.at(-1) ?? { act: 'acknowledge' });
  expect(last.ok && last.exposures.map(({ hazard }) => hazard)).not.toEqual([]);
});

it('a scene in which something cannot be found is looked at no further', () => {
  const { ok, claims, par } = short(millLane(disconnector, ['visibility: 12 km', 'visibility: 5 m']));
  expect(ok).toBe(false);
  expect(par).toBeNull();
  expect(claims.map(({ id, outcome }) => [id, outcome])).toEqual([
    ['findable:spent', 'fails'],
    ['information', 'fails'],
  ]);
});
