/** Jobs that no crew like this one can do: said to be so, with the reason, and not said where a tool would do. */
import { expect, it } from 'vitest';
import { prove } from '../../../src/engine/proof/prove.ts';
import type { Proof } from '../../../src/engine/proof/types.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { claim, lay } from './planted.ts';
import { millLane, sceneOf } from './scenes.ts';

const proved = (world: World): Proof => prove(world, { seed: 1, tries: 1, inShort: true });

const up: readonly [string, string] = [
  '  - { id: tags-1, kind: tags }',
  '  - { id: tags-1, kind: tags }\n  - { id: bucket-1, kind: bucket, rated: 46 kV, tested: 2026-02-01 }\n  - { id: ground-1, kind: ground-set }\n  - { id: ground-2, kind: ground-set }',
];

it('what is done aloft, by a crew that cannot get up', () => {
  const { outcome, words } = claim(proved(millLane(lay('{ id: tie, kind: tie-broken, on: p2.tie }'))), 'restored');
  expect(outcome).toBe('holds');
  expect(words).toMatch(/done aloft, and nothing on the truck gets anybody up/);
});

it('what hangs on metal that nobody here can open', () => {
  const { outcome, words } = claim(proved(sceneOf('hill-road-gloves')), 'restored');
  expect(outcome).toBe('holds');
  expect(words).toMatch(/HL-3 stays alive whatever is opened here/);
});

it('the same by a crew that can get up and open it is no such thing', () => {
  const proof = proved(millLane(lay('{ id: tie, kind: tie-broken, on: p2.tie }'), up));
  expect(claim(proof, 'restored').words).not.toMatch(/cannot be done by this crew/);
});
