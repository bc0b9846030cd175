/** A bar is called by what the trade calls it, and no two of a scene alike. */
import { expect, test } from 'vitest';
import { busName } from '../../../src/screens/bench/benchWords.ts';
import { graphOf } from '../../../src/screens/bench/circuitGraph.ts';
import { offered, worldOf } from './scene.ts';

test.each(offered.map((each) => [each.scenario.id, each] as const))('in %s', (_, each) => {
  const world = worldOf(each);
  const names = graphOf(world).buses.map((bus) => busName(world, bus));
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  // Bushings of a transformer have letter and number, H and X; a mark of anything else does not stand alone.
  expect(names.filter((name) => /^[A-GI-WYZ]\d/.test(name))).toEqual([]);
  expect(names.filter((name) => name.includes('the the '))).toEqual([]);
});
