/**
 * What can be done at the bench and what then reads where: positions, grounds, repairs on a World, protection operated
 * until at rest after each. A bench is no drill: nobody stands anywhere, nothing takes time, and nothing is judged.
 */
import { componentKind } from '../../engine/catalogue/components.ts';
import { faultKind } from '../../engine/catalogue/faults.ts';
import { branchesOf, elementId, netAt } from '../../engine/circuit/elementsOf.ts';
import { type Settled, settle } from '../../engine/circuit/settle.ts';
import type { SolvedCircuit } from '../../engine/circuit/solveCircuit.ts';
import type { Operation, PointState } from '../../engine/circuit/types.ts';
import { faultsOf, partById, withoutFault, withPart } from '../../engine/world/edit.ts';
import type { LaidFault, Part, PointId, World } from '../../engine/world/types.ts';
import type { Bus, Edge } from './circuitGraph.ts';
import { branchesIn, isAlongSpan, isWorking, statesOf } from './partBranches.ts';

/** The bench after a change. */
export interface Bench {
  /** As laid by the scenario. */
  readonly start: World;
  readonly world: World;
  readonly solution: SolvedCircuit;
  /** Devices that protection operated after the last change, in their order. */
  readonly operations: readonly Operation[];
  /** The bench before the last change. */
  readonly before: Bench | null;
}

const settledOn = (start: World, before: Bench | null, { world, operations, solution }: Settled): Bench => ({
  start,
  world,
  operations,
  solution,
  before,
});

/** A World on the bench, protection at rest. */
export const openBench = (start: World): Bench => settledOn(start, null, settle(start));

const changed = (bench: Bench, world: World): Bench => settledOn(bench.start, bench, settle(world));

/** Puts states of a part, whatever stood before. */
export const put = (bench: Bench, part: string, state: Part['state']): Bench =>
  changed(bench, withPart(bench.world, part, { state: { ...partById(bench.world, part).state, ...state } }));

/** Mends a laid fault. */
export const mend = (bench: Bench, fault: string): Bench => changed(bench, withoutFault(bench.world, fault));

/** Why two points cannot be joined; null if they can. */
export const refusal = (bench: Bench, points: readonly PointId[]): string | null => {
  const nets = points.map((point) => netAt(bench.world, point));
  return new Set(nets).size < nets.length ? 'Both clamps would sit on the same metal: choose another point.' : null;
};

/** Puts a ground or short on; throws if `refusal` has something to say. */
export const clampOn = (bench: Bench, points: readonly PointId[]): Bench => {
  const no = refusal(bench, points);
  if (no !== null) throw new Error(no);
  const taken = bench.world.jumpers.map(({ id }) => Number(id.replace('bench-', '')) || 0);
  const id = `bench-${Math.max(0, ...taken) + 1}`;
  return changed(bench, { ...bench.world, jumpers: [...bench.world.jumpers, { id, tool: 'ground-set', points }] });
};

/** Takes a ground or short off. */
export const clampOff = (bench: Bench, jumper: string): Bench =>
  changed(bench, { ...bench.world, jumpers: bench.world.jumpers.filter(({ id }) => id !== jumper) });

const isLaid = (part: Part, edge: Edge): boolean => part.faults.some(({ id }) => id === edge.fault);

/** Whether the edge carries current as its part stands: contact closed, set running, leak there, joint mended. */
export const isClosed = (world: World, edge: Edge): boolean => {
  const part = partById(world, edge.part);
  if (edge.symbol === 'leak') return isLaid(part, edge);
  return branchesOf(part).some((branch) => edge.branches.includes(branch.name) && isWorking(branch));
};

const holdsIn = (part: Part, edge: Edge, state: Part['state']): boolean =>
  componentKind(part.kind)
    .branches({ ...part, state })
    .some((branch) => edge.branches.includes(branch.name) && isWorking(branch));

