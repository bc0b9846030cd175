/** `catalogue`: what it lists is what the catalogue holds, counted, each with its source. */
import { describe, expect, test } from 'vitest';
import { readTextFile } from '../../src/cli/io.ts';
import { run } from '../../src/cli/run.ts';
import { catalogueReportSchema } from '../../src/cli/schemas/catalogueReport.ts';
import { register } from '../../src/cli/verbs/catalogue.ts';
import { componentKinds } from '../../src/engine/catalogue/components.ts';
import { faultKinds } from '../../src/engine/catalogue/faults.ts';

const catalogue = async (...args: string[]): Promise<{ code: number; out: string }> => {
  let out = '';
  const code = await run(['catalogue', ...args], [register], {
    stdout: (part) => {
      out += part;
    },
    stderr: (part) => {
      out += part;
    },
    readFile: readTextFile,
  });
  return { code, out };
};

describe('catalogue --json', async () => {
  const { code, out } = await catalogue('--json');
  const { lists } = catalogueReportSchema.parse(JSON.parse(out));
  const idsIn = (name: string) => lists.find((list) => list.name === name)?.kinds.map(({ id }) => id);

  test('lists every kind once, with counts that are right', () => {
    expect(code).toBe(0);
    for (const { count, kinds } of lists)
      expect([kinds.length, new Set(kinds.map(({ id }) => id)).size]).toEqual([count, count]);
    expect(idsIn('components')).toEqual(componentKinds.map(({ id }) => id));
    expect([...(idsIn('faults') ?? []), ...(idsIn('look-alikes') ?? [])].sort()).toEqual(
      faultKinds.map(({ id }) => id).sort(),
    );
  });

  test('gives each kind a source', () => {
    for (const { kinds } of lists) expect(kinds.filter(({ source }) => source.trim().length < 8)).toEqual([]);
  });
});

test('catalogue prints a heading with its count for each list, and a line a kind', async () => {
  const { code, out } = await catalogue();
  expect(code).toBe(0);
  expect(out).toMatch(new RegExp(`^components: ${componentKinds.length}$`, 'm'));
  for (const { id } of faultKinds) expect(out).toMatch(new RegExp(`^ {2}${id} +.+ \\[.+\\]$`, 'm'));
});
