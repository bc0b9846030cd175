/** `prove`: by its schema, the same from the cache, par written beside. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { readTextFile } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import { register } from '../../src/cli/verbs/prove.ts';
import { root } from '../../src/setup/run.mjs';
import { emptyFolder } from '../setup/tinyProject.ts';

const prove = async (...args: string[]): Promise<{ code: number; out: string; err: string }> => {
  let [out, err] = ['', ''];
  const code = await run(['prove', ...args], [register], {
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

const scenario = join(root, 'scenarios/mill-lane-refuse.yaml');

test('prints JSON by its schema, and the very same from the cache', async () => {
  const par = emptyFolder();
  const fresh = await prove(scenario, '--json', '--fresh', '--par', par);
  expect({ code: fresh.code, err: fresh.err }).toEqual({ code: 0, err: '' });
  const [report] = JSON.parse(fresh.out) as [Record<string, unknown> & { par: { minutes: number } }];
  const validate = new Ajv2020().compile(
    JSON.parse(readFileSync(join(root, 'shared/schema/prove.schema.json'), 'utf8')) as object,
  );
  expect(validate([report]), JSON.stringify(validate.errors)).toBe(true);
  expect(report).toMatchObject({ file: scenario, ok: true, seed: 1 });
  expect(JSON.parse(readFileSync(join(par, 'mill-lane-refuse.json'), 'utf8'))).toMatchObject({
    format: 'loose-tie-par',
    minutes: report.par.minutes,
  });
  expect((await prove(scenario, '--json')).out).toBe(fresh.out);
  expect((await prove(scenario)).out).toMatch(/mill-lane-refuse\.yaml: ok, \d+ of \d+ claims hold/);
});

test('a file that is no scenario, and a number that is none, are bad use', async () => {
  const file = join(emptyFolder(), 'bad.yaml');
  writeFileSync(file, 'format: 1\n');
  expect((await prove(file)).code).toBe(2);
  expect((await prove(scenario, '--workers', 'two')).code).toBe(2);
});
