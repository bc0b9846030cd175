/** The circuits that another program is asked about are many, and differ. */
import { expect, test } from 'vitest';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { randomCases, sceneCases } from '../../../src/engine/qualification/networkCases.ts';
import { scenarios, worldOf } from './ngspiceCases.ts';

test.each(scenarios)(
  '%s is tried as it starts and in 30 seeded device states, as different as it has states',
  (name) => {
    const world = worldOf(name);
    const cases = sceneCases(world);
    expect(cases.length).toBe(31);
    expect(new Set(cases.map(({ id }) => id)).size).toBe(31);
    const counts = world.parts.flatMap(({ kind }) =>
      Object.values(componentKind(kind).states).map((values) => values.length),
    );
    const possible = counts.reduce((product, count) => product * count, 1);
    const different = new Set(cases.map(({ elements }) => JSON.stringify(elements))).size;
    expect(different).toBeGreaterThan(Math.min(31, possible) / 5);
  },
);

test('200 seeded networks have 5 to 60 nodes each, and a transformer', () => {
  const cases = randomCases();
  expect(cases.length).toBe(200);
  for (const { elements } of cases) {
    const nodes = new Set(
      elements.flatMap((e) => (e.kind === 'transformer' ? e.windings.flatMap((w) => [w.from, w.to]) : [e.from, e.to])),
    );
    nodes.delete('earth');
    expect(nodes.size).toBeGreaterThanOrEqual(5);
    expect(nodes.size).toBeLessThanOrEqual(60);
    expect(elements.some(({ kind }) => kind === 'transformer')).toBe(true);
  }
});
