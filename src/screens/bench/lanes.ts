/**
 * Where edges hang side by side: poles from source to load, each followed by the premises it serves; in each of them
 * one lane for every string of edges, in the order that makes bars shortest and crossings fewest.
 */
import { EARTH } from '../../engine/network/types.ts';
import type { World } from '../../engine/world/types.ts';
import type { CircuitGraph } from './circuitGraph.ts';
import { groupBy } from './groupBy.ts';
import { type Hung, isSpan } from './levels.ts';

/** A pole or premises and its strings of edges, from left to right. */
export interface Block {
  readonly id: string;
  readonly isPole: boolean;
  readonly lanes: readonly (readonly Hung[])[];
  /** Lanes of buses that nothing hangs on, only spans reach. */
  readonly seats: ReadonlyMap<string, number>;
}

type Levels = ReadonlyMap<string, number>;

/** More strings than this are not tried in every order, but moved one by one as long as that helps. */
const MOST_TRIED = 7;

const polesOf = (world: World): readonly string[] => {
  const places = new Map<string, number>();
  for (const { pole, at } of world.parts)
    if (pole !== null) places.set(pole, Math.min(at[0], places.get(pole) ?? at[0]));
  return [...places].sort(([a, x], [b, y]) => x - y || (a < b ? -1 : 1)).map(([id]) => id);
};

/** Strings of edges, each beginning where the one before it ends. */
const strings = (hung: readonly Hung[], levels: Levels): readonly (readonly Hung[])[] => {
  const level = ({ upper }: Hung): number => levels.get(upper) ?? 0;
  const lanes: Hung[][] = [];
  for (const each of [...hung].sort((a, b) => level(a) - level(b) || (a.edge.id < b.edge.id ? -1 : 1))) {
    const open = lanes.find((lane) => lane.at(-1)?.lower === each.upper && each.edge.symbol !== 'secondary');
    if (open) open.push(each);
    else lanes.push([each]);
  }
  return lanes;
};

const permutations = (count: number): readonly (readonly number[])[] => {
  if (count === 0) return [[]];
  return permutations(count - 1).flatMap((rest) =>
    Array.from({ length: count }, (_, at) => [...rest.slice(0, at), count - 1, ...rest.slice(at)]),
  );
};

/** Lanes that each bus touches, over all blocks. */
export const touchedBy = (blocks: readonly Block[]): ReadonlyMap<string, readonly number[]> => {
  const touched = new Map<string, number[]>();
  blocks
    .flatMap(({ lanes }) => lanes)
    .forEach((lane, at) => {
      for (const bus of new Set(lane.flatMap(({ upper, lower }) => [upper, lower]))) {
        if (bus !== EARTH) touched.set(bus, [...(touched.get(bus) ?? []), at]);
      }
    });
  return touched;
};

const costOf = (blocks: readonly Block[], levels: Levels): number => {
  const lanes = blocks.flatMap((block) => block.lanes);
  const touched = touchedBy(blocks);
  let cost = 0;
  for (const [bus, at] of touched) {
    const [first, last] = [Math.min(...at), Math.max(...at)];
    const level = levels.get(bus) ?? 0;
    cost += last - first;
    for (let lane = first + 1; lane < last; lane += 1) {
      for (const { upper, lower } of lanes[lane] ?? []) {
        const top = levels.get(upper) ?? 0;
        const bottom = lower === EARTH ? top : (levels.get(lower) ?? 0);
        if (top < level && level < bottom) cost += 3;
      }
    }
  }
  // The windings of a transformer stand side by side, the high side first.
  lanes.forEach((lane, at) => {
    for (const { edge } of lane) {
      if (edge.symbol !== 'secondary') continue;
      const before = lanes[at - 1]?.some((other) => other.edge.symbol === 'primary' && other.edge.part === edge.part);
      if (!before) cost += 1000;
    }
  });
  return cost;
};

const withOrder = (blocks: readonly Block[], which: number, order: readonly number[]): readonly Block[] =>
  blocks.map((block, at) =>
    at === which ? { ...block, lanes: order.flatMap((lane) => (block.lanes[lane] ? [block.lanes[lane]] : [])) } : block,
  );

