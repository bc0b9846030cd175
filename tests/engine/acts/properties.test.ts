import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import { looksFrom, possibleActs } from '../../../src/engine/acts/possibleActs.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import { stageOf } from '../../../src/engine/acts/stageOf.ts';
import type { Log } from '../../../src/engine/acts/types.ts';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { canonicalJson } from '../../../src/engine/math/hash.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { anyAct, choices, chosen } from './anyActs.ts';
import { frozen, onScene, start } from './scene.ts';

const runs = { numRuns: 40, seed: 20261013 } as const;

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
function play(from: World, picks: Parameters<typeof chosen>[1][]): { world: World; log: Log; refusedSame: boolean } {
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
    world = frozen(result.world);
    log = appendEntry(log, intent, world);
  }
  return { world, log, refusedSame };
}

describe('any sequence of acts', () => {
  it('leaves a valid, plain World whose circuit can be solved, and a refused act changes nothing', () => {
    fc.assert(
      fc.property(choices(onScene(), 30), (picks) => {
        const { world, refusedSame } = play(onScene(), [...picks]);
        expect(refusedSame).toBe(true);
        expect(JSON.parse(canonicalJson(world))).toEqual(world);
        expect(complaints(world)).toEqual([]);
      }),
      runs,
    );
  });

  it('replays from its log to the very same World', () => {
    fc.assert(
      fc.property(choices(start(), 25), (picks) => {
        const { world, log } = play(start(), [...picks]);
        const replayed = replay(start(), log);
        if (!replayed.ok) throw new Error(replayed.problem.words);
        expect(canonicalJson(replayed.replay.end)).toBe(canonicalJson(world));
        expect(stageOf(replayed.replay.end)).toBe(stageOf(world));
      }),
      { ...runs, numRuns: 20 },
    );
  });

  it('never turns the clock back', () => {
    fc.assert(
      fc.property(anyAct(onScene()), (intent) => {
        const result = act(onScene(), intent);
        expect(result.world.clock.minute).toBeGreaterThanOrEqual(onScene().clock.minute);
      }),
      { ...runs, numRuns: 200 },
    );
  });
});

describe('what is on offer', () => {
  it('is never refused when sent, is offered once, and takes the minutes that it says', () => {
    fc.assert(
      fc.property(choices(onScene(), 12), fc.nat(), (picks, which) => {
        const { world } = play(onScene(), [...picks]);
        const offers = [...possibleActs(world), ...looksFrom(world)];
        expect(new Set(offers.map((offer) => canonicalJson(offer.act))).size).toBe(offers.length);
        // Sending all of some hundred offers in each World would take long; another slice comes each time.
        const slice = offers.filter((_, index) => index % 23 === which % 23);
        for (const offer of slice) {
          const result = act(world, offer.act);
          if (!result.ok) throw new Error(`${offer.label}: ${result.reason}`);
          expect(result.world.clock.minute - world.clock.minute).toBe(offer.minutes);
        }
      }),
      { ...runs, numRuns: 20 },
    );
  });

  it('is in the same order for the same World', () => {
    const labels = (world: World) => possibleActs(world).map(({ label }) => label);
    expect(labels(onScene())).toEqual(labels(structuredClone(onScene())));
  });

  it('is nothing once the drill has ended', () => {
    const over = act(onScene(), { act: 'close-out' }).world;
    expect([...possibleActs(over), ...looksFrom(over)]).toEqual([]);
  });

  it('names the foolish with the wise: both sticks, both detectors, climbing and closing', () => {
    const all = possibleActs(onScene())
      .map(({ act }) => canonicalJson(act))
      .join('\n');
    for (const id of ['stick-1', 'stick-2', 'detector-1', 'detector-2', 'under-line']) expect(all).toContain(id);
  });
});
