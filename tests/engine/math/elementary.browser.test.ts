import { expect, test } from 'vitest';
import { hashOf } from '../../../src/engine/math/hash.ts';
import { ELEMENTARY_BITS, elementaryBits } from './elementaryCases.ts';

test('the browser computes the same bits as recorded from Node', () => {
  expect(elementaryBits()).toBe(ELEMENTARY_BITS);
});

// SHA-256 of the three characters "abc" with its quotes, checked with coreutils sha256sum.
test('the browser hashes as the command line does', () => {
  expect(hashOf('abc')).toBe('6cc43f858fbb763301637b5af970e2a46b46f461f27e5a0f41e009c59b827b25');
});
