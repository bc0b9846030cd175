/**
 * Capacitance of parallel wires over earth: Maxwell's potential coefficients (standards/inducedVoltage.ts), inverted.
 * Wire i then has the sum of its row to earth and, to wire j, the negative of entry ij (line textbooks, such as Kersting's
 * chapter on shunt admittance). Straight, level, endless wires at their mean heights; poles and insulators left out.
 */
import type { Farads } from '../units/quantities.ts';
import { potentialCoefficient, type WirePlace } from './inducedVoltage.ts';

/** Farads per metre: of each wire to earth, and between each two. */
export interface WireCapacitances {
  readonly toEarth: readonly Farads[];
  readonly between: readonly (readonly Farads[])[];
}

/** Inverse of a symmetric positive definite matrix, by elimination without pivoting, which such a matrix does not need. */
function inverse(matrix: readonly (readonly number[])[]): number[][] {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...matrix.map((_, j) => (i === j ? 1 : 0))]);
  for (let k = 0; k < n; k++) {
    const pivot = rows[k] as number[];
    const by = pivot[k] as number;
    if (!(by > 0)) throw new RangeError('two wires in one place');
    for (let j = 0; j < 2 * n; j++) pivot[j] = (pivot[j] as number) / by;
    for (const [i, row] of rows.entries()) {
      const factor = row[k] as number;
      if (i === k || factor === 0) continue;
      for (let j = 0; j < 2 * n; j++) row[j] = (row[j] as number) - factor * (pivot[j] as number);
    }
  }
  return rows.map((row) => row.slice(n));
}

/** Capacitances of wires beside each other; throws a RangeError for two in one place. */
export function wireCapacitances(wires: readonly WirePlace[]): WireCapacitances {
  const matrix = inverse(wires.map((a) => wires.map((b) => potentialCoefficient(a, b))));
  return {
    toEarth: matrix.map((row) => row.reduce((sum, value) => sum + value, 0)),
    between: matrix.map((row, i) => row.map((value, j) => (i === j ? 0 : -value))),
  };
}