/** The nearest state of the part in which the edge stands the other way; null if nothing opens or closes it. */
export const otherWay = (world: World, edge: Edge): Part['state'] | null => {
  if (edge.state === null) return null;
  const part = partById(world, edge.part);
  if (isLaid(part, edge)) return null;
  const closed = isClosed(world, edge);
  const changes = (state: Part['state']): number =>
    Object.keys(state).filter((name) => state[name] !== part.state[name]).length;
  const fitting = statesOf(part).filter((state) => holdsIn(part, edge, state) !== closed);
  const least = Math.min(...fitting.map(changes));
  const own = edge.state;
  return (
    fitting.find((state) => changes(state) === least && state[own] !== part.state[own]) ??
    fitting.find((state) => changes(state) === least) ??
    null
  );
};

/** Amperes through an edge at the worst angle. */
export const amperesIn = ({ world, solution }: Pick<Bench, 'world' | 'solution'>, edge: Edge): number => {
  if (edge.fault !== null && edge.symbol === 'leak' && !isClosed(world, edge)) return 0;
  const there = branchesOf(partById(world, edge.part)).filter(({ name }) => edge.branches.includes(name));
  const amps = there.flatMap(({ type, name }) =>
    type === 'transformer'
      ? edge.windings.map((winding) => solution.network.worstCurrent(elementId(edge.part, name), winding))
      : [solution.branchCurrent(edge.part, name)],
  );
  const leaks = edge.symbol === 'leak' ? edge.branches.map((name) => solution.branchCurrent(edge.part, name)) : [];
  return Math.max(0, ...amps, ...leaks);
};

/** Amperes in each cable of a ground or short. */
export const amperesOn = ({ solution }: Pick<Bench, 'solution'>, jumper: World['jumpers'][number]): number =>
  Math.max(...jumper.points.slice(1).map((_, at) => solution.network.worstCurrent(elementId(jumper.id, `${at + 1}`))));

/** A bus as it reads: the highest point of each leg. */
export interface BusReading {
  readonly worst: PointState;
  readonly legs: readonly PointState[];
}

/** Reads the points of a bus; bare metal if it has any. */
export const readBus = ({ world, solution }: Pick<Bench, 'world' | 'solution'>, bus: Bus): BusReading => {
  const states = bus.points.map((point) => solution.point(point));
  const bare = states.filter(({ point }) => isBare(world, point));
  const highest = (of: readonly PointState[]): PointState | undefined =>
    of.reduce<PointState | undefined>(
      (best, each) => (best !== undefined && best.volts >= each.volts ? best : each),
      undefined,
    );
  const legs = bus.legs.flatMap((nets) => {
    const own = states.filter(({ node }) => nets.includes(node));
    const ownBare = bare.filter(({ node }) => nets.includes(node));
    return highest(ownBare.length > 0 ? ownBare : own) ?? [];
  });
  const worst = highest(legs);
  if (worst === undefined) throw new Error(`no point on bus ${bus.id}`);
  return { worst, legs };
};

/** Whether a terminal has metal that can be touched or clamped. */
export const isBare = (world: World, point: PointId): boolean => {
  const slash = point.indexOf('/');
  const part = partById(world, point.slice(0, slash));
  return componentKind(part.kind).points[point.slice(slash + 1)] !== undefined;
};

/** Laid faults with a say in the circuit, by part. */
export const electricalFaults = (part: Part): readonly LaidFault[] =>
  part.faults.filter(({ kind }) => {
    const { opens, leaks, sets, words, benign } = faultKind(kind);
    return !benign && (opens.length > 0 || leaks.length > 0 || sets !== undefined || words !== undefined);
  });

/** The World that the drawing is of: as laid, less what changed a part's own branches and has been mended. */
export const drawnOf = ({ start, world }: Pick<Bench, 'start' | 'world'>): World => {
  const left = new Set(faultsOf(world).map(({ fault }) => fault.id));
  return faultsOf(start)
    .filter(({ fault }) => faultKind(fault.kind).words !== undefined && !left.has(fault.id))
    .reduce((drawn, { fault }) => withoutFault(drawn, fault.id), start);
};

/** Parts with positions, electrical faults or both, in the order of the World. */
export const devicesOn = (world: World, start: World): readonly Part[] =>
  world.parts.filter(
    (part) =>
      (!isAlongSpan(part) && branchesIn(part).length > 0 && Object.keys(componentKind(part.kind).states).length > 0) ||
      electricalFaults(partById(start, part.id)).length > 0,
  );
