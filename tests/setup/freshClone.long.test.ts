/** A copy of the sources without packages or builds runs with only Node and npm, and does not install twice. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { cpSync } from 'node:fs';
import { join, relative } from 'node:path';
import { createInterface } from 'node:readline';
import { text } from 'node:stream/consumers';
import { expect, test } from 'vitest';
import { root } from '../../src/setup/run.mjs';
import { emptyFolder } from './tinyProject.ts';

const leftOut = ['node_modules', '.git', '.cache', 'dist', 'coverage'];
const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !name.startsWith('npm_')));

const freshClone = (): string => {
  const clone = join(emptyFolder(), 'clone');
  cpSync(root, clone, { recursive: true, filter: (path) => !leftOut.includes(relative(root, path)) });
  return clone;
};

const startAndStop = async (clone: string, port: number): Promise<{ title: string; news: string }> => {
  const child = spawn('npm', ['start', '--silent'], {
    cwd: clone,
    env: { ...env, PORT: String(port) },
    stdio: ['ignore', 'pipe', 'pipe'],
    detached: true,
  });
  const news = text(child.stderr);
  const [line] = await once(createInterface(child.stdout), 'line');
  expect(line).toContain(`http://localhost:${port}/`);
  const page = await (await fetch(`http://localhost:${port}/`)).text();
  // As Ctrl-C does: to npm, its shell and the server at once.
  process.kill(-(child.pid ?? 0), 'SIGINT');
  await once(child, 'close');
  return { title: /<title>(.*)<\/title>/.exec(page)?.[1] ?? '', news: await news };
};

test('npx loose-tie and npm start work from nothing, set-up news stays off stdout, the second start reuses all', async () => {
  const clone = freshClone();
  const help = spawnSync('npx', ['loose-tie', '--help'], { cwd: clone, env, encoding: 'utf8' });
  expect(help.status).toBe(0);
  expect(help.stdout).toMatch(/^Usage: loose-tie /);
  expect(help.stderr).toContain('setup: installing');

  const first = await startAndStop(clone, 41730);
  expect(first.title).toContain('Loose Tie');
  expect(first.news).toContain('setup: building the app');
  expect(first.news).not.toContain('setup: installing');
  const second = await startAndStop(clone, 41730);
  expect(second).toEqual({ title: first.title, news: '' });
});
