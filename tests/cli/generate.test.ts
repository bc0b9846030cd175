/** `generate`: files that `check` finds good, within an instructor's bounds; bad use is told. Workers: the long tests. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
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

const boundsFile = (text: string): string => {
  const file = join(emptyFolder(), 'bounds.yaml');
  writeFileSync(file, `format: loose-tie-bounds\nversion: 1\n${text}`);
  return file;
};

test('writes good scenario files within the bounds, each with its par', async () => {
  const [out, par] = [emptyFolder(), emptyFolder()];
  const bounds = boundsFile(
    'bases: [mill-lane-refuse]\nfaults: { least: 1, most: 1, kinds: [tie-broken, guy-broken] }\n',
  );
  const made = await cli('generate', '--seed', '7', '--bounds', bounds, '--out', out, '--par', par);
  expect({ code: made.code, err: made.err }).toEqual({ code: 0, err: '' });
  expect(made.out).toMatch(/grade [123] \(/);
  const files = readdirSync(out);
  expect(files).toEqual(['mill-lane-refuse-7-1.yaml']);
  expect(readFileSync(join(out, 'mill-lane-refuse-7-1.yaml'), 'utf8')).toMatch(/kind: (tie|guy)-broken/);
  expect(JSON.parse(readFileSync(join(par, 'mill-lane-refuse-7-1.json'), 'utf8'))).toMatchObject({
    format: 'loose-tie-par',
    scenario: 'mill-lane-refuse-7-1',
  });
  const checked = await cli('check', ...files.map((file) => join(out, file)));
  expect({ code: checked.code, err: checked.err }).toEqual({ code: 0, err: '' });
}, 60_000);

test('refuses what is no grade, no scenario and no bounds, and writes nothing', async () => {
  const out = emptyFolder();
  expect((await cli('generate', '--seed', '7', '--grade', '4', '--out', out)).code).toBe(2);
  expect((await cli('generate', '--seed', '', '--out', out)).code).toBe(2);
  const bad = await cli('generate', '--seed', '7', '--from', join(out, 'none.yaml'), '--out', out);
  expect(bad.code).toBe(2);
  expect(bad.err).toMatch(/no such file/);
  const wrong = await cli('generate', '--seed', '7', '--bounds', boundsFile('weather: [hail]\n'), '--out', out);
  expect(wrong.code).toBe(2);
  expect(wrong.err).toMatch(/bounds\.yaml:3:11 weather\[0\]: found "hail"/);
  const stranger = await cli('generate', '--seed', '7', '--bounds', boundsFile('bases: [no-lane]\n'), '--out', out);
  expect(stranger.err).toMatch(/no-lane, which is not in the library/);
  expect(readdirSync(out)).toEqual([]);
});
