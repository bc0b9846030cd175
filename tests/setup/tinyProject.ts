/** A throw-away project folder with a package.json, a lock and one local package, for tests of the set-up. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { onTestFinished } from 'vitest';
import { root } from '../../src/setup/run.mjs';

/** Writes a file of a project, folders included. */
export const write = (project: string, path: string, content: string | Uint8Array): void => {
  mkdirSync(dirname(join(project, path)), { recursive: true });
  writeFileSync(join(project, path), content);
};

/** An empty folder that is removed after the test. */
export const emptyFolder = (): string => {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'loose-tie-')));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

/** Writes package.json and a lock that ask for the local package at a version. */
export const writeLock = (project: string, version: string): void => {
  const dependencies = { part: 'file:part' };
  const own = { name: 'tiny', version: '1.0.0', dependencies };
  write(project, 'package.json', JSON.stringify({ ...own, engines: { node: '>=20.19' } }));
  write(project, 'part/package.json', JSON.stringify({ name: 'part', version }));
  const packages = { '': own, part: { name: 'part', version }, 'node_modules/part': { resolved: 'part', link: true } };
  write(project, 'package-lock.json', JSON.stringify({ ...own, lockfileVersion: 3, requires: true, packages }));
};

/** A project with a page, a command line and this checkout's packages, ready to be built. */
export const buildable = (): string => {
  const project = emptyFolder();
  write(project, 'package.json', '{"type":"module"}');
  write(project, 'src/index.html', '<!doctype html><title>Tiny</title><script type="module" src="./main.ts"></script>');
  write(project, 'src/main.ts', 'document.title = "first";');
  write(project, 'vite.config.ts', 'export default { root: "src", base: "./" };');
  symlinkSync(join(root, 'node_modules'), join(project, 'node_modules'));
  return project;
};

/** What a set-up step answered for a project, or how it failed, and the news it gave; run apart to keep its output. */
export type StepResult = { readonly answer?: unknown; readonly error?: string; readonly news: string };

/** Runs an exported step of a set-up file on a project. */
export const step = (file: string, name: string, project: string): StepResult => {
  const url = pathToFileURL(join(root, 'src', 'setup', file)).href;
  const script = `
    import { ${name} } from ${JSON.stringify(url)};
    try { console.log(JSON.stringify({ answer: ${name}(${JSON.stringify(project)}) })); }
    catch (error) { console.log(JSON.stringify({ error: error.message })); }`;
  const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script], { encoding: 'utf8' });
  return { ...JSON.parse(stdout), news: stderr };
};
