/** Differences are told by what they mean beside the quantity, and never as the last bits of a subtraction. */
import { expect, test } from 'vitest';
import { allowedWords, differenceWords, withUnit } from '../../../src/engine/qualification/differenceWords.ts';
import { runChecks } from '../../../src/engine/qualification/runChecks.ts';

const told = (reference: number, difference: number, value = 0.05, unit = 'V') => ({
  reference,
  difference,
  unit,
  tolerance: { kind: 'relative', value } as const,
});

test.each([
  [told(2400, 1.77712), '+0.074 %'],
  [told(-40, -1), '−2.5 %'],
  [told(2, 2), '+100 %'],
  [told(3.2, 3.20982e-6), '+0.0001 %'],
  [told(3.2, 3.20982e-7), 'under 0.0001 %'],
  [told(240, 0), 'none'],
  [told(0, 3.2098e-9, 0.05, '1'), '3.2e-9'],
  [told(0, 4.1e-16, 0.05, '1'), 'under 1e-12'],
  [told(0, 0.1234), '0.12 V'],
  [told(1, Number.NaN), 'no number'],
])('%o is told as %s', (check, words) => {
  expect(differenceWords(check)).toBe(words);
});

test('what is allowed is told in the same terms', () => {
  expect(allowedWords(told(2400, 0, 0.05))).toBe('5 %');
  expect(allowedWords({ ...told(2400, 0), tolerance: { kind: 'absolute', value: 5 } })).toBe('0.21 %');
  expect(allowedWords({ ...told(0, 0, 1, '1'), tolerance: { kind: 'absolute', value: 1e-6 } })).toBe('1e-6');
  expect(allowedWords(told(2400, 0, 1e-9))).toBe('rounding');
});

test('a pure number has no unit', () => {
  expect([withUnit('2', '1'), withUnit('2', 'ohm')]).toEqual(['2', '2 ohm']);
});

test('no line of the report shows more than three figures of a difference', () => {
  const long = runChecks()
    .map(differenceWords)
    .filter(
      (words) =>
        words
          .replace(/[^\d.]/g, '')
          .replace(/^[0.]+/, '')
          .replace('.', '').length > 3,
    );
  expect(long.filter((words) => !words.startsWith('under'))).toEqual([]);
});
