import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  abs,
  add,
  arg,
  type Complex,
  complex,
  conj,
  div,
  mul,
  ONE,
  polar,
  scale,
  sub,
  ZERO,
} from '../../../src/engine/math/complex.ts';

fc.configureGlobal({ seed: 20 });

const part = fc.double({ min: -1e6, max: 1e6, noNaN: true }).filter((x) => x === 0 || Math.abs(x) > 1e-6);
const number = fc.record({ re: part, im: part });
const nonzero = number.filter((z) => z.re !== 0 || z.im !== 0);
const near = (a: Complex, b: Complex, size: number): void => {
  expect(abs(sub(a, b))).toBeLessThanOrEqual(1e-13 * size);
};

describe('complex', () => {
  test('(1+2j)(3-j) is 5+5j and (5+5j)/(3-j) is 1+2j', () => {
    expect(mul(complex(1, 2), complex(3, -1))).toEqual({ re: 5, im: 5 });
    near(div(complex(5, 5), complex(3, -1)), complex(1, 2), 3);
  });

  test('dividing undoes multiplying', () => {
    fc.assert(fc.property(number, nonzero, (a, b) => near(div(mul(a, b), b), a, abs(a))));
  });

  test('division does not overflow where squares would', () => {
    near(div(complex(1e200, 1e200), complex(1e200, 1e200)), ONE, 1);
    near(div(ONE, complex(0, 1e-200)), complex(0, -1e200), 1e200);
  });

  test('polar comes home through abs and arg', () => {
    fc.assert(
      fc.property(nonzero, (z) => {
        near(polar(abs(z), arg(z)), z, 10 * abs(z));
        near(mul(z, conj(z)), complex(abs(z) * abs(z)), 10 * abs(z) * abs(z));
      }),
    );
  });

  test('adding, subtracting and scaling keep the books', () => {
    fc.assert(fc.property(number, number, (a, b) => near(sub(add(a, b), b), a, abs(a) + abs(b))));
    expect(scale(complex(1, -2), 3)).toEqual({ re: 3, im: -6 });
    expect(add(ZERO, ONE)).toEqual(ONE);
  });
});
