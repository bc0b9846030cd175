import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factor, type Singular } from '../../../src/engine/network/complexLu.ts';
import { Elimination } from '../../../src/engine/network/elimination.ts';
import { follow } from '../../../src/engine/network/follow.ts';
import type { Factors, Plan, Triangle } from '../../../src/engine/network/plan.ts';
import { solveNetwork } from '../../../src/engine/network/solveNetwork.ts';
import { addEntry, emptyMatrix, type SparseMatrix } from '../../../src/engine/network/sparseMatrix.ts';
import type { NetworkElement } from '../../../src/engine/network/types.ts';

fc.configureGlobal({ seed: 20 });

const SIZE = 14;
const starts = (): Int32Array => Int32Array.from({ length: SIZE + 1 }, (_, i) => i * SIZE);

type Entries = readonly (readonly [row: number, column: number])[];

/** A matrix of a pattern, its diagonal in it, with values from a list that repeats. */
function matrixOf(rows: Int32Array, entries: Entries, values: readonly number[]): SparseMatrix {
  const matrix = emptyMatrix(rows);
  let next = 0;
  const value = (): number => values[next++ % values.length] as number;
  for (const [row, column] of entries) addEntry(matrix, row, column, value(), value());
  for (let i = 0; i < SIZE; i++) addEntry(matrix, i, i, value(), value());
  return matrix;
}

const place = fc.integer({ min: 0, max: SIZE - 1 });
const entries = fc.array(fc.tuple(place, place), { minLength: SIZE, maxLength: 3 * SIZE });
// Of like size, as equilibration leaves them.
const values = fc.array(
  fc.integer({ min: -2000, max: 2000 }).map((x) => (x + 0.5) / 1000),
  { minLength: 60, maxLength: 60 },
);

function planOf(matrix: SparseMatrix): Plan {
  const plan = new Elimination().run(matrix);
  if (typeof plan === 'number') throw new Error('singular');
  return plan;
}

/** Without the room behind what is in it, which a plan that was refused may have made longer. */
function trimmed(factors: Factors | Singular): unknown {
  if (factors.singular) return factors;
  const cut = ({ start, index, re, im }: Triangle) => ({
    start,
    index,
    re: re.slice(0, index.length),
    im: im.slice(0, index.length),
  });
  return { ...factors, lower: cut(factors.lower), upper: cut(factors.upper) };
}

const pivots = ({ pivotRow, pivotColumn }: Factors) => ({ row: pivotRow, column: pivotColumn });

describe('plan', () => {
  test('a planned factorisation gives the bits that elimination gives, or none', () => {
    let followed = 0;
    let refused = 0;
    fc.assert(
      fc.property(entries, values, values, fc.boolean(), (pattern, first, changes, isNear) => {
        const second = isNear ? first.map((value, i) => value * (1 + 1e-3 * (changes[i] ?? 0))) : changes;
        const planned = factor(matrixOf(starts(), pattern, first));
        const other = matrixOf(starts(), pattern, second);
        const fresh = factor(other);
        if (planned.singular || fresh.singular) return;
        const plan = planOf(matrixOf(starts(), pattern, first));
        const again = follow(plan, other);
        if (again === null) {
          refused++;
          expect(pivots(fresh)).not.toEqual(pivots(planned));
          return;
        }
        followed++;
        expect(again).toEqual(fresh);
      }),
      { numRuns: 300 },
    );
    expect(followed).toBeGreaterThan(30);
    expect(refused).toBeGreaterThan(30);
  });

  test('a plan whose first pivot was a larger entry is refused once the lone small one has grown', () => {
    const matrixWith = (early: number): SparseMatrix => {
      const matrix = emptyMatrix(Int32Array.of(0, 2, 4, 6, 8));
      const rows = [
        [0, early, 1, 1],
        [2, 8, 1, 1],
        [1, 1, 3, 2],
        [1, 2, 3, 1],
      ] as const;
      for (const [row, [a, x, b, y]] of rows.entries()) {
        addEntry(matrix, row, a, x, 0);
        addEntry(matrix, row, b, y, 0);
      }
      return matrix;
    };
    const [small, large] = [factor(matrixWith(0.01)), factor(matrixWith(0.5))];
    if (small.singular || large.singular) throw new Error('singular');
    expect([small.pivotColumn[0], large.pivotColumn[0]]).toEqual([1, 0]);
    const plan = planOf(matrixWith(0.01));
    expect(follow(plan, matrixWith(0.02))).not.toBeNull();
    expect(follow(plan, matrixWith(0.5))).toBeNull();
  });

  test('matrices of one structure are factored alike however many came before', () => {
    let solvable = 0;
    fc.assert(
      fc.property(entries, fc.array(values, { minLength: 2, maxLength: 8 }), (pattern, all) => {
        const shared = starts();
        for (const each of [...all, ...all]) {
          const factors = factor(matrixOf(shared, pattern, each));
          expect(trimmed(factors)).toEqual(trimmed(factor(matrixOf(starts(), pattern, each))));
          if (!factors.singular) solvable++;
        }
      }),
      { numRuns: 60 },
    );
    expect(solvable).toBeGreaterThan(100);
  });
});

describe('networks alike', () => {
  const source: NetworkElement = {
    kind: 'source',
    id: 's',
    from: 'a',
    to: 'earth',
    emf: { re: 120, im: 0 },
    z: { re: 1, im: 0 },
    group: 'g',
  };
  const tie = (siemens: number): NetworkElement => ({
    kind: 'admittance',
    id: 'y',
    from: 'a',
    to: 'b',
    y: { re: siemens, im: 0 },
  });
  const load: NetworkElement = { kind: 'impedance', id: 'z', from: 'b', to: 'c', z: { re: 3, im: 0 } };

  test('a leak that becomes zero leaves an island, whatever was solved before', () => {
    const ground: NetworkElement = { kind: 'admittance', id: 'g', from: 'c', to: 'a', y: { re: 1, im: 0 } };
    expect(solveNetwork([source, tie(1), load]).ok).toBe(true);
    expect(solveNetwork([source, tie(0), load])).toMatchObject({ reason: 'singular', island: ['b', 'c'] });
    expect(solveNetwork([source, tie(0), load, ground]).ok).toBe(true);
    expect(solveNetwork([source, tie(1), load]).ok).toBe(true);
  });

  test('a list of elements that grows after it was solved is solved as it then is', () => {
    const elements = [source, tie(1)];
    solveNetwork(elements);
    elements.push({ kind: 'impedance', id: 'x', from: 'a', to: 'earth', z: { re: 1, im: 0 } });
    const solution = solveNetwork(elements);
    if (!solution.ok) throw new Error(solution.reason);
    expect(solution.voltage('a').re).toBeCloseTo(60, 9);
  });
});