/** The order with one lane moved to another place. */
const moves = (count: number): readonly (readonly number[])[] =>
  Array.from({ length: count }, (_, from) =>
    Array.from({ length: count }, (_, to) => {
      const rest = Array.from({ length: count }, (_, at) => at).filter((at) => at !== from);
      return [...rest.slice(0, to), from, ...rest.slice(to)];
    }),
  ).flat();

const best = (blocks: readonly Block[], which: number, levels: Levels, orders: readonly (readonly number[])[]) =>
  orders.reduce(
    (least, order) => {
      const tried = withOrder(blocks, which, order);
      const cost = costOf(tried, levels);
      return cost < least.cost ? { blocks: tried, cost } : least;
    },
    { blocks, cost: costOf(blocks, levels) },
  ).blocks;

const ordered = (start: readonly Block[], levels: Levels): readonly Block[] => {
  let blocks = start;
  for (let pass = 0; pass < 2; pass += 1) {
    start.forEach((_, which) => {
      const count = blocks[which]?.lanes.length ?? 0;
      if (count <= MOST_TRIED) {
        blocks = best(blocks, which, levels, permutations(count));
        return;
      }
      for (let round = 0; round < count; round += 1) {
        const moved = best(blocks, which, levels, moves(count));
        if (moved === blocks) break;
        blocks = moved;
      }
    });
  }
  return blocks;
};

/** Whether an edge of the lane passes the level or has an end on it. */
const isTaken = (lane: readonly Hung[], level: number, levels: Levels): boolean =>
  lane.some(({ upper, lower }) => {
    const top = levels.get(upper) ?? 0;
    return top <= level && level <= (lower === EARTH ? top : (levels.get(lower) ?? 0));
  });

/** Gives buses that only spans reach a lane that is free there, a new one if none is. */
const seated = (block: Block, graph: CircuitGraph, levels: Levels): Block => {
  const hangs = new Set(block.lanes.flat().flatMap(({ upper, lower }) => [upper, lower]));
  const idle = graph.buses.filter(({ id, owner }) => owner === block.id && !hangs.has(id));
  const lanes = [...block.lanes];
  const seats = new Map<string, number>();
  const sitsAt = (lane: number, level: number): boolean =>
    [...seats].some(([bus, at]) => at === lane && (levels.get(bus) ?? 0) === level);
  for (const { id } of idle) {
    const level = levels.get(id) ?? 0;
    const free = lanes.findIndex((lane, at) => !isTaken(lane, level, levels) && !sitsAt(at, level));
    if (free < 0) lanes.push([]);
    seats.set(id, free < 0 ? lanes.length - 1 : free);
  }
  return { ...block, lanes, seats };
};

/** Poles and premises in the order of the page; a pole that only carries spans has one empty lane. */
export const blocksOf = (
  world: World,
  graph: CircuitGraph,
  hung: readonly Hung[],
  levels: Levels,
): readonly Block[] => {
  const poles = polesOf(world);
  const byOwner = groupBy(
    hung.filter(({ edge }) => !isSpan(edge)),
    ({ edge }) => edge.owner ?? poles[0] ?? '',
  );
  const servedBy = (id: string): string | undefined =>
    byOwner
      .get(id)
      ?.flatMap(({ upper, lower }) => [upper, lower])
      .map((bus) => graph.buses.find((each) => each.id === bus)?.owner ?? '')
      .find((owner) => poles.includes(owner));
  const premises = [...byOwner.keys()].filter((id) => !poles.includes(id)).sort();
  const block = (id: string): Block => {
    const lanes = strings(byOwner.get(id) ?? [], levels);
    return { id, isPole: poles.includes(id), lanes: lanes.length === 0 ? [[]] : lanes, seats: new Map() };
  };
  const placed = poles.flatMap((pole) => [pole, ...premises.filter((id) => servedBy(id) === pole)]);
  const rest = premises.filter((id) => !placed.includes(id));
  const carrying = (id: string): boolean =>
    byOwner.has(id) || graph.buses.some(({ owner, id: bus }) => owner === id && levels.has(bus));
  return ordered([...placed, ...rest].filter(carrying).map(block), levels).map((each) => seated(each, graph, levels));
};
