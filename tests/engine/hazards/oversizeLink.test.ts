/** A link too large changes nothing but when it operates: it is a cause by the time that it adds, and by nothing else. */
import { describe, expect, it } from 'vitest';
import { met } from '../../../src/engine/hazards/exposuresOf.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { probesOf, unprotected } from '../../../src/engine/hazards/probes.ts';
import { withoutFault } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { benchWith } from '../catalogue/bench.ts';

const failed = { kind: 'transformer-failed-bulged', on: 'p2.transformer' };
const scene = (...others: readonly { readonly kind: string; readonly on: string }[]): World =>
  benchWith({ kind: 'link-oversize', on: 'p2.cutout', cutoutOpen: true, with: others });

const causedBy = (world: World): readonly string[] =>
  hazardsIn(world)
    .filter(({ causes }) => causes.includes('it'))
    .map(({ id }) => id);

/** Worst energy or dose of closing the cutout. */
const closing = (world: World): number => {
  const { switching } = probesOf(unprotected(world));
  const found = switching
    .filter(({ switches }) => switches?.part === 'p2.cutout' && switches.makes !== null)
    .flatMap((reach) => met(reach, world, world))
    .filter(({ hazard }) => hazard === 'flash:p2.cutout');
  return Math.max(...found.map(({ timed = 0 }) => timed));
};

describe('a link too large before a failed transformer', () => {
  const world = scene(failed);

  it('is a cause of the flash of closing its cutout, of the shock behind it, and of an arc in a socket that it feeds', () => {
    expect(causedBy(world)).toEqual([
      'contact:p2.cutout/bottom',
      'contact:p2.transformer/h1',
      'flash:a.meter',
      'flash:p2.cutout',
    ]);
  });

  it('lets the arc of closing burn longer by more than a fifth', () => {
    expect(closing(withoutFault(world, 'it'))).toBeLessThan(0.8 * closing(world));
  });
});

it('before a sound transformer it is the cause of a longer arc in a socket, for only that link clears it, and of nothing else', () => {
  expect(causedBy(scene())).toEqual(['flash:a.meter']);
});
