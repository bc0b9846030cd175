import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { backSubstitute, factor } from '../../../src/engine/network/complexLu.ts';
import {
  addEntry,
  emptyMatrix,
  equilibrate,
  type SparseMatrix,
  scale,
} from '../../../src/engine/network/sparseMatrix.ts';

fc.configureGlobal({ seed: 20 });

type Dense = readonly (readonly (readonly [number, number])[])[];

function sparse(dense: Dense): SparseMatrix {
  // Room for every entry of every row.
  const matrix = emptyMatrix(Int32Array.from({ length: dense.length + 1 }, (_, i) => i * dense.length));
  for (const [i, row] of dense.entries()) {
    for (const [j, [re, im]] of row.entries()) if (re !== 0 || im !== 0) addEntry(matrix, i, j, re, im);
  }
  return matrix;
}

const vector = (values: readonly (readonly [number, number])[]) => ({
  re: Float64Array.from(values, ([re]) => re),
  im: Float64Array.from(values, ([, im]) => im),
});

/** Largest |b - A x|. */
function leftover(dense: Dense, x: { re: Float64Array; im: Float64Array }, b: { re: Float64Array; im: Float64Array }) {
  let worst = 0;
  for (const [i, row] of dense.entries()) {
    let re = b.re[i] as number;
    let im = b.im[i] as number;
    for (const [j, [aRe, aIm]] of row.entries()) {
      re -= aRe * (x.re[j] as number) - aIm * (x.im[j] as number);
      im -= aRe * (x.im[j] as number) + aIm * (x.re[j] as number);
    }
    worst = Math.max(worst, Math.hypot(re, im));
  }
  return worst;
}

describe('complexLu', () => {
  test('a matrix with a zero diagonal is solved exactly', () => {
    const factors = factor(
      sparse([
        [
          [0, 0],
          [0, 2],
        ],
        [
          [4, 0],
          [0, 0],
        ],
      ]),
    );
    if (factors.singular) throw new Error('singular');
    const x = backSubstitute(
      factors,
      vector([
        [2, 0],
        [8, 4],
      ]),
    );
    expect([...x.re, ...x.im]).toEqual([2, 0, 1, -1]);
  });

  const part = fc.double({ min: -1, max: 1, noNaN: true }).map((x) => (Math.abs(x) < 1e-12 ? 0 : x));
  const entry = fc.tuple(part, part);
  const system = fc.integer({ min: 1, max: 12 }).chain((n) =>
    fc.record({
      dense: fc.array(fc.array(fc.oneof(entry, fc.constant([0, 0] as const)), { minLength: n, maxLength: n }), {
        minLength: n,
        maxLength: n,
      }),
      b: fc.array(entry, { minLength: n, maxLength: n }),
    }),
  );

  test('a dominant diagonal is solved to rounding, and the right-hand side stays as it was', () => {
    fc.assert(
      fc.property(system, ({ dense, b }) => {
        const dominant = dense.map((row, i) => row.map((z, j) => (i === j ? ([z[0] + 40, z[1]] as const) : z)));
        const factors = factor(sparse(dominant));
        if (factors.singular) throw new Error('singular');
        const rhs = vector(b);
        expect(leftover(dominant, backSubstitute(factors, rhs), rhs)).toBeLessThan(1e-13);
        expect(rhs).toEqual(vector(b));
      }),
    );
  });

  test('any matrix is either solved or called singular', () => {
    fc.assert(
      fc.property(system, ({ dense, b }) => {
        const matrix = sparse(dense);
        const scaling = equilibrate(matrix);
        scale(matrix, scaling);
        const factors = factor(matrix);
        if (factors.singular) {
          expect(factors.column).toBeGreaterThanOrEqual(0);
          return;
        }
        const rhs = vector(b);
        const y = backSubstitute(factors, {
          re: rhs.re.map((v, i) => v * (scaling.row[i] as number)),
          im: rhs.im.map((v, i) => v * (scaling.row[i] as number)),
        });
        const x = {
          re: y.re.map((v, j) => v * (scaling.column[j] as number)),
          im: y.im.map((v, j) => v * (scaling.column[j] as number)),
        };
        const size = Math.max(1, ...x.re.map(Math.abs), ...x.im.map(Math.abs));
        expect(leftover(dense, x, rhs)).toBeLessThan(1e-11 * size);
      }),
      { numRuns: 300 },
    );
  });

  test('a column that is the sum of two others is found', () => {
    fc.assert(
      fc.property(fc.array(fc.array(entry, { minLength: 5, maxLength: 5 }), { minLength: 6, maxLength: 6 }), (rows) => {
        const dense = rows.map((row) => [
          ...row,
          [
            (row[0] as [number, number])[0] + (row[1] as [number, number])[0],
            (row[0] as [number, number])[1] + (row[1] as [number, number])[1],
          ] as const,
        ]);
        expect(factor(sparse(dense)).singular).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  test('the free column of a singular matrix is named', () => {
    const factors = factor(
      sparse([
        [
          [1, 0],
          [0, 0],
          [0, 0],
        ],
        [
          [0, 0],
          [1, 0],
          [0, 0],
        ],
        [
          [1, 0],
          [1, 0],
          [0, 0],
        ],
      ]),
    );
    expect(factors).toEqual({ singular: true, column: 2 });
  });

  test('equilibration brings twenty decades to one and changes no digit', () => {
    const matrix = sparse([
      [
        [3e-12, 0],
        [5e-9, 0],
      ],
      [
        [0, 7e3],
        [2e8, 0],
      ],
    ]);
    const scaling = equilibrate(matrix);
    scale(matrix, scaling);
    for (const [i, from] of matrix.start.entries()) {
      const sizes = [...matrix.re.slice(from, matrix.end[i])].map(
        (re, t) => Math.abs(re) + Math.abs(matrix.im[from + t] ?? 0),
      );
      if (sizes.length === 0) continue;
      expect(Math.max(...sizes)).toBeGreaterThanOrEqual(0.5);
      expect(Math.max(...sizes)).toBeLessThan(2);
      expect(sizes).toEqual([...scaling.sizes.slice(from, matrix.end[i])]);
    }
    expect(Math.log2((matrix.re[0] as number) / 3e-12) % 1).toBe(0);
  });
});
