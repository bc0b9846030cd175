/** The small scenes of tests/scenarios/models as Worlds, with or without their faults, on any system. */
import { readdirSync, readFileSync } from 'node:fs';
import { parse } from '../../../../src/engine/scenario/parse.ts';
import type { Scenario } from '../../../../src/engine/scenario/types.ts';
import { build } from '../../../../src/engine/world/build.ts';
import { faultsOf, withoutFault } from '../../../../src/engine/world/edit.ts';
import type { World } from '../../../../src/engine/world/types.ts';

const folder = 'tests/scenarios/models';

export const modelNames: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.replace('.yaml', ''))
  .sort();

export const modelText = (name: string): string => readFileSync(`${folder}/${name}.yaml`, 'utf8');

/** The World of a text, or a failure that shows the problems. */
export function worldOf(text: string, name = 'model'): World {
  const parsed = parse(text, name, { parts: (scenario: Scenario) => build(scenario, '', 1).parts });
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return build(parsed.scenario, parsed.hash, 1);
}

export const model = (name: string): World => worldOf(modelText(name), name);

/** The scene with no fault laid but those named. */
export const only = (world: World, ...kept: readonly string[]): World =>
  faultsOf(world)
    .map(({ fault }) => fault.id)
    .filter((id) => !kept.includes(id))
    .reduce(withoutFault, world);
