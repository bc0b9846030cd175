/** Tools of a variant: in test on the day of the call, whatever the base had wrong with them. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { Draw } from '../../../src/engine/variants/draw.ts';
import { plainBounds } from '../../../src/engine/variants/types.ts';
import { monthsBefore, varyTools } from '../../../src/engine/variants/varyCrew.ts';
import { readWritten, rowsAt } from '../../../src/engine/variants/written.ts';
import { root } from '../../../src/setup/run.mjs';

it('counts months back over years, to a day that the month has', () => {
  expect(monthsBefore('2026-05-31', 3)).toBe('2026-02-28');
  expect(monthsBefore('2026-01-10', 13)).toBe('2024-12-10');
});

it('the stick that the bank on Works Road has past its test is in test in a variant', () => {
  const written = readWritten(readFileSync(join(root, 'scenarios/works-road-bank.yaml'), 'utf8'));
  const old = '2024-03-12';
  expect(rowsAt(written, 'tools').some(({ kind, tested }) => kind === 'stick' && String(tested) < old)).toBe(true);
  for (let i = 0; i < 20; i++) {
    const varied = varyTools(new Draw(`tools ${i}`), written, plainBounds);
    const sticks = rowsAt(varied, 'tools').filter(({ kind }) => kind === 'stick');
    expect(sticks.every(({ tested }) => String(tested) >= old)).toBe(true);
  }
});
