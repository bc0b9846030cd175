/** Versions of the written form. */
import { describe, expect, test } from 'vitest';
import { format } from '../../../src/engine/scenario/schema/scenario.ts';
import { bringUp, type Step, steps } from '../../../src/engine/scenario/up.ts';

const renamed: Step = ({ old, ...rest }) => ({ ...rest, middle: old });
const wrapped: Step = ({ middle, ...rest }) => ({ ...rest, newest: [middle] });
const chain = [renamed, wrapped];

test('there is a step for every form but the first', () => {
  expect(steps).toHaveLength(format - 1);
});

describe('bringing a file up', () => {
  test('takes every step from its form on, and writes the number of each', () => {
    expect(bringUp({ format: 1, old: 'x', kept: 1 }, chain)).toEqual({
      ok: true,
      written: { format: 3, newest: ['x'], kept: 1 },
    });
  });

  test('takes only the steps that are left', () => {
    expect(bringUp({ format: 2, middle: 'x' }, chain)).toEqual({ ok: true, written: { format: 3, newest: ['x'] } });
  });

  test('leaves the present form as it is', () => {
    expect(bringUp({ format: 3, newest: 1 }, chain)).toEqual({ ok: true, written: { format: 3, newest: 1 } });
  });

  test('refuses a newer form and says which are known', () => {
    expect(bringUp({ format: 4 }, chain)).toEqual({
      ok: false,
      refusal: { path: ['format'], found: 'format 4 of a newer loose-tie', expected: 'one of 1, 2 or 3' },
    });
  });

  test.each([undefined, null, '1', 0, -1, 1.5, [], {}])('refuses the form %j', (value) => {
    expect(bringUp({ format: value }, chain).ok).toBe(false);
  });
});
