/** A World with its circuit solved, as it stands and in every credible state: what all mechanisms look at. */
import { solveCircuit } from '../circuit/solveCircuit.ts';
import type { CircuitSolution, PointState } from '../circuit/types.ts';
import type { Volts } from '../units/quantities.ts';
import type { PointId, World } from '../world/types.ts';
import { type CredibleState, credibleStates } from './credibleStates.ts';

/** One credible state, solved. */
export interface SolvedState extends CredibleState {
  readonly solution: CircuitSolution;
}

export interface Moment {
  readonly world: World;
  readonly present: CircuitSolution;
  /** The present first. */
  readonly states: readonly SolvedState[];
  /** Whether protective devices are stepped for durations, or the longest duration is taken. */
  readonly steps: boolean;
}

/** A state that is solved when it is first asked about: most of what people come near needs none. */
class Lazy implements SolvedState {
  readonly world: World;
  readonly flashed: boolean;
  readonly words: string;
  private solved: CircuitSolution | null = null;

  constructor({ world, flashed, words }: CredibleState) {
    this.world = world;
    this.flashed = flashed;
    this.words = words;
  }

  get solution(): CircuitSolution {
    this.solved ??= solveCircuit(this.world, this.flashed ? { credible: true } : {});
    return this.solved;
  }
}

/** A World's moment; parts in `trusted` stay as they are. */
export function momentOf(world: World, steps = true, trusted: ReadonlySet<string> = new Set()): Moment {
  let states: readonly SolvedState[] | null = null;
  return {
    world,
    get present() {
      return solveCircuit(world);
    },
    get states() {
      states ??= credibleStates(world, trusted).map((state) => new Lazy(state));
      return states;
    },
    steps,
  };
}

const kept = new WeakMap<Moment, Map<string, PointState | null>>();

/** The state of a point at its highest voltage, above `over`, in which it is live; null when it is live in none. */
export function liveIn(moment: Moment, point: PointId, over: Volts = 0): PointState | null {
  const known = kept.get(moment) ?? new Map<string, PointState | null>();
  kept.set(moment, known);
  const key = `${point} ${over}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  let worst: PointState | null = null;
  for (const { solution } of moment.states) {
    // Cheaper than the whole state of the point, and most points are dead.
    if (solution.between(point, 'earth') <= over) continue;
    const state = solution.point(point);
    if (state.live && (worst === null || state.volts > worst.volts)) worst = state;
  }
  known.set(key, worst);
  return worst;
}
