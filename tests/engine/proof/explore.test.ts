/** The explorer against a shortest-path by relaxation to a fixed point (Bellman 1958) on drawn graphs. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Edge, explore } from '../../../src/engine/proof/explore.ts';

interface Graph {
  readonly size: number;
  readonly edges: readonly (readonly [from: number, to: number, cost: number])[];
}

const graph: fc.Arbitrary<Graph> = fc.integer({ min: 1, max: 12 }).chain((size) => {
  const node = fc.integer({ min: 0, max: size - 1 });
  return fc.record({
    size: fc.constant(size),
    edges: fc.array(fc.tuple(node, node, fc.integer({ min: 0, max: 9 })), { maxLength: 40 }),
  });
});

const spaceOf = ({ edges }: Graph, goal: number) => ({
  start: 0,
  key: String,
  done: (node: number) => node === goal,
  next: (node: number): readonly Edge<number, number>[] =>
    edges.flatMap(([from, to, cost], i) => (from === node ? [{ to, cost, by: i }] : [])),
});

/** Least costs from node 0, by relaxing every edge until nothing changes. */
const relaxed = ({ size, edges }: Graph): readonly number[] => {
  const least = Array.from({ length: size }, (_, i) => (i === 0 ? 0 : Number.POSITIVE_INFINITY));
  for (let round = 0; round < size; round++) {
    for (const [from, to, cost] of edges) least[to] = Math.min(least[to] ?? 0, (least[from] ?? 0) + cost);
  }
  return least;
};

describe('explore', () => {
  it('finds the least cost, or that there is no way', () => {
    fc.assert(
      fc.property(graph, fc.integer({ min: 0, max: 11 }), (drawn, goal) => {
        const { end, cost, route } = explore(spaceOf(drawn, goal));
        const least = relaxed(drawn)[goal] ?? Number.POSITIVE_INFINITY;
        expect(cost).toBe(least);
        expect(end).toBe(least === Number.POSITIVE_INFINITY ? 'exhausted' : 'done');
        expect(route.reduce((sum, { by }) => sum + (drawn.edges[by]?.[2] ?? 0), 0)).toBe(end === 'done' ? cost : 0);
      }),
      { numRuns: 300 },
    );
  });

  it('sees each state that can be reached once, and says when it stopped early', () => {
    const line: Graph = { size: 12, edges: Array.from({ length: 11 }, (_, i) => [i, i + 1, 1] as const) };
    expect(explore(spaceOf(line, 99))).toMatchObject({ end: 'exhausted', states: 12, transitions: 11, route: [] });
    expect(explore({ ...spaceOf(line, 99), limit: 5 })).toMatchObject({ end: 'stopped', states: 5 });
    expect(explore({ ...spaceOf(line, 99), stop: () => true, limit: 12 }).end).toBe('stopped');
  });
});
