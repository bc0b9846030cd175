/** One trainee takes one drill: the habit's acts go through the same `act` as anybody's, and what it may know goes back to it. */
import { act } from '../acts/act.ts';
import { newLog } from '../acts/log.ts';
import { possibleActs } from '../acts/possibleActs.ts';
import type { Replay, Step } from '../acts/types.ts';
import { nextInteger, nextUniform, seedFrom } from '../math/random.ts';
import type { World } from '../world/types.ts';
import type { Dice, Habit, Scene, Told } from './types.ts';

/** A policy that goes on and on is cut off here; the longest of ours needs some hundreds. */
export const mostActs = 3000;

/** The World without what only the engine knows. */
export const sceneOf = (world: World): Scene => {
  const { clock, site, truck, stands, people, guards, orders, knowledge, paper, ended } = world;
  return {
    clock,
    site: { skyLux: site.skyLux, visibilityM: site.visibilityM, wetness: site.wetness, traffic: site.traffic },
    truck,
    stands,
    guards,
    orders,
    paper,
    ended,
    people: people.map(({ id, role, name, at, premises }) => ({ id, role, name, at, premises })),
    knowledge: { readings: knowledge.readings, tests: knowledge.tests.map(({ on, result }) => ({ on, result })) },
    parts: world.parts.map(({ id, kind, name, pole, premises, at, end }) => ({
      id,
      kind,
      name,
      pole,
      premises,
      at,
      end,
    })),
    tools: world.tools.map(({ id, kind, name }) => ({ id, kind, name })),
  };
};

/** Luck from a seed. */
export const diceFrom = (seed: string): Dice => {
  let state = seedFrom(seed);
  const whole = (high: number): number => {
    const [value, next] = nextInteger(state, 0, high);
    state = next;
    return value;
  };
  return {
    chance: (share) => {
      const [value, next] = nextUniform(state);
      state = next;
      return value < share;
    },
    pick: (list) => {
      const found = list[whole(list.length - 1)];
      if (found === undefined) throw new Error('nothing to pick from');
      return found;
    },
    shuffled: (list) => {
      const left = [...list];
      return list.flatMap(() => left.splice(whole(left.length - 1), 1));
    },
  };
};

/** The drill as it went; acts that were refused are not in it, and its entries carry no hashes. */
export const takeDrill = (start: World, habit: Pick<Habit, 'does'>, seed: string): Replay => {
  const steps: Step[] = [];
  let world = start;
  let scene = sceneOf(world);
  const doing = habit.does({ scene: () => scene, offers: () => possibleActs(world), dice: diceFrom(seed) });
  let told: Told | undefined;
  for (let count = 0; count < mostActs && world.ended === null; count++) {
    const next = told === undefined ? doing.next() : doing.next(told);
    if (next.done === true) break;
    const result = act(world, next.value);
    if (!result.ok) {
      told = { done: false, events: [], scene };
      continue;
    }
    const { world: after, events, reach, exposures } = result;
    const entry = { act: next.value, minute: after.clock.minute, hash: '' };
    steps.push({ entry, before: world, after, events, reach, exposures });
    world = after;
    scene = sceneOf(world);
    told = { done: true, events, scene };
  }
  const log = { ...newLog(start, 1), entries: steps.map(({ entry }) => entry) };
  return { log, start, steps, end: world };
};
