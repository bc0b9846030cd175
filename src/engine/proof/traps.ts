/**
 * Where a hazard bites: from each standing point, reached without doing anything else, every act on offer that puts
 * hands, stick or feet on something is looked at. Acts that only take time expose like waiting, tools that serve alike
 * expose alike, so one of each stands for all; a tool that fails its rule is looked at beside a good one. Soonest first,
 * until ten lessons are found, for what comes later can be none of the ten shortest; then on for the hazards asked about.
 * Hazards that do not bite at once are tried again after each single operation that changes the scene, and where one
 * lies on a device, at every step of bringing that into service: a tube taken out, a new link, the tube closed.
 */
import { kinds } from '../acts/kinds.ts';
import { type AnyOffer, possibleActs } from '../acts/possibleActs.ts';
import type { Act, ActName, OfferedAct } from '../acts/types.ts';
import { toolKind } from '../catalogue/tools.ts';
import { faulty } from '../hazards/readiness.ts';
import type { Hazard } from '../hazards/types.ts';
import { findPart, toolById } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { bestOf, stickOf } from './measures.ts';
import type { Means } from './peek.ts';
import { standsOf, wayTo } from './places.ts';
import { isOverdue, lossesMet, relyingOn } from './relied.ts';
import { wayToService } from './toService.ts';

/** A way into a hazard, not yet told. */
export interface Bite {
  readonly hazard: string;
  readonly minutes: number;
  readonly acts: readonly Act[];
  readonly label: string;
  /** Preconditions that failed. */
  readonly failed: readonly string[];
}

/** Traps that are told. */
export const MOST = 10;

/** What makes two traps the same lesson: the kind of act, what it meets, what failed. */
const lesson = ({ acts, hazard, failed }: Bite): string =>
  `${acts.at(-1)?.act} ${hazard.slice(0, hazard.indexOf(':'))} ${failed.join(' ')}`;

/** The soonest bite of each lesson, soonest first. */
export function lessonsOf(bites: ReadonlyMap<string, Bite>): readonly Bite[] {
  const sorted = [...bites.values()].sort(
    (a, b) => a.minutes - b.minutes || a.acts.length - b.acts.length || (a.hazard < b.hazard ? -1 : 1),
  );
  const first = new Map<string, Bite>();
  for (const bite of sorted) if (!first.has(lesson(bite))) first.set(lesson(bite), bite);
  return [...first.values()];
}

/** A World and the acts that led there. */
export interface Reached {
  readonly world: World;
  readonly acts: readonly Act[];
}

const idle = new Set<Act['act']>([
  'ask',
  'tell',
  'check-tool',
  'wear',
  'guard',
  'brief',
  'clearance',
  'engine',
  'listen',
  'park',
  'go',
]);
const quick = new Set<Act['act']>([
  'count-grounds',
  'everyone-clear',
  'tag',
  'hand-over',
  'close-out',
  'owner',
  'wait',
  'come-down',
]);

/** Tools that an act trusts. */
export const trusted = (act: Act): readonly string[] => [
  ...('stick' in act && act.stick !== null ? [act.stick] : []),
  ...('tool' in act ? [act.tool] : []),
];

const picked = new WeakMap<World['tools'], ReadonlySet<string>>();

/** Of tools that serve alike the best one, and all that fail a rule. */
function pickedTools(world: World): ReadonlySet<string> {
  const known = picked.get(world.tools);
  if (known !== undefined) return known;
  const best = world.tools.map(({ kind }) => bestOf(world, (other) => other === toolKind(kind))?.id);
  const bad = world.tools.filter((tool) => isOverdue(world, tool) || faulty(tool)).map(({ id }) => id);
  const ids = new Set([...best.flatMap((id) => id ?? []), ...bad]);
  picked.set(world.tools, ids);
  return ids;
}

/** Whether an offer has to do with what the hazards lie on. */
export function nearTo(hazards: readonly Hazard[]): (offer: AnyOffer) => boolean {
  const parts = new Set(hazards.map(({ part }) => part));
  // What two workers are for is done aloft, and whoever falls, falls from there.
  const isAloft = parts.has('second') || hazards.some(({ mechanism }) => mechanism === 'fall');
  return ({ about, act }) =>
    (about !== null && parts.has(about)) ||
    trusted(act).some((tool) => parts.has(tool)) ||
    (isAloft && act.act === 'aloft');
}

/** One tool for all that serve alike, and one that fails its rule. */
const standsForAll = (world: World, act: Act): boolean =>
  trusted(act).every((id) => toolById(world, id) === null || pickedTools(world).has(id));

/** Kinds that bring hands, stick or feet to something. */
const tried = (Object.keys(kinds) as readonly ActName[]).filter((name) => !idle.has(name) && !quick.has(name));

const isTried = (world: World, { act }: AnyOffer): boolean =>
  standsForAll(world, act) && !(act.act === 'ground' && act.points.length > 2);

/** The acts that lead from a World to each stand; ways that cannot be gone are left out. */
export function placesFrom(means: Means, { world, acts }: Reached): readonly Reached[] {
  return standsOf(world).flatMap((stand) => {
    const way = wayTo(world, stand.id);
    if (way === null) return [];
    let now = world;
    for (const act of way) {
      const next = means.peek(now, act);
      if (next.world === now) return [];
      now = next.world;
    }
    return [{ world: now, acts: [...acts, ...way] }];
  });
}

