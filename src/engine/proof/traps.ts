/**
 * Where a hazard bites: from each standing point, reached without doing anything else, every act on offer that puts
 * hands, stick or feet on something is looked at. Acts that only take time expose like waiting, tools that serve alike
 * expose alike, so one of each stands for all; a tool that fails its rule is looked at beside a good one. Hazards that
 * do not bite at once are tried again after each single operation that changes the scene.
 */
import { kinds } from '../acts/kinds.ts';
import { type AnyOffer, possibleActs } from '../acts/possibleActs.ts';
import type { Act, ActName } from '../acts/types.ts';
import { toolKind } from '../catalogue/tools.ts';
import { faulty } from '../hazards/readiness.ts';
import type { Hazard } from '../hazards/types.ts';
import { toolById } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { bestOf } from './measures.ts';
import type { Means } from './peek.ts';
import { standsOf, wayTo } from './places.ts';
import { isOverdue, lossesMet, relyingOn } from './relied.ts';

/** A way into a hazard, not yet told. */
export interface Bite {
  readonly hazard: string;
  readonly minutes: number;
  readonly acts: readonly Act[];
  readonly label: string;
  /** Preconditions that failed. */
  readonly failed: readonly string[];
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

/** One tool for all that serve alike, and one that fails its rule. */
function standsForAll(world: World, act: Act): boolean {
  const ids = [...('stick' in act && act.stick !== null ? [act.stick] : []), ...('tool' in act ? [act.tool] : [])];
  return ids.every((id) => {
    const tool = toolById(world, id);
    if (tool === null) return true;
    const kind = toolKind(tool.kind);
    const best = bestOf(world, (other) => other === kind);
    return best?.id === id || isOverdue(world, tool) || faulty(tool);
  });
}

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
class Bites {
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

function tryAll(means: Means, bites: Bites, { world, acts }: Reached, about?: (act: AnyOffer) => boolean): void {
  const isWanted = (offer: AnyOffer): boolean => (about?.(offer) ?? true) && isTried(world, offer);
  for (const offer of possibleActs(world, tried, isWanted)) {
    const peeked = means.peek(world, offer.act);
    const { obstacles } = peeked;
    const exposed = obstacles.filter(({ is }) => is === 'exposed').map(({ id }) => id);
    for (const hazard of [...exposed, ...lossesMet(world, offer.act, peeked)]) {
      bites.note({
        hazard,
        minutes: world.clock.minute + offer.minutes,
        acts: [...acts, offer.act],
        label: offer.label,
        failed: obstacles.find(({ id }) => id === hazard)?.failed ?? [],
      });
    }
  }
}

/** Ways into hazards from the arrived scene: at once, then, for those asked about that are left, after one operation. */
export function bitesIn(means: Means, arrived: Reached, asked: readonly Hazard[]): ReadonlyMap<string, Bite> {
  const bites = new Bites();
  const places = placesFrom(means, arrived);
  for (const place of places) tryAll(means, bites, place);
  const left = (): readonly Hazard[] => asked.filter(({ id }) => !bites.found.has(id));
  if (left().length === 0) return bites.found;
  for (const place of places) {
    const operations = possibleActs(place.world, ['operate', 'owner']);
    for (const { act } of operations) {
      if (left().length === 0 || means.isSpent) break;
      const after = means.peek(place.world, act).world;
      const reached = { world: after, acts: [...place.acts, act] };
      const wanted = new Set(left().map(({ part }) => part));
      for (const next of placesFrom(means, reached)) {
        tryAll(means, bites, next, ({ about }) => about !== null && wanted.has(about));
      }
    }
  }
  for (const hazard of left()) {
    for (const acts of relyingOn(arrived.world, hazard)) {
      const world = acts.reduce((now, act) => means.peek(now, act).world, arrived.world);
      const reached = { world, acts: [...arrived.acts, ...acts] };
      for (const next of placesFrom(means, reached)) {
        if (!bites.found.has(hazard.id) && !means.isSpent) tryAll(means, bites, next);
      }
    }
  }
  return bites.found;
}
