/** Levels on which no bar lies over another: what would overlap goes a level down. */
import type { CircuitGraph } from './circuitGraph.ts';
import { type Block, touchedBy } from './lanes.ts';
import { type Hung, isSpan, levelsOf } from './levels.ts';

const rangeOf = (touched: readonly number[]): readonly [number, number] => [Math.min(...touched), Math.max(...touched)];

/** Buses that spans tie together lie on one line of the page and take its whole length. */
const spannedRanges = (blocks: readonly Block[]): ReadonlyMap<string, readonly number[]> => {
  const touched = new Map(touchedBy(blocks));
  let first = 0;
  for (const { lanes, seats } of blocks) {
    for (const [bus, seat] of seats) if (!touched.has(bus)) touched.set(bus, [first + seat]);
    first += lanes.length;
  }
  return touched;
};

/** Bars of one level side by side, no two over each other: what would overlap goes a level down. */
export const levelled = (
  graph: CircuitGraph,
  hung: readonly Hung[],
  blocks: readonly Block[],
): ReadonlyMap<string, number> => {
  let least: ReadonlyMap<string, number> = new Map();
  const touched = spannedRanges(blocks);
  const spans = graph.edges.filter(isSpan);
  const line = (bus: string, seen: Set<string> = new Set()): ReadonlySet<string> => {
    if (seen.has(bus)) return seen;
    seen.add(bus);
    for (const { from, to } of spans) {
      if (from === bus) line(to, seen);
      else if (to === bus) line(from, seen);
    }
    return seen;
  };
  const lines = new Map(graph.buses.map(({ id }) => [id, line(id)]));
  const range = (bus: string) => rangeOf([...(lines.get(bus) ?? [])].flatMap((each) => touched.get(each) ?? []));
  const weight = (bus: string): number => lines.get(bus)?.size ?? 1;
  for (let round = 0; round < 2000; round += 1) {
    const levels = levelsOf(graph, hung, least);
    const clash = graph.buses.flatMap((a) =>
      graph.buses.flatMap((b) => {
        if (a.id >= b.id || levels.get(a.id) !== levels.get(b.id) || lines.get(a.id)?.has(b.id)) return [];
        const [[a1, a2], [b1, b2]] = [range(a.id), range(b.id)];
        if (a1 > b2 || b1 > a2) return [];
        return [weight(a.id) >= weight(b.id) ? [b.id, a.id] : [a.id, b.id]];
      }),
    )[0];
    if (clash === undefined) return levels;
    const [lower, upper] = clash;
    const down = (bus: string) => new Map(least).set(bus, (levels.get(bus) ?? 0) + 1);
    // Whoever hangs from the other would take it along.
    const tried = levelsOf(graph, hung, down(lower ?? ''));
    least = down((tried.get(lower ?? '') === tried.get(upper ?? '') ? upper : lower) ?? '');
  }
  throw new Error('the one-line finds no level for a bus');
};
