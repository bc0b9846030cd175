// @ts-check
/**
 * Installs the packages of the lock when they are not there. npm leaves a copy of the lock of what it installed in
 * node_modules; that copy is the stamp, so packages that somebody installed by hand count as well.
 * Only Node built-ins: this runs before node_modules exists.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { run, SetupError, say } from './run.mjs';

/** @typedef {{ version?: string, optional?: boolean, os?: string[], cpu?: string[], libc?: string[] }} Locked */

/** @param {string} file @returns {Record<string, Locked>} */
const packagesIn = (file) => {
  const { '': _root, ...packages } = JSON.parse(readFileSync(file, 'utf8')).packages ?? {};
  return packages;
};

/** An optional package is due here when it is made for this system; for the C library npm has its own say. @param {Locked} locked */
const isDue = (locked) => {
  if (!locked.optional) return true;
  if (!locked.os || !locked.cpu || locked.libc) return false;
  return locked.os.includes(process.platform) && locked.cpu.includes(process.arch);
};

/** Whether node_modules holds what the lock asks for. @param {string} root */
export const isInstalled = (root) => {
  const installedLock = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(installedLock)) return false;
  const installed = packagesIn(installedLock);
  return Object.entries(packagesIn(join(root, 'package-lock.json'))).every(
    ([path, locked]) => !isDue(locked) || (path in installed && installed[path]?.version === locked.version),
  );
};

/** Refuses a Node older than package.json asks for. @param {string} root @param {string} version */
export const checkNode = (root, version = process.versions.node) => {
  const wanted = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).engines?.node ?? '';
  const [needMajor = 0, needMinor = 0] = wanted.replace('>=', '').split('.').map(Number);
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major < needMajor || (major === needMajor && minor < needMinor)) {
    throw new SetupError(`Node ${wanted} is needed, this is ${version}`);
  }
};

/** Installs from the lock if needed; tells whether it did. @param {string} root */
export const install = (root) => {
  checkNode(root);
  if (isInstalled(root)) return false;
  say('installing the packages of the lock');
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  const npm = process.env.npm_execpath ?? '';
  const done = /npm-cli\.c?js$/.test(npm) ? run(root, process.execPath, [npm, ...args]) : run(root, 'npm', args);
  if (!done) throw new SetupError('npm ci failed, see above');
  return true;
};
