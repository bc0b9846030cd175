/** The fog scene as a World, and changes to it. */
import { readFileSync } from 'node:fs';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { build } from '../../../src/engine/world/build.ts';
import type { World } from '../../../src/engine/world/types.ts';

const file = 'scenarios/quarry-road-fog.yaml';

/** The scene at the start. */
export function fogScene(seed = 1): World {
  const parsed = parse(readFileSync(file, 'utf8'), file);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return build(parsed.scenario, parsed.hash, seed);
}
