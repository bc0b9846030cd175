/** `loose-tie qualify` with ngspice, all of it. */
import { expect, test } from 'vitest';
import { readTextFile } from '../../src/cli/io.ts';
import { type QualifyReport, qualifyReportSchema } from '../../src/cli/schemas/qualifyReport.ts';

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

test('adds the shipped scenes and 200 seeded networks that ngspice solved, each within 1e-6', async () => {
  const outcome = await qualify('--json');
  expect(outcome.code).toBe(0);
  const compared = reportOf(outcome).filter(({ source }) => source.includes('eecircuit-engine'));
  expect(compared.filter(({ model }) => model === 'random networks').length).toBe(200);
  expect(compared.filter(({ model }) => model === 'scene circuits').length % 31).toBe(0);
  expect(compared.length).toBeGreaterThanOrEqual(231);
  for (const { ours, kind } of compared) {
    expect(kind).toBe('independent program');
    expect(ours).toBeLessThanOrEqual(1e-6);
  }
});
