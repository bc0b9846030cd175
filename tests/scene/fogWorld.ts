/** The fog scene as a World and as a snapshot, in browser and Node alike. */

import text from '../../scenarios/quarry-road-fog.yaml?raw';
import type { Snapshot } from '../../src/drill/types.ts';
import { parse } from '../../src/engine/scenario/parse.ts';
import type { Scenario } from '../../src/engine/scenario/types.ts';
import { build } from '../../src/engine/world/build.ts';
import type { World } from '../../src/engine/world/types.ts';

const read = () => {
  const parsed = parse(text, 'quarry-road-fog.yaml');
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return parsed;
};

/** The scene as it is written. */
export const fogScenario = (): Scenario => read().scenario;

/** The scene at the start. */
export const fogWorld = (): World => {
  const { scenario, hash } = read();
  return build(scenario, hash, 1);
};

/** What a picture is shown of a World by somebody who stands there. */
export const snapshotAt = (world: World, stand: string): Snapshot => ({
  stage: 'survey',
  world,
  stand,
  heard: [],
  events: [],
  journal: [],
  customersOut: 2,
  refused: null,
  log: {
    format: 'loose-tie-log',
    version: 1,
    scenario: world.scenario,
    scenarioHash: world.scenarioHash,
    engine: 'test',
    seed: 1,
    par: null,
    entries: [],
  },
  score: null,
});
