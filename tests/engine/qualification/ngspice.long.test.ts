/** Every shipped scene in all its seeded states, and all seeded networks, in ngspice: the same volts and amperes within 1e-6. */
import { describe, expect, test } from 'vitest';
import { randomCases, sceneCases } from '../../../src/engine/qualification/networkCases.ts';
import { failures, scenarios, worldOf } from './ngspiceCases.ts';

describe('ngspice finds what we find', () => {
  test.each(scenarios)('in %s as it starts and in 30 seeded device states', async (name) => {
    const cases = sceneCases(worldOf(name));
    expect(cases.length).toBe(31);
    expect(new Set(cases.map(({ elements }) => JSON.stringify(elements))).size).toBeGreaterThan(20);
    expect(await failures(cases)).toEqual([]);
  });

  test('in 200 seeded networks of 5 to 60 nodes with transformers', async () => {
    const cases = randomCases();
    expect(cases.length).toBe(200);
    for (const { elements } of cases) {
      const nodes = new Set(
        elements.flatMap((e) =>
          e.kind === 'transformer' ? e.windings.flatMap((w) => [w.from, w.to]) : [e.from, e.to],
        ),
      );
      nodes.delete('earth');
      expect(nodes.size).toBeGreaterThanOrEqual(5);
      expect(nodes.size).toBeLessThanOrEqual(60);
      expect(elements.some(({ kind }) => kind === 'transformer')).toBe(true);
    }
    expect(await failures(cases)).toEqual([]);
  });
});
