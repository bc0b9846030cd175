/** The command itself, started as its users start it. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../src/setup/run.mjs';

const looseTie = (...args: string[]) =>
  spawnSync(process.execPath, [join(root, 'src/cli/loose-tie.mjs'), ...args], { encoding: 'utf8' });

test('loose-tie --help prints the help and nothing else on stdout', () => {
  const { status, stdout } = looseTie('--help');
  expect(status).toBe(0);
  expect(stdout).toMatch(/^Usage: loose-tie /);
});

test('a verb that does not exist ends with exit code 2, an empty stdout and a message on stderr', () => {
  const { status, stdout, stderr } = looseTie('juggle');
  expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
  expect(stderr).toContain('error:');
});
