/** Variants of every scenario of the library, by several seeds: each is read again as it was drawn, is nothing odd, and its par can be walked. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { faultIn, parFile } from '../../../src/engine/proof/parForm.ts';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { variantAt } from '../../../src/engine/variants/generate.ts';
import { oddIn } from '../../../src/engine/variants/odd.ts';
import type { Variant } from '../../../src/engine/variants/types.ts';
import { build } from '../../../src/engine/world/build.ts';
import { root } from '../../../src/setup/run.mjs';

const folder = join(root, 'scenarios');
const bases = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .sort()
  .map((name) => ({ id: name.slice(0, -'.yaml'.length), text: readFileSync(join(folder, name), 'utf8') }));

/** What is wrong with a variant by what it says of itself; empty where nothing is. */
function wrongWith({ yaml, scenario, hash, proof }: Variant): readonly string[] {
  const parsed = parse(yaml, 'variant', { parts: (read) => build(read, '').parts });
  if (!parsed.ok) return parsed.problems.map(({ message }) => message);
  const world = build(parsed.scenario, parsed.hash, 1);
  const behind = new Set(hazardsIn(world).flatMap(({ causes }) => causes));
  const file = parFile(proof);
  return [
    ...(parsed.hash === hash && JSON.stringify(parsed.scenario) === JSON.stringify(scenario)
      ? []
      : ['reads otherwise']),
    ...[oddIn(parsed.scenario, world) ?? []].flat(),
    ...scenario.faults.filter(({ id }) => !behind.has(id)).map(({ id }) => `${id} does no harm`),
    ...proof.claims.filter(({ outcome }) => outcome === 'fails').map(({ words }) => words),
    ...(file === null ? ['it has no par'] : [faultIn(world, file) ?? []].flat()),
  ];
}

describe.each([101, 202, 4_294_967_295])('seed %i', (seed) => {
  it.each(bases.map(({ id }) => id))('%s', (id) => {
    const options = { seed, bases: bases.filter((base) => base.id === id) };
    const all = [1, 2].map((number) => variantAt(options, number));
    expect(all.every(({ variant }) => variant !== null)).toBe(true);
    for (const { variant } of all) expect(variant && wrongWith(variant), variant?.yaml).toEqual([]);
    expect(variantAt(options, 2).variant?.yaml).toBe(all[1]?.variant?.yaml);
  });
});
