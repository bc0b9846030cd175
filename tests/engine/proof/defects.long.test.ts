/** What takes longer: the same proof twice, and a control that only seems to work. */
import { expect, it } from 'vitest';
import { claim, disconnector, lay, proved } from './planted.ts';
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
