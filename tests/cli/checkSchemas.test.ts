/** `schema`: each published schema is valid, lies in shared/schema/ and is what the verb prints; UPDATE=1 rewrites them. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readTextFile } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import { schemas } from '../../src/cli/schemas.ts';
import { register } from '../../src/cli/verbs/schema.ts';
import { root } from '../../src/setup/run.mjs';

const folder = join(root, 'shared/schema');

const schema = async (...args: string[]): Promise<{ code: number; out: string; err: string }> => {
  let [out, err] = ['', ''];
  const code = await run(['schema', ...args], [register], {
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

describe.each(Object.keys(schemas))('the schema of %s', (name) => {
  const file = join(folder, `${name}.schema.json`);

  test('is printed as it lies in shared/schema/', async () => {
    const { code, out, err } = await schema(name);
    if (process.env.UPDATE === '1') writeFileSync(file, out);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toBe(readFileSync(file, 'utf8'));
  });

  test('is valid JSON Schema 2020-12', () => {
    const ajv = new Ajv2020();
    ajv.addKeyword('x-unit');
    const printed = JSON.parse(readFileSync(file, 'utf8')) as { $schema: string };
    expect(printed.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(ajv.validateSchema(printed), ajv.errorsText()).toBe(true);
  });
});

test('without a name the schema of a scenario is printed, with --json or not', async () => {
  const { out } = await schema('scenario');
  expect(await schema()).toEqual({ code: 0, out, err: '' });
  expect(await schema('--json')).toEqual({ code: 0, out, err: '' });
});

test('every file in shared/schema/ is a schema that can be printed', () => {
  expect(readdirSync(folder).sort()).toEqual(
    Object.keys(schemas)
      .map((name) => `${name}.schema.json`)
      .sort(),
  );
});

test.each(['scenarios', 'toString', '__proto__'])(
  'the unknown name %s gives exit code 2 and says which there are',
  async (name) => {
    const { code, out, err } = await schema(name);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('there is scenario, log, act');
  },
);
