/** Which metal is one: along a line whose conductors act on each other as along a single one. */
import { expect, it } from 'vitest';
import { sectionOf } from '../../../src/engine/hazards/section.ts';
import { sceneOf } from '../proof/scenes.ts';

it('a conductor of a three-phase span joins its two poles, and no other conductor', () => {
  const section = sectionOf(sceneOf('works-road-bank'), 'p2.cutout-a/top');
  expect(section.has('p1.main-a')).toBe(true);
  expect([...section].filter((net) => /main-[bc]|neutral/.test(net))).toEqual([]);
});
