/**
 * Minutes of acts that every safe route to restored service contains, beside the survey: none of them is another, and acts
 * follow one another, so their minutes add up. What is counted:
 *
 * - What is still to be done (toDo.ts): repairs, devices brought in, telling of what stays.
 * - Where one of the repairs can be done from no place on the ground: going up and coming down, once; a briefing where being
 *   up there without one meets a fall, in the best of crews (extremes.ts).
 * - Where hands at one of the repairs come near more metal of more than 600 V in ordinary service than the crew has covers, and
 *   with every device closed it is one with no electrode: what is owed to it (owed.ts), a clearance asked for, a tag, a
 *   test, its tester proved before and after, a set of two clamps on and off.
 *
 * Left out: every step between places, waiting, dress and checks for work by stick.
 */
import { minutesOf } from '../acts/act.ts';
import { withTraineeAt } from '../acts/go.ts';
import { perClamp } from '../acts/ground.ts';
import { standing } from '../acts/presence.ts';
import { clampSetsOf, coversOf } from '../acts/toolsFor.ts';
import { briefingTopics } from '../catalogue/controls.ts';
import { toolKind } from '../catalogue/tools.ts';
import { netAt } from '../circuit/elementsOf.ts';
import { fall } from '../hazards/fall.ts';
import { isGrounded } from '../hazards/section.ts';
import { trainee } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { atBest, briefed, momentAt, polesChecked } from './extremes.ts';
import { allClosed, reachesOf } from './impossible.ts';
import { GROUNDED_FROM } from './owed.ts';
import type { Means } from './peek.ts';
import { devicesMinutes, devicesToDo, isAloft, needed, type Repair, repairingMinutes, staysDeadly } from './toDo.ts';

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

/** Minutes of going up, of what being up there asks, of coming down. */
function aloftMinutes(world: World, best: World): number {
  const up = Math.min(...lifts(world).map((by) => minutesOf(world, { act: 'aloft', pole: '', by, zone: 'work' })));
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

/** Their sum, for a World just surveyed. */
export function landmarkMinutes(means: Means, world: World, deadly: ReadonlySet<string>): number {
  const each = needed(world, deadly)
    .flat()
    .map(({ by }) => by);
  const up = each.find((by) => by.every((repair) => isAloft(world, repair)));
  const best = up?.[0] === undefined ? null : atBest(world, up[0]);
  const aloft = best === null ? 0 : aloftMinutes(world, best);
  const owed = each.some((by) => by.every((repair) => isOwed(means, world, repair))) ? owedMinutes(world) : 0;
  const telling = staysDeadly(world, deadly) ? minutesOf(world, { act: 'tell', who: '', what: '' }) : 0;
  const devices = devicesMinutes(devicesToDo(world, deadly), world);
  return repairingMinutes(world, deadly) + aloft + owed + devices + telling;
}
