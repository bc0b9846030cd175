/** The one-line of every shipped scenario: nothing lies on anything else, nothing is left out, nothing depends on order. */
import { describe, expect, test } from 'vitest';
import { branchesOf } from '../../../src/engine/circuit/elementsOf.ts';
import { layOut, type Sheet } from '../../../src/screens/bench/layout.ts';
import { isSpan } from '../../../src/screens/bench/levels.ts';
import { branchesIn } from '../../../src/screens/bench/partBranches.ts';
import { offered, quarryRoad, worldOf } from './scene.ts';

/** Bars and spans that lie on one line of the page and share a stretch of it. */
const overlaps = ({ buses, edges }: Sheet): string[] => {
  const bars = [
    ...buses.map(({ bus, x1, x2, y }) => ({ id: bus.id, x1, x2, y })),
    ...edges.filter(({ x2 }) => x2 !== null).map(({ edge, x, x2, y1 }) => ({ id: edge.id, x1: x, x2: x2 ?? x, y: y1 })),
  ];
  return bars.flatMap((a, at) =>
    bars
      .slice(at + 1)
      .filter((b) => Math.abs(a.y - b.y) < 1 && a.x1 < b.x2 - 0.01 && b.x1 < a.x2 - 0.01)
      .map((b) => `${a.id} over ${b.id}`),
  );
};

/** Symbols nearer than a symbol's height in one lane, or on a bar. */
const crowded = ({ buses, edges }: Sheet): string[] => {
  const hung = edges.filter(({ x2 }) => x2 === null);
  const tight = hung.flatMap((a, at) =>
    hung
      .slice(at + 1)
      .filter((b) => a.x === b.x && Math.abs(a.symbolY - b.symbolY) < 36)
      .map((b) => `${a.edge.id} at ${b.edge.id}`),
  );
  const onBar = hung.flatMap(({ edge, x, symbolY }) =>
    buses
      .filter((bus) => Math.abs(bus.y - symbolY) < 19 && bus.x1 - 1 < x && x < bus.x2 + 1)
      .map((bus) => `${edge.id} on ${bus.bus.id}`),
  );
  return [...tight, ...onBar];
};

/** Short bars that a vertical of somebody else runs through. */
const struck = ({ buses, edges }: Sheet): string[] =>
  buses
    .filter(({ x1, x2 }) => x2 - x1 <= 18)
    .flatMap(({ bus, x1, x2, y }) =>
      edges
        .filter(({ x2: end, x, y1, y2 }) => end === null && x1 < x && x < x2 && y1 < y && y < y2)
        .map(({ edge }) => `${edge.id} through ${bus.id}`),
    );

describe.each(offered.map((each) => [each.scenario.id, each] as const))('the one-line of %s', (_, each) => {
  const world = worldOf(each);
  const layout = layOut(world);

  test('draws no bar over another and no symbol on a bar or on its neighbour', () => {
    for (const sheet of [layout.wide, ...layout.narrow]) {
      expect(overlaps(sheet)).toEqual([]);
      expect(crowded(sheet)).toEqual([]);
      expect(struck(sheet)).toEqual([]);
    }
  });

  test('hangs each device from its upper bus to its lower one, never upward', () => {
    for (const { x2, y1, y2, symbolY } of layout.wide.edges) {
      if (x2 !== null) continue;
      expect(y2).toBeGreaterThan(y1);
      expect(symbolY).toBeGreaterThan(y1);
      expect(symbolY).toBeLessThan(y2);
    }
  });

  test('puts every edge on the wide sheet once, and every edge but spans on the narrow ones once', () => {
    const ids = layout.graph.edges.map(({ id }) => id).sort();
    expect(layout.wide.edges.map(({ edge }) => edge.id).sort()).toEqual(ids);
    const hung = layout.graph.edges
      .filter((edge) => !isSpan(edge))
      .map(({ id }) => id)
      .sort();
    expect(layout.narrow.flatMap((sheet) => sheet.edges.map(({ edge }) => edge.id)).sort()).toEqual(hung);
  });

  test('draws every branch that a state opens or a device protects', () => {
    const drawn = new Set(
      layout.graph.edges.flatMap(({ part, branches }) => branches.map((name) => `${part}:${name}`)),
    );
    for (const part of world.parts) {
      for (const { branch, state } of branchesIn(part)) {
        if (branch.type !== 'series' || (state === null && branch.protects === undefined)) continue;
        expect([...drawn]).toContain(`${part.id}:${branch.name}`);
      }
    }
  });

  test('is the same for parts in any order', () => {
    const backwards = layOut({ ...world, parts: [...world.parts].reverse() });
    expect(backwards.wide.edges).toEqual(layout.wide.edges);
    expect(backwards.wide.buses.map(({ bus, x1, y }) => [bus.id, x1, y])).toEqual(
      layout.wide.buses.map(({ bus, x1, y }) => [bus.id, x1, y]),
    );
  });

  test('keeps all of it inside the sheet', () => {
    for (const { buses, edges, width, height } of [layout.wide, ...layout.narrow]) {
      for (const { x1, x2, y } of buses) expect(x1 >= 0 && x2 <= width && y > 16 && y + 16 <= height).toBe(true);
      for (const { y2, x } of edges) expect(x > 0 && x < width && y2 <= height).toBe(true);
    }
  });
});

describe('the one-line of the fog on Quarry Road', () => {
  const world = worldOf(quarryRoad);
  const { graph, wide } = layOut(world);
  const y = (bus: string): number => wide.buses.find((each) => each.bus.id === bus)?.y ?? Number.NaN;

  test('has the phase above the neutral, the neutral above the premises, and one height for each along the spans', () => {
    expect(y('p2.phase')).toBeLessThan(y('p2.neutral'));
    expect(y('p2.neutral')).toBeLessThan(y('a.l1'));
    for (const pole of ['p1', 'p3']) expect(y(`${pole}.neutral`)).toBe(y('p2.neutral'));
    expect([y('p1.tap'), y('p3.phase')]).toEqual([y('p2.phase'), y('p2.phase')]);
  });

  test('has the poles from source to load, and the premises after their pole', () => {
    expect(wide.heads.map(({ id }) => id)).toEqual(['p1', 'p2', 'a', 'b', 'p3']);
  });

  test('makes one bus of two hot legs, and never of a winding’s two ends', () => {
    const x1 = graph.buses.find(({ id }) => id === 'p2.x1');
    expect(x1?.legs).toEqual([['p2.x1'], ['p2.x3']]);
    for (const part of world.parts) {
      for (const branch of branchesOf(part)) {
        if (branch.type !== 'transformer') continue;
        for (const { between } of branch.windings) {
          const [a, b] = between.map((terminal) => graph.busOf.get(part.nets[terminal] ?? ''));
          expect(a).not.toBe(b);
        }
      }
    }
  });

  test('shows the broken joints and the leaks, and no sound joint', () => {
    expect(
      graph.edges
        .filter(({ fault }) => fault !== null)
        .map(({ part, symbol }) => `${part} ${symbol}`)
        .sort(),
    ).toEqual(['p2.ground-bond gap', 'p2.ground-lead gap', 'p2.insulator leak', 'p2.pole leak']);
    expect(graph.edges.some(({ part }) => part === 'p1.ground-bond' || part === 'p2.tank-strap')).toBe(false);
  });
});
