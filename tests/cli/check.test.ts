/** `check`: exit codes and output. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readTextFile } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import type { CheckReport } from '../../src/cli/schemas/checkReport.ts';
import { schemas } from '../../src/cli/schemas.ts';
import { register } from '../../src/cli/verbs/check.ts';
import { root } from '../../src/setup/run.mjs';
import { emptyFolder } from '../setup/tinyProject.ts';

const good = join(root, 'tests/scenarios/small.yaml');
const shipped = join(root, 'scenarios/quarry-road-fog.yaml');
const bad = join(root, 'tests/scenarios/bad-kinds.yaml');
const badParts = join(root, 'tests/scenarios/bad-parts.yaml');

const check = async (...args: string[]): Promise<{ code: number; out: string; err: string }> => {
  let [out, err] = ['', ''];
  const code = await run(['check', ...args], [register], {
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

describe('without --json', () => {
  test('a good file is named as ok and the exit code is 0', async () => {
    expect(await check(shipped)).toEqual({ code: 0, out: `${shipped}: ok\n`, err: '' });
  });

  test('every problem is a line file:line:column: message, and the exit code is 1', async () => {
    const { code, out, err } = await check(bad);
    expect({ code, err }).toEqual({ code: 1, err: '' });
    const lines = out.trimEnd().split('\n');
    expect(lines.length).toBeGreaterThan(5);
    for (const line of lines) expect(line).toMatch(/bad-kinds\.yaml:\d+:\d+: \S+: found .+; expected /);
  });

  test('one bad file among good ones gives exit code 1, and each is told', async () => {
    const { code, out } = await check(good, bad, shipped);
    expect(code).toBe(1);
    expect(out).toContain(`${good}: ok\n`);
    expect(out).toContain(`${bad}:28:28: `);
    expect(out).toContain(`${shipped}: ok\n`);
  });

  test('a fault on a part that the scene will not have is a problem', async () => {
    const { out } = await check(badParts);
    expect(out).toContain('did you mean "p2.insulator"?');
  });
});

describe('with --json', () => {
  test('an array with one object a file is all that is printed', async () => {
    const { code, out, err } = await check('--json', good, bad);
    expect({ code, err }).toEqual({ code: 1, err: '' });
    const [first, second] = JSON.parse(out) as CheckReport;
    expect(first).toEqual({ file: good, ok: true, problems: [] });
    expect(second).toMatchObject({ file: bad, ok: false });
    expect(second?.problems[0]).toMatchObject({ file: bad, line: 28, column: 28, nearest: 'cutout' });
  });

  test('the output is as its published schema says', async () => {
    const { out } = await check('--json', good, bad, badParts);
    const ajv = new Ajv2020();
    expect(ajv.validate(schemas.check?.() ?? {}, JSON.parse(out)), ajv.errorsText()).toBe(true);
  });
});

describe('bad use', () => {
  test('no file at all gives exit code 2', async () => {
    const { code, out, err } = await check();
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain("missing required argument 'files'");
  });

  test('a file that is not there gives exit code 2, its name on stderr and nothing on stdout', async () => {
    const { code, out, err } = await check('--json', good, 'nowhere.yaml');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('nowhere.yaml: no such file');
  });

  test('a file that is not UTF-8 gives exit code 2', async () => {
    const file = join(emptyFolder(), 'latin.yaml');
    writeFileSync(file, Uint8Array.of(0x66, 0xe9, 0x0a));
    expect(await check(file)).toMatchObject({ code: 2, out: '' });
  });

  test('a file too long to be one is not read and gives exit code 2', async () => {
    const file = join(emptyFolder(), 'long.yaml');
    writeFileSync(file, `#${'x'.repeat(1024 * 1024)}`);
    const { code, err } = await check(file);
    expect(code).toBe(2);
    expect(err).toContain('at most 1048576 are read');
  });
});
