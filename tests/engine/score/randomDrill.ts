/** Drills of random acts, from what is lying about in a World rather than what is on offer: most are foolish, many refused. */
import { act } from '../../../src/engine/acts/act.ts';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import type { Act, Replay, Step } from '../../../src/engine/acts/types.ts';
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { conditions } from '../../../src/engine/catalogue/conditions.ts';
import { controlKinds } from '../../../src/engine/catalogue/controls.ts';
import { repairKinds } from '../../../src/engine/catalogue/repairs.ts';
import { nextInteger, nextUniform, seedFrom } from '../../../src/engine/math/random.ts';
import type { Score } from '../../../src/engine/score/types.ts';
import { pointsOf } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';

interface Dice {
  pick<T>(list: readonly T[]): T;
  chance(share: number): boolean;
}

export const diceOf = (seed: number): Dice => {
  let state = seedFrom(seed);
  return {
    pick: (list) => {
      const [at, next] = nextInteger(state, 0, list.length - 1);
      state = next;
      const found = list[at];
      if (found === undefined) throw new Error('nothing to pick from');
      return found;
    },
    chance: (share) => {
      const [value, next] = nextUniform(state);
      state = next;
      return value < share;
    },
  };
};

const kinds: readonly ((world: World, dice: Dice) => Act)[] = [
  (world, { pick }) => ({ act: 'go', to: pick(world.stands).id }),
  (world, { pick }) => ({ act: 'look', part: pick(world.parts).id, aid: pick(['eyes', 'lamp', 'glass'] as const) }),
  () => ({ act: 'listen' }),
  (world, { pick }) => {
    const person = pick(world.people.filter(({ says }) => Object.keys(says).length > 0));
    return { act: 'ask', who: person.id, about: pick(Object.keys(person.says)) };
  },
  (_, { pick }) => ({ act: 'guard', with: pick(['chocks', 'cones', 'keep-out'] as const) }),
  (_, { pick }) => ({ act: 'tell', who: 'dispatcher', what: pick(['backfeed', 'cause-found', 'public-danger']) }),
  (world, { pick }) => ({
    act: 'check-tool',
    tool: pick(world.tools).id,
    check: pick(['read-tag', 'wipe', 'self-test', 'air-test', 'inspect'] as const),
  }),
  (world, { pick, chance }) => ({ act: 'wear', tool: pick(world.tools).id, on: chance(0.8) }),
  (world, { pick }) => ({ act: 'sound', pole: pick(world.parts).pole ?? 'p1' }),
  (world, { pick, chance }) => ({
    act: 'test',
    point: pick(pointsOf(world)),
    tool: pick(world.tools).id,
    stick: chance(0.6) ? pick(world.tools).id : null,
  }),
  (world, { pick, chance }) => {
    const part = pick(world.parts.filter(({ kind }) => componentKind(kind).operations.length > 0));
    const { id, by } = pick(componentKind(part.kind).operations);
    return by === 'owner'
      ? { act: 'owner', part: part.id, operation: id }
      : {
          act: 'operate',
          part: part.id,
          operation: id,
          stick: chance(0.7) ? pick(world.tools.filter(({ kind }) => kind === 'stick')).id : null,
        };
  },
  (world, { pick, chance }) => ({ act: 'tag', part: pick(world.parts).id, on: chance(0.8) }),
  (world, { pick }) => ({
    act: 'clearance',
    step: pick(['request', 'release'] as const),
    device: pick(world.parts).id,
  }),
  (world, { pick }) => ({
    act: 'ground',
    tool: pick(world.tools).id,
    points: [pick(pointsOf(world)), pick(pointsOf(world))],
    stick: pick([...world.tools.map(({ id }) => id), null]),
  }),
  (world, { pick }) => ({
    act: 'aloft',
    pole: pick(world.parts).pole ?? 'p2',
    by: pick(['hooks', 'bucket'] as const),
    zone: pick(['below', 'work'] as const),
  }),
  () => ({ act: 'come-down' }),
  (world, { pick, chance }) => ({ act: 'support', part: pick(world.parts).id, on: chance(0.7) }),
  (world, { pick, chance }) => ({
    act: 'cover',
    part: pick(world.parts).id,
    tool: pick(world.tools).id,
    on: chance(0.8),
  }),
  (world, { pick }) => {
    const kind = pick(repairKinds);
    return {
      act: 'repair',
      part: pick([...world.parts.filter((part) => kind.on.includes(part.kind)), ...world.parts]).id,
      repair: kind.id,
    };
  },
  (world, { pick }) => ({ act: 'touch', point: pick(pointsOf(world)) }),
  (world, { pick, chance }) => ({
    act: 'call-finding',
    on: pick(world.parts).id,
    condition: pick(conditions).id,
    ...(chance(0.5) ? { confidence: pick([0.55, 0.7, 0.85, 0.95]) } : {}),
  }),
  (_, { pick }) => ({ act: 'plan', finding: null, control: pick(controlKinds).id, by: 'trainee' }),
  (_, { chance }) => ({ act: 'brief', topics: ['hazards'], rescue: chance(0.5) }),
  (_, { pick }) => ({ act: 'wait', minutes: pick([1, 5, 15]) }),
  () => ({ act: 'hand-over' }),
  () => ({ act: 'close-out' }),
];

/** A drill of so many tries; refused ones are left out of its log. */
export const randomDrill = (start: World, seed: number, tries: number): Replay => {
  const dice = diceOf(seed);
  let replay: Replay = { log: newLog(start, 1), start, steps: [], end: start };
  const attempt = (intent: Act): void => {
    const result = act(replay.end, intent);
    if (!result.ok) return;
    const { world: after, events, reach, exposures } = result;
    const log = appendEntry(replay.log, intent, after);
    const entry = log.entries.at(-1);
    if (entry === undefined) throw new Error('an appended log is empty');
    const step: Step = { entry, before: replay.end, after, events, reach, exposures };
    replay = { ...replay, log, steps: [...replay.steps, step], end: after };
  };
  attempt({ act: 'acknowledge' });
  if (dice.chance(0.95)) attempt({ act: 'park', at: dice.pick(['clear', 'under-line'] as const) });
  for (let i = 0; i < tries; i++) attempt(dice.pick(kinds)(replay.end, dice));
  return replay;
};

/** What is not as it should be in a score; empty if all is well. */
export const wellFormed = (score: Score): readonly string[] => [
  ...score.parts.flatMap(({ name, value }) =>
    value === null || (value >= 0 && value <= 1) ? [] : [`${name} is ${value}`],
  ),
  ...score.parts.flatMap(({ name, numbers }) =>
    Object.entries(numbers).flatMap(([key, value]) =>
      value === null || Number.isFinite(value) ? [] : [`${name}.${key} is ${value}`],
    ),
  ),
  ...(score.reasons.length > 0 ? [] : ['no reason']),
  ...(score.exposures.some(({ potentiallyFatal }) => potentiallyFatal) && score.verdict !== 'fail'
    ? ['a fatal exposure did not fail']
    : []),
];
