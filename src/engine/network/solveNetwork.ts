/**
 * Solves a network once for all its synchronism groups: one factorisation, one right-hand side a group, so that any
 * angle between groups is a sum of phasors and the worst angle a sum of magnitudes (superposition).
 */
import { abs, type Complex, complex, polar, sub, ZERO } from '../math/complex.ts';
import { type Factors, factor, type Singular } from './complexLu.ts';
import { type Layout, layOut, ownerOf } from './layout.ts';
import { indexOfNode, phasorsOf } from './phasors.ts';
import { type Factored, solveRefined } from './refine.ts';
import { emptyRoom, fitting, type Room } from './room.ts';
import { type ComplexVector, equilibrate, type Scaling, type SparseMatrix } from './sparseMatrix.ts';
import { stampGroup, stampInjection, stampMatrix } from './stamps.ts';
import {
  EARTH,
  type NetworkElement,
  type NetworkFailure,
  type NetworkSolution,
  type Phasors,
  type Thevenin,
} from './types.ts';

/** A larger relative residual is a failure. */
export const RESIDUAL_BOUND = 1e-9;

interface Equations {
  readonly matrix: SparseMatrix;
  readonly scaling: Scaling;
  readonly factors: Factors | Singular;
}

/** The equations of a network, factored; they last until the next ones in the room. */
function equationsOf(layout: Layout, room: Room): Equations {
  const matrix = stampMatrix(layout, room);
  const scaling = equilibrate(matrix, room);
  return { matrix, scaling, factors: factor(matrix, scaling, room) };
}

const rhs = { re: new Float64Array(0), im: new Float64Array(0) };

/** A right-hand side of zeros; it lasts until the next one. */
function zeros(size: number): ComplexVector {
  rhs.re = fitting(rhs.re, size);
  rhs.im = fitting(rhs.im, size);
  rhs.re.fill(0, 0, size);
  rhs.im.fill(0, 0, size);
  return rhs;
}

/** The system of a network that is known to have a solution. */
function factoredAgain(layout: Layout): Factored {
  const { matrix, scaling, factors } = equationsOf(layout, emptyRoom());
  if (factors.singular) throw new Error('a network that was solved has no solution');
  return { matrix, scaling, factors };
}

function ownerName(layout: Layout, unknown: number): string {
  const owner = ownerOf(layout, unknown);
  return 'node' in owner ? owner.node : owner.element;
}

const unknownAt = ({ re, im }: ComplexVector, i: number | undefined): Complex =>
  i === undefined ? ZERO : complex(re[i] as number, im[i] as number);

/** The sum of vectors one behind the other, each turned. */
function sumTurned(vectors: Float64Array, turns: readonly Complex[], size: number): Float64Array {
  const sum = new Float64Array(2 * size);
  for (const [g, { re, im }] of turns.entries()) {
    const from = 2 * size * g;
    for (let i = 0; i < size; i++) {
      const xRe = vectors[from + i] as number;
      const xIm = vectors[from + size + i] as number;
      sum[i] = (sum[i] as number) + re * xRe - im * xIm;
      sum[size + i] = (sum[size + i] as number) + re * xIm + im * xRe;
    }
  }
  return sum;
}

/** What is read of a network solved for each group. */
function solutionOf(layout: Layout, vectors: Float64Array, residual: number): NetworkSolution {
  const { groups } = layout;
  const views = new Map(groups.map((group, g) => [group, phasorsOf(layout, vectors, g)]));
  const at = (angles: Readonly<Record<string, number>>): Phasors => {
    const turns = groups.map((group) => polar(1, angles[group] ?? 0));
    return phasorsOf(layout, sumTurned(vectors, turns, layout.size), 0);
  };
  const contribution = (group: string): Phasors => {
    const view = views.get(group);
    if (view === undefined) throw new RangeError(`the network has no source of group ${group}`);
    return view;
  };
  let turnedNot: Phasors | undefined;
  const inStep = (): Phasors => {
    turnedNot ??= at({});
    return turnedNot;
  };
  const worstOf = (read: (view: Phasors) => Complex): number => {
    // A network without sources, too, refuses what it does not know.
    if (views.size === 0) read(inStep());
    let sum = 0;
    for (const view of views.values()) sum += abs(read(view));
    return sum;
  };
  // Most solutions are never asked; one that is gets a room of its own.
  let system: Factored | undefined;
  const theveninBetween = (a: string, b: string): Thevenin => {
    const [from, to] = [indexOfNode(layout, a), indexOfNode(layout, b)];
    system ??= factoredAgain(layout);
    const one = zeros(layout.size);
    stampInjection(from, to, one);
    const { x, residual } = solveRefined(system, one);
    if (!(residual <= RESIDUAL_BOUND)) {
      throw new RangeError(`impedance from ${a} to ${b} found only to a residual of ${residual}`);
    }
    return {
      voc: inStep().voltageBetween(a, b),
      zth: sub(unknownAt(x, from), unknownAt(x, to)),
      worst: worstOf((view) => view.voltageBetween(a, b)),
    };
  };
  return {
    ok: true,
    voltage: (node) => inStep().voltage(node),
    voltageBetween: (a, b) => inStep().voltageBetween(a, b),
    current: (elementId, winding) => inStep().current(elementId, winding),
    residual,
    groups,
    contribution,
    at,
    worst: (node) => worstOf((view) => view.voltage(node)),
    worstBetween: (a, b) => worstOf((view) => view.voltageBetween(a, b)),
    worstCurrent: (elementId, winding) => worstOf((view) => view.current(elementId, winding)),
    thevenin: (node) => theveninBetween(node, EARTH),
    theveninBetween,
  };
}

const room = emptyRoom();

/** Volts and amperes everywhere, or why there are none; deterministic, whatever the order of the elements. */
export function solveNetwork(elements: readonly NetworkElement[]): NetworkSolution | NetworkFailure {
  const layout = layOut(elements);
  if ('ok' in layout) return layout;
  const { island, groups, size } = layout;
  if (island.length > 0) return { ok: false, reason: 'singular', island, node: island[0] as string };
  const { matrix, scaling, factors } = equationsOf(layout, room);
  if (factors.singular) return { ok: false, reason: 'singular', island: [], ...ownerOf(layout, factors.column) };
  const system = { matrix, scaling, factors };
  const vectors = new Float64Array(2 * size * groups.length);
  let worst = 0;
  for (let g = 0; g < groups.length; g++) {
    const b = zeros(size);
    stampGroup(layout, groups[g] as string, b);
    const { x, residual, worstRow } = solveRefined(system, b);
    if (!(residual <= RESIDUAL_BOUND)) {
      return { ok: false, reason: 'inaccurate', residual, at: ownerName(layout, worstRow) };
    }
    const from = 2 * size * g;
    for (let i = 0; i < size; i++) {
      vectors[from + i] = x.re[i] as number;
      vectors[from + size + i] = x.im[i] as number;
    }
    worst = Math.max(worst, residual);
  }
  return solutionOf(layout, vectors, worst);
}
