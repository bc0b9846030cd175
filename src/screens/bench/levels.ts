/**
 * How far down the page each bus lies: the longest way from the line that feeds the scene. Spans hold their two ends at
 * one level; a low side begins no higher than its high side; buses tied to earth lie under those that are not.
 */
import { EARTH } from '../../engine/network/types.ts';
import type { CircuitGraph, Edge } from './circuitGraph.ts';
import { groupBy } from './groupBy.ts';

/** A conductor between two poles: drawn across, not down. */
export const isSpan = (edge: Edge): boolean => edge.symbol === 'line' && edge.owner === null;

/** An edge with its upper end first. */
export interface Hung {
  readonly edge: Edge;
  readonly upper: string;
  /** Bus, or earth. */
  readonly lower: string;
}

/** Buses that electrodes hold near earth, by metal that no device parts. */
const earthed = ({ edges }: CircuitGraph): ReadonlySet<string> => {
  const held = new Set(edges.filter(({ to }) => to === EARTH).map(({ from }) => from));
  for (const { symbol, to } of edges) if (symbol === 'system') held.add(to);
  for (let grown = -1; grown !== held.size; ) {
    grown = held.size;
    for (const { symbol, from, to } of edges) {
      if (symbol !== 'line') continue;
      if (held.has(from)) held.add(to);
      else if (held.has(to)) held.add(from);
    }
  }
  return held;
};

/** Steps from the feeding line without passing earthed metal. */
const distances = (graph: CircuitGraph, held: ReadonlySet<string>): ReadonlyMap<string, number> => {
  const far = new Map<string, number>();
  const sides = groupBy(
    graph.edges.filter(({ windings }) => windings.length > 0),
    ({ part }) => part,
  );
  const joined = [
    ...graph.edges.filter(({ to }) => to !== EARTH).map(({ from, to }) => [from, to] as const),
    ...[...sides.values()].flatMap((windings) =>
      windings.slice(1).map((other) => [windings[0]?.from ?? '', other.from] as const),
    ),
  ];
  const visit = (roots: readonly string[], start: number): void => {
    let front = roots.filter((bus) => !far.has(bus));
    for (const bus of front) far.set(bus, start);
    for (let step = start + 1; front.length > 0; step += 1) {
      const reached = new Set<string>();
      for (const [a, b] of joined) {
        for (const [here, there] of [
          [a, b],
          [b, a],
        ] as const) {
          if (front.includes(here) && !far.has(there) && !held.has(there)) reached.add(there);
        }
      }
      for (const bus of reached) far.set(bus, step);
      front = [...reached];
    }
  };
  visit(
    graph.edges.filter(({ symbol }) => symbol === 'system').map(({ from }) => from),
    0,
  );
  for (const { id } of graph.buses) if (!held.has(id)) visit([id], 0);
  return far;
};

/** Every edge but spans, upper end first. */
export const hang = (graph: CircuitGraph): readonly Hung[] => {
  const held = earthed(graph);
  const far = distances(graph, held);
  const depth = (bus: string): number => far.get(bus) ?? 1000;
  return graph.edges
    .filter((edge) => !isSpan(edge))
    .map((edge): Hung => {
      const { from, to, slope } = edge;
      const down = { edge, upper: from, lower: to };
      const up = { edge, upper: to, lower: from };
      if (to === EARTH) return down;
      if (slope !== 0) return slope > 0 ? down : up;
      return depth(from) <= depth(to) ? down : up;
    });
};

/** Levels from 0; `least` holds some buses lower than they need be. */
export const levelsOf = (
  graph: CircuitGraph,
  hung: readonly Hung[],
  least: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> => {
  const same = new Map<string, string>();
  const rep = (bus: string): string => {
    const up = same.get(bus);
    return up === undefined || up === bus ? bus : rep(up);
  };
  for (const edge of graph.edges)
    if (isSpan(edge) && rep(edge.from) !== rep(edge.to)) same.set(rep(edge.to), rep(edge.from));
  const steps: { readonly upper: string; readonly lower: string; readonly by: number }[] = [];
  const reaches = (from: string, to: string): boolean =>
    from === to || steps.some((step) => step.upper === from && reaches(step.lower, to));
  for (const { upper, lower } of hung) {
    // An edge that would close a ring is drawn between the levels that the others give.
    if (lower !== EARTH && !reaches(rep(lower), rep(upper)))
      steps.push({ upper: rep(upper), lower: rep(lower), by: 1 });
  }
  for (const windings of groupBy(
    hung.filter(({ edge }) => edge.windings.length > 0),
    ({ edge }) => edge.part,
  ).values()) {
    const [first, ...others] = windings;
    for (const other of others) {
      if (first && !reaches(rep(other.upper), rep(first.upper)))
        steps.push({ upper: rep(first.upper), lower: rep(other.upper), by: 0 });
    }
  }
  const level = new Map<string, number>();
  for (const { id } of graph.buses) level.set(rep(id), Math.max(level.get(rep(id)) ?? 0, least.get(id) ?? 0));
  for (let round = 0; round < graph.buses.length; round += 1) {
    let moved = false;
    for (const { upper, lower, by } of steps) {
      const wanted = (level.get(upper) ?? 0) + by;
      if (upper === lower || wanted <= (level.get(lower) ?? 0)) continue;
      level.set(lower, wanted);
      moved = true;
    }
    if (!moved) break;
  }
  return new Map(graph.buses.map(({ id }) => [id, level.get(rep(id)) ?? 0]));
};
