/** Finding the Chromium of the browser tests. */
import { spawnSync } from 'node:child_process';
import { chmodSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findBrowser } from '../../src/setup/browser.mjs';
import { provideBrowser } from '../../src/setup/provideBrowser.mjs';
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

describe('provideBrowser', () => {
  /** A system on which chromium is found once it has been added. */
  const system = (there: readonly string[], mayInstall: boolean) => {
    const packages = [...there];
    const added: string[] = [];
    return {
      added,
      named: '',
      mayInstall,
      find: () => (packages.includes('chromium') ? '/usr/bin/chromium' : null),
      has: (name: string) => packages.includes(name),
      add: (names: string[]) => {
        added.push(...names);
        packages.push(...names);
        return true;
      },
    };
  };
  const mesa = ['libegl1', 'libgl1-mesa-dri'];

  test('installs Chromium and Mesa where it may', () => {
    const bare = system([], true);
    provideBrowser(bare);
    expect(bare.added).toEqual(['chromium', ...mesa]);
  });

  test('uses the Chromium that is there and adds only what is missing', () => {
    const partly = system(['chromium', 'libegl1'], true);
    provideBrowser(partly);
    expect(partly.added).toEqual(['libgl1-mesa-dri']);
    const complete = system(['chromium', ...mesa], true);
    provideBrowser(complete);
    expect(complete.added).toEqual([]);
  });

  test('says what to do where it may not install, and fails', () => {
    expect(() => provideBrowser(system([], false))).toThrow(
      'no Chromium found: install one (Debian: apt-get install chromium) or set CHROMIUM_PATH',
    );
  });

  test('is content with a Chromium where it may not install', () => {
    const other = system(['chromium'], false);
    provideBrowser(other);
    expect(other.added).toEqual([]);
  });
});
