/**
 * One seeded generator as plain data: the state goes in, value and next state come out. Chris Doty-Humphrey's sfc32
 * (PractRand), three words and a counter, in 32-bit integer arithmetic; seeded from a SHA-256 of the seed.
 */
import { hashOf } from './hash.ts';

export type RandomState = readonly [a: number, b: number, c: number, counter: number];

const TWO_32 = 4294967296;
const TWO_53 = 9007199254740992;

function nextWord([a, b, c, counter]: RandomState): [number, RandomState] {
  const word = (a + b + counter) | 0;
  const rotated = (c << 21) | (c >>> 11);
  return [word >>> 0, [(b ^ (b >>> 9)) >>> 0, (c + (c << 3)) >>> 0, (rotated + word) >>> 0, (counter + 1) >>> 0]];
}

/** State for a seed; the text '1' and the number 1 are different seeds. */
export function seedFrom(seed: string | number): RandomState {
  const digest = hashOf(seed);
  const word = (i: number): number => Number.parseInt(digest.slice(8 * i, 8 * i + 8), 16);
  return [word(0), word(1), word(2), word(3)];
}

/** Uniform in [0, 1), 53 bits. */
export function nextUniform(state: RandomState): [number, RandomState] {
  const [high, between] = nextWord(state);
  const [low, after] = nextWord(between);
  return [((high >>> 5) * 67108864 + (low >>> 6)) / TWO_53, after];
}

/** Uniform whole number from low to high, both included, without bias; throws a RangeError on a span above 2^32. */
export function nextInteger(state: RandomState, low: number, high: number): [number, RandomState] {
  const span = high - low + 1;
  if (!Number.isSafeInteger(low) || !Number.isSafeInteger(high) || span < 1 || span > TWO_32) {
    throw new RangeError(`no whole numbers from ${low} to ${high}`);
  }
  const limit = TWO_32 - (TWO_32 % span);
  let [word, after] = nextWord(state);
  while (word >= limit) [word, after] = nextWord(after);
  return [low + (word % span), after];
}
