/**
 * Solves a network once for all its synchronism groups: one factorisation, one right-hand side a group, so that any
 * angle between groups is a sum of phasors and the worst angle a sum of magnitudes (superposition).
 */
import { abs, type Complex, polar } from '../math/complex.ts';
import { factor } from './complexLu.ts';
import { type Layout, layOut, ownerOf } from './layout.ts';
import { indexOfNode, phasorsOf } from './phasors.ts';
import { type Refined, solveRefined } from './refine.ts';
import { type ComplexVector, equilibrate, scaled, zeroVector } from './sparseMatrix.ts';
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

type SolveFor = (b: ComplexVector) => Refined;

function ownerName(layout: Layout, unknown: number): string {
  const owner = ownerOf(layout, unknown);
  return 'node' in owner ? owner.node : owner.element;
}

function sumTurned(parts: readonly ComplexVector[], turns: readonly Complex[], size: number): ComplexVector {
  const sum = zeroVector(size);
  for (const [g, part] of parts.entries()) {
    const { re, im } = turns[g] as Complex;
    for (let i = 0; i < size; i++) {
      const xRe = part.re[i] as number;
      const xIm = part.im[i] as number;
      sum.re[i] = (sum.re[i] as number) + re * xRe - im * xIm;
      sum.im[i] = (sum.im[i] as number) + re * xIm + im * xRe;
    }
  }
  return sum;
}

function solutionOf(
  layout: Layout,
  solveFor: SolveFor,
  groups: readonly string[],
  solved: readonly Refined[],
): NetworkSolution {
  const parts = solved.map(({ x }) => x);
  const views = new Map(groups.map((group, g) => [group, phasorsOf(layout, parts[g] as ComplexVector)]));
  const at = (angles: Readonly<Record<string, number>>): Phasors => {
    return phasorsOf(
      layout,
      sumTurned(
        parts,
        groups.map((group) => polar(1, angles[group] ?? 0)),
        layout.size,
      ),
    );
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
  const theveninBetween = (a: string, b: string): Thevenin => {
    const injected = solveFor(stampInjection(layout, indexOfNode(layout, a), indexOfNode(layout, b)));
    if (!(injected.residual <= RESIDUAL_BOUND)) {
      throw new RangeError(`impedance from ${a} to ${b} found only to a residual of ${injected.residual}`);
    }
    return {
      voc: inStep().voltageBetween(a, b),
      zth: phasorsOf(layout, injected.x).voltageBetween(a, b),
      worst: worstOf((view) => view.voltageBetween(a, b)),
    };
  };
  return {
    ok: true,
    voltage: (node) => inStep().voltage(node),
    voltageBetween: (a, b) => inStep().voltageBetween(a, b),
    current: (elementId, winding) => inStep().current(elementId, winding),
    residual: solved.reduce((worst, { residual }) => Math.max(worst, residual), 0),
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

/** Volts and amperes everywhere, or why there are none; deterministic, whatever the order of the elements. */
export function solveNetwork(elements: readonly NetworkElement[]): NetworkSolution | NetworkFailure {
  const layout = layOut(elements);
  if ('ok' in layout) return layout;
  const { island, groups } = layout;
  if (island.length > 0) return { ok: false, reason: 'singular', island, node: island[0] as string };
  const matrix = stampMatrix(layout);
  const scaling = equilibrate(matrix);
  const factors = factor(scaled(matrix, scaling));
  if (factors.singular) return { ok: false, reason: 'singular', island: [], ...ownerOf(layout, factors.column) };
  const solveFor: SolveFor = (b) => solveRefined(matrix, scaling, factors, b);
  const solved: Refined[] = [];
  for (const group of groups) {
    const refined = solveFor(stampGroup(layout, group));
    if (!(refined.residual <= RESIDUAL_BOUND)) {
      const { residual, worstRow } = refined;
      return { ok: false, reason: 'inaccurate', residual, at: ownerName(layout, worstRow) };
    }
    solved.push(refined);
  }
  return solutionOf(layout, solveFor, groups, solved);
}
