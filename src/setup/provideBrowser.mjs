// @ts-check
/**
 * Makes sure that there is a Chromium for the tests: uses one that is there, installs it as root on Debian, else says
 * what to do. Mesa's software renderer is installed with it, for Chromium's own is two to three times slower.
 * Only Node built-ins: this runs before node_modules exists.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { findBrowser } from './browser.mjs';
import { run, SetupError, say } from './run.mjs';

const canInstall = () =>
  process.getuid?.() === 0 &&
  existsSync('/usr/bin/apt-get') &&
  /^ID=debian$/m.test(existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : '');

/** @param {string} name */
const hasPackage = (name) =>
  (spawnSync('dpkg', ['-s', name], { encoding: 'utf8' }).stdout ?? '').includes('Status: install ok installed');

/** @param {string[]} names */
const aptInstall = (names) => {
  say(`installing ${names.join(' ')}`);
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  return (
    run('/', 'apt-get', ['update', '-qq'], env) &&
    run('/', 'apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...names], env)
  );
};

/**
 * Provides a Chromium or throws a SetupError that says what to do; tests hand in another system.
 * @param {{ named?: string | undefined, find?: () => string | null, mayInstall?: boolean,
 *   has?: (name: string) => boolean, add?: (names: string[]) => boolean }} [system]
 */
export const provideBrowser = ({
  named = process.env.CHROMIUM_PATH,
  find = findBrowser,
  mayInstall = canInstall(),
  has = hasPackage,
  add = aptInstall,
} = {}) => {
  if (named && !find()) throw new SetupError(`CHROMIUM_PATH is ${named}, which cannot be run`);
  if (mayInstall) {
    const mesa = ['libegl1', 'libgl1-mesa-dri'].filter((name) => !has(name));
    const names = find() ? mesa : ['chromium', ...mesa];
    if (names.length > 0 && !add(names)) say(`could not install ${names.join(' ')}`);
  }
  if (!find()) {
    throw new SetupError('no Chromium found: install one (Debian: apt-get install chromium) or set CHROMIUM_PATH');
  }
};
