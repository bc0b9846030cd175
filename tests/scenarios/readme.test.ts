/** README's table of the shipped scenarios is what their files say; UPDATE=1 rewrites it. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from '../../src/engine/scenario/parse.ts';
import type { Scenario } from '../../src/engine/scenario/types.ts';
import { root } from '../../src/setup/run.mjs';

const readme = join(root, 'README.md');
const marks = /(<!-- scenarios:begin -->\n)([\s\S]*?)(<!-- scenarios:end -->)/;

const shipped = readdirSync(join(root, 'scenarios'))
  .filter((name) => name.endsWith('.yaml'))
  .sort()
  .map((name): Scenario => {
    const parsed = parse(readFileSync(join(root, 'scenarios', name), 'utf8'), name);
    if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
    return parsed.scenario;
  });

const tableOf = (scenarios: readonly Scenario[]): string => {
  const rows = [...scenarios].sort((a, b) => a.grade - b.grade || (a.id < b.id ? -1 : 1));
  const line = ({ id, title, grade, teaches, supply, faults, lookAlikes }: Scenario): string =>
    `| [${title}](scenarios/${id}.yaml) | ${grade} | ${teaches} | ${supply.system} | ${faults.length} | ${lookAlikes.length} |`;
  return [
    '| scenario | grade | what it is about | system | causes | look-alikes |',
    '| --- | --- | --- | --- | --- | --- |',
    ...rows.map(line),
    '',
  ].join('\n');
};

test('README lists every shipped scenario as its file says', () => {
  const table = tableOf(shipped);
  const text = readFileSync(readme, 'utf8');
  if (process.env.UPDATE === '1') writeFileSync(readme, text.replace(marks, (_, open, _old, end) => open + table + end));
  expect(marks.exec(readFileSync(readme, 'utf8'))?.[2]).toBe(table);
});

test('there are sixteen at least, of three grades, each with a title of its own and words that make no other column', () => {
  expect(shipped.length).toBeGreaterThanOrEqual(16);
  expect(new Set(shipped.map(({ grade }) => grade))).toEqual(new Set([1, 2, 3]));
  expect(new Set(shipped.map(({ title }) => title)).size).toBe(shipped.length);
  expect(shipped.filter(({ title, teaches }) => `${title}${teaches}`.includes('|'))).toEqual([]);
});

test('each has a note for the instructor: who disagrees, and what to ask', () => {
  expect(shipped.filter(({ instructor = [] }) => instructor.length === 0).map(({ id }) => id)).toEqual([]);
});
