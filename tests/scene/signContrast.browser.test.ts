/** A quick look at a few kinds of sign, a crack among them, of what the long test holds over all: the picture shows what the engine says. */
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Stage } from '../../src/scene/stage.ts';
import { partOfKind, worldWith } from './everyKind.ts';
import { byDay, disagreement, readyNow, rowsOf, studioStage } from './signContrast.ts';
import table from './signs.json';

const known: Readonly<Record<string, string>> = table;
let stage: Stage;

beforeAll(async () => {
  stage = studioStage(byDay(worldWith(partOfKind('pin-insulator'))));
  await readyNow(stage);
});
afterAll(() => stage.dispose());

it.each([
  ['pole', 'water-stain'],
  ['pole', 'old-scar'],
  ['disconnect', 'disconnect-stack-cracked'],
  ['secondary-rack', 'rack-spool-broken'],
])('%s with %s shows where it is seen and not where it is not, but for what is in the table', (kind, fault) => {
  const part = partOfKind(kind);
  const stands = [`${part.pole}.road`, `${part.pole}.field`];
  const rows = rowsOf(stage, byDay(worldWith(part)), part, kind, fault, ['glass'], stands);
  expect(rows.filter(({ why }) => why === null).length).toBeGreaterThan(0);
  const strange = rows.filter((row) => disagreement(row) !== null && known[row.name] !== disagreement(row));
  expect(strange).toEqual([]);
});
