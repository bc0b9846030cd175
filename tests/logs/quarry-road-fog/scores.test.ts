import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { score } from '../../../src/engine/score/score.ts';
import { committed } from '../../engine/score/logs.ts';
import { goldenOf } from './golden.ts';

const file = fileURLToPath(new URL('./scores.json', import.meta.url));
const names = ['careful', 'hasty', 'stuck'] as const;

it('careful, hasty and stuck score what is pinned, to the last bit (UPDATE=1 writes it)', () => {
  const made = `${JSON.stringify(Object.fromEntries(names.map((name) => [name, goldenOf(score(committed(name)))])), null, 2)}\n`;
  if (process.env.UPDATE) writeFileSync(file, made);
  expect(readFileSync(file, 'utf8')).toBe(made);
});
