/** `loose-tie qualify`: the report as text and JSON, and the exit code of a check that fails. */
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { readTextFile } from '../../src/cli/io.ts';
import { type QualifyReport, qualifyReportSchema } from '../../src/cli/schemas/qualifyReport.ts';
import { schemas } from '../../src/cli/schemas.ts';

type Outcome = { code: number; out: string; err: string };

const qualify = async (...args: string[]): Promise<Outcome> => {
  const { run } = await import('../../src/cli/run.ts');
  const { register } = await import('../../src/cli/verbs/qualify.ts');
  let [out, err] = ['', ''];
  const code = await run(['qualify', ...args], [register], {
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

const reportOf = ({ out }: Outcome): QualifyReport => qualifyReportSchema.parse(JSON.parse(out));

afterEach(() => {
  vi.doUnmock('../../src/engine/qualification/allChecks.ts');
  vi.resetModules();
});

describe('qualify --json', () => {
  test('prints every check with ok, and nothing else', async () => {
    const outcome = await qualify('--json', '--no-ngspice');
    expect({ code: outcome.code, err: outcome.err }).toEqual({ code: 0, err: '' });
    const report = reportOf(outcome);
    expect(report.length).toBeGreaterThanOrEqual(150);
    expect(report.filter(({ kind }) => kind === 'published value').length).toBeGreaterThanOrEqual(100);
    for (const { ok, ours, reference, difference } of report) {
      expect(ok).toBe(true);
      expect(difference).toBeCloseTo((ours ?? Number.NaN) - reference, 9);
    }
  });

  test('fits the schema that the schema verb prints', async () => {
    const valid = new Ajv2020().compile(schemas.qualify?.() ?? false);
    const report: unknown = JSON.parse((await qualify('--json', '--no-ngspice')).out);
    expect(valid(report), JSON.stringify(valid.errors)).toBe(true);
    expect(valid([{ ok: true }])).toBe(false);
  });
});

describe('qualify', () => {
  test('groups the checks by model and counts them by kind', async () => {
    const { code, out } = await qualify('--no-ngspice');
    expect(code).toBe(0);
    expect(out).toMatch(/^fuse link: \d+ checks, 0 failed$/m);
    expect(out).toMatch(/^ {2}published value: \d{3} checks, 0 failed$/m);
    expect(out).toMatch(/^ {2}from memory: \d+ checks, 0 failed$/m);
    expect(out).toContain('29 CFR 1910.269');
    expect(out).toContain('A training aid only');
  });

  test('says FAIL and exits with 1 when one check fails', async () => {
    const check = {
      id: 'wrong.one',
      model: 'wrong',
      quantity: 'a number',
      input: 'none',
      ours: () => 2,
      reference: 1,
      unit: 'm',
      tolerance: { kind: 'absolute', value: 0.1 },
      source: 'nowhere',
      kind: 'from memory',
    };
    vi.resetModules();
    vi.doMock('../../src/engine/qualification/allChecks.ts', () => ({ allChecks: [check] }));
    const { code, out } = await qualify('--no-ngspice');
    expect(code).toBe(1);
    expect(out).toContain('FAIL  a number (none): 2 against 1 m; difference +100 %, allowed 10 %');
    vi.resetModules();
    const { code: jsonCode, out: json } = await qualify('--json', '--no-ngspice');
    expect(jsonCode).toBe(1);
    expect(JSON.parse(json)).toMatchObject([{ ok: false, ours: 2, difference: 1 }]);
  });

  test('refuses an option that it does not know', async () => {
    const { code, out } = await qualify('--ngspce');
    expect({ code, out }).toEqual({ code: 2, out: '' });
  });
});
