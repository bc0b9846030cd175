/**
 * From every state one can stop safely. Handing over is never refused, nor is coming down, walking, guarding, telling or
 * tagging beside a device; so what is left to show is that nobody standing on the ground at any stand is in reach of
 * anything, whatever the acts have made of the scene. Acts move no metal and hang no conductor lower than its length
 * allows. So each ground stand is asked once, with every bare metal alive at the highest voltage of the system or of
 * any table row: nobody there means nobody there in any state. A stand where that fails is asked in the states that
 * were really reached, and if it fails there too, the shortest way into it is the counterexample.
 */

import { standing } from '../acts/presence.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import type { CircuitSolution, PointState } from '../circuit/types.ts';
import { approach } from '../hazards/approach.ts';
import { drop } from '../hazards/drop.ts';
import type { Moment } from '../hazards/moment.ts';
import type { Reach } from '../hazards/types.ts';
import type { Stand, World } from '../world/types.ts';
import type { Means } from './peek.ts';
import { placedAt, standsOf, wayTo } from './places.ts';
import type { Reached } from './traps.ts';
import type { Claim } from './types.ts';

/** A solution in which everything is alive at so many volts. */
function allAlive(world: World, volts: number): CircuitSolution {
  const real = solveCircuit(world);
  const point = (id: string): PointState => ({
    ...real.point(id),
    volts,
    live: true,
    throughKilohm: volts / 1000,
    sources: ['system'],
  });
  return {
    elements: real.elements,
    get points() {
      return real.points.map(({ point: id }) => point(id));
    },
    point,
    between: () => volts,
    bodyCurrent: (_from, _to, ohms) => volts / ohms,
    branchCurrent: (part, branch) => real.branchCurrent(part, branch),
  };
}

/** A moment that is worse than any the World can come to. */
function worstMoment(world: World, volts: number): Moment {
  const bare: World = { ...world, covers: [], parts: world.parts.map((part) => ({ ...part, supported: false })) };
  const solution = allAlive(bare, volts);
  return {
    world: bare,
    present: solution,
    states: [{ world: bare, flashed: false, words: '', solution }],
    steps: false,
  };
}

const standingAt = (world: World, stand: Stand): Reach => standing(placedAt(world, stand), 60);

/** Ground stands at which somebody could be reached, and by which hazards, if everything were alive. */
export function groundAtWorst(world: World): ReadonlyMap<string, readonly string[]> {
  const { lineVolts } = world.given.supply;
  // Two sources out of step stand at up to twice the volts to ground.
  const moment = worstMoment(world, 2 * lineVolts);
  return new Map(
    standsOf(world)
      .filter(({ aloft }) => aloft === null)
      .map((stand) => {
        const reach = standingAt(world, stand);
        return [stand.id, [...approach(reach, moment), ...drop(reach, moment)].map(({ hazard }) => hazard)] as const;
      })
      .filter(([, hazards]) => hazards.length > 0),
  );
}

/** Hazards that somebody meets by standing at the stand in this very World. */
export const standingMeets = (means: Means, world: World, stand: Stand): readonly string[] =>
  means.step.met(standingAt(world, stand), world, world).map(({ hazard }) => hazard);

/** Whether one can stop safely from everywhere. */
export function stopsClaim(means: Means, scene: Reached, worlds: readonly World[]): Claim {
  const worst = groundAtWorst(scene.world);
  if (worst.size === 0) {
    return {
      id: 'stops',
      outcome: 'holds',
      words:
        'From every state one can stop: coming down, guarding, telling and handing over are never refused, and nobody on the ground is in reach of anything, whatever is alive.',
      acts: [],
    };
  }
  const free = standsOf(scene.world).filter(({ id, aloft }) => aloft === null && !worst.has(id));
  for (const stand of standsOf(scene.world).filter(({ id }) => worst.has(id))) {
    const met = standingMeets(means, scene.world, stand);
    if (met.length === 0) continue;
    return {
      id: 'stops',
      outcome: 'fails',
      words: `Whoever stands here is in reach while stopping: ${stand.name}, ${met.join(', ')}.`,
      acts: [...scene.acts, ...(wayTo(scene.world, stand.id) ?? [])],
    };
  }
  const reached = worlds.find((world) => [...worst.keys()].some((id) => meetsAt(means, world, id)));
  return {
    id: 'stops',
    outcome: reached === undefined && free.length > 0 ? 'not finished' : 'fails',
    words: `Standing is safe in the ${worlds.length} states looked at; were everything alive, it would not be at: ${[...worst.keys()].join(', ')}.`,
    acts: [],
  };
}

function meetsAt(means: Means, world: World, id: string): boolean {
  const stand = standsOf(world).find((each) => each.id === id);
  return stand !== undefined && world.ended === null && standingMeets(means, world, stand).length > 0;
}
