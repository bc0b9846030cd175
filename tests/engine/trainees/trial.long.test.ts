/** Four hundred simulated trainees over every launch scenario: the score tells each careless habit from the careful one. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { habitOf } from '../../../src/engine/trainees/habits.ts';
import { takeDrill } from '../../../src/engine/trainees/takeDrill.ts';
import { isAsExpected, trial } from '../../../src/engine/trainees/trial.ts';
import { build } from '../../../src/engine/world/build.ts';

const folder = fileURLToPath(new URL('../../../scenarios/', import.meta.url));
const worlds = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .sort()
  .map((name) => {
    const parsed = parse(readFileSync(`${folder}${name}`, 'utf8'), name);
    if (!parsed.ok) throw new Error(`${name} cannot be read`);
    return build(parsed.scenario, parsed.hash, 1);
  });

describe.each([1, 2])('with seed %i', (seed) => {
  const { pairs, habits } = trial(worlds, { trainees: 400, seed });

  it.each(pairs)('$habit against $against in $part: $expected', (pair) => {
    expect([pair.auc, isAsExpected(pair)]).toEqual([pair.auc, true]);
    if (pair.expected === 'differs') expect(pair.scenes.length).toBeGreaterThan(0);
  });

  it('calling everything gains nothing', () => {
    const mean = (id: string): number => habits.find(({ habit }) => habit === id)?.parts.recognition.mean ?? Number.NaN;
    expect(mean('calls-everything')).toBeLessThan(mean('stops-after-first'));
  });
});

it.each(worlds.map((world) => [world.scenario, world] as const))('the careful one exposes nobody in %s', (_, world) => {
  const exposed = takeDrill(world, habitOf('careful'), '1/1').steps.flatMap(({ exposures }) => exposures);
  expect(exposed.map(({ hazard, failed }) => `${hazard} ${failed.join()}`)).toEqual([]);
});
