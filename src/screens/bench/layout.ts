/**
 * The one-line on paper: buses as bars on levels, edges as verticals in lanes, symbols and words in the space between two
 * levels. Each lane keeps room at its right for its widest words, each level room for a bus's two lines, so that nothing
 * can lie on anything else. On a wide sheet all poles hang together; on narrow ones each pole or premises has its own.
 */
import { componentKind } from '../../engine/catalogue/components.ts';
import { EARTH } from '../../engine/network/types.ts';
import { partById } from '../../engine/world/edit.ts';
import type { World } from '../../engine/world/types.ts';
import { placeWords } from './benchWords.ts';
import type { Bus, CircuitGraph, Edge } from './circuitGraph.ts';
import { graphOf } from './circuitGraph.ts';
import { type Block, blocksOf } from './lanes.ts';
import { levelled } from './levelled.ts';
import { type Hung, hang, isSpan, levelsOf } from './levels.ts';

/** A bus on a sheet; its words stand right of `labelX`, one line above the bar and one below. */
export interface PlacedBus {
  readonly bus: Bus;
  readonly x1: number;
  readonly x2: number;
  readonly y: number;
  readonly labelX: number;
  /** Lanes where something hangs on it. */
  readonly dots: readonly number[];
  /** Where it goes on, on another sheet. */
  readonly onTo: readonly string[];
}

/** A device: a vertical from y1 to y2 with the symbol in the middle of its space; for spans from x to x2. */
export interface PlacedEdge {
  readonly edge: Edge;
  readonly upper: string;
  readonly lower: string;
  readonly x: number;
  readonly y1: number;
  readonly y2: number;
  readonly symbolY: number;
  readonly lines: readonly string[];
  /** Where the winding beside it stands, for the low side of a transformer. */
  readonly coreX: number | null;
  /** Levels of foreign bars that the vertical passes. */
  readonly hops: readonly number[];
  readonly x2: number | null;
}

export interface Sheet {
  readonly id: string;
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly heads: readonly { readonly id: string; readonly title: string; readonly x: number }[];
  readonly buses: readonly PlacedBus[];
  readonly edges: readonly PlacedEdge[];
}

export interface Layout {
  readonly graph: CircuitGraph;
  readonly wide: Sheet;
  readonly narrow: readonly Sheet[];
}

/** Drawing units: pixels at the size it is drawn for. */
export const type = { size: 12, line: 12.5, letter: 6.2 } as const;
const lane = { left: 22, symbol: 15, least: 50 } as const;
const HEAD = 26;
const BUS_ROOM = 16.5;
const SYMBOL_ROOM = 38;
const BORDER = 66;

const widthOf = (text: string): number => text.length * type.letter;

/** Words on lines of about so many letters. */
export const wrapped = (words: string, most = 10): readonly string[] => {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && `${last} ${word}`.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
};

/** Longest readings that will stand on a line of their own. */
const READING = '888 mA';
const VOLTS = '8.88 kV';
const HELD = 'not live';

interface Plan {
  readonly world: World;
  readonly graph: CircuitGraph;
  readonly hung: readonly Hung[];
  readonly blocks: readonly Block[];
  readonly levels: ReadonlyMap<string, number>;
}

/** The lines that an edge may need beside its symbol, at their longest. */
const linesOf = (world: World, edge: Edge): readonly string[] => {
  // Both sides of a transformer read beside its low side.
  if (edge.symbol === 'primary') return [];
  if (edge.symbol === 'secondary') return [...wrapped(edge.words), `high ${READING}`, `low ${READING}`];
  const words = wrapped(edge.words);
  if (edge.state === null) return [...words, READING];
  const states = componentKind(partById(world, edge.part).kind).states[edge.state] ?? [];
  return [...words, states.reduce((longest, each) => (each.length > longest.length ? each : longest), ''), READING];
};

