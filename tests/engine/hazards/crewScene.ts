/** The scene of people and tools with only the faults that a test lays, its events or none, from the file in tests/scenarios/people. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { act } from '../../../src/engine/acts/act.ts';
import type { Act, ActResult } from '../../../src/engine/acts/types.ts';
import type { Scenario, ScenarioSite } from '../../../src/engine/scenario/types.ts';
import { build } from '../../../src/engine/world/build.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { scenarioIn } from '../scenario/read.ts';

const file = fileURLToPath(new URL('../../scenarios/people/crew.yaml', import.meta.url));
export const crewScenario: Scenario = scenarioIn(readFileSync(file, 'utf8')).scenario;

export interface Scene {
  readonly faults?: readonly string[];
  readonly people?: readonly string[];
  readonly events?: boolean;
  readonly site?: Partial<ScenarioSite>;
  readonly blocked?: boolean;
}

/** A World with the faults named by their id, and of the others only the people named. */
export function crewWorld({ faults = [], people = [], events = false, site = {}, blocked = false }: Scene = {}): World {
  const { supply } = crewScenario;
  return build(
    {
      ...crewScenario,
      faults: crewScenario.faults.filter(({ id }) => faults.includes(id)),
      lookAlikes: [],
      people: crewScenario.people.filter(({ id }) => people.includes(id)),
      events: events ? crewScenario.events : [],
      site: { ...crewScenario.site, ...site },
      supply: { ...supply, ...(supply.recloser ? { recloser: { ...supply.recloser, blocked } } : {}) },
    },
    'crew',
  );
}

export type Done = Extract<ActResult, { ok: true }>;

/** The last of the acts; each must be possible. */
export function last(world: World, ...acts: readonly Act[]): Done {
  let result: Done | null = null;
  for (const each of acts) {
    const now = act(result?.world ?? world, each);
    if (!now.ok) throw new Error(`${JSON.stringify(each)}: ${now.reason}`);
    result = now;
  }
  if (result === null) throw new Error('no act');
  return result;
}

export const arrive: readonly Act[] = [
  { act: 'acknowledge' },
  { act: 'park', at: 'clear' },
  { act: 'engine', on: false },
];

/** Belted and in the bucket at the work on p2, the second worker there and briefed. */
export const upP2: readonly Act[] = [
  { act: 'wait', minutes: 6 },
  { act: 'go', to: 'p2.butt' },
  { act: 'wear', tool: 'harness-1', on: true },
  { act: 'wear', tool: 'hat-1', on: true },
  {
    act: 'brief',
    topics: ['hazards', 'procedures', 'precautions', 'energy-controls', 'protective-equipment'],
    rescue: true,
  },
  { act: 'aloft', pole: 'p2', by: 'bucket', zone: 'work' },
];

/** Ids of hazards of the exposures, and whose. */
export const met = ({ exposures }: Done): readonly string[] => exposures.map(({ hazard, who }) => `${hazard} ${who}`);
