import { expect, it } from 'vitest';
import { nearestWord } from '../../../src/engine/units/nearestWord.ts';

it('finds the word one slip away and ignores letter case', () => {
  expect(nearestWord('Cutuot', ['arrester', 'cutout', 'recloser'])).toBe('cutout');
});

it('answers nothing when no word is near', () => {
  expect(nearestWord('zebra', ['arrester', 'cutout'])).toBeUndefined();
  expect(nearestWord('x'.repeat(5000), ['cutout'])).toBeUndefined();
});