/** The first bite of each hazard by minutes, then by number of acts. */
export class Bites {
  readonly found = new Map<string, Bite>();

  note(bite: Bite): void {
    const known = this.found.get(bite.hazard);
    const isSooner =
      known === undefined ||
      bite.minutes < known.minutes ||
      (bite.minutes === known.minutes && bite.acts.length < known.acts.length);
    if (isSooner) this.found.set(bite.hazard, bite);
  }
}

/** An act that is looked at, and when it would be done. */
export interface Try {
  readonly from: Reached;
  readonly offer: OfferedAct;
  readonly minutes: number;
}

/** Acts that bring hands, stick or feet to something, of those that the caller wants. */
export const triesFrom = (from: Reached, about: (act: AnyOffer) => boolean = () => true): readonly Try[] =>
  possibleActs(from.world, tried, (offer) => about(offer) && isTried(from.world, offer)).map((offer) => ({
    from,
    offer,
    minutes: from.world.clock.minute + offer.minutes,
  }));

/** Looks at one act and notes what it meets. */
export function tryOne(means: Means, bites: Bites, { from: { world, acts }, offer, minutes }: Try): void {
  const peeked = means.peek(world, offer.act);
  const { obstacles } = peeked;
  const exposed = obstacles.filter(({ is }) => is === 'exposed').map(({ id }) => id);
  for (const hazard of [...exposed, ...lossesMet(world, offer.act, peeked)]) {
    bites.note({
      hazard,
      minutes,
      acts: [...acts, offer.act],
      label: offer.label,
      failed: obstacles.find(({ id }) => id === hazard)?.failed ?? [],
    });
  }
}

/** Each step of bringing a device into service, from one place, as far as nothing refuses it. */
function alongToService(means: Means, bites: Bites, from: Reached, id: string): void {
  let now = from;
  const part = findPart(now.world, id);
  for (const act of part === null ? [] : wayToService(part, stickOf(now.world))) {
    const text = JSON.stringify(act);
    const offer = possibleActs(now.world, [act.act], ({ act: other }) => JSON.stringify(other) === text)[0];
    if (offer === undefined || means.isSpent) return;
    tryOne(means, bites, { from: now, offer, minutes: now.world.clock.minute + offer.minutes });
    now = { world: means.peek(now.world, act).world, acts: [...now.acts, act] };
  }
}

const isLater = (a: Try, b: Try): boolean => a.minutes !== b.minutes || a.from.acts.length !== b.from.acts.length;

/**
 * Ways into hazards from the arrived scene: at once, then, for those asked about that are left, after one operation.
 */
export function bitesIn(means: Means, arrived: Reached, asked: readonly Hazard[]): ReadonlyMap<string, Bite> {
  const bites = new Bites();
  const places = placesFrom(means, arrived);
  const left = (): readonly Hazard[] => asked.filter(({ id }) => !bites.found.has(id));
  const tries = places
    .flatMap((place) => triesFrom(place))
    .sort((a, b) => a.minutes - b.minutes || a.from.acts.length - b.from.acts.length);
  const isEnough = (): boolean => lessonsOf(bites.found).length >= MOST;
  // Soonest first: what comes later than ten lessons is none of the ten shortest.
  let i = 0;
  for (; i < tries.length; i++) {
    const [before, each] = [tries[i - 1], tries[i] as Try];
    if (before !== undefined && isLater(before, each) && isEnough()) break;
    tryOne(means, bites, each);
  }
  // For the hazards asked about that are left, first what has to do with their parts and tools.
  const isNear = nearTo(left());
  const rest = tries.slice(i);
  for (const each of [...rest.filter(({ offer }) => isNear(offer)), ...rest.filter(({ offer }) => !isNear(offer))]) {
    if (left().length === 0) return bites.found;
    tryOne(means, bites, each);
  }
  if (left().length === 0) return bites.found;
  for (const place of places) {
    const operations = possibleActs(place.world, ['operate', 'owner']);
    for (const { act } of operations) {
      if (left().length === 0 || means.isSpent) break;
      const after = means.peek(place.world, act).world;
      const reached = { world: after, acts: [...place.acts, act] };
      const wanted = new Set(left().map(({ part }) => part));
      for (const next of placesFrom(means, reached)) {
        for (const each of triesFrom(next, ({ about }) => about !== null && wanted.has(about))) {
          tryOne(means, bites, each);
        }
      }
    }
  }
  for (const place of places) {
    for (const { part } of left()) alongToService(means, bites, place, part);
  }
  for (const hazard of left()) {
    for (const acts of relyingOn(arrived.world, hazard)) {
      const world = acts.reduce((now, act) => means.peek(now, act).world, arrived.world);
      const reached = { world, acts: [...arrived.acts, ...acts] };
      for (const next of placesFrom(means, reached)) {
        for (const each of triesFrom(next)) {
          if (!bites.found.has(hazard.id) && !means.isSpent) tryOne(means, bites, each);
        }
      }
    }
  }
  return bites.found;
}
