/** Finding the Chromium of the browser tests. */
import { spawnSync } from 'node:child_process';
import { chmodSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { findBrowser } from '../../src/setup/browser.mjs';
import { root } from '../../src/setup/run.mjs';
import { emptyFolder, write } from './tinyProject.ts';

const withProgram = (): string => {
  const folder = emptyFolder();
  write(folder, 'chromium', '#!/bin/sh\n');
  chmodSync(join(folder, 'chromium'), 0o755);
  return join(folder, 'chromium');
};

test('findBrowser takes the first candidate that can be run', () => {
  const program = withProgram();
  expect(findBrowser('', ['/nowhere/chromium', program])).toBe(program);
  expect(findBrowser('', ['/nowhere/chromium'])).toBeNull();
});

test('findBrowser takes CHROMIUM_PATH and nothing else when it is set', () => {
  const program = withProgram();
  expect(findBrowser(program, [])).toBe(program);
  expect(findBrowser('/nowhere/chromium', [program])).toBeNull();
});

test('the set-up names a CHROMIUM_PATH that cannot be run, in one line, and fails', () => {
  const { status, stderr } = spawnSync(process.execPath, [join(root, 'src/setup/setup.mjs'), '--browser'], {
    env: { ...process.env, CHROMIUM_PATH: '/nowhere/chromium' },
    encoding: 'utf8',
  });
  expect(status).toBe(1);
  expect(stderr).toBe('setup: CHROMIUM_PATH is /nowhere/chromium, which cannot be run\n');
});
