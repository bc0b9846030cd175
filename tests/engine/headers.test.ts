/** Each file that holds a model opens with it in words and says what it leaves out; in `standards` it names where it is from. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../../src/setup/run.mjs';

/** Files that carry, keep or look up and model nothing. */
const carriers: Readonly<Record<string, readonly string[]>> = {
  standards: ['interpolate'],
  circuit: ['branchNames', 'circuitDefect', 'circuitKey', 'memo', 'netlistOf', 'types'],
  mechanics: ['bearing'],
  hazards: [
    'bareMetal',
    'exposuresOf',
    'groundSize',
    'hazardsIn',
    'meeting',
    'moment',
    'partsWith',
    'preconditions',
    'probes',
    'readiness',
    'section',
    'surroundings',
    'types',
  ],
};

const headerOf = (file: string): string => {
  const [, header = ''] = /^\/\*\*(.*?)\*\//s.exec(readFileSync(file, 'utf8')) ?? [];
  return header.replace(/\s*\n\s*\*\s?/g, ' ').trim();
};

const files = Object.entries(carriers).flatMap(([folder, others]) =>
  readdirSync(join(root, 'src/engine', folder))
    .map((name) => name.replace('.ts', ''))
    .filter((name) => !others.includes(name))
    .map((name) => [`${folder}/${name}`, headerOf(join(root, 'src/engine', folder, `${name}.ts`))] as const),
);

describe.each(files)('%s', (_name, header) => {
  test('says in words what its model is and what it leaves out', () => {
    expect(header.length).toBeGreaterThan(80);
    expect(header).toMatch(/left out|leaves? out/i);
  });
});

describe.each(files.filter(([name]) => name.startsWith('standards/')))('%s', (_name, header) => {
  test('names a document, an author, a rule or that it is practice, an estimate or memory', () => {
    expect(header).toMatch(
      /\d{4}|CFR|IEC|IEEE|OpenDSS|[Cc]hange-of-state|Ohm’s law|Ohm's law|textbook|common practice|from memory|estimate|arithmetic/,
    );
  });
});

test('each file named as carrying no model is there', () => {
  const there = Object.entries(carriers).flatMap(([folder, others]) =>
    others.filter((name) => !readdirSync(join(root, 'src/engine', folder)).includes(`${name}.ts`)),
  );
  expect(there).toEqual([]);
});
