/** The closing line of a test run counts everything that went wrong. */
import { spawnSync } from 'node:child_process';
import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../src/setup/run.mjs';
import { emptyFolder, write } from './tinyProject.ts';

const runTests = (files: Readonly<Record<string, string>>): { status: number | null; last: string } => {
  const project = emptyFolder();
  symlinkSync(join(root, 'node_modules'), join(project, 'node_modules'));
  for (const [path, body] of Object.entries(files)) {
    write(project, path, `import { beforeAll, describe, expect, test } from 'vitest';\n${body}`);
  }
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
  const reporter = join(root, 'src', 'setup', 'plain-reporter.ts');
  write(project, 'vitest.config.ts', 'export default {};');
  const args = [vitest, 'run', '--passWithNoTests', `--reporter=${reporter}`];
  const { status, stdout } = spawnSync(process.execPath, args, { cwd: project, encoding: 'utf8' });
  return { status, last: stdout.trimEnd().split('\n').at(-1) ?? '' };
};

test('a good run ends with its count and exit code 0', () => {
  expect(runTests({ 'a.test.ts': `test('a', () => expect(1).toBe(1));` })).toEqual({
    status: 0,
    last: 'Tests: 1 passed, 0 failed, 0 skipped',
  });
});

test('failed tests, files that throw, hooks that throw and skipped tests are counted', () => {
  const skipped = ['test', 'skip'].join('.');
  const run = runTests({
    'a.test.ts': `test('a', () => expect(1).toBe(1));\ntest('b', () => expect(1).toBe(2));\n${skipped}('c', () => {});`,
    'b.test.ts': `throw new Error('at import');`,
    'c.test.ts': `describe('d', () => {\n  beforeAll(() => {\n    throw new Error('in a hook');\n  });\n  test('e', () => {});\n});`,
  });
  expect(run).toEqual({ status: 1, last: 'Tests: 1 passed, 3 failed, 2 skipped' });
});

test('a run without tests says so in the same line', () => {
  expect(runTests({})).toEqual({ status: 0, last: 'Tests: 0 passed, 0 failed, 0 skipped' });
});
