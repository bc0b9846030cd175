/** `replay`: a saved log to its score, on the committed logs of Quarry Road. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readTextFile } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import { register } from '../../src/cli/verbs/replay.ts';
import type { Log } from '../../src/engine/acts/types.ts';
import { root } from '../../src/setup/run.mjs';
import { emptyFolder } from '../setup/tinyProject.ts';

const scenario = join(root, 'scenarios/quarry-road-fog.yaml');
const logFile = (name: string): string => join(root, `tests/logs/quarry-road-fog/${name}.json`);

const replay = async (...args: string[]): Promise<{ code: number; out: string; err: string }> => {
  let [out, err] = ['', ''];
  const code = await run(['replay', ...args], [register], {
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

const saved = (name: string, text: string): string => {
  const file = join(emptyFolder(), name);
  writeFileSync(file, text);
  return file;
};
const changedLog = (name: string, change: (log: Log) => unknown): string =>
  saved(name, JSON.stringify(change(JSON.parse(readFileSync(logFile('stuck'), 'utf8')) as Log)));

describe('a log that replays', () => {
  test.each([
    ['careful', 'pass', 'closed-out'],
    ['hasty', 'fail', 'struck'],
    ['stuck', 'pass', 'handed-over'],
  ])('%s.json is printed as JSON by its schema, verdict %s, end %s, nothing beside it', async (name, verdict, end) => {
    const { code, out, err } = await replay(scenario, logFile(name), '--json');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const report = JSON.parse(out) as Record<string, unknown> & { exposures: { quantities: { unit: string }[] }[] };
    const ajv = new Ajv2020();
    const validate = ajv.compile(
      JSON.parse(readFileSync(join(root, 'shared/schema/replay.schema.json'), 'utf8')) as object,
    );
    expect(validate(report), ajv.errorsText(validate.errors)).toBe(true);
    expect([report.verdict, report.end]).toEqual([verdict, end]);
    const { entries } = JSON.parse(readFileSync(logFile(name), 'utf8')) as Log;
    expect(report.worldHash).toBe(entries.at(-1)?.hash);
    const units = new Set(report.exposures.flatMap(({ quantities }) => quantities.map(({ unit }) => unit)));
    if (name === 'hasty') expect([...units]).toEqual(expect.arrayContaining(['V', 'A', 's']));
    else expect(report.exposures).toEqual([]);
  });

  test('is printed as a debrief otherwise, in feet or by choice in metres', async () => {
    const us = await replay(scenario, logFile('stuck'));
    expect(us.code).toBe(0);
    expect(us.out).toMatch(/^Fog on Quarry Road: Passed\n/);
    expect(us.out).toContain('minimum approach distance 2.13 ft');
    expect((await replay(scenario, logFile('stuck'), '--metric')).out).toContain('minimum approach distance 0.65 m');
  });
});

describe('a log that does not replay ends with 1 and says why', () => {
  test.each<readonly [string, (log: Log) => unknown, RegExp]>([
    [
      'another hash',
      (log) => ({
        ...log,
        entries: log.entries.map((entry, i) => (i === 3 ? { ...entry, hash: '0'.repeat(16) } : entry)),
      }),
      /entry 4 .* leads to another world/,
    ],
    [
      'another act in the same place',
      (log) => ({
        ...log,
        entries: log.entries.map((entry, i) => (i === 1 ? { ...entry, act: { ...entry.act, about: 'eta' } } : entry)),
      }),
      /entry 2 \(ask\)/,
    ],
    ['an entry left out', (log) => ({ ...log, entries: log.entries.slice(1) }), /entry 1 /],
    ['another engine', (log) => ({ ...log, engine: '0.0.1' }), /another engine version: 0\.0\.1/],
    ['another scenario', (log) => ({ ...log, scenarioHash: 'f'.repeat(64) }), /made for scenario .* not for this one/],
    ['another seed', (log) => ({ ...log, seed: log.seed + 1 }), /entry 1 .* leads to another world/],
  ])('%s', async (name, change, words) => {
    const { code, out, err } = await replay(scenario, changedLog(`${name}.json`, change), '--json');
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toMatch(/ does not replay: /);
    expect(err).toMatch(words);
    expect(err).not.toMatch(/forged|cheat/);
  });
});

describe('bad use and bad files end with 2', () => {
  test('text that is no JSON, JSON that is no log, a log with keys of its own', async () => {
    for (const [name, text, words] of [
      ['no.json', '{ "format": ', /is no log:\n {2}the log: no JSON/],
      ['list.json', '[]', /is no log:/],
      [
        'more.json',
        JSON.stringify({ ...(JSON.parse(readFileSync(logFile('stuck'), 'utf8')) as Log), extra: 1 }),
        /extra/,
      ],
    ] as const) {
      const { code, out, err } = await replay(scenario, saved(name, text), '--json');
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toMatch(words);
    }
  });

  test('a scenario that is none, with every problem in it', async () => {
    const bad = join(root, 'tests/scenarios/bad-keys.yaml');
    const { code, out, err } = await replay(bad, logFile('stuck'));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    const listed = readFileSync(join(root, 'tests/scenarios/bad-keys.problems.txt'), 'utf8').trim().split('\n').length;
    expect(err.split('\n').filter((line) => line.includes('bad-keys.yaml:')).length).toBe(listed);
  });

  test('files that are not there, and too few of them', async () => {
    expect((await replay(scenario, join(root, 'nothing.json'))).err).toContain('no such file');
    expect((await replay(scenario, join(root, 'nothing.json'))).code).toBe(2);
    expect((await replay(scenario)).code).toBe(2);
  });
});

test('the help names the exit code of a log that does not replay', async () => {
  const { code, out } = await replay('--help');
  expect(code).toBe(0);
  expect(out).toContain('Exit code 1');
});

describe("an instructor's weights", () => {
  const north = { format: 'loose-tie-weights', version: 1, name: 'north yard', weights: { improvised: 0.6 } };

  test('judge the log, and the score and the debrief say so', async () => {
    const file = saved('weights.json', JSON.stringify(north));
    const json = await replay(scenario, logFile('stuck'), '--weights', file, '--json');
    expect(json.code).toBe(0);
    expect((JSON.parse(json.out) as { weights: unknown }).weights).toEqual({
      name: 'north yard',
      changed: { improvised: 0.6 },
    });
    const text = await replay(scenario, logFile('stuck'), '--weights', file);
    expect(text.out).toContain('Judged by the weights \u201cnorth yard\u201d: improvised 0.6.');
  });

  test('beyond their limits are bad use, every problem told', async () => {
    const file = saved('weights.json', JSON.stringify({ ...north, weights: { improvised: 2, level: 1 } }));
    const { code, err } = await replay(scenario, logFile('stuck'), '--weights', file);
    expect(code).toBe(2);
    expect(err).toContain('weights.improvised: goes from 0.5 to 1, found 2');
    expect(err).toContain('weights: "level" is not known here');
  });
});
