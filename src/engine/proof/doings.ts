/**
 * A drill's acts as far as they bear on whether it can go on unharmed, and the World in which all that they leave out has
 * been done at no cost. For bounds from below (careful.ts): each drill has its double, in which an act that is left out is
 * waited for instead, and whoever does the rest is exposed to nothing that the drill was not. Left out, and why nobody is
 * the worse without:
 *
 * - Looking, listening, asking, testing, sounding, counting, briefing, calls and plans change what is known and written.
 *   Of that, exposures ask only whether poles were checked and the work was briefed: both hold from the start.
 * - Dress: the strongest of each is worn, as long as it is sound and in date (extremes.ts); nothing is met by reason of it.
 * - Checks of tools: a stick's wipe and the air test of gloves are taken, the others were done. Where tools may get wet
 *   these were done as well, and last.
 * - Clearances, and tags that hold only together with one: held from the start, on the right circuit. Tags are not taken
 *   off; they forbid nothing.
 * - Words that nobody acts on. Whoever of the crew is on the way is there, where nothing can fall from the work on them.
 * - Guards and people where nobody asks for them: cones, barrier and flagger where no traffic passes; what holds off a lift
 *   where there is none; where other people stand, where nothing is done by which they are hurt.
 * - Repairs that mend nothing laid, set nothing and take no tie off, and those that can be done from aloft alone where
 *   nothing gets anybody up.
 * - Weather and events after the last minute that is asked about.
 */
import { isolating } from '../acts/switching.ts';
import { holdTag } from '../acts/tag.ts';
import { dogsOut, shutIn } from '../acts/talk.ts';
import { supportsOf } from '../acts/toolsFor.ts';
import type { Act, ActName } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { briefingTopics } from '../catalogue/controls.ts';
import { faultKind } from '../catalogue/faults.ts';
import { repairKinds } from '../catalogue/repairs.ts';
import { toolKind } from '../catalogue/tools.ts';
import { findPart, toolById } from '../world/edit.ts';
import type { Part, Person, Tool, World } from '../world/types.ts';
import { moving } from './arrangements.ts';
import { briefed, dressed, polesChecked, ready } from './extremes.ts';
import { timingOf } from './learned/reduced.ts';
import { liftOf, standsOf } from './places.ts';
import { repairsThatDo } from './toDo.ts';

/** Checks without which a barrier does not count. */
const counting = ['wipe', 'air-test'];

const unchecked = (tool: Tool): Tool => ({
  ...ready(tool),
  wet: tool.wet,
  checks: Object.fromEntries(Object.entries(ready(tool).checks).filter(([check]) => !counting.includes(check))),
});

/** Whether the part can only be held by a tag and a clearance together. */
const isHeldByBoth = (part: Part): boolean =>
  isolating(part) || componentKind(part.kind).othersMay.some(({ unless }) => unless.includes('clearance-held'));

const isCrewComing = ({ role, at, arrivesAt }: Person): boolean =>
  at === null && arrivesAt !== null && ['second', 'foreman', 'flagger'].includes(role);

export interface Doings {
  /** The World with all done that is left out. */
  readonly world: World;
  readonly kinds: readonly ActName[];
  readonly leavesOut: (act: Act) => boolean;
  /** Tools get wet again, so that their checks are not told apart. */
  readonly wets: boolean;
}

/** Of a World in which the call has just been taken, for drills of no more minutes than these. */
export function doingsOf(world: World, most: number): Doings {
  const lift = liftOf(world) !== null;
  const bears = repairsThatDo(world);
  const works = world.parts.some((part) =>
    repairKinds.some(
      ({ id, on, inHand }) =>
        on.includes(part.kind) && inHand === undefined && bears({ act: 'repair', part: part.id, repair: id }),
    ),
  );
  const supports = supportsOf(world).length > 0;
  const others = lift || works || supports;
  const site = { ...world.site, weather: world.site.weather.filter(({ atMinute }) => atMinute <= most) };
  const events = world.given.events.filter(({ atMinute }) => atMinute <= most);
  const foot = standsOf(world).find(({ aloft }) => aloft === null)?.id ?? null;
  const people = world.people.map((person) => ({
    ...person,
    ...(!others && isCrewComing(person) ? { at: foot, arrivesAt: null } : {}),
    faults: person.faults.filter(({ kind }) => !faultKind(kind).person?.misnames),
  }));
  const bare: World = { ...world, site, people, given: { ...world.given, events } };
  const { wets } = timingOf(bare);
  const best = dressed(briefed(polesChecked(bare), briefingTopics));
  const traffic = [site, ...site.weather].some(({ traffic: passes = 'none' }) => passes !== 'none');
  const isPublic = people.some(({ role }) => role === 'bystander' || role === 'child');
  const guards = {
    chocks: false,
    cones: traffic || lift,
    barrier: traffic,
    'truck-ground': lift,
    'keep-out': lift || (isPublic && others),
  };
  const words = [
    ...(world.parts.some(({ state }) => state.reclosing !== undefined) ? ['block-reclosing', 'unblock-reclosing'] : []),
    ...(dogsOut(world) ? [shutIn] : []),
    ...(events.some(({ what }) => what === 'starts-set') ? ['own-source', 'keep-set-off'] : []),
  ];
  const holds = (id: string): boolean => {
    const part = findPart(world, id);
    return (
      part !== null &&
      !isHeldByBoth(part) &&
      componentKind(part.kind).othersMay.some(({ unless }) => unless.includes('tagged'))
    );
  };
  return {
    world: {
      ...best,
      truck: { ...best.truck, engine: false },
      orders: { ...best.orders, clearance: { device: '', state: 'held', minute: 0 } },
      parts: best.parts.map((part) => (isHeldByBoth(part) ? { ...part, tags: [holdTag] } : part)),
      tools: best.tools.map(wets ? ready : unchecked),
    },
    kinds: [
      ...moving.filter((name) => (name === 'support' ? supports : (name !== 'aloft' && name !== 'come-down') || lift)),
      'guard',
      'send',
      'assign',
      'check-tool',
      'tag',
      'cover',
      'close-out',
    ],
    wets,
    leavesOut: (act) => {
      switch (act.act) {
        case 'wait':
          return act.minutes > 1;
        case 'tell':
          return !words.includes(act.what);
        case 'check-tool':
          return !counting.includes(act.check) || toolKind(toolById(world, act.tool)?.kind ?? '').barrier === undefined;
        case 'repair':
          return !bears(act);
        case 'tag':
          return !act.on || !holds(act.part);
        case 'guard':
          return !guards[act.with];
        case 'send':
          return !others;
        case 'assign':
          return act.task === 'watch' || !traffic;
        default:
          return false;
      }
    },
  };
}
