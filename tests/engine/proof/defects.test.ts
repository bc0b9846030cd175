/** A defect planted in a small scene, and a rule altered: the prover finds each and names it. More in the long tests. */
import { describe, expect, it } from 'vitest';
import { act, refusalOf } from '../../../src/engine/acts/act.ts';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { claim, disconnector, lay, proved } from './planted.ts';
import { millLane } from './scenes.ts';

/** Plays acts through a log, as a stranger would check them. */
const replays = (start: World, acts: readonly Act[]): boolean => {
  let world = start;
  let log = newLog(start, 1);
  for (const each of acts) {
    world = act(world, each).world;
    log = appendEntry(log, each, world);
  }
  return replay(start, log).ok;
};

describe('a scene with nothing planted', () => {
  const start = millLane(disconnector);
  const proof = proved(start);

  it('has no claim that fails, and says how much was looked at', () => {
    expect(proof.claims.filter(({ outcome }) => outcome === 'fails')).toEqual([]);
    expect(proof.ok).toBe(true);
    expect(proof.states).toBeGreaterThan(10);
    expect(proof.transitions).toBeGreaterThan(proof.states);
    expect(proof).toMatchObject({ seed: 1, seconds: 0, scenarioHash: start.scenarioHash });
  });

  it('shows its claims and traps by acts that replay', () => {
    for (const { acts } of [...proof.claims, ...proof.traps]) expect(replays(start, acts)).toBe(true);
    for (const { acts, hazard } of proof.traps) {
      const before = acts.slice(0, -1).reduce((world, each) => act(world, each).world, start);
      const last = acts.at(-1);
      const result = last && act(before, last);
      expect(result?.ok && result.exposures.map((each) => each.hazard)).toContain(hazard);
    }
  });
});

describe('a planted defect is found and named:', () => {
  it('a missing control: the only stick is past its date', () => {
    const proof = proved(
      millLane(lay('{ id: old, kind: stick-test-overdue, on: stick-1 }'), ['tested: 2025-08-04', 'tested: 2021-08-04']),
    );
    expect(claim(proof, 'controls:old')).toMatchObject({ outcome: 'fails' });
    expect(claim(proof, 'controls:old').words).toMatch(/another tool of the kind/);
  });
});

describe('a rule altered makes a claim fail or stay open:', () => {
  it('nobody is let guard the place', () => {
    const proof = proved(millLane(), {
      refuse: (world, each) => (each.act === 'guard' ? 'no' : refusalOf(world, each)),
    });
    expect(claim(proof, 'hand-over').outcome).toBe('fails');
    expect(proof.ok).toBe(false);
  });
});
