/** shared/catalogue/catalogue.json is the catalogue as it is; UPDATE=1 rewrites it. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { componentKinds } from '../../../src/engine/catalogue/components.ts';
import { faultKinds } from '../../../src/engine/catalogue/faults.ts';
import { plainCatalogue } from '../../../src/engine/catalogue/plainCatalogue.ts';
import { root } from '../../../src/setup/run.mjs';
import { start } from '../acts/scene.ts';

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

it('each kind of component and fault occurs in the scenario that is shipped', () => {
  const world = start();
  const laid = [...world.parts, ...world.tools].flatMap(({ faults }) => faults.map(({ kind }) => kind));
  const parts = world.parts.map(({ kind }) => kind);
  expect(componentKinds.filter(({ id }) => !parts.includes(id)).map(({ id }) => id)).toEqual([]);
  expect(faultKinds.filter(({ id }) => !laid.includes(id)).map(({ id }) => id)).toEqual([]);
});
