/**
 * Minutes of acts that every safe route to restored service contains, beside the survey: none of them is another, and acts
 * follow one another, so their minutes add up. What is counted:
 *
 * - The repairs without which a fault that can kill stays: on each part that which takes longest of the shortest for each
 *   fault, for one repair may mend two.
 * - Where one of these can be done from no place on the ground: going up and coming down, once; a briefing where being
 *   up there without one meets a fall, in the best of crews (extremes.ts).
 * - Where hands at one of these come near more metal of more than 600 V in ordinary service than the crew has covers, and
 *   with every device closed it is one with no electrode: what is owed to it (owed.ts), a clearance asked for, a tag, a
 *   test, its tester proved before and after, a set of two clamps on and off.
 * - For each device of the line without which something that the job names is not fed, though everything else is whole and
 *   closed: the shortest way to where it joins more than now. Closing only adds to what is fed.
 *
 * Left out: every step between places, waiting, dress and checks for work by stick.
 */
import { minutesOf, refusalOf } from '../acts/act.ts';
import { withTraineeAt } from '../acts/go.ts';
import { perClamp } from '../acts/ground.ts';
import { standing } from '../acts/presence.ts';
import { clampSetsOf, coversOf } from '../acts/toolsFor.ts';
import type { Act } from '../acts/types.ts';
import { briefingTopics } from '../catalogue/controls.ts';
import { faultKind } from '../catalogue/faults.ts';
import { repairKinds } from '../catalogue/repairs.ts';
import { toolKind } from '../catalogue/tools.ts';
import { netAt } from '../circuit/elementsOf.ts';
import { fall } from '../hazards/fall.ts';
import { isGrounded } from '../hazards/section.ts';
import { findPart, trainee } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { atBest, momentAt } from './extremes.ts';
import { unfed } from './goals.ts';
import { allClosed, joined, reachesOf } from './impossible.ts';
import { GROUNDED_FROM } from './owed.ts';
import type { Means } from './peek.ts';
import { placedAt, standsOf } from './places.ts';
import { minutesUntil } from './toService.ts';

type Repair = Extract<Act, { act: 'repair' }>;

interface Needed {
  readonly fault: string;
  /** Any of which mends it. */
  readonly by: readonly Repair[];
}

/** Faults that can kill and that repairs mend, on each part. */
const needed = (world: World, deadly: ReadonlySet<string>): readonly (readonly Needed[])[] =>
  world.parts
    .map((part) =>
      part.faults
        .filter(({ id, kind }) => deadly.has(id) && !faultKind(kind).benign)
        .map(({ id, kind }) => ({
          fault: id,
          by: repairKinds
            .filter(({ on, mends }) => on.includes(part.kind) && mends.includes(kind))
            .map((repair): Repair => ({ act: 'repair', part: part.id, repair: repair.id })),
        }))
        .filter(({ by }) => by.length > 0),
    )
    .filter((faults) => faults.length > 0);

const least = (list: readonly number[]): number => Math.min(...list);

const minutes = (world: World, repairs: readonly Repair[]): number =>
  least(repairs.map((repair) => minutesOf(world, repair)));

/** Refusals that come of where one stands. */
const ofPlace: readonly string[] = [
  'it is out of reach of the hand from here',
  'that is not here',
  'that is not at this pole',
];

/** Whether it can be done from no place on the ground, whatever state things are in. */
const isAloft = (world: World, repair: Repair): boolean =>
  standsOf(world)
    .filter(({ aloft }) => aloft === null)
    .every((stand) => ofPlace.includes(refusalOf(placedAt(world, stand), repair) ?? ''));

const lifts = (world: World): readonly ('hooks' | 'bucket')[] =>
  (['hooks', 'bucket'] as const).filter((by) => world.tools.some(({ kind }) => toolKind(kind).lifts === by));

/** Whether being at a place aloft meets a fall in the World, by every lift there is. */
function falls(world: World): boolean {
  const dead = momentAt(world, 0);
  return world.stands.every(
    ({ id, aloft }) =>
      aloft === null || lifts(world).every((by) => fall(standing(withTraineeAt(world, id, by), 60), dead).length > 0),
  );
}

const briefed = (world: World, topics: readonly string[]): World => ({
  ...world,
  paper: {
    ...world.paper,
    briefings: [{ minute: world.clock.minute, topics, heard: world.people.map(({ id }) => id), rescue: true }],
  },
});

