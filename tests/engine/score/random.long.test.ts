/** Ten thousand random drills over every launch scenario: each is scored, none throws, none has a part outside 0 to 1. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { score } from '../../../src/engine/score/score.ts';
import { build } from '../../../src/engine/world/build.ts';
import { randomDrill, wellFormed } from './randomDrill.ts';

const folder = fileURLToPath(new URL('../../../scenarios/', import.meta.url));
const worlds = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => {
    const parsed = parse(readFileSync(`${folder}${name}`, 'utf8'), name);
    if (!parsed.ok) throw new Error(`${name} cannot be read`);
    return build(parsed.scenario, parsed.hash, 1);
  });

it('10,000 random drills are scored', () => {
  const bad: string[] = [];
  for (let seed = 1; seed <= 10_000; seed++) {
    const world = worlds[seed % worlds.length];
    if (world === undefined) throw new Error('no scenario');
    bad.push(...wellFormed(score(randomDrill(world, seed, 10))).map((each) => `seed ${seed}: ${each}`));
  }
  expect(bad).toEqual([]);
});
