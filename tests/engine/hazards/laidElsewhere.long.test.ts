/** Faults on tools, people and the site: each is a cause of a hazard where it is laid, and of none where it is not. */
import { describe, expect, it } from 'vitest';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { crewScenario, crewWorld } from './crewScene.ts';

const who: Readonly<Record<string, readonly string[]>> = {
  'bystander-in-zone': ['neighbour'],
  'child-in-zone': ['boy'],
  'dog-loose': ['dog'],
};

/** Water, and a bond that is gone, only bring near what leaks already. */
const along: Readonly<Record<string, readonly string[]>> = {
  'flooded-ground': ['leak', 'bond'],
  'ground-bond-burned-off': ['leak'],
};

describe.each(crewScenario.faults.map(({ id, kind }) => [kind, id] as const))('%s', (kind, id) => {
  it('makes a hazard, alone and as its cause', () => {
    const world = crewWorld({ faults: [id, ...(along[kind] ?? [])], people: who[kind] ?? [] });
    const caused = hazardsIn(world).filter(({ causes }) => causes.includes(id));
    expect(caused.length).toBeGreaterThan(0);
  });
});

it('nothing of tools, people and site is a hazard in a scene without faults', () => {
  const hazards = hazardsIn(crewWorld({ people: ['flagger'], blocked: true }));
  expect(hazards.filter(({ causes }) => causes.length > 0)).toEqual([]);
  const around = hazards.filter(
    ({ part, id }) => part === 'site' || id.startsWith('barrier-loss:') || id.includes('@'),
  );
  expect(around.filter(({ id }) => id !== 'barrier-loss:gloves-3').map(({ id }) => id)).toEqual([]);
});
