/** The install step: from the lock, once. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkNode, isInstalled } from '../../src/setup/install.mjs';
import { root } from '../../src/setup/run.mjs';
import { emptyFolder, type StepResult, step, write, writeLock } from './tinyProject.ts';

const install = (project: string): StepResult => step('install.mjs', 'install', project);

describe('install', () => {
  test('installs a fresh clone, and not again as long as the lock stays', () => {
    const project = emptyFolder();
    writeLock(project, '1.0.0');
    expect(isInstalled(project)).toBe(false);
    expect(install(project)).toMatchObject({ answer: true });
    expect(install(project)).toEqual({ answer: false, news: '' });
    writeLock(project, '1.1.0');
    expect(install(project)).toMatchObject({ answer: true });
    rmSync(join(project, 'node_modules'), { recursive: true });
    expect(isInstalled(project)).toBe(false);
  });

  test('says that it failed when package.json and the lock disagree', () => {
    const project = emptyFolder();
    writeLock(project, '1.0.0');
    write(project, 'package.json', '{"name":"tiny","version":"1.0.0","dependencies":{"other":"file:other"}}');
    expect(install(project).error).toContain('npm ci failed');
  });
});

describe('isInstalled', () => {
  const lock = (packages: object): string => JSON.stringify({ packages: { '': {}, ...packages } });
  const withLocks = (wanted: object, there: object): boolean => {
    const project = emptyFolder();
    write(project, 'package-lock.json', lock(wanted));
    write(project, 'node_modules/.package-lock.json', lock(there));
    return isInstalled(project);
  };
  const { platform, arch } = process;

  test('wants each package at the version of the lock', () => {
    expect(withLocks({ 'node_modules/a': { version: '1.0.0' } }, { 'node_modules/a': { version: '1.0.0' } })).toBe(
      true,
    );
    expect(withLocks({ 'node_modules/a': { version: '1.0.1' } }, { 'node_modules/a': { version: '1.0.0' } })).toBe(
      false,
    );
    expect(withLocks({ 'node_modules/a': { version: '1.0.0' } }, {})).toBe(false);
  });

  test('wants a binary package of this system only, so that another system’s node_modules is not taken', () => {
    const binary = (os: string, cpu: string): object => ({ version: '1.0.0', optional: true, os: [os], cpu: [cpu] });
    expect(withLocks({ 'node_modules/b': binary('plan9', 'vax') }, {})).toBe(true);
    expect(withLocks({ 'node_modules/b': binary(platform, arch) }, {})).toBe(false);
  });

  test('finds this checkout installed', () => {
    expect(isInstalled(root)).toBe(true);
  });
});

test('checkNode refuses a Node older than package.json asks for', () => {
  expect(() => checkNode(root, '20.18.9')).toThrow('Node >=20.19 is needed, this is 20.18.9');
  expect(() => checkNode(root, '18.20.0')).toThrow('is needed');
  expect(() => checkNode(root, '20.19.0')).not.toThrow();
  expect(() => checkNode(root, '24.1.0')).not.toThrow();
});
