/** Every bad file beside the exact text of its problems; UPDATE=1 rewrites the texts for review. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { filesIn, folder, read, textOf } from './read.ts';

const bad = filesIn(folder).filter((name) => name.startsWith('bad-'));

const problemsOf = (name: string): string => {
  const parsed = read(textOf(folder, name), name);
  if (parsed.ok) return '';
  return parsed.problems.map(({ file, line, column, message }) => `${file}:${line}:${column}: ${message}\n`).join('');
};

describe('a bad scenario is refused in the words pinned beside it', () => {
  test.each(bad)('%s', (name) => {
    const told = problemsOf(name);
    const pinned = `${folder}${name.replace('.yaml', '.problems.txt')}`;
    if (process.env.UPDATE === '1') writeFileSync(pinned, told);
    expect(told).not.toBe('');
    expect(told).toBe(existsSync(pinned) ? readFileSync(pinned, 'utf8') : 'no file of problems');
  });
});

test('every file of problems has its scenario', () => {
  const without = filesIn(folder, '.problems.txt').filter(
    (name) => !bad.includes(name.replace('.problems.txt', '.yaml')),
  );
  expect(without).toEqual([]);
});

test('the small scenario that the bad ones are made from has no problem', () => {
  expect(read(textOf(folder, 'small.yaml'))).toMatchObject({ ok: true });
});

test('each problem names file, line, column, path, found, expected and the nearest word', () => {
  const parsed = read(textOf(folder, 'bad-kinds.yaml'), 'bad-kinds.yaml');
  if (parsed.ok) throw new Error('bad-kinds.yaml was accepted');
  expect(parsed.problems).toContainEqual({
    file: 'bad-kinds.yaml',
    line: 28,
    column: 28,
    path: 'equipment[0].kind',
    found: 'the unknown kind "cutot"',
    expected: 'a kind of the catalogue',
    nearest: 'cutout',
    message:
      'equipment[0].kind: found the unknown kind "cutot"; expected a kind of the catalogue; did you mean "cutout"?',
  });
});
