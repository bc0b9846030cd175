/**
 * Protection operated until none does: solve, let the fastest device that would operate within the horizon operate, write
 * that to its part, solve again. A recloser that trips closes again after its wait and goes on to its next curve; what
 * operates while it waits comes first. Sources out of step slip through every angle well within the horizon, so a device
 * is judged by its worst-angle current. The same for any order of the parts; equal times go by id. A recloser that is
 * closed when all has come to rest has forgotten its trips. Left out: what a fuse has warmed up in earlier shots.
 */
import { componentKind } from '../catalogue/components.ts';
import type { Part, World } from '../world/types.ts';
import { CircuitDefect } from './circuitDefect.ts';
import { circuitKey } from './circuitKey.ts';
import { type Device, devicesOf, fastest, HORIZON } from './devices.ts';
import { Memo } from './memo.ts';
import { type SolvedCircuit, solveCircuit } from './solveCircuit.ts';
import type { Operation } from './types.ts';

export { HORIZON };

/** A World at rest, what operated on the way there, and its solution. */
export interface Settled {
  readonly world: World;
  readonly operations: readonly Operation[];
  readonly solution: SolvedCircuit;
}

type State = Part['state'];
type States = ReadonlyMap<string, State>;

/** The World with these states written to its parts; parts that stay as they are stay the same objects. */
function withStates(world: World, states: States): World {
  if (states.size === 0) return world;
  const parts = world.parts.map((part) => {
    const state = states.get(part.id);
    return state === undefined ? part : { ...part, state };
  });
  return { ...world, parts };
}

function checkStates(part: Part, opens: State): void {
  const { states } = componentKind(part.kind);
  for (const [name, value] of Object.entries(opens)) {
    if (!states[name]?.includes(value)) throw new CircuitDefect(part.id, `operating would write ${name}=${value}`);
  }
}

interface Outcome {
  readonly states: States;
  readonly operations: readonly Operation[];
}

/** A recloser with open contacts: when it closes again, and the state that it then has. */
interface Waiting {
  readonly part: string;
  readonly at: number;
  readonly closed: State;
}

/** Runs the clock of one coming to rest. */
class Stepping {
  private readonly start: World;
  private readonly states = new Map<string, State>();
  private readonly shots = new Map<string, number>();
  private readonly operations: Operation[] = [];
  private waiting: Waiting[] = [];
  private now = 0;

  constructor(start: World) {
    this.start = start;
  }

  private get world(): World {
    return withStates(this.start, this.states);
  }

  /** Writes what operating the device does; the operation as it is told. */
  private operate({ device, operation }: { readonly device: Device; readonly operation: Operation }): void {
    const { part } = device;
    this.now += operation.seconds;
    const { sequence, opens } =
      'watch' in device ? { sequence: undefined, opens: device.watch.becomes } : device.protection;
    const done = this.shots.get(part.id) ?? 0;
    const wait = sequence?.waits[done];
    const becomes = sequence !== undefined && wait !== undefined ? sequence.waiting : opens;
    checkStates(part, becomes);
    this.states.set(part.id, { ...part.state, ...becomes });
    if (sequence === undefined) {
      this.operations.push(operation);
      return;
    }
    this.shots.set(part.id, done + 1);
    this.operations.push({ ...operation, closesAfter: wait ?? null });
    if (wait !== undefined) this.waiting.push({ part: part.id, at: this.now + wait, closed: part.state });
  }

  /** Closes the recloser whose wait is over first. */
  private closeAgain(next: Waiting): void {
    this.now = Math.max(this.now, next.at);
    this.states.set(next.part, next.closed);
    this.waiting = this.waiting.filter((each) => each !== next);
  }

  private next(): Waiting | undefined {
    const sooner = (a: Waiting, b: Waiting): boolean => b.at < a.at || (b.at === a.at && b.part < a.part);
    return this.waiting.reduce<Waiting | undefined>(
      (first, each) => (first && !sooner(first, each) ? first : each),
      undefined,
    );
  }

  private outcome(): Outcome {
    for (const part of this.start.parts) {
      const state = this.states.get(part.id);
      const isSame = state !== undefined && Object.entries(state).every(([name, value]) => part.state[name] === value);
      if (isSame) this.states.delete(part.id);
    }
    return { states: this.states, operations: this.operations };
  }

  run(): Outcome {
    let devices = devicesOf(this.world);
    // A device operates once, a recloser once a shot; a relay may bring in another one of its part.
    const most =
      4 + devices.reduce((sum, d) => sum + ('watch' in d ? 3 : 2 * (d.protection.sequence?.waits.length ?? 0) + 1), 0);
    for (let round = 0; round <= most; round++) {
      const first = fastest(devices, solveCircuit(this.world), this.shots);
      const next = this.next();
      if (first === null && next === undefined) return this.outcome();
      if (next !== undefined && (first === null || this.now + first.operation.seconds >= next.at)) {
        this.closeAgain(next);
      } else if (first !== null) {
        this.operate(first);
        const { part, branch } = first.device;
        const isSame = devicesOf(this.world).some((device) => device.part.id === part.id && device.branch === branch);
        if (isSame) throw new CircuitDefect(part.id, `'${branch}' has operated and still carries current`);
      }
      devices = devicesOf(this.world);
    }
    throw new CircuitDefect(this.operations.at(-1)?.part ?? 'protection', 'does not come to rest');
  }
}

const outcomes = new Memo<Outcome>(4096);

/** Operates protection until the World is at rest; the World itself, if nothing operates. */
export function settle(world: World): Settled {
  const { states, operations } = outcomes.get(circuitKey(world), () => new Stepping(world).run());
  const rested = withStates(world, states);
  return {
    world: rested,
    operations,
    // Most who let a World come to rest ask for no more.
    get solution() {
      return solveCircuit(rested);
    },
  };
}
