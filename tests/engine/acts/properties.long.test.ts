import { expect, it } from 'vitest';
import { offersHold, replaysAlike, staysValid } from './properties.ts';

it('leaves a valid, plain World after any of many sequences of acts', () => {
  staysValid({ numRuns: 150, seed: 1, length: 60 });
});

it('replays many logs to the very same Worlds', () => {
  replaysAlike({ numRuns: 30, seed: 2, length: 50 });
});

it('offers nothing that is refused, in many Worlds', () => {
  expect(() => offersHold({ numRuns: 30, seed: 3, length: 25 }, 5)).not.toThrow();
});
