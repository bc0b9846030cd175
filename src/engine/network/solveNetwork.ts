/**
 * Solves a network once for all its synchronism groups: one factorisation, one right-hand side a group, so that any
 * angle between groups is a sum of phasors and the worst angle a sum of magnitudes (superposition).
 */
import { abs, type Complex, complex, polar, sub, ZERO } from '../math/complex.ts';
import { factor, type Singular } from './complexLu.ts';
import type { Lanes } from './lanes.ts';
import { type Layout, layOut, ownerOf } from './layout.ts';
import { indexOfNode, phasorsOf } from './phasors.ts';
import type { Factors } from './plan.ts';
import { type Factored, type Judged, solveRefined } from './refine.ts';
import { emptyRoom, type Room } from './room.ts';
import { equilibrate, type Scaling, type SparseMatrix, scale } from './sparseMatrix.ts';
import { groupSides, injectionSide, stampMatrix } from './stamps.ts';
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

/** The equations of a network, scaled and factored; they last until the next ones in the room. */
function equationsOf(layout: Layout, room: Room): Equations {
  const matrix = stampMatrix(layout, room);
  const scaling = equilibrate(matrix, room);
  scale(matrix, scaling);
  return { matrix, scaling, factors: factor(matrix, room) };
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

const unknownAt = (x: Float64Array, i: number | undefined): Complex =>
  i === undefined ? ZERO : complex(x[2 * i] as number, x[2 * i + 1] as number);

/** The sum of the lanes, each turned. */
function sumTurned({ lanes, values }: Lanes, turns: readonly Complex[], size: number): Lanes {
  const sum = new Float64Array(2 * size);
  for (let g = 0; g < turns.length; g++) {
    const { re, im } = turns[g] as Complex;
    const isTurned = re !== 1 || im !== 0;
    for (let i = 0; i < size; i++) {
      const xRe = values[2 * (i * lanes + g)] as number;
      const xIm = values[2 * (i * lanes + g) + 1] as number;
      sum[2 * i] = (sum[2 * i] as number) + (isTurned ? re * xRe - im * xIm : xRe);
      sum[2 * i + 1] = (sum[2 * i + 1] as number) + (isTurned ? re * xIm + im * xRe : xIm);
    }
  }
  return { lanes: 1, values: sum };
}

/** What is read of a network solved for each group. */
function solutionOf(layout: Layout, solved: Lanes, residual: number): NetworkSolution {
  const { groups } = layout;
  let viewed: ReadonlyMap<string, Phasors> | undefined;
  const views = (): ReadonlyMap<string, Phasors> => {
    viewed ??= new Map(groups.map((group, g) => [group, phasorsOf(layout, solved, g)]));
    return viewed;
  };
  const at = (angles: Readonly<Record<string, number>>): Phasors => {
    const turns = groups.map((group) => polar(1, angles[group] ?? 0));
    return phasorsOf(layout, sumTurned(solved, turns, layout.size), 0);
  };
  const contribution = (group: string): Phasors => {
    const view = views().get(group);
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
    if (views().size === 0) read(inStep());
    let sum = 0;
    for (const view of views().values()) sum += abs(read(view));
    return sum;
  };
  // Most solutions are never asked; one that is gets a room of its own.
  let system: Factored | undefined;
  const theveninBetween = (a: string, b: string): Thevenin => {
    const [from, to] = [indexOfNode(layout, a), indexOfNode(layout, b)];
    system ??= factoredAgain(layout);
    const { x, judged } = solveRefined(system, injectionSide(from, to));
    const [{ residual }] = judged as [Judged];
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
  const { island, groups } = layout;
  if (island.length > 0) return { ok: false, reason: 'singular', island, node: island[0] as string };
  const { matrix, scaling, factors } = equationsOf(layout, room);
  if (factors.singular) return { ok: false, reason: 'singular', island: [], ...ownerOf(layout, factors.column) };
  const system = { matrix, scaling, factors };
  const { x, judged } = solveRefined(system, groupSides(layout));
  let worst = 0;
  for (const { residual, worstRow } of judged) {
    if (!(residual <= RESIDUAL_BOUND)) {
      return { ok: false, reason: 'inaccurate', residual, at: ownerName(layout, worstRow) };
    }
    worst = Math.max(worst, residual);
  }
  return solutionOf(layout, { lanes: groups.length, values: x }, worst);
}
