/** Some states of the shipped scenes and some seeded networks in ngspice; all of them in the long test beside it. */
import { describe, expect, test } from 'vitest';
import { solveWithNgspice } from '../../../src/cli/oracle/solveWithNgspice.ts';
import { compareCase, phasorTolerance, worstDifference } from '../../../src/engine/qualification/comparePhasors.ts';
import { randomCases, sceneCases } from '../../../src/engine/qualification/networkCases.ts';
import { failures, scenarios, worldOf } from './ngspiceCases.ts';

describe('ngspice finds what we find', () => {
  test.each(scenarios)('in %s as it starts and in a seeded device state', async (name) => {
    const cases = sceneCases(worldOf(name), 1);
    expect(cases.length).toBe(2);
    expect(await failures(cases)).toEqual([]);
  });

  test('in 40 seeded networks with transformers', async () => {
    expect(await failures(randomCases(40))).toEqual([]);
  });
});

describe('the comparison', () => {
  const [first] = randomCases(1);
  if (first === undefined) throw new Error('no case');

  test('fails when one impedance differs by one part in ten thousand', async () => {
    const other = await solveWithNgspice(first);
    const changed = first.elements.map((e) =>
      e.kind === 'impedance' && e.id === first.elements.find(({ kind }) => kind === 'impedance')?.id
        ? { ...e, z: { re: e.z.re * 1.0001, im: e.z.im } }
        : e,
    );
    expect(worstDifference({ ...first, elements: changed }, other).worst).toBeGreaterThan(phasorTolerance);
  });

  test('fails when an answer is missing, or when we have no solution', () => {
    const nothing = { voltages: new Map(), currents: new Map() };
    expect(worstDifference(first, nothing).worst).toBe(Number.POSITIVE_INFINITY);
    const elements = [
      ...first.elements,
      { ...first.elements[0], id: 'again', from: 'x', to: 'x2' },
    ] as typeof first.elements;
    expect(compareCase({ ...first, elements }, nothing, 'none').ok).toBe(false);
  });
});
