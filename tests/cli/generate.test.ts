/** `generate`: the same files byte for byte, each of which `check` finds good; bad use is told. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readTextFile } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import { register as check } from '../../src/cli/verbs/check.ts';
import { register as generate } from '../../src/cli/verbs/generate.ts';
import { emptyFolder } from '../setup/tinyProject.ts';

const cli = async (...args: string[]): Promise<{ code: number; out: string; err: string }> => {
  let [out, err] = ['', ''];
  const code = await run(args, [generate, check], {
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

test('writes the same good scenario files for the same seed', async () => {
  const [once, again] = [emptyFolder(), emptyFolder()];
  const made = await cli('generate', '--seed', '7', '--count', '1', '--out', once);
  expect({ code: made.code, err: made.err }).toEqual({ code: 0, err: '' });
  expect(made.out).toMatch(/grade [123] \(/);
  const files = readdirSync(once).sort();
  expect(files).toEqual(['mill-lane-refuse-7-1.yaml']);
  await cli('generate', '--seed', '7', '--count', '1', '--out', again);
  for (const file of files) expect(readFileSync(join(again, file))).toEqual(readFileSync(join(once, file)));
  const checked = await cli('check', ...files.map((file) => join(once, file)));
  expect({ code: checked.code, err: checked.err }).toEqual({ code: 0, err: '' });
}, 60_000);

test('refuses a grade there is not and a base that is no scenario, and writes nothing', async () => {
  const out = emptyFolder();
  expect((await cli('generate', '--seed', '7', '--grade', '4', '--out', out)).code).toBe(2);
  expect((await cli('generate', '--seed', '', '--out', out)).code).toBe(2);
  const bad = await cli('generate', '--seed', '7', '--from', join(out, 'none.yaml'), '--out', out);
  expect(bad.code).toBe(2);
  expect(bad.err).toMatch(/no such file/);
  expect(readdirSync(out)).toEqual([]);
});
