import { describe, expect, test } from 'vitest';
import { abs, type Complex, scale, sub } from '../../../src/engine/math/complex.ts';
import { spiceDeck } from '../../../src/engine/network/spiceDeck.ts';
import { spiceElement } from '../../../src/engine/network/spiceNames.ts';
import { runNgspice } from '../../oracle/ngspice.ts';
import { OMEGA, randomNetwork, solved } from './elements.ts';

const ANGLES = { system: 0.3, generator: 2.1, inverter: -1 };

describe('against ngspice', () => {
  const seeds = Array.from({ length: 30 }, (_, i) => i + 1);

  test.each(seeds)(
    'random network %i has the same volts at every node and amperes in every source and winding',
    async (seed) => {
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
      const branches = elements.flatMap((element): [string, Complex][] => {
        if (element.kind === 'source') return [[spiceElement('V', 's', element.id), ours.current(element.id)]];
        if (element.kind !== 'transformer') return [];
        return element.windings.map((_, w) => [spiceElement('V', `w${w}`, element.id), ours.current(element.id, w)]);
      });
      for (const [name, current] of branches) {
        const reference = currents.get(name.toLowerCase());
        if (reference === undefined) throw new Error(`ngspice gave no current of ${name}`);
        expect(abs(sub(current, reference)), name).toBeLessThan(1e-6 * Math.max(abs(reference), 1e-3));
      }
    },
  );

  test('a difference of one part in 100 000 in one source is noticed', async () => {
    const elements = randomNetwork(3);
    const changed = elements.map((e) =>
      e.id === 's0' && e.kind === 'source' ? { ...e, emf: scale(e.emf, 1.00001) } : e,
    );
    const { voltages } = await runNgspice(spiceDeck(changed, { title: 'changed', omega: OMEGA }));
    const ours = solved(elements);
    const off = [...voltages].map(([node, v]) => abs(sub(ours.voltage(node), v)) / abs(v));
    expect(Math.max(...off)).toBeGreaterThan(1e-6);
  });

  test('a deck that ngspice refuses is an error, not an empty answer', async () => {
    await expect(runNgspice('broken\nRx n_a\n.ac lin 1 60 60\n.end\n')).rejects.toThrow('ngspice');
    const fine = spiceDeck(randomNetwork(4), { title: 'after', omega: OMEGA });
    expect((await runNgspice(fine)).voltages.size).toBeGreaterThan(4);
  });
});
