/**
 * From every state one can stop safely. Handing over is never refused, nor is coming down, walking on the ground, guarding
 * or telling; coming down exposes to nothing that being up there did not. So what is left to show is a place on the
 * ground where nobody is in reach of anything, whatever the acts have made of the scene. Acts move no metal, and a lost
 * tie lets a conductor no farther than its length allows. So each ground stand is asked once with every bare metal alive
 * at twice the system's highest voltage (two sources out of step), and what every electrode, lying or driven, can make
 * of that between two feet: nobody in reach then means nobody in any state. What falls, drives past or thunders hangs on nothing
 * that is switched, and what a crew can do about it only lessens it: it is asked about as things are. Where no stand passes, the states that were really reached are asked. Beside the argument stand the arrangements explored
 * (arrangements.ts): one in which stopping hurts is a counterexample.
 */
import { standing } from '../acts/presence.ts';
import { approach } from '../hazards/approach.ts';
import { drop } from '../hazards/drop.ts';
import { flooded } from '../hazards/flooded.ts';
import { step } from '../hazards/step.ts';
import type { Reach } from '../hazards/types.ts';
import type { Stand, World } from '../world/types.ts';
import type { Arrangements } from './arrangements.ts';
import { momentAt } from './extremes.ts';
import type { Means } from './peek.ts';
import { placedAt, standsOf, wayTo } from './places.ts';
import type { Reached } from './traps.ts';
import type { Claim } from './types.ts';

const standingAt = (world: World, stand: Stand): Reach => standing(placedAt(world, stand), 60);

/** Mechanisms that meet whoever only stands there and hang on what is switched; contact and flash take hands. */
const ofBeing = [approach, drop, step, flooded] as const;

/** Ground stands at which somebody could be reached, and by which hazards, if everything were alive. */
export function groundAtWorst(world: World): ReadonlyMap<string, readonly string[]> {
  const { lineVolts } = world.given.supply;
  // Two sources out of step stand at up to twice the volts to ground.
  const bare: World = { ...world, covers: [], parts: world.parts.map((part) => ({ ...part, supported: false })) };
  const moment = momentAt(bare, 2 * lineVolts);
  return new Map(
    standsOf(world)
      .filter(({ aloft }) => aloft === null)
      .map((stand) => {
        const reach = standingAt(world, stand);
        return [
          stand.id,
          ofBeing.flatMap((mechanism) => mechanism(reach, moment)).map(({ hazard }) => hazard),
        ] as const;
      })
      .filter(([, hazards]) => hazards.length > 0),
  );
}

/** Hazards that somebody meets by standing at the stand in this very World. */
export const standingMeets = (means: Means, world: World, stand: Stand): readonly string[] =>
  means.step.met(standingAt(world, stand), world, world).map(({ hazard }) => hazard);

/** How far the arrangements were explored, in words. */
const explored = ({ end, states, minutes, isAll }: Arrangements): string =>
  `${states} arrangements of metal, truck and trainee${isAll ? '' : ' with no grounds on'}, ${end === 'exhausted' ? 'all that there are' : `all under ${minutes} minutes among them`}`;

/** Whether one can stop safely from everywhere. */
export function stopsClaim(
  means: Means,
  scene: Reached,
  worlds: readonly World[],
  arranged: Arrangements | null,
): Claim {
  const argued = arguedClaim(means, scene, worlds);
  if (arranged === null || argued.acts.length > 0) return argued;
  const { stuck, end, isAll } = arranged;
  if (argued.outcome === 'fails' && !stuck?.isReached) return argued;
  if (stuck === null) {
    return {
      ...argued,
      outcome: end === 'exhausted' && isAll ? 'holds' : argued.outcome,
      words: `${argued.words} Explored: ${explored(arranged)}; in each there is a place on the ground where stopping exposes nobody.`,
    };
  }
  const found = `Explored: ${explored(arranged)}; in one of them stopping exposes somebody wherever it is done: ${stuck.hazards.join(', ')}.`;
  return stuck.isReached
    ? { id: 'stops', outcome: 'fails', words: found, acts: stuck.acts }
    : {
        id: 'stops',
        outcome: 'not finished',
        words: `${found} Whether a drill gets there with nobody struck was not found.`,
        acts: [],
      };
}

/** By the argument over all states, or the states really reached. */
function arguedClaim(means: Means, scene: Reached, worlds: readonly World[]): Claim {
  const worst = groundAtWorst(scene.world);
  const ground = standsOf(scene.world).filter(({ aloft }) => aloft === null);
  const free = ground.filter(({ id }) => !worst.has(id));
  const always = free.filter((stand) => worlds.every((world) => standingMeets(means, world, stand).length === 0));
  if (always.length > 0) {
    return {
      id: 'stops',
      outcome: 'holds',
      words: `From every state one can stop: coming down, walking away, guarding, telling and handing over are never refused, and at ${always.length} of ${ground.length} places on the ground nobody is in reach of anything, whatever is alive.`,
      acts: [],
    };
  }
  const caught = ground.every((stand) => standingMeets(means, scene.world, stand).length > 0);
  const reached = worlds.some((world) => ground.every((stand) => standingMeets(means, world, stand).length > 0));
  const [first] = ground;
  return {
    id: 'stops',
    outcome: caught || reached ? 'fails' : 'not finished',
    words: `There is no place on the ground where nobody would be in reach were everything alive${caught || reached ? ', and in a state that was reached there is none as things are' : `; as things are there was one in each of ${worlds.length} states looked at`}.`,
    acts: caught && first !== undefined ? [...scene.acts, ...(wayTo(scene.world, first.id) ?? [])] : [],
  };
}
