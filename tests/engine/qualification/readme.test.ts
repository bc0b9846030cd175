/** README's summary of the qualification is that of the report; UPDATE=1 rewrites it. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runChecks } from '../../../src/engine/qualification/runChecks.ts';
import { checkKinds, type QualifiedCheck } from '../../../src/engine/qualification/types.ts';
import { root } from '../../../src/setup/run.mjs';

const file = join(root, 'README.md');
const marks = /(<!-- qualification:begin -->\n)([\s\S]*?)(<!-- qualification:end -->)/;

const summaryOf = (report: readonly QualifiedCheck[]): string => {
  const failed = report.filter(({ ok }) => !ok).length;
  const models = new Set(report.map(({ model }) => model)).size;
  const line = (name: string, checks: readonly QualifiedCheck[]): string =>
    `| ${name} | ${checks.length} | ${checks.filter(({ ok }) => !ok).length} |`;
  return [
    `${report.length} checks of ${models} models, ${failed === 0 ? 'none' : failed} failed:`,
    '',
    '| outside value | checks | failed |',
    '| --- | --- | --- |',
    ...checkKinds.map((kind) =>
      line(
        kind,
        report.filter((check) => check.kind === kind),
      ),
    ),
    '',
  ].join('\n');
};

const report = runChecks();

test('README counts the checks as the report does', () => {
  const text = readFileSync(file, 'utf8');
  const summary = summaryOf(report);
  if (process.env.UPDATE === '1') writeFileSync(file, text.replace(marks, `$1${summary}$3`));
  expect(marks.exec(readFileSync(file, 'utf8'))?.[2]).toBe(summary);
});

test('a check that fails, or is left out, changes the summary', () => {
  const [first, ...rest] = report;
  if (first === undefined) throw new Error('no check');
  expect(summaryOf([{ ...first, ok: false }, ...rest])).not.toBe(summaryOf(report));
  expect(summaryOf(rest)).not.toBe(summaryOf(report));
});
