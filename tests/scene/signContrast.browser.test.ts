/** A quick look at a few kinds of sign, a crack among them, of what the long test holds over all: the picture shows what the engine says. */
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Stage } from '../../src/scene/stage.ts';
import { partOfKind, worldWith } from './everyKind.ts';
import { byDay, disagreement, readyNow, rowsOf, studioStage } from './signContrast.ts';

let stage: Stage;

beforeAll(async () => {
  stage = studioStage(byDay(worldWith(partOfKind('pin-insulator'))));
  await readyNow(stage);
});
afterAll(() => stage.dispose());

it.each([
  ['pin-insulator', 'pin-insulator-cracked'],
  ['pin-insulator', 'insulator-skirt-gone'],
  ['pole', 'water-stain'],
  ['tie', 'tie-broken'],
])('%s with %s shows where it is seen, and on no other side', (kind, fault) => {
  const part = partOfKind(kind);
  const stands = [`${part.pole}.road`, `${part.pole}.field`];
  const rows = rowsOf(stage, byDay(worldWith(part)), part, kind, fault, ['glass'], stands);
  expect(rows.filter(({ why }) => why === null).length).toBeGreaterThan(0);
  expect(rows.filter((row) => disagreement(row) !== null)).toEqual([]);
});
