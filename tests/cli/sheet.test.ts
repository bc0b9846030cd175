/** `sheet`: prints the instructor's sheet as text or as JSON by its schema, and nothing beside it. */
import { expect, test } from 'vitest';
import { readTextFile } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import { sheetReportSchema } from '../../src/cli/schemas/sheetReport.ts';
import { register } from '../../src/cli/verbs/sheet.ts';
import { caution } from '../../src/engine/debrief/caution.ts';

const sheet = async (...args: string[]): Promise<{ code: number; out: string; err: string }> => {
  let [out, err] = ['', ''];
  const code = await run(['sheet', ...args], [register], {
    stdout: (part) => {
      out += part;
    },
    stderr: (part) => {
      err += part;
    },
    readFile: readTextFile,
  });
  return { code, out, err };
};
const file = 'scenarios/orchard-lane-set.yaml';

test('the text says what is wrong and ends with the caution; feet or metres by choice', async () => {
  const { code, out, err } = await sheet(file);
  expect([code, err]).toEqual([0, '']);
  expect(out).toContain('not for trainees');
  expect(out).toContain('WHAT IS WRONG');
  expect(out.trimEnd().endsWith(caution)).toBe(true);
  expect(/ ft\b/.test(out)).toBe(true);
  expect(/ ft\b/.test((await sheet(file, '--metric')).out)).toBe(false);
});

test('--json is one object by the schema, with the causes of the text', async () => {
  const { code, out } = await sheet(file, '--json');
  expect(code).toBe(0);
  const { causes, scenario } = sheetReportSchema.parse(JSON.parse(out));
  expect(scenario).toBe('orchard-lane-set');
  const text = (await sheet(file)).out.toLowerCase();
  for (const { title } of causes) expect(text).toContain(title.toLowerCase());
  expect(causes.length).toBeGreaterThan(0);
});

test('the proven route lies beside the scenario, or where it is said to, and is left out where there is none', async () => {
  expect((await sheet(file)).out).toMatch(/A PROVEN SAFE ROUTE\nIt closes the call out after \d+ min/);
  expect((await sheet(file, '--par', 'scenarios/none')).out).not.toContain('PROVEN');
});

test('what is no scenario is bad use, with nothing on standard output', async () => {
  const { code, out, err } = await sheet('package.json');
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain('is no valid scenario');
});
