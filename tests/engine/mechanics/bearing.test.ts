import { describe, expect, test } from 'vitest';
import { bearingList } from '../../../src/engine/mechanics/bearing.ts';
import { looseRuns } from '../../../src/engine/mechanics/looseRuns.ts';
import type { Part, World } from '../../../src/engine/world/types.ts';
import { start } from '../acts/scene.ts';

const scene = start();

/** The scene with one part changed. */
const changed = (id: string, change: (part: Part) => Partial<Part>): World => {
  expect(scene.parts.some((part) => part.id === id)).toBe(true);
  return { ...scene, parts: scene.parts.map((part) => (part.id === id ? { ...part, ...change(part) } : part)) };
};

const isOne = (world: World): boolean => bearingList(world.parts) === bearingList(scene.parts);

describe('to mechanics', () => {
  test('a set that stops and a load that changes leave the scene what it was', () => {
    expect(isOne(changed('a.generator', ({ state }) => ({ state: { ...state, run: 'stopped' } })))).toBe(true);
    expect(isOne(changed('a.load', ({ values }) => ({ values: { ...values, bothW: 7 } })))).toBe(true);
  });

  test('a span that comes down, a pole that rots and an insulator that goes make another', () => {
    expect(isOne(changed('s2.phase', ({ state }) => ({ state: { ...state, 'a-end': 'low' } })))).toBe(false);
    expect(isOne(changed('p2.pole', ({ values }) => ({ values: { ...values, strength: 0.1 } })))).toBe(false);
    expect(isOne(changed('p2.insulator', ({ faults }) => ({ faults: [...faults] })))).toBe(false);
  });

  test('a fault on anything makes another', () => {
    expect(isOne(changed('a.load', () => ({ faults: [] as const })))).toBe(false);
  });

  test('a run that lies loose is found anew once its span has come down', () => {
    const fallen = changed('s2.phase', ({ state }) => ({ state: { ...state, 'a-end': 'low' } }));
    looseRuns(scene);
    const spans = looseRuns(fallen).flatMap((run) => run.spans);
    expect(spans).toContain(fallen.parts.find(({ id }) => id === 's2.phase'));
  });
});