/** The World with every pole looked at and sounded. */
function polesChecked(world: World): World {
  const { minute } = world.clock;
  const poles = world.parts.filter(({ id, pole }) => pole !== null && id === `${pole}.pole`);
  const looks = poles.map(({ id }) => ({ part: id, stand: '', aid: 'eyes' as const, minute, seen: [] }));
  const tests = poles.map(({ id }) => ({ on: id, test: 'sound', result: '', sign: null, minute }));
  return { ...world, knowledge: { ...world.knowledge, looks, tests: [...world.knowledge.tests, ...tests] } };
}

/** Minutes of going up, of what being up there asks, of coming down. */
function aloftMinutes(world: World, best: World): number {
  const up = least(lifts(world).map((by) => minutesOf(world, { act: 'aloft', pole: '', by, zone: 'work' })));
  const down = minutesOf(world, { act: 'come-down' });
  const here = best.people.map((person) => (person.at === null ? { ...person, at: trainee(best).at } : person));
  const there = polesChecked({ ...best, people: here });
  const all = briefed(there, briefingTopics);
  // A fall that is met all the same hangs on none of them.
  if (falls(all)) return up + down;
  const without = (topic: string): World =>
    briefed(
      there,
      briefingTopics.filter((each) => each !== topic),
    );
  const asksAll = briefingTopics.every((topic) => falls(without(topic)));
  const asksAny = falls({ ...there, paper: { ...there.paper, briefings: [] } });
  return up + down + (asksAll ? briefingTopics.length : asksAny ? 1 : 0);
}

/** Whether more metal is owed a ground, from every place where it can be done, than can be covered. */
function isOwed(means: Means, world: World, repair: Repair): boolean {
  const best: World = { ...atBest(world, repair), covers: [] };
  const covers = coversOf(world).length;
  const closed = allClosed(best);
  const from = reachesOf(means, best, repair);
  return (
    from.length > 0 &&
    from.every(({ of }) => {
      const points = of
        .flatMap((reach) => means.service.metBy(reach, best))
        .filter(({ point, volts }) => volts > GROUNDED_FROM && !isGrounded(closed, point))
        .map(({ point }) => netAt(world, point));
      return new Set(points).size > covers;
    })
  );
}

/** Asked for, tagged, tested, proved before and after, two clamps on and off. */
const owedMinutes = (world: World): number => {
  if (clampSetsOf(world).length === 0) return 0;
  const proved = minutesOf(world, { act: 'check-tool', tool: '', check: 'self-test' });
  return (
    minutesOf(world, { act: 'clearance', step: 'request', device: '' }) +
    minutesOf(world, { act: 'tag', part: '', on: true }) +
    minutesOf(world, { act: 'test', point: '', tool: '', stick: null }) +
    2 * proved +
    4 * perClamp
  );
};

/** Minutes of bringing in what is not, of devices without which something named stays out. */
function devicesMinutes(world: World, mended: ReadonlySet<string>): number {
  const whole: World = {
    ...allClosed(world),
    parts: allClosed(world).parts.map((part) => ({ ...part, faults: [] })),
  };
  if (unfed(whole).length > 0) return 0;
  return world.parts
    .filter((part) => part.pole !== null && part.premises === null && !mended.has(part.id))
    .map((part) => {
      const without = {
        ...whole,
        parts: whole.parts.map((each) => (each.id === part.id ? { ...part, faults: [] } : each)),
      };
      if (joined(part) >= joined(findPart(whole, part.id) ?? part) || unfed(without).length === 0) return 0;
      const found = minutesUntil(part, (each) => joined(each) > joined(part));
      return Number.isFinite(found) ? found : 0;
    })
    .reduce((sum, each) => sum + each, 0);
}

/** Their sum, for a World just surveyed. */
export function landmarkMinutes(means: Means, world: World, deadly: ReadonlySet<string>): number {
  const all = needed(world, deadly);
  const repairing = all
    .map((faults) => Math.max(...faults.map(({ by }) => minutes(world, by))))
    .reduce((sum, each) => sum + each, 0);
  const each = all.flat().map(({ by }) => by);
  const up = each.find((by) => by.every((repair) => isAloft(world, repair)));
  const best = up?.[0] === undefined ? null : atBest(world, up[0]);
  const aloft = best === null ? 0 : aloftMinutes(world, best);
  const owed = each.some((by) => by.every((repair) => isOwed(means, world, repair))) ? owedMinutes(world) : 0;
  return repairing + aloft + owed + devicesMinutes(world, new Set(each.flat().map(({ part }) => part)));
}
