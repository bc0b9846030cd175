/** Shipped scenes and seeded networks in ngspice: the same volts and amperes within 1e-6. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readTextFile } from '../../../src/cli/io.ts';
import { solveWithNgspice } from '../../../src/cli/oracle/solveWithNgspice.ts';
import { readScenario } from '../../../src/cli/readScenario.ts';
import { compareCase, phasorTolerance, worstDifference } from '../../../src/engine/qualification/comparePhasors.ts';
import { type NetworkCase, randomCases, sceneCases } from '../../../src/engine/qualification/networkCases.ts';
import { build } from '../../../src/engine/world/build.ts';
import { root } from '../../../src/setup/run.mjs';

const quiet = { stdout: () => {}, stderr: () => {}, checkFailed: () => {}, readFile: readTextFile };
const scenarios = readdirSync(`${root}/scenarios`).filter((name) => name.endsWith('.yaml'));

const worldOf = (name: string) => {
  const { scenario, hash } = readScenario(quiet, `${root}/scenarios/${name}`);
  return build(scenario, hash, 1);
};

async function failures(cases: readonly NetworkCase[]): Promise<string[]> {
  const failed: string[] = [];
  for (const network of cases) {
    const { ok, ours, quantity } = compareCase(network, await solveWithNgspice(network), 'ngspice');
    if (!ok) failed.push(`${network.id}: ${ours}, ${quantity}`);
  }
  return failed;
}

describe('ngspice finds what we find', () => {
  test.each(scenarios)('in %s as it starts and in 30 seeded device states', async (name) => {
    const cases = sceneCases(worldOf(name));
    expect(cases.length).toBe(31);
    expect(new Set(cases.map(({ elements }) => JSON.stringify(elements))).size).toBeGreaterThan(25);
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
