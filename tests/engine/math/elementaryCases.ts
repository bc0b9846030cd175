/**
 * Grid of arguments for the elementary functions and the SHA-256 over the bits of all results, so that Node and
 * browsers can be held against the same number.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import * as elementary from '../../../src/engine/math/elementary.ts';

export function elementaryBits(): string {
  const { sin, cos, tan, atan2, acos, asin, exp, ln, log10, pow, hypot } = elementary;
  const results: number[] = [];
  for (let i = -400; i <= 400; i++) {
    const x = i * 0.37;
    const size = Math.abs(x) + 0.01;
    results.push(sin(x), cos(x), tan(x), exp(x / 3), ln(size), log10(size), pow(size, x / 40), hypot(x, 1.7));
    results.push(atan2(x, 2.3), atan2(-1.1, x), acos(x / 150), asin(x / 150));
  }
  const bytes = new Uint8Array(8 * results.length);
  const view = new DataView(bytes.buffer);
  for (const [i, value] of results.entries()) view.setFloat64(8 * i, value);
  return bytesToHex(sha256(bytes));
}

export const ELEMENTARY_BITS = '79d7b073d6d009f9bd5e05cda6a1baeb2d1f0c7ee452f230f256e3bc56d51b90';
