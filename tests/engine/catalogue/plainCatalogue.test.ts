/** shared/catalogue/catalogue.json is the catalogue as it is; UPDATE=1 rewrites it. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { componentKinds } from '../../../src/engine/catalogue/components.ts';
import { faultKinds } from '../../../src/engine/catalogue/faults.ts';
import { plainCatalogue } from '../../../src/engine/catalogue/plainCatalogue.ts';
import { faultsOf } from '../../../src/engine/world/edit.ts';
import { root } from '../../../src/setup/run.mjs';
import { built } from '../world/shuffled.ts';
import { benchWith, cases } from './bench.ts';

const folder = join(root, 'shared/catalogue');
const file = join(folder, 'catalogue.json');

it('the published catalogue is the one in the code', () => {
  const text = `${JSON.stringify(plainCatalogue(), null, 2)}\n`;
  if (process.env.UPDATE === '1') {
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, text);
  }
  expect(readFileSync(file, 'utf8')).toBe(text);
});

it('loses nothing on its way through JSON', () => {
  const data = plainCatalogue();
  expect(JSON.parse(JSON.stringify(data))).toEqual(data);
});

/** Worlds of every scenario that is shipped or kept for tests, the bad ones apart. */
const scenes = ['scenarios', 'tests/scenarios', 'tests/scenarios/models', 'tests/scenarios/people'].flatMap((place) =>
  readdirSync(join(root, place))
    .filter((name) => name.endsWith('.yaml') && !name.startsWith('bad-'))
    .map((name) => built(readFileSync(join(root, place, name), 'utf8'))),
);

const worlds = [...scenes, ...cases.map(benchWith)];

it('each kind of component and fault occurs in a scenario', () => {
  const parts = worlds.flatMap((world) => world.parts);
  const laid = worlds.flatMap(faultsOf).map(({ fault }) => fault);
  const used = (kinds: readonly { readonly kind: string }[]) => new Set(kinds.map(({ kind }) => kind));
  expect(componentKinds.filter(({ id }) => !used(parts).has(id)).map(({ id }) => id)).toEqual([]);
  expect(faultKinds.filter(({ id }) => !used(laid).has(id)).map(({ id }) => id)).toEqual([]);
});
