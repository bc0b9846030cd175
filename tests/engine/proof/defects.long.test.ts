/** More defects planted and rules altered, the same proof twice, and a control that only seems to work. */
import { describe, expect, it } from 'vitest';
import { met } from '../../../src/engine/hazards/exposuresOf.ts';
import type { Step } from '../../../src/engine/proof/peek.ts';
import { claim, disconnector, lay, proved, stuckOnceOpen } from './planted.ts';
import { millLane } from './scenes.ts';

it('a proof is the same again', () => {
  const proof = proved(millLane(disconnector));
  expect(proved(millLane(disconnector))).toEqual(proof);
});

it('a control that only seems to work: the gloves are past theirs', () => {
  const proof = proved(
    millLane(
      [
        'generator: There is none here.',
        'generator: There is none here.\n    own: { kind: generator, rating: 7 kVA, connection: panel-cord, running: true, place: in the shed }',
      ],
      lay('{ id: cord, kind: backfeed-generator, on: a.cord }'),
      ['tested: 2026-02-10', 'tested: 2024-02-10'],
    ),
  );
  expect(claim(proof, 'controls:cord').words).toMatch(/gloves-in-test/);
});

describe('a planted defect is found and named:', () => {
  it('a hazard that cannot be seen', () => {
    const proof = proved(millLane(disconnector, ['visibility: 12 km', 'visibility: 5 m']));
    expect(claim(proof, 'findable:spent')).toMatchObject({ outcome: 'fails' });
    expect(claim(proof, 'findable:spent').words).toMatch(/disconnector operated/);
    expect(claim(proof, 'information').outcome).toBe('fails');
    expect(proof.ok).toBe(false);
  });

  it('a hazard that never bites', () => {
    const proof = proved(millLane(lay('{ id: cut, kind: ground-lead-cut, on: p1.ground-lead }')));
    expect(claim(proof, 'bites:cut')).toMatchObject({ outcome: 'fails' });
  });

  it('a dead end: once a device is open, nobody on the ground is out of reach', () => {
    const proof = proved(millLane(), { met: stuckOnceOpen }, 4000);
    const { outcome, acts } = claim(proof, 'stops');
    expect(outcome).toBe('fails');
    expect(acts.at(-1)).toMatchObject({ act: 'operate', part: 'p1.tap-cutout', operation: 'open' });
  });
});

describe('a rule altered makes a claim fail or stay open:', () => {
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
