/**
 * How long a current flows before a device ends it. Devices whose current would operate them are opened, fastest
 * first, until what is left is under a limit; the time of the last one counts. Without such a device the longest time
 * asked about counts. Left out: what a device has warmed up before another opened, and reclosing.
 */
import { keyWith } from '../circuit/circuitKey.ts';
import { branchesOf } from '../circuit/elementsOf.ts';
import { Memo } from '../circuit/memo.ts';
import { operatingTime } from '../circuit/operatingTime.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import type { Amperes, Ohms, Seconds } from '../units/quantities.ts';
import type { PointId, World } from '../world/types.ts';
import type { SolvedState } from './moment.ts';
import { partsWith } from './partsWith.ts';

/** What is bridged: a body or an arc. */
export interface Bridged {
  readonly from: PointId;
  readonly to: PointId | 'earth';
  readonly ohms: Ohms;
}

interface Operating {
  readonly part: string;
  readonly opens: Readonly<Record<string, string>>;
  readonly seconds: Seconds;
}

const asked = ({ flashed }: SolvedState, { from, to, ohms }: Bridged, ...limits: readonly number[]): string =>
  `clears ${flashed} ${from} ${to} ${ohms} ${limits.join(' ')}`;

// All that is read here is what the circuit reads: parts as they stand, jumpers, soil.
const firsts = new Memo<Operating | null>(4000);
const times = new Memo<Seconds>(4000);

/** The device that would operate first, or null when none does within the limit. */
const first = (state: SolvedState, world: World, bridge: Bridged, within: Seconds): Operating | null =>
  firsts.get(keyWith(world, asked(state, bridge, within)), () => findFirst(state, world, bridge, within));

function findFirst(state: SolvedState, world: World, bridge: Bridged, within: Seconds): Operating | null {
  const solution = solveCircuit(world, { ...(state.flashed ? { credible: true } : {}), bridges: [bridge] });
  let fastest: Operating | null = null;
  for (const part of world.parts) {
    for (const branch of branchesOf(part)) {
      if (branch.type !== 'series' || branch.protects === undefined) continue;
      const seconds = operatingTime(part.id, branch.protects, solution.branchCurrent(part.id, branch.name));
      if (seconds <= within && (fastest === null || seconds < fastest.seconds)) {
        fastest = { part: part.id, opens: branch.protects.opens, seconds };
      }
    }
  }
  return fastest;
}

const opened = (world: World, device: Operating): World => ({
  ...world,
  parts: partsWith(world.parts, device.part, device.opens),
});

/** Seconds until the current through the bridge is under `under`, at most `within`. */
export const clearingTime = (state: SolvedState, bridge: Bridged, under: Amperes, within: Seconds): Seconds =>
  times.get(keyWith(state.world, asked(state, bridge, under, within)), () => step(state, bridge, under, within));

function step(state: SolvedState, bridge: Bridged, under: Amperes, within: Seconds): Seconds {
  let { world } = state;
  for (;;) {
    const device = first(state, world, bridge, within);
    if (device === null) return within;
    world = opened(world, device);
    const left = solveCircuit(world, state.flashed ? { credible: true } : {});
    if (left.bodyCurrent(bridge.from, bridge.to, bridge.ohms) < under) return device.seconds;
  }
}

/** Whether any device would operate within the limit. */
export const operatesWithin = (state: SolvedState, bridge: Bridged, within: Seconds): boolean =>
  first(state, state.world, bridge, within) !== null;
