/**
 * Equations of the network: Kirchhoff's current law at each node, then one equation for each branch current and each
 * core (modified nodal analysis: Ho, Ruehli & Brennan, IEEE Trans. Circuits and Systems CAS-22, 1975). A branch with its
 * current as unknown keeps a milliohm contact beside a picofarad without losing either. Where a value is stamped follows
 * from the structure (places), where it is kept from which values are zero besides (pattern.ts).
 */
import type { Complex } from '../math/complex.ts';
import type { LaneEntry, SparseLanes } from './lanes.ts';
import type { Layout } from './layout.ts';
import { filled, type Pattern, type Places, patternOf, type Values } from './pattern.ts';
import { emptyRoom, fitting, fittingInts, type Room } from './room.ts';
import type { SparseMatrix } from './sparseMatrix.ts';
import type { NetworkElement, TransformerElement, Winding } from './types.ts';

/** How many values an element has. */
function countOf(element: NetworkElement): number {
  if (element.kind === 'transformer') return 7 * element.windings.length + 1;
  return element.kind === 'admittance' ? 4 : 5;
}

/** Places serve one network after another. */
const places = { row: new Int32Array(0), column: new Int32Array(0) };

/** Places in the order in which `writeValues` writes their values. */
function placesOf({ elements, ends, branch }: Layout, count: number): Places {
  places.row = fittingInts(places.row, count);
  places.column = fittingInts(places.column, count);
  const { row, column } = places;
  let at = 0;
  let next = 0;
  for (let e = 0; e < elements.length; e++) {
    const element = elements[e] as NetworkElement;
    const first = branch[e] as number;
    const windings = element.kind === 'transformer' ? element.windings.length : 1;
    const core = first + windings;
    for (let unknown = first; unknown < core; unknown++) {
      const from = ends[next++] as number;
      const to = ends[next++] as number;
      if (element.kind === 'admittance') {
        row[at] = from;
        column[at++] = from;
        row[at] = to;
        column[at++] = to;
        row[at] = from;
        column[at++] = to;
        row[at] = to;
        column[at++] = from;
        continue;
      }
      row[at] = from;
      column[at++] = unknown;
      row[at] = to;
      column[at++] = unknown;
      row[at] = unknown;
      column[at++] = from;
      row[at] = unknown;
      column[at++] = to;
      row[at] = unknown;
      column[at++] = unknown;
      if (element.kind !== 'transformer') continue;
      row[at] = unknown;
      column[at++] = core;
      row[at] = core;
      column[at++] = unknown;
    }
    if (element.kind !== 'transformer') continue;
    row[at] = core;
    column[at++] = core;
  }
  return places;
}

const values = { re: new Float64Array(0), im: new Float64Array(0) };

function writeBranch({ re, im }: Values, at: number, z: Complex): number {
  re[at] = 1;
  re[at + 1] = -1;
  re[at + 2] = 1;
  re[at + 3] = -1;
  re[at + 4] = -z.re;
  im[at] = 0;
  im[at + 1] = 0;
  im[at + 2] = 0;
  im[at + 3] = 0;
  im[at + 4] = -z.im;
  return at + 5;
}

function writeAdmittance({ re, im }: Values, at: number, y: Complex): number {
  re[at] = y.re;
  re[at + 1] = y.re;
  re[at + 2] = -y.re;
  re[at + 3] = -y.re;
  im[at] = y.im;
  im[at + 1] = y.im;
  im[at + 2] = -y.im;
  im[at + 3] = -y.im;
  return at + 4;
}

/** Turns are taken relative to winding 0, so that the core's unknown is the voltage induced in winding 0. */
function writeTransformer({ re, im }: Values, start: number, { windings, magnetising: y }: TransformerElement): number {
  const base = windings[0]?.turns ?? 1;
  let at = start;
  for (let w = 0; w < windings.length; w++) {
    const winding = windings[w] as Winding;
    const turns = winding.turns / base;
    at = writeBranch(values, at, winding.z);
    re[at] = -turns;
    re[at + 1] = turns;
    im[at] = 0;
    im[at + 1] = 0;
    at += 2;
  }
  re[at] = y === undefined ? 0 : -y.re;
  im[at] = y === undefined ? 0 : -y.im;
  return at + 1;
}

function writeValues(elements: readonly NetworkElement[]): void {
  let at = 0;
  for (let e = 0; e < elements.length; e++) {
    const element = elements[e] as NetworkElement;
    if (element.kind === 'admittance') at = writeAdmittance(values, at, element.y);
    else if (element.kind === 'transformer') at = writeTransformer(values, at, element);
    else at = writeBranch(values, at, element.z);
  }
}

const PATTERNS = 4;

/** How many values the elements have. */
function countAll(elements: readonly NetworkElement[]): number {
  let count = 0;
  for (let e = 0; e < elements.length; e++) count += countOf(elements[e] as NetworkElement);
  return count;
}

/** The matrix; entries of the earth node are left out, and so are zeros. */
export function stampMatrix(layout: Layout, room: Room = emptyRoom()): SparseMatrix {
  const { elements, patterns, size } = layout;
  const count = patterns[0]?.count ?? countAll(elements);
  values.re = fitting(values.re, count);
  values.im = fitting(values.im, count);
  writeValues(elements);
  for (let p = 0; p < patterns.length; p++) {
    const matrix = filled(patterns[p] as Pattern, values, room);
    if (matrix === null) continue;
    if (p > 0) patterns.unshift(...patterns.splice(p, 1));
    return matrix;
  }
  const pattern = patternOf(size, count, placesOf(layout, count), values);
  patterns.unshift(pattern);
  patterns.length = Math.min(patterns.length, PATTERNS);
  const matrix = filled(pattern, values, room);
  if (matrix === null) throw new Error('a pattern does not fit the values that it was made for');
  return matrix;
}

/** Right-hand sides with one group's sources alone, a lane for each group. */
export function groupSides({ elements, branch, groups }: Layout): SparseLanes {
  const entries: LaneEntry[] = [];
  for (let at = 0; at < elements.length; at++) {
    const element = elements[at] as NetworkElement;
    if (element.kind !== 'source') continue;
    const { re, im } = element.emf;
    entries.push({ row: branch[at] as number, lane: groups.indexOf(element.group), re, im });
  }
  return { lanes: groups.length, entries };
}

/** Right-hand side with one ampere into node a and out of node b, all sources dead. */
export function injectionSide(a: number | undefined, b: number | undefined): SparseLanes {
  const entries: LaneEntry[] = [];
  if (a !== undefined) entries.push({ row: a, lane: 0, re: 1, im: 0 });
  if (b !== undefined) entries.push({ row: b, lane: 0, re: -1, im: 0 });
  return { lanes: 1, entries };
}
