/** Builds happen when something changed, and leave the old one whole when they fail. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { hashOf } from '../../src/setup/stamp.mjs';
import { buildable, emptyFolder, type StepResult, step, write } from './tinyProject.ts';

const buildApp = (project: string): StepResult => step('build.mjs', 'buildApp', project);

test('hashOf sees contents, names and added files, and not what lies elsewhere', () => {
  const folder = emptyFolder();
  write(folder, 'src/a.ts', '1');
  const first = hashOf(folder, ['src', 'missing']);
  write(folder, 'other/a.ts', '1');
  expect(hashOf(folder, ['src', 'missing'])).toBe(first);
  write(folder, 'src/deep/b.ts', '');
  const second = hashOf(folder, ['src', 'missing']);
  write(folder, 'src/a.ts', '2');
  expect(new Set([first, second, hashOf(folder, ['src', 'missing'])]).size).toBe(3);
});

test('the app is built once, again after a change, and a failing build leaves the old one', () => {
  const project = buildable();
  const script = (): string => {
    const [name = ''] = readdirSync(join(project, 'dist', 'assets'));
    return readFileSync(join(project, 'dist', 'assets', name), 'utf8');
  };
  expect(buildApp(project)).toMatchObject({ answer: true });
  expect(script()).toContain('first');
  expect(buildApp(project)).toEqual({ answer: false, news: '' });

  write(project, 'src/main.ts', 'document.title = "second";');
  expect(buildApp(project)).toMatchObject({ answer: true });
  expect(script()).toContain('second');

  write(project, 'src/main.ts', 'import "./gone.ts";');
  expect(buildApp(project).error).toContain('the build failed');
  expect(script()).toContain('second');
  expect(readdirSync(join(project, '.cache'))).toEqual(['app.stamp']);
  expect(buildApp(project).error).toContain('the build failed');
});

test('an app without a page is refused with the name of the missing file', () => {
  const project = emptyFolder();
  expect(buildApp(project).error).toContain('src/index.html is missing');
  expect(existsSync(join(project, 'dist'))).toBe(false);
});
