/** A conductor that comes off its tie: when, where it then is, what the circuit and who is there meet of it. */
import { describe, expect, test } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import type { Act, WorldEvent } from '../../../src/engine/acts/types.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { seedFrom } from '../../../src/engine/math/random.ts';
import { partById, trainee, withPart, withPerson } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { model, only } from '../circuit/models/scenes.ts';
import { done, frozen, played } from './scene.ts';

const scene = model('loose');
const acknowledged: readonly Act[] = [{ act: 'acknowledge' }, { act: 'park', at: 'clear' }];
const at = (world: World, stand: string, aloftBy: 'bucket' | 'hooks' | null = null): World =>
  frozen(withPerson(played(world, ...acknowledged), trainee(world).id, { at: stand, aloftBy }));
const seeded = (world: World, seed: number): World => ({ ...world, chance: seedFrom(seed) });
const fell = (events: readonly WorldEvent[]): boolean => events.some(({ event }) => event === 'fell');
const sagged = (world: World, sagM: number): World =>
  ['s1.phase', 's2.phase'].reduce((w, id) => withPart(w, id, { values: { ...partById(w, id).values, sagM } }), world);
/** The line with its source at so many volts. */
const fed = (world: World, volts: number): World =>
  withPart(world, 'p1.source', { values: { ...partById(world, 'p1.source').values, volts } });
const change: Act = { act: 'repair', part: 'p2.insulator', repair: 'replace-pin-insulator' };
const hold: Act = { act: 'support', part: 's1.phase', on: true };
const tieIn: Act = { act: 'repair', part: 'p2.tie', repair: 'tie-in' };

describe('changing the insulator of a sound tie', () => {
  const work = at(fed(only(scene), 0.001), 'p2.work', 'bucket');

  test('without holding the conductor lets it down by the sag of the double span', () => {
    const { world, events, exposures } = done(work, change);
    expect(fell(events)).toBe(true);
    const tie = partById(work, 'p2.tie');
    for (const [id, end] of [
      ['s1.phase', 'end'],
      ['s2.phase', 'at'],
    ] as const) {
      // Two level spans of sag D hang as one of sag 2 D.
      expect(tie.at[2] - (partById(world, id)[end]?.[2] ?? 0)).toBeCloseTo(2 * 0.9144, 2);
    }
    expect(partById(world, 's1.phase').state).toEqual({ 'a-end': 'held', 'b-end': 'low' });
    const drop = exposures.find(({ hazard }) => hazard === 'drop:p2.tie');
    expect(drop?.potentiallyFatal).toBe(true);
  });

  test('with the arm under it lets nothing down and exposes nobody to a drop', () => {
    const { world, events, exposures } = done(played(work, hold), change);
    expect(fell(events)).toBe(false);
    expect(partById(world, 's1.phase').end).toEqual(partById(work, 's1.phase').end);
    expect(exposures.filter(({ mechanism }) => mechanism === 'drop')).toEqual([]);
  });

  test('can be made good by tying it in again, where it was', () => {
    const again = played(work, change, tieIn);
    for (const id of ['s1.phase', 's2.phase']) {
      const { at: from, end, state } = partById(again, id);
      expect({ from, end, state }).toEqual({
        from: partById(work, id).at,
        end: partById(work, id).end,
        state: { 'a-end': 'held', 'b-end': 'held' },
      });
    }
  });
});

describe('striking a pole whose tie is lost', () => {
  const lost = at(only(scene, 'one'), 'p2.butt');
  const strike: Act = { act: 'sound', pole: 'p2' };
  const falls = (world: World): readonly boolean[] =>
    Array.from({ length: 40 }, (_, seed) => fell(done(seeded(world, seed), strike).events));

  test('lets the conductor go now and then, the same for the same seed', () => {
    const found = falls(lost);
    const often = found.filter(Boolean).length;
    expect(often).toBeGreaterThan(2);
    expect(often).toBeLessThan(20);
    expect(falls(lost)).toEqual(found);
  });

  test('never does once the arm holds it, nor at a pole with a sound tie, and draws no chance there', () => {
    const held = ['s1.phase', 's2.phase'].reduce((w, id) => withPart(w, id, { supported: true }), lost);
    expect(falls(held)).not.toContain(true);
    expect(done(held, strike).world.chance).toEqual(held.chance);
    const sound = at(only(scene), 'p2.butt');
    expect(done(sound, strike).world.chance).toEqual(sound.chance);
  });

  test('is the same exposure, fallen or not: the decision is judged, not the luck', () => {
    const world = sagged(lost, 3);
    const judged = (seed: number) =>
      done(seeded(world, seed), strike).exposures.map(({ hazard, potentiallyFatal }) => ({ hazard, potentiallyFatal }));
    const seeds = Array.from({ length: 40 }, (_, seed) => seed);
    const [down] = seeds.filter((seed) => fell(done(seeded(world, seed), strike).events));
    const [up] = seeds.filter((seed) => !fell(done(seeded(world, seed), strike).events));
    if (down === undefined || up === undefined) throw new Error('both must happen');
    expect(judged(up).map(({ hazard }) => hazard)).toContain('drop:p2.tie');
    for (const exposure of judged(up)) expect(judged(down)).toContainEqual(exposure);
    const found = done(seeded(world, down), strike).exposures.find(({ hazard }) => hazard === 'drop:p2.tie');
    expect(found?.causes).toEqual(['one']);
  });
});

describe('a slack conductor that falls to the ground', () => {
  const work = at(fed(sagged(only(scene), 4.5), 0.001), 'p2.work', 'bucket');
  const down = done(work, change);

  test('lies there, leads into it what staged tests saw, and is told', () => {
    expect(partById(down.world, 's1.phase').state['b-end']).toBe('ground');
    expect(partById(down.world, 's1.phase').end?.[2]).toBe(0);
    expect(down.events.find(({ event }) => event === 'fell')?.words).toBe(
      'The conductor comes off and falls to the ground.',
    );
    // Both spans lie with their end there: twice 50 A of wet grass, less what the source drops.
    const amperes = solveCircuit(fed(down.world, 7200)).branchCurrent('s1.phase', 'electrode-b');
    expect(amperes).toBeGreaterThan(35);
    expect(amperes).toBeLessThan(50);
  });

  test('makes the ground below unsafe to walk', () => {
    const below = frozen(withPerson(fed(down.world, 7200), trainee(down.world).id, { at: 'p2.butt', aloftBy: null }));
    const result = act(below, { act: 'wait', minutes: 1 });
    if (!result.ok) throw new Error(result.reason);
    expect(result.exposures.find(({ mechanism }) => mechanism === 'step')?.potentiallyFatal).toBe(true);
  });

  test('is no electrode any more once it is back on its tie', () => {
    const again = done(down.world, tieIn).world;
    expect(solveCircuit(fed(again, 7200)).branchCurrent('s1.phase', 'electrode-b')).toBe(0);
  });
});
