/**
 * Why a transformer turns 120 V into 7200 V, or the other way, worked out for the circuit as it stands; and what shorting
 * its low side would do, tried on a copy of the World.
 */
import { CircuitDefect } from '../../engine/circuit/circuitDefect.ts';
import { elementId } from '../../engine/circuit/elementsOf.ts';
import { settle } from '../../engine/circuit/settle.ts';
import { solveCircuit } from '../../engine/circuit/solveCircuit.ts';
import { formatNumber } from '../../engine/units/formatQuantity.ts';
import type { Part, PointId, World } from '../../engine/world/types.ts';
import { capital } from '../words.ts';
import type { Bench } from './bench.ts';
import { ampsOf, groupWords, operationWords, partName, voltsOf } from './benchWords.ts';
import { branchesIn, isAlongSpan } from './partBranches.ts';

export interface Why {
  readonly part: string;
  readonly name: string;
  readonly now: string;
  /** What shorting the low side would do; null while nothing feeds it or it is shorted. */
  readonly short: string | null;
  /** Terminals of the low side, for the short: middle first. */
  readonly low: readonly PointId[];
}

interface Sides {
  readonly high: readonly [PointId, PointId];
  readonly half: readonly [PointId, PointId];
  readonly low: readonly PointId[];
  readonly ratio: number;
  /** What `half` is called: one of two halves, or all of the low side. */
  readonly called: string;
}

/** Turns and terminals of a part's windings; null if it has none. */
const sidesOf = (part: Part): Sides | null => {
  const core = branchesIn(part).find(({ branch }) => branch.type === 'transformer')?.branch;
  if (core?.type !== 'transformer') return null;
  const [first, second, ...more] = core.windings;
  if (!first || !second) return null;
  const at = (terminal: string): PointId => `${part.id}/${terminal}`;
  const lows = [second, ...more].flatMap(({ between }) => between);
  const middle = lows.find((terminal, index) => lows.indexOf(terminal) !== index);
  const low = [...new Set(middle === undefined ? lows : [middle, ...lows])];
  return {
    high: [at(first.between[0]), at(first.between[1])],
    half: [at(second.between[0]), at(second.between[1])],
    low: low.map(at),
    ratio: first.turns / second.turns,
    called: more.length > 0 ? 'a half of the low side' : 'the low side',
  };
};

const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** 'H1', or 'the tank'. */
const terminalWords = (point: PointId): string => {
  const name = point.split('/')[1] ?? '';
  return /\d/.test(name) ? name.toUpperCase() : `the ${name}`;
};

const terminals = (points: readonly PointId[]): string =>
  listed([...points].map((point) => point.split('/')[1]?.toUpperCase() ?? '').sort());

const shortOf = (world: World, sides: Sides): string => {
  const jumper = { id: 'bench-short', tool: 'secondary-short', points: sides.low };
  const shorted: World = { ...world, jumpers: [...world.jumpers, jumper] };
  const atOnce = solveCircuit(shorted);
  const rest = settle(shorted);
  const amps = Math.max(
    ...sides.low.slice(1).map((_, at) => atOnce.network.worstCurrent(elementId(jumper.id, `${at + 1}`))),
  );
  const [high] = sides.high;
  const first = rest.operations[0];
  const held = `A short across ${terminals(sides.low)} leaves next to no volts to be turned up: ${terminalWords(high)} would fall to ${voltsOf(atOnce.point(high).volts)} at once, with ${ampsOf(amps)} in the short.`;
  if (first === undefined)
    return `${held} No device would open at that current, so the short has to carry it as long as it is on.`;
  const after = rest.solution.point(high);
  return `${held} ${operationWords(shorted, first)} ${terminalWords(high)} would then stand at ${voltsOf(after.volts)}, ${after.live ? 'still live' : 'not live'}.`;
};

const triedShort = (world: World, sides: Sides): string => {
  try {
    return shortOf(world, sides);
  } catch (error) {
    if (!(error instanceof CircuitDefect)) throw error;
    return `What a short would do cannot be worked out (${error.message}).`;
  }
};

const nowOf = (bench: Bench, sides: Sides): { readonly now: string; readonly fed: boolean } => {
  const { solution, world } = bench;
  const high = solution.between(...sides.high);
  const half = solution.between(...sides.half);
  const top = solution.point(sides.high[0]);
  const below = solution.point(sides.half[0]);
  const ratio = formatNumber(sides.ratio);
  const across = sides.high.map(terminalWords).join(' to ');
  const others = [...new Set([...top.sources, ...below.sources])].filter((group) => group !== 'system');
  const system = top.sources.includes('system');
  if (!top.live && !below.live) return { now: 'Nothing feeds it: neither side is live.', fed: false };
  if (others.length > 0 && top.live && !system) {
    const by = listed(others.map((group) => groupWords(world, group)));
    const turned = voltsOf(sides.ratio * half);
    const shows =
      turned === voltsOf(high)
        ? `The circuit shows as much from ${across}.`
        : `The circuit shows ${voltsOf(high)} from ${across}; the difference is lost in the windings.`;
    return {
      now: `Backfed by ${by}. ${capital(sides.called)} stands at ${voltsOf(half)}; the high side has ${ratio} turns for each of its turns, and a transformer works both ways: ${ratio} × ${voltsOf(half)} = ${turned}. ${shows} What is ${voltsOf(half)} in the house is line voltage on the pole.`,
      fed: true,
    };
  }
  if (others.length > 0) {
    return {
      now: `${listed(others.map((group) => groupWords(world, group)))} ${others.length > 1 ? 'feed' : 'feeds'} it besides the system, out of step with it. ${voltsOf(high)} on the high side, ${voltsOf(half)} on ${sides.called}, both at the worst angle.`,
      fed: true,
    };
  }
  return {
    now: `The system feeds it. ${voltsOf(high)} on the high side over ${ratio} turns for each turn of ${sides.called}: ${voltsOf(high / sides.ratio)}; the circuit shows ${voltsOf(half)}. The same windings turn ${voltsOf(half)} into line voltage when a house feeds them.`,
    fed: true,
  };
};

const isShorted = (bench: Bench, { low }: Sides): boolean =>
  bench.world.jumpers.some(({ points }) => {
    const nets = new Set(points.map((point) => bench.solution.point(point).node));
    return low.filter((point) => nets.has(bench.solution.point(point).node)).length > 1;
  });

/** One entry a transformer, in the order of parts. */
export const whyOf = (bench: Bench): readonly Why[] =>
  bench.world.parts.flatMap((part) => {
    const sides = isAlongSpan(part) ? null : sidesOf(part);
    if (sides === null) return [];
    const { now, fed } = nowOf(bench, sides);
    const short = fed && !isShorted(bench, sides) ? triedShort(bench.world, sides) : null;
    return [{ part: part.id, name: partName(bench.world, part), now, short, low: sides.low }];
  });
