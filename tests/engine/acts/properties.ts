import fc from 'fast-check';
import { expect } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import { looksFrom, possibleActs } from '../../../src/engine/acts/possibleActs.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import { stageOf } from '../../../src/engine/acts/stageOf.ts';
import type { Log } from '../../../src/engine/acts/types.ts';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { canonicalJson } from '../../../src/engine/math/hash.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { type Choice, choices, chosen } from './anyActs.ts';
import { frozen, onScene, start } from './scene.ts';

const scene = onScene();
const opening: readonly Choice[] = [{ act: { act: 'acknowledge' } }, { act: { act: 'park', at: 'under-line' } }];

/** Everything that a World names is there, and every part stands in a state that its kind knows. */
function complaints(world: World): readonly string[] {
  const stands = new Set(world.stands.map(({ id }) => id));
  const tools = new Set(world.tools.map(({ id }) => id));
  const parts = new Set(world.parts.map(({ id }) => id));
  const found: string[] = [];
  for (const { id, at, wearing } of world.people) {
    if (at !== null && !stands.has(at)) found.push(`${id} stands at ${at}`);
    for (const tool of wearing) if (!tools.has(tool)) found.push(`${id} wears ${tool}`);
  }
  for (const { tool, points } of world.jumpers) {
    if (!tools.has(tool) || points.some((point) => !parts.has(point.split('/')[0] ?? '')))
      found.push(`jumper ${tool} ${points}`);
  }
  for (const { part, tool } of world.covers)
    if (!parts.has(part) || !tools.has(tool)) found.push(`cover ${tool} on ${part}`);
  for (const part of world.parts) {
    const { states } = componentKind(part.kind);
    for (const [name, value] of Object.entries(part.state)) {
      if (!states[name]?.includes(value)) found.push(`${part.id} ${name}=${value}`);
    }
  }
  if (!Number.isInteger(world.clock.minute)) found.push(`minute ${world.clock.minute}`);
  return found;
}

/** Plays the choices from the call on; refused acts stay out of the log. */
function play(from: World, picks: readonly Choice[]): { world: World; log: Log; refusedSame: boolean } {
  let world = from;
  let log = newLog(from, 1);
  let refusedSame = true;
  for (const pick of picks) {
    const intent = chosen(world, pick);
    if (intent === null) continue;
    const before = canonicalJson(world);
    const result = act(world, intent);
    if (!result.ok) {
      refusedSame &&= result.world === world && canonicalJson(world) === before;
      continue;
    }
    // Somebody struck ends a drill; the sequence goes on from before, so that it gets somewhere.
    if (result.world.ended === 'struck') continue;
    world = frozen(result.world);
    log = appendEntry(log, intent, world);
  }
  return { world, log, refusedSame };
}

/** How many sequences, how long; seeded, so that a run can be repeated. */
export interface Extent {
  readonly numRuns: number;
  readonly seed: number;
  readonly length: number;
}

/** A valid, plain World after any acts, and refused acts that change nothing. */
export const staysValid = ({ length, ...runs }: Extent): void =>
  fc.assert(
    fc.property(choices(scene, length), (picks) => {
      const { world, refusedSame } = play(scene, picks);
      expect(refusedSame).toBe(true);
      expect(JSON.parse(canonicalJson(world))).toEqual(world);
      expect(complaints(world)).toEqual([]);
      expect(world.clock.minute).toBeGreaterThanOrEqual(scene.clock.minute);
    }),
    runs,
  );

/** The log of any acts replays to the very same World. */
export const replaysAlike = ({ length, ...runs }: Extent): void =>
  fc.assert(
    fc.property(choices(scene, length), (picks) => {
      const { world, log } = play(start(), [...opening, ...picks]);
      const replayed = replay(start(), log);
      if (!replayed.ok) throw new Error(replayed.problem.words);
      expect(canonicalJson(replayed.replay.end)).toBe(canonicalJson(world));
      expect(stageOf(replayed.replay.end)).toBe(stageOf(world));
    }),
    runs,
  );

/** Offers go through when sent, once each, in the minutes that they say. */
export const offersHold = ({ length, ...runs }: Extent, every: number): void =>
  fc.assert(
    fc.property(choices(scene, length), fc.nat(), (picks, which) => {
      const { world } = play(scene, picks);
      const offers = [...possibleActs(world), ...looksFrom(world)];
      expect(new Set(offers.map((offer) => canonicalJson(offer.act))).size).toBe(offers.length);
      for (const offer of offers.filter((_, index) => index % every === which % every)) {
        const result = act(world, offer.act);
        if (!result.ok) throw new Error(`${offer.label}: ${result.reason}`);
        expect(result.world.clock.minute - world.clock.minute).toBe(offer.minutes);
      }
    }),
    runs,
  );
