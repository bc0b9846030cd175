/** Small scenes for the prover: the sound pole of Mill Lane, changed by what a test plants in it. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { build } from '../../../src/engine/world/build.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { root } from '../../../src/setup/run.mjs';

const folder = join(root, 'scenarios');

/** Names of the shipped scenarios, without ending. */
export const shipped = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.slice(0, -'.yaml'.length))
  .sort();

const yaml = (name: string): string => readFileSync(join(folder, `${name}.yaml`), 'utf8');

const built = (text: string, name: string): World => {
  const parsed = parse(text, name, { parts: (scenario) => build(scenario, '').parts });
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return build(parsed.scenario, parsed.hash, 1);
};

/** A fresh World of a shipped scenario. */
export const sceneOf = (name: string): World => built(yaml(name), name);

/** Mill Lane with pieces of its text replaced; each must be there. */
export const millLane = (...changes: readonly (readonly [from: string, to: string])[]): World =>
  built(
    changes.reduce((text, [from, to]) => {
      if (!text.includes(from)) throw new Error(`no such text: ${from}`);
      return text.replace(from, to);
    }, yaml('mill-lane-refuse')),
    'mill-lane',
  );
