/**
 * A World's circuit, solved and read back by part. Live means both: at least 50 V to local earth, where the approach
 * table of 29 CFR 1910.269 (Table R-6) begins, and at least 1 mA through 1 kilohm, where its Appendix C (III.D.1) sets
 * the hazard of an involuntary reaction; 1 kilohm is the body resistance that it usually takes. Not live is not safe to
 * touch: it only says what the circuit shows now, and an insulated line is treated as live until tested and grounded.
 * Sources that are not in step are added at the worst angle between them. Left out: anything but the steady state at 60 Hz,
 * soil layers, shoes and the soil under the feet.
 */
import { abs, add, type Complex, complex, sub } from '../math/complex.ts';
import type { Vec3 } from '../math/vec3.ts';
import { solveNetwork } from '../network/solveNetwork.ts';
import { EARTH, type NetworkElement, type NetworkSolution, type Phasors } from '../network/types.ts';
import { findPart, pointAt } from '../world/edit.ts';
import { bareTerminals } from '../world/points.ts';
import type { Part, PointId, World } from '../world/types.ts';
import { branchNames } from './branchNames.ts';
import { CircuitDefect, defectOf } from './circuitDefect.ts';
import { keyWith } from './circuitKey.ts';
import { byId, type CircuitOptions, elementId, elementsOf, netOf, partAt } from './elementsOf.ts';
import { limitSources } from './limitedSources.ts';
import { type Electrode, electrodesOf, footPotential, groundPotential } from './localEarth.ts';
import { Memo } from './memo.ts';
import type { CircuitSolution, PointState } from './types.ts';

/** Volts to local earth at and above which a part may be live. */
export const LIVE_VOLTS = 50;
/** Amperes through TEST_OHMS at and above which a part may be live. */
export const LIVE_AMPERES = 1e-3;
/** The body as it is usually taken, ohms. */
export const TEST_OHMS = 1000;

/** A solution with the network behind it, for the deck, the oracle and the branch phasors. */
export interface SolvedCircuit extends CircuitSolution {
  readonly network: NetworkSolution;
}

/** Where a point hangs in the network and in space. */
interface Spot {
  readonly net: string;
  readonly place: Vec3;
}

// A part is frozen, so what follows from it alone may be kept with it.
const spotsKept = new WeakMap<Part, Map<string, Spot>>();

function spotAt(world: World, id: PointId): Spot {
  const [part, terminal] = partAt(world, id);
  const spots = spotsKept.get(part) ?? new Map<string, Spot>();
  spotsKept.set(part, spots);
  const spot = spots.get(terminal) ?? { net: netOf(part, terminal), place: pointAt(world, id) ?? part.at };
  spots.set(terminal, spot);
  return spot;
}

class Circuit implements SolvedCircuit {
  readonly elements: readonly NetworkElement[];
  readonly network: NetworkSolution;
  private readonly impedances = new Map<string, Complex>();
  private readonly states = new Map<PointId, PointState>();
  private readonly spots = new Map<PointId, Spot>();
  private readonly toEarth = new Map<PointId, number>();
  private ids: ReadonlySet<string> | null = null;
  private readonly world: World;
  private sorted: readonly PointState[] | null = null;
  private readonly electrodes: readonly Electrode[];
  private readonly currents = new Map<Phasors, readonly Complex[]>();

  constructor(world: World, options: CircuitOptions) {
    this.world = world;
    this.elements = limitSources(world, elementsOf(world, options));
    const solved = solveNetwork(this.elements);
    if (!solved.ok) throw defectOf(solved);
    this.network = solved;
    this.electrodes = electrodesOf(world);
  }

  get points(): readonly PointState[] {
    this.sorted ??= [...this.world.parts]
      .flatMap((part) => bareTerminals(part).map((terminal) => `${part.id}/${terminal}`))
      .sort()
      .map((id) => this.point(id));
    return this.sorted;
  }

  point(id: PointId): PointState {
    const known = this.states.get(id);
    if (known !== undefined) return known;
    const state = this.read(id);
    this.states.set(id, state);
    return state;
  }

  private spot(id: PointId): Spot {
    const known = this.spots.get(id);
    if (known !== undefined) return known;
    const spot = spotAt(this.world, id);
    this.spots.set(id, spot);
    return spot;
  }

  private netAt(id: PointId | 'earth'): string {
    return id === EARTH ? EARTH : this.spot(id).net;
  }

