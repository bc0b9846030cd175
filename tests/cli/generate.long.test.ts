/** The built command line draws the same files with one process and with three, to the byte. */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { buildCli } from '../../src/setup/build.mjs';
import { root } from '../../src/setup/run.mjs';
import { emptyFolder } from '../setup/tinyProject.ts';

const drawnBy = (workers: string): ReadonlyMap<string, string> => {
  const out = emptyFolder();
  const args = ['generate', '--seed', '11', '--count', '7', '--workers', workers, '--out', out];
  const run = spawnSync(process.execPath, [join(root, 'src/cli/loose-tie.mjs'), ...args], { encoding: 'utf8' });
  expect(run.stderr).toBe('');
  expect(run.status).toBe(0);
  return new Map(readdirSync(out).map((name) => [name, readFileSync(join(out, name), 'utf8')]));
};

// What is stale is built now, so that nothing is said of it later.
beforeAll(() => void buildCli(root));

it('draws the same files whatever the number of workers', () => {
  const one = drawnBy('1');
  expect(one.size).toBe(7);
  expect(drawnBy('3')).toEqual(one);
});