const sheetOf = (plan: Plan, which: readonly Block[], id: string, title: string): Sheet => {
  const { graph, hung, world } = plan;
  const here = which.flatMap((block) => block.lanes.map((edges) => ({ block: block.id, edges })));
  const hungHere = new Set(here.flatMap(({ edges }) => edges));
  const whole = which.length === plan.blocks.length;
  const owners = new Set(which.map((block) => block.id));
  const touched = new Map<string, number[]>();
  here.forEach(({ edges }, at) => {
    for (const bus of new Set(edges.flatMap(({ upper, lower }) => [upper, lower]))) {
      if (bus !== EARTH) touched.set(bus, [...(touched.get(bus) ?? []), at]);
    }
  });
  for (const { id: block, seats } of which) {
    const start = here.findIndex((each) => each.block === block);
    for (const [bus, seat] of seats) if (!touched.has(bus)) touched.set(bus, [start + seat]);
  }
  const buses = graph.buses.filter((bus) => touched.has(bus.id));

  // Columns.
  let x = 4;
  const heads: { id: string; title: string; x: number }[] = [];
  const laneX: number[] = [];
  which.forEach((block, at) => {
    if (whole && at > 0 && block.isPole) x += BORDER;
    const name = placeWords(world, block.id);
    heads.push({ id: block.id, title: name, x: x + 4 });
    const begin = x;
    for (const edges of block.lanes) {
      laneX.push(x + lane.left);
      const words = edges.flatMap(({ edge }) => linesOf(world, edge)).map((text) => lane.symbol + 3 + widthOf(text));
      const labels = [VOLTS, HELD].map((text) => 8 + widthOf(text));
      x += lane.left + Math.max(lane.least, ...words, ...labels) + 4;
    }
    x = Math.max(x, begin + widthOf(name) + 12);
  });
  const onTo = new Map(
    buses.map((bus): [string, readonly string[]] => {
      if (whole) return [bus.id, []];
      const far = graph.edges
        .filter(({ from, to }) => from === bus.id || to === bus.id)
        .flatMap((edge) => {
          if (edge.owner !== null) return owners.has(edge.owner) ? [] : [edge.owner];
          const other = edge.from === bus.id ? edge.to : edge.from;
          const owner = graph.buses.find((each) => each.id === other)?.owner;
          return owner === undefined || owners.has(owner) ? [] : [owner];
        });
      const next = owners.has(bus.owner) ? [...new Set(far)] : [bus.owner];
      return [bus.id, next.map((owner) => placeWords(world, owner))];
    }),
  );
  const width = x + (whole ? 4 : 14);

  // Rows.
  const used = [...new Set(buses.map((bus) => plan.levels.get(bus.id) ?? 0))].sort((a, b) => a - b);
  const row = (bus: string): number => used.indexOf(plan.levels.get(bus) ?? 0);
  const gapOf = ({ edge, upper, lower }: Hung): number => {
    if (edge.windings.length > 0) {
      return Math.max(
        ...hung
          .filter((each) => each.edge.part === edge.part && each.edge.windings.length > 0)
          .map((each) => row(each.upper)),
      );
    }
    return lower === EARTH || edge.symbol === 'system' ? row(upper) : Math.max(row(upper), row(lower) - 1);
  };
  const rows: number[] = [];
  let y = HEAD + 24;
  for (let level = 0; level <= used.length; level += 1) {
    rows.push(y);
    const lines = [...hungHere]
      .filter((each) => gapOf(each) === level)
      .map(({ edge }) => linesOf(world, edge).length * type.line + 2);
    y += 2 * BUS_ROOM + (lines.length === 0 ? 0 : Math.max(SYMBOL_ROOM, ...lines));
  }
  const rowY = (bus: string): number => rows[row(bus)] ?? 0;
  const middle = (gap: number): number => ((rows[gap] ?? 0) + (rows[gap + 1] ?? y)) / 2;
  const hasEarth = [...hungHere].some((each) => each.lower === EARTH && gapOf(each) === used.length - 1);
  const height = (hasEarth ? (rows[used.length] ?? y) : (rows[used.length - 1] ?? y)) + (hasEarth ? -8 : BUS_ROOM + 4);

  const placedBuses = buses.map((bus): PlacedBus => {
    const at = touched.get(bus.id) ?? [0];
    const xs = at.map((each) => laneX[each] ?? 0);
    const own = at.find((each) => here[each]?.block === bus.owner) ?? at[0] ?? 0;
    const [x1, x2] = [Math.min(...xs), Math.max(...xs)];
    const alone = x1 === x2 ? 9 : 0;
    return {
      bus,
      x1: x1 - alone,
      x2: x2 + alone,
      y: rowY(bus.id),
      labelX: (laneX[own] ?? 0) + 7,
      dots: at.length > 1 ? xs : [],
      onTo: onTo.get(bus.id) ?? [],
    };
  });
  const barOf = (bus: string) => placedBuses.find((each) => each.bus.id === bus);
  const across = graph.edges.filter(isSpan).flatMap((edge): PlacedEdge[] => {
    const [a, b] = [barOf(edge.from), barOf(edge.to)];
    if (!whole || !a || !b) return [];
    const [left, right] = a.x1 <= b.x1 ? [a, b] : [b, a];
    const common = { edge, upper: left.bus.id, lower: right.bus.id, lines: [], hops: [], coreX: null };
    const head = heads.find((each) => each.id === right.bus.owner);
    return [{ ...common, x: left.x2, x2: right.x1, y1: left.y, y2: right.y, symbolY: (head?.x ?? right.x1) - BORDER }];
  });
  const hanging = here.flatMap(({ edges }, at) =>
    edges.map((each): PlacedEdge => {
      const { edge, upper, lower } = each;
      const symbolY = middle(gapOf(each));
      const y1 = rowY(upper);
      const y2 = lower === EARTH ? symbolY + 14 : rowY(lower);
      const laneAt = laneX[at] ?? 0;
      const bars = [...placedBuses, ...across.map((span) => ({ x1: span.x, x2: span.x2 ?? span.x, y: span.y1 }))];
      const hops = bars
        .filter((bar) => bar.y > y1 && bar.y < y2 && bar.x1 < laneAt && laneAt < bar.x2)
        .map((bar) => bar.y);
      const before = here[at - 1]?.edges.some(
        (other) => other.edge.symbol === 'primary' && other.edge.part === edge.part,
      );
      const coreX = edge.symbol === 'secondary' && before ? (laneX[at - 1] ?? null) : null;
      const lines = edge.symbol === 'primary' ? [] : wrapped(edge.words);
      return { edge, upper, lower, x: laneAt, y1, y2, symbolY, lines, hops, x2: null, coreX };
    }),
  );
  return { id, title, width, height, heads, buses: placedBuses, edges: [...across, ...hanging] };
};

/** The layout of a World as laid; it does not move when devices do. */
export const layOut = (world: World): Layout => {
  const graph = graphOf(world);
  const found = hang(graph);
  const first = levelsOf(graph, found, new Map());
  // What closes a ring hangs from whichever end came out higher.
  const hung = found.map((each): Hung => {
    const [upper, lower] = [first.get(each.upper) ?? 0, first.get(each.lower) ?? Number.POSITIVE_INFINITY];
    return lower < upper ? { ...each, upper: each.lower, lower: each.upper } : each;
  });
  const blocks = blocksOf(world, graph, hung, levelsOf(graph, hung, new Map()));
  const plan: Plan = { world, graph, hung, blocks, levels: levelled(graph, hung, blocks) };
  return {
    graph,
    wide: sheetOf(plan, blocks, 'whole', 'The whole circuit'),
    narrow: blocks.map((block) => sheetOf(plan, [block], block.id, placeWords(world, block.id))),
  };
};
