import { describe, expect, test } from 'vitest';
import { abs, sub } from '../../../src/engine/math/complex.ts';
import { spiceDeck } from '../../../src/engine/network/spiceDeck.ts';
import { spiceElement } from '../../../src/engine/network/spiceNames.ts';
import { runNgspice } from '../../oracle/ngspice.ts';
import { OMEGA, randomNetwork, solved } from './elements.ts';

const ANGLES = { system: 0.3, generator: 2.1, inverter: -1 };

describe('against ngspice', () => {
  const seeds = Array.from({ length: 30 }, (_, i) => i + 1);

  test.each(seeds)('random network %i has the same volts at every node and amperes in every source', async (seed) => {
    const elements = randomNetwork(seed);
    const ours = solved(elements).at(ANGLES);
    const { voltages, currents } = await runNgspice(
      spiceDeck(elements, { title: `seed ${seed}`, omega: OMEGA, angles: ANGLES }),
    );
    const nominal = Math.max(...[...voltages.values()].map(abs));
    expect(voltages.size).toBeGreaterThanOrEqual(5);
    for (const [node, reference] of voltages) {
      const difference = abs(sub(ours.voltage(node), reference));
      expect(difference / Math.max(abs(reference), 1e-6 * nominal), node).toBeLessThan(1e-6);
    }
    for (const element of elements) {
      if (element.kind !== 'source') continue;
      const reference = currents.get(spiceElement('V', 's', element.id).toLowerCase());
      if (reference === undefined) throw new Error(`ngspice gave no current of ${element.id}`);
      expect(abs(sub(ours.current(element.id), reference))).toBeLessThan(1e-6 * Math.max(abs(reference), 1e-3));
    }
  });
});
