/** Reaches in the fog scene, as acts would state them, and the scene in states that the job passes through. */
import type { Reach, Through } from '../../../src/engine/hazards/types.ts';
import { standById, trainee, withPart, withPerson, withTool } from '../../../src/engine/world/edit.ts';
import type { Part, World } from '../../../src/engine/world/types.ts';

export const bareHand: Through = { stick: null, gloves: null };

/** Somebody standing at a stand for a minute. */
export function at(world: World, stand: string): Reach {
  const found = standById(world, stand);
  if (found === null) throw new Error(`no stand ${stand}`);
  return {
    who: trainee(world).id,
    stand,
    at: found.feet,
    aloft: found.aloft !== null,
    touches: [],
    switches: null,
    disturbs: null,
    climbs: null,
    works: false,
    seconds: 60,
  };
}

export const touching = (world: World, stand: string, point: string, through: Through = bareHand): Reach => ({
  ...at(world, stand),
  touches: [{ point, through }],
});

export const closing = (world: World, part: string, stick = 'stick-1'): Reach => ({
  ...at(world, `${part.slice(0, 2)}.road`),
  touches: [{ point: `${part}/bottom`, through: { stick, gloves: null } }],
  switches: { part, makes: [`${part}/top`, `${part}/bottom`], breaks: null, through: { stick, gloves: null } },
});

const inState = (world: World, part: string, state: Part['state']): World =>
  withPart(world, part, { state: { ...world.parts.find(({ id }) => id === part)?.state, ...state } });

/** The owner has stopped the set, nothing else. */
export const setStopped = (world: World): World => inState(world, 'a.generator', { run: 'stopped' });

/** The owner has opened the main as well. */
export const mainOpen = (world: World): World => inState(setStopped(world), 'a.main', { position: 'open' });

/** First meter out, blanked and tagged: the set is kept apart. */
export const setApart = (world: World): World =>
  withPart(inState(mainOpen(world), 'a.meter', { position: 'blanked' }), 'a.meter', {
    tags: ['hold'],
    state: { position: 'blanked' },
  });

/** The tap's tube taken out as well. */
export const tapOut = (world: World): World =>
  withPart(inState(setApart(world), 'p1.tap-cutout', { position: 'removed' }), 'p1.tap-cutout', { tags: ['hold'] });

/** Grounded at the dead-end pole as well. */
export const grounded = (world: World): World => ({
  ...tapOut(world),
  jumpers: [{ id: 'j1', tool: 'ground-1', points: ['p3.neutral-spool/neutral', 'p3.deadend/conductor'] }],
});

/** A stick wiped and dry, gloves air-tested. */
export const ready = (world: World): World =>
  withTool(withTool(world, 'stick-1', { wet: false, checks: { wipe: { minute: 1, ok: true } } }), 'gloves-1', {
    checks: { 'air-test': { minute: 1, ok: true } },
  });

export const wearing = (world: World, ...tools: readonly string[]): World =>
  withPerson(world, trainee(world).id, { wearing: [...tools].sort() });

export const secondHere = (world: World): World => ({
  ...world,
  people: world.people.map((person) => (person.role === 'second' ? { ...person, at: 'p2.road' } : person)),
});
