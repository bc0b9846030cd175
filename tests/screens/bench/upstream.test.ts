/** Faults that change a part's own branches on the bench: a neutral open toward the substation, a link too large. */
import { describe, expect, test } from 'vitest';
import { faultKind } from '../../../src/engine/catalogue/faults.ts';
import { EARTH } from '../../../src/engine/network/types.ts';
import {
  amperesIn,
  type Bench,
  devicesOn,
  drawnOf,
  electricalFaults,
  mend,
  openBench,
} from '../../../src/screens/bench/bench.ts';
import { graphOf } from '../../../src/screens/bench/circuitGraph.ts';
import { offered, worldOf } from './scene.ts';

const found = offered.find(({ scenario }) => scenario.id === 'model-upstream');
if (!found) throw new Error('the scene is gone');
const start = worldOf(found);

/** The source's edge and its ladder's as they are drawn now. */
const drawn = (bench: Bench) => {
  const { edges } = graphOf(drawnOf(bench));
  const of = (branch: string) => edges.find(({ part, branches }) => part === 'p1.source' && branches.includes(branch));
  return { source: of('thevenin'), ladder: of('ladder') };
};

describe('the bench with a neutral open toward the substation', () => {
  const open = openBench(start);
  const mended = mend(open, 'upstream');

  test('draws the source to earth, and with the neutral mended between line and neutral, its ladder beside it', () => {
    expect([drawn(open).source?.to, drawn(open).ladder]).toEqual([EARTH, undefined]);
    expect(drawn(mended).source?.to).toBe('p1.neutral');
    expect(drawn(mended).ladder?.to).toBe(EARTH);
  });

  test('sends through the source what the scene draws, either way', () => {
    for (const bench of [open, mended]) {
      const { source } = drawn(bench);
      if (source === undefined) throw new Error('no source is drawn');
      expect(amperesIn(bench, source)).toBeGreaterThan(1);
    }
  });

  test('offers to mend it, and the link', () => {
    const kinds = devicesOn(start, start).flatMap((part) => electricalFaults(part).map(({ kind }) => kind));
    expect(kinds.sort()).toEqual(['link-oversize', 'source-neutral-open']);
    expect(kinds.every((kind) => faultKind(kind).words !== undefined)).toBe(true);
  });
});
