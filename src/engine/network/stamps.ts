/**
 * Equations of the network: Kirchhoff's current law at each node, then one equation for each branch current and each
 * core (modified nodal analysis: Ho, Ruehli & Brennan, IEEE Trans. Circuits and Systems CAS-22, 1975). A branch with its
 * current as unknown keeps a milliohm contact beside a picofarad without losing either.
 */
import type { Complex } from '../math/complex.ts';
import type { Layout } from './layout.ts';
import { addEntry, type ComplexVector, emptyMatrix, type SparseMatrix, zeroVector } from './sparseMatrix.ts';
import type { Ends } from './structure.ts';
import type { NetworkElement, TransformerElement, Winding } from './types.ts';

/** Adds to an entry unless it is zero or the earth node's. */
function put(matrix: SparseMatrix, row: number, column: number, re: number, im: number): void {
  if (row < 0 || column < 0 || (re === 0 && im === 0)) return;
  addEntry(matrix, row, column, re, im);
}

function stampBranch(matrix: SparseMatrix, { from, to }: Ends, branch: number, z: Complex): void {
  put(matrix, from, branch, 1, 0);
  put(matrix, to, branch, -1, 0);
  put(matrix, branch, from, 1, 0);
  put(matrix, branch, to, -1, 0);
  put(matrix, branch, branch, -z.re, -z.im);
}

function stampAdmittance(matrix: SparseMatrix, { from, to }: Ends, y: Complex): void {
  put(matrix, from, from, y.re, y.im);
  put(matrix, to, to, y.re, y.im);
  put(matrix, from, to, -y.re, -y.im);
  put(matrix, to, from, -y.re, -y.im);
}

/** Turns are taken relative to winding 0, so that the core's unknown is the voltage induced in winding 0. */
function stampTransformer(
  matrix: SparseMatrix,
  ends: readonly Ends[],
  { windings, magnetising: y }: TransformerElement,
  first: number,
): void {
  const core = first + windings.length;
  const base = windings[0]?.turns ?? 1;
  for (let w = 0; w < windings.length; w++) {
    const winding = windings[w] as Winding;
    const turns = winding.turns / base;
    stampBranch(matrix, ends[w] as Ends, first + w, winding.z);
    put(matrix, first + w, core, -turns, 0);
    put(matrix, core, first + w, turns, 0);
  }
  if (y !== undefined) put(matrix, core, core, -y.re, -y.im);
}

/** The matrix; entries of the earth node are left out, and so are zeros. */
export function stampMatrix({ elements, ends, branch, rowStarts }: Layout): SparseMatrix {
  const matrix = emptyMatrix(rowStarts);
  for (let at = 0; at < elements.length; at++) {
    const element = elements[at] as NetworkElement;
    const windings = ends[at] as readonly Ends[];
    if (element.kind === 'transformer') stampTransformer(matrix, windings, element, branch[at] as number);
    else if (element.kind === 'admittance') stampAdmittance(matrix, windings[0] as Ends, element.y);
    else stampBranch(matrix, windings[0] as Ends, branch[at] as number, element.z);
  }
  return matrix;
}

/** Right-hand side with one group's sources alone. */
export function stampGroup({ elements, branch, size }: Layout, group: string): ComplexVector {
  const b = zeroVector(size);
  for (let at = 0; at < elements.length; at++) {
    const element = elements[at] as NetworkElement;
    if (element.kind !== 'source' || element.group !== group) continue;
    const unknown = branch[at] as number;
    b.re[unknown] = element.emf.re;
    b.im[unknown] = element.emf.im;
  }
  return b;
}

/** Right-hand side with one ampere into node a and out of node b, all sources dead. */
export function stampInjection(layout: Layout, a: number | undefined, b: number | undefined): ComplexVector {
  const rhs = zeroVector(layout.size);
  if (a !== undefined) rhs.re[a] = 1;
  if (b !== undefined) rhs.re[b] = (rhs.re[b] as number) - 1;
  return rhs;
}
