/** Every kind of fault and look-alike is laid in at least one scene that a test plays, solves or looks at. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { faultKinds } from '../../src/engine/catalogue/faults.ts';
import { parse } from '../../src/engine/scenario/parse.ts';
import { root } from '../../src/setup/run.mjs';
import { cases } from '../engine/catalogue/bench.ts';

const folders = ['scenarios', 'tests/scenarios/models', 'tests/scenarios/people', 'tests/accidents'];

/** Kinds laid in the scenario files of a folder. */
const laidIn = (folder: string): readonly string[] =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.yaml'))
    .flatMap((name) => {
      const parsed = parse(readFileSync(join(root, folder, name), 'utf8'), name);
      if (!parsed.ok) throw new Error(`${folder}/${name}: ${parsed.problems.map(({ message }) => message).join('; ')}`);
      return [...parsed.scenario.faults, ...parsed.scenario.lookAlikes].map(({ kind }) => kind);
    });

const onBenches = cases.flatMap(({ kind, with: others = [] }) => [kind, ...others.map((each) => each.kind)]);
const laid = new Set([...folders.flatMap(laidIn), ...onBenches]);

test('each fault that does harm is laid somewhere', () => {
  const harmful = faultKinds.filter(({ benign }) => !benign).map(({ id }) => id);
  expect(harmful.filter((id) => !laid.has(id))).toEqual([]);
});

test('each look-alike is laid somewhere', () => {
  const benign = faultKinds.filter((kind) => kind.benign).map(({ id }) => id);
  expect(benign.filter((id) => !laid.has(id))).toEqual([]);
});
