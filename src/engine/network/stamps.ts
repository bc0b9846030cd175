/**
 * Equations of the network: Kirchhoff's current law at each node, then one equation for each branch current and each
 * core (modified nodal analysis: Ho, Ruehli & Brennan, IEEE Trans. Circuits and Systems CAS-22, 1975). A branch with its
 * current as unknown keeps a milliohm contact beside a picofarad without losing either.
 */
import type { Complex } from '../math/complex.ts';
import type { Layout } from './layout.ts';
import { addEntry, type ComplexVector, emptyMatrix, type SparseMatrix, zeroVector } from './sparseMatrix.ts';
import type { NetworkElement, TransformerElement } from './types.ts';

type Put = (row: number | undefined, column: number | undefined, re: number, im: number) => void;

function stampBranch(put: Put, layout: Layout, ends: { from: string; to: string }, branch: number, z: Complex): void {
  const from = layout.nodeIndex.get(ends.from);
  const to = layout.nodeIndex.get(ends.to);
  put(from, branch, 1, 0);
  put(to, branch, -1, 0);
  put(branch, from, 1, 0);
  put(branch, to, -1, 0);
  put(branch, branch, -z.re, -z.im);
}

function stampAdmittance(put: Put, from: number | undefined, to: number | undefined, y: Complex): void {
  put(from, from, y.re, y.im);
  put(to, to, y.re, y.im);
  put(from, to, -y.re, -y.im);
  put(to, from, -y.re, -y.im);
}

/** Turns are taken relative to winding 0, so that the core's unknown is the voltage induced in winding 0. */
function stampTransformer(put: Put, layout: Layout, element: TransformerElement, first: number): void {
  const core = first + element.windings.length;
  const base = element.windings[0]?.turns ?? 1;
  for (const [w, winding] of element.windings.entries()) {
    const turns = winding.turns / base;
    stampBranch(put, layout, winding, first + w, winding.z);
    put(first + w, core, -turns, 0);
    put(core, first + w, turns, 0);
  }
  const y = element.magnetising;
  if (y !== undefined) put(core, core, -y.re, -y.im);
}

function stamp(put: Put, layout: Layout, element: NetworkElement): void {
  const branch = layout.branchIndex.get(element.id) ?? 0;
  switch (element.kind) {
    case 'admittance':
      stampAdmittance(put, layout.nodeIndex.get(element.from), layout.nodeIndex.get(element.to), element.y);
      break;
    case 'impedance':
    case 'source':
      stampBranch(put, layout, element, branch, element.z);
      break;
    case 'transformer':
      stampTransformer(put, layout, element, branch);
      break;
  }
}

/** The matrix; entries of the earth node are left out, and so are zeros. */
export function stampMatrix(layout: Layout): SparseMatrix {
  const matrix = emptyMatrix(layout.size);
  const put: Put = (row, column, re, im) => {
    if (row === undefined || column === undefined || (re === 0 && im === 0)) return;
    addEntry(matrix, row, column, re, im);
  };
  for (const element of layout.elements) stamp(put, layout, element);
  return matrix;
}

/** Right-hand side with one group's sources alone. */
export function stampGroup(layout: Layout, group: string): ComplexVector {
  const b = zeroVector(layout.size);
  for (const element of layout.elements) {
    if (element.kind !== 'source' || element.group !== group) continue;
    const branch = layout.branchIndex.get(element.id) as number;
    b.re[branch] = element.emf.re;
    b.im[branch] = element.emf.im;
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
