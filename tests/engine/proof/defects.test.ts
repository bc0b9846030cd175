/** Defects planted in a small scene, and rules altered: the prover finds each and names it. */
import { describe, expect, it } from 'vitest';
import { act, refusalOf } from '../../../src/engine/acts/act.ts';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import { met } from '../../../src/engine/hazards/exposuresOf.ts';
import type { Meeting } from '../../../src/engine/hazards/meeting.ts';
import type { Step } from '../../../src/engine/proof/peek.ts';
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
  it('a hazard that cannot be seen', () => {
    const proof = proved(millLane(disconnector, ['visibility: 12 km', 'visibility: 5 m']));
    expect(claim(proof, 'findable:spent')).toMatchObject({ outcome: 'fails' });
    expect(claim(proof, 'findable:spent').words).toMatch(/disconnector operated/);
    expect(claim(proof, 'information').outcome).toBe('fails');
    expect(proof.ok).toBe(false);
  });

  it('a missing control: the only stick is past its date', () => {
    const proof = proved(
      millLane(lay('{ id: old, kind: stick-test-overdue, on: stick-1 }'), ['tested: 2025-08-04', 'tested: 2021-08-04']),
    );
    expect(claim(proof, 'controls:old')).toMatchObject({ outcome: 'fails' });
    expect(claim(proof, 'controls:old').words).toMatch(/another tool of the kind/);
  });

  it('a hazard that never bites', () => {
    const proof = proved(millLane(lay('{ id: cut, kind: ground-lead-cut, on: p1.ground-lead }')));
    expect(claim(proof, 'bites:cut')).toMatchObject({ outcome: 'fails' });
  });

  it('a dead end: once a device is open, nobody on the ground is out of reach', () => {
    const reached = ({ parts }: World): boolean =>
      parts.some(({ id, state }) => id === 'p1.tap-cutout' && state.position === 'open');
    const everywhere: Step['met'] = (reach, before, after) => {
      const found = met(reach, before, after);
      const [like] = met(
        { ...reach, touches: [{ point: 'p1.tap-cutout/top', through: { stick: null, gloves: null } }] },
        before,
        after,
      );
      return reached(before) && like !== undefined
        ? [...found, { ...like, hazard: 'approach:everywhere' } satisfies Meeting]
        : found;
    };
    const proof = proved(millLane(), { met: everywhere });
    expect(claim(proof, 'stops').outcome).not.toBe('holds');
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

  it('contact is forgotten by the mechanisms', () => {
    const proof = proved(millLane(disconnector), {
      met: (...asked) => met(...asked).filter(({ mechanism }) => mechanism !== 'contact'),
    });
    expect(claim(proof, 'bites:contact:p2.arrester/base').outcome).not.toBe('holds');
  });

  it('closing anything exposes somebody', () => {
    const closing: Step['met'] = (reach, before, after) => {
      const found = met(reach, before, after);
      const [like] = met(
        { ...reach, touches: [{ point: 'p1.tap-cutout/top', through: { stick: null, gloves: null } }] },
        before,
        after,
      );
      return reach.switches?.makes && like ? [...found, { ...like, hazard: 'flash:any' }] : found;
    };
    const proof = proved(millLane(), { met: closing });
    expect(proof.par?.end).toBe('handed-over');
    expect(claim(proof, 'restored').words).toMatch(/flash:any/);
  });
});
