/**
 * Protection operated until none does: solve, let the fastest device that would operate within the horizon operate, write
 * that to its part, solve again. Sources out of step slip through every angle well within the horizon, so a device is
 * judged by its worst-angle current. The same for any order of the parts; equal times go by id.
 */
import { componentKind } from '../catalogue/components.ts';
import type { Protection } from '../catalogue/types.ts';
import type { Part, World } from '../world/types.ts';
import { CircuitDefect } from './circuitDefect.ts';
import { circuitKey } from './circuitKey.ts';
import { branchesOf, byId } from './elementsOf.ts';
import { Memo } from './memo.ts';
import { operatingTime } from './operatingTime.ts';
import { type SolvedCircuit, solveCircuit } from './solveCircuit.ts';
import type { Operation } from './types.ts';

/** A device that needs longer than this has not operated when the next thing happens, seconds. */
export const HORIZON = 60;

interface Device {
  readonly part: Part;
  readonly branch: string;
  readonly protection: Protection;
}

/** A World at rest, what operated on the way there, and its solution. */
export interface Settled {
  readonly world: World;
  readonly operations: readonly Operation[];
  readonly solution: SolvedCircuit;
}

const devicesOf = (world: World): Device[] =>
  [...world.parts]
    .sort(byId)
    .flatMap((part) =>
      branchesOf(part).flatMap((branch) =>
        branch.type === 'series' && branch.protects !== undefined
          ? [{ part, branch: branch.name, protection: branch.protects }]
          : [],
      ),
    );

/** The device that operates first, or null when none does within the horizon. */
function fastest(devices: readonly Device[], solution: SolvedCircuit): { device: Device; operation: Operation } | null {
  let first: { device: Device; operation: Operation } | null = null;
  for (const device of devices) {
    const amperes = solution.branchCurrent(device.part.id, device.branch);
    const seconds = operatingTime(device.part.id, device.protection, amperes);
    if (seconds > HORIZON || (first !== null && seconds >= first.operation.seconds)) continue;
    first = { device, operation: { part: device.part.id, branch: device.branch, amperes, seconds } };
  }
  return first;
}

type States = ReadonlyMap<string, Part['state']>;

/** The World with these states written to its parts; parts that stay as they are stay the same objects. */
function withStates(world: World, states: States): World {
  if (states.size === 0) return world;
  const parts = world.parts.map((part) => {
    const state = states.get(part.id);
    return state === undefined ? part : { ...part, state };
  });
  return { ...world, parts };
}

function checkStates(part: Part, opens: Readonly<Record<string, string>>): void {
  const { states } = componentKind(part.kind);
  for (const [name, value] of Object.entries(opens)) {
    if (!states[name]?.includes(value)) throw new CircuitDefect(part.id, `operating would write ${name}=${value}`);
  }
}

interface Outcome {
  readonly states: States;
  readonly operations: readonly Operation[];
}

function operate(start: World): Outcome {
  const states = new Map<string, Part['state']>();
  const operations: Operation[] = [];
  let world = start;
  let devices = devicesOf(world);
  for (;;) {
    const first = fastest(devices, solveCircuit(world));
    if (first === null) return { states, operations };
    const { part, branch, protection } = first.device;
    checkStates(part, protection.opens);
    states.set(part.id, { ...part.state, ...protection.opens });
    operations.push(first.operation);
    world = withStates(start, states);
    const left = devicesOf(world);
    // Each operation takes at least its own device out and brings none in, so there are no more rounds than devices.
    const isFewer = left.length < devices.length;
    const isSame = left.some((device) => device.part.id === part.id && device.branch === branch);
    if (isSame || !isFewer) throw new CircuitDefect(part.id, `'${branch}' has operated and still carries current`);
    devices = left;
  }
}

const outcomes = new Memo<Outcome>(4096);

/** Operates protection until the World is at rest; the World itself, if nothing operates. */
export function settle(world: World): Settled {
  const { states, operations } = outcomes.get(circuitKey(world), () => operate(world));
  const rested = withStates(world, states);
  return { world: rested, operations, solution: solveCircuit(rested) };
}
