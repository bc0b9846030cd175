/** Four hundred simulated trainees over every launch scenario: the score tells each careless habit from the careful one. */
import { describe, expect, it } from 'vitest';
import { habitOf } from '../../../src/engine/trainees/habits.ts';
import { takeDrill } from '../../../src/engine/trainees/takeDrill.ts';
import { isAsExpected, trial } from '../../../src/engine/trainees/trial.ts';
import { launchIds, launchWorld } from '../../logs/committed.ts';

const worlds = launchIds.map((id) => launchWorld(id));

describe.each([1, 2])('with seed %i', (seed) => {
  const { pairs, habits } = trial(worlds, { trainees: 400, seed });

  it.each(pairs)('$habit against $against in $part: $expected', (pair) => {
    expect([pair.auc, isAsExpected(pair)]).toEqual([pair.auc, true]);
    if (pair.expected === 'differs') expect(pair.compared).toBeGreaterThan(0);
  });

  it('calling everything gains nothing', () => {
    const mean = (id: string): number => habits.find(({ habit }) => habit === id)?.parts.recognition.mean ?? Number.NaN;
    expect(mean('calls-everything')).toBeLessThan(mean('stops-after-first'));
    expect(habits.find(({ habit }) => habit === 'calls-everything')?.passed.count).toBe(0);
  });
});

it.each(worlds.map((world) => [world.scenario, world] as const))('the careful one exposes nobody in %s', (_, world) => {
  const exposed = ['1/1', '1/2', '2/1', '3/1'].flatMap((luck) =>
    takeDrill(world, habitOf('careful'), luck).steps.flatMap(({ exposures }) => exposures),
  );
  expect(exposed.map(({ hazard, failed }) => `${hazard} ${failed.join()}`)).toEqual([]);
});