  private read(id: PointId): PointState {
    const node = this.netAt(id);
    const ohms = abs(add(this.impedance(node, EARTH), complex(TEST_OHMS)));
    const shares = this.network.groups
      .map((group) => ({ id: group, volts: abs(this.voltage(this.network.contribution(group), id, EARTH)) }))
      .filter((share) => share.volts > 0)
      .sort((a, b) => b.volts - a.volts || byId(a, b));
    const volts = shares.reduce((sum, share) => sum + share.volts, 0);
    const isLive = (v: number): boolean => v >= LIVE_VOLTS && v / ohms >= LIVE_AMPERES;
    const alone = shares.filter((share) => isLive(share.volts));
    // When only together do they make it live, each of them does.
    const sources = !isLive(volts) ? [] : alone.length > 0 ? alone : shares;
    return {
      point: id,
      node,
      volts,
      throughKilohm: volts / ohms,
      live: isLive(volts),
      sources: sources.map((share) => share.id),
    };
  }

  bodyCurrent(from: PointId, to: PointId | 'earth', ohms: number): number {
    const volts = this.between(from, to);
    return volts === 0 ? 0 : volts / abs(add(this.impedance(this.netAt(from), this.netAt(to)), complex(ohms)));
  }

  between(a: PointId, b: PointId | 'earth'): number {
    if (b !== EARTH) return this.across(a, b);
    const known = this.toEarth.get(a);
    if (known !== undefined) return known;
    const volts = this.across(a, b);
    this.toEarth.set(a, volts);
    return volts;
  }

  private across(a: PointId, b: PointId | 'earth'): number {
    const { groups } = this.network;
    return groups.reduce((sum, group) => sum + abs(this.voltage(this.network.contribution(group), a, b)), 0);
  }

  /** Volts of the ground beside a place; what flows into the electrodes is the same for every place. */
  private ground(place: Vec3, phasors: Phasors): Complex {
    const known = this.currents.get(phasors);
    const currents = known ?? this.electrodes.map(({ element }) => phasors.current(element));
    if (known === undefined) this.currents.set(phasors, currents);
    return groundPotential(this.electrodes, this.world.site.resistivity, place, currents);
  }

  step(a: Vec3, b: Vec3): number {
    const { electrodes } = this;
    const foot = (place: Vec3, phasors: Phasors): Complex =>
      footPotential(electrodes, this.world.site.resistivity, place, phasors);
    return this.network.groups.reduce((sum, group) => {
      const phasors = this.network.contribution(group);
      return sum + abs(sub(foot(a, phasors), foot(b, phasors)));
    }, 0);
  }

  branchCurrent(part: string, branch: string): number {
    const id = elementId(part, branch);
    this.ids ??= new Set(this.elements.map((element) => element.id));
    if (this.ids.has(id)) return this.network.worstCurrent(id);
    const known = findPart(this.world, part);
    if (known === null) throw new CircuitDefect(part, 'no such part');
    if (!branchNames(known).has(branch)) throw new CircuitDefect(part, `has no branch '${branch}' in any state`);
    return 0;
  }

  /** Open-circuit phasor from a to b, or to the ground beside a. */
  private voltage(phasors: Phasors, a: PointId, b: PointId | 'earth'): Complex {
    const { net, place } = this.spot(a);
    if (b !== EARTH) return phasors.voltageBetween(net, this.netAt(b));
    return sub(phasors.voltage(net), this.ground(place, phasors));
  }

  /** Thevenin impedance; the soil's own share of a body's path is left out. */
  private impedance(a: string, b: string): Complex {
    const key = `${a} ${b}`;
    const known = this.impedances.get(key);
    if (known !== undefined) return known;
    const { zth } = a === b ? { zth: complex(0) } : this.network.theveninBetween(a, b);
    this.impedances.set(key, zth);
    return zth;
  }
}

const solutions = new Memo<SolvedCircuit>(1024);

/** Solves the World as it stands, protection not operated; throws a CircuitDefect if that cannot be. Kept by structural key. */
export function solveCircuit(world: World, options: CircuitOptions = {}): SolvedCircuit {
  const { credible = [], bridges = [] } = options;
  const asked = bridges.length === 0 && credible !== true ? credible.join(' ') : JSON.stringify([credible, bridges]);
  return solutions.get(keyWith(world, asked), () => new Circuit(world, options));
}
