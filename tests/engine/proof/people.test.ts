/** Faults of people, orders and the site: found, biting and controlled like those of metal. */
import { describe, expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { claim, lay, proved } from './planted.ts';
import { millLane } from './scenes.ts';

const bucket: readonly [string, string] = [
  '  - { id: tags-1, kind: tags }',
  '  - { id: tags-1, kind: tags }\n  - { id: bucket-1, kind: bucket, rated: 46 kV, tested: 2026-02-01 }',
];

const played = (start: World, acts: readonly Act[]): World =>
  acts.reduce((world, each) => {
    const done = act(world, each);
    if (!done.ok) throw new Error(done.reason);
    return done.world;
  }, start);

const signsIn = ({ knowledge: { looks, tests } }: World): readonly string[] => [
  ...looks.flatMap(({ seen }) => seen),
  ...tests.flatMap(({ sign }) => sign ?? []),
];

describe('an untrained second worker who comes later', () => {
  const start = millLane(lay('{ id: green, kind: second-unqualified, on: second }'), bucket, [
    'second-after: 0 min',
    'second-after: 10 min',
  ]);
  const proof = proved(start);

  it('is found by waiting and looking', () => {
    const found = claim(proof, 'findable:green');
    expect(found.outcome).toBe('holds');
    expect(signsIn(played(start, found.acts)).some((sign) => sign.startsWith('green/'))).toBe(true);
  });

  it('bites who goes up with nobody who could help', () => {
    const bite = claim(proof, 'bites:barrier-loss:second');
    expect(bite.outcome).toBe('holds');
    const last = bite.acts.at(-1) as Act;
    const done = act(played(start, bite.acts.slice(0, -1)), last);
    expect(done.ok && done.exposures.some(({ failed }) => failed.includes('second-qualified'))).toBe(true);
  });
});

describe('a dispatcher who has another circuit in mind', () => {
  const start = millLane(lay('{ id: wrong, kind: circuit-number-wrong, on: dispatcher }'));
  const proof = proved(start);

  it('is found by asking, and set right by a word', () => {
    const found = claim(proof, 'findable:wrong');
    expect(found.outcome).toBe('holds');
    expect(signsIn(played(start, found.acts)).some((sign) => sign.startsWith('wrong/'))).toBe(true);
    expect(claim(proof, 'controls:wrong').outcome).toBe('holds');
  });

  it('bites whoever relies on the clearance', () => {
    const bite = claim(proof, 'bites:barrier-loss:dispatcher');
    expect(bite.outcome).toBe('holds');
    expect(bite.acts.some((each) => each.act === 'clearance')).toBe(true);
  });
});

it('a worker who never comes is told of by the dispatcher', () => {
  const start = millLane(lay('{ id: alone, kind: working-alone, on: second }'));
  const found = claim(proved(start), 'findable:alone');
  expect(found.outcome).toBe('holds');
  expect(found.acts.at(-1)).toEqual({ act: 'ask', who: 'dispatcher', about: 'eta' });
});

it('a thunderstorm is controlled by putting the work off till it is over', () => {
  const proof = proved(millLane(lay('{ id: storm, kind: lightning-near, on: site }'), ['20 klx', '4 klx']));
  expect(claim(proof, 'findable:storm').outcome).toBe('holds');
  expect(claim(proof, 'controls:storm')).toMatchObject({
    outcome: 'holds',
    words: expect.stringMatching(/Works here: /),
  });
});

it('a glove of too low a class bites by being put on', () => {
  const proof = proved(
    millLane(lay('{ id: low, kind: glove-class-low, on: gloves-2 }'), [
      '  - { id: tags-1, kind: tags }',
      '  - { id: tags-1, kind: tags }\n  - { id: gloves-2, kind: rubber-gloves, rated: 1 kV, tested: 2026-02-10 }',
    ]),
  );
  const bite = claim(proof, 'bites:barrier-loss:gloves-2');
  expect(bite.outcome).toBe('holds');
  expect(bite.acts).toContainEqual({ act: 'wear', tool: 'gloves-2', on: true });
});
