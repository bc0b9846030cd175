/** `trial`: a handful of simulated trainees on one scene, as JSON by its schema and as text. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { readTextFile } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import type { TrialReport } from '../../src/cli/schemas/trialReport.ts';
import { register } from '../../src/cli/verbs/trial.ts';
import { root } from '../../src/setup/run.mjs';

const scenario = join(root, 'scenarios/sunny-bank-plant.yaml');
const trial = async (...args: string[]): Promise<{ code: number; out: string; err: string }> => {
  let [out, err] = ['', ''];
  const code = await run(['trial', ...args], [register], {
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

test('prints each habit and each pair with its area, by the published schema', async () => {
  const { code, out, err } = await trial(scenario, '--trainees', '8', '--seed', '1', '--json');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const report = JSON.parse(out) as TrialReport;
  const schema = JSON.parse(readFileSync(join(root, 'shared/schema/trial.schema.json'), 'utf8')) as object;
  const ajv = new Ajv2020();
  const validate = ajv.compile(schema);
  expect(validate(report), ajv.errorsText(validate.errors)).toBe(true);
  expect(report.habits).toHaveLength(8);
  const differing = report.pairs.filter(({ expected }) => expected === 'differs');
  expect(new Set(differing.map(({ against }) => against)).size).toBe(7);
  // One cause lies here, so two habits cannot show.
  const shown = differing.filter(({ auc }) => auc !== null);
  expect(shown.length).toBeGreaterThanOrEqual(5);
  for (const { auc } of shown) expect(auc).toBeGreaterThanOrEqual(0.95);
});

test('refuses too few trainees and what is no number', async () => {
  for (const count of ['3', 'many', '8.5']) {
    const { code, err } = await trial(scenario, '--trainees', count);
    expect(code).toBe(2);
    expect(err).toMatch(/whole number from 8/);
  }
});
