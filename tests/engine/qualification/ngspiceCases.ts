/** What is asked of ngspice: shipped scenes in seeded device states, and seeded networks. */
import { readdirSync } from 'node:fs';
import { readTextFile } from '../../../src/cli/io.ts';
import { solveWithNgspice } from '../../../src/cli/oracle/solveWithNgspice.ts';
import { readScenario } from '../../../src/cli/readScenario.ts';
import { compareCase } from '../../../src/engine/qualification/comparePhasors.ts';
import type { NetworkCase } from '../../../src/engine/qualification/networkCases.ts';
import { build } from '../../../src/engine/world/build.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { root } from '../../../src/setup/run.mjs';

const quiet = { stdout: () => {}, stderr: () => {}, checkFailed: () => {}, readFile: readTextFile };

export const scenarios = readdirSync(`${root}/scenarios`).filter((name) => name.endsWith('.yaml'));

export const worldOf = (name: string): World => {
  const { scenario, hash } = readScenario(quiet, `${root}/scenarios/${name}`);
  return build(scenario, hash, 1);
};

/** Those whose volts or amperes ngspice finds elsewhere by more than 1e-6. */
export async function failures(cases: readonly NetworkCase[]): Promise<string[]> {
  const failed: string[] = [];
  for (const network of cases) {
    const { ok, ours, quantity } = compareCase(network, await solveWithNgspice(network), 'ngspice');
    if (!ok) failed.push(`${network.id}: ${ours}, ${quantity}`);
  }
  return failed;
}
