/**
 * The ways into hazards that a short proof looks for: one a hazard that has a cause, not the soonest of all lessons. Only
 * acts that have to do with the parts, tools and people of the hazards left, place by place as one gets to them; then what
 * is put on or asked for and relied on; then acts passed over before; then one operation, for hazards that lie on metal.
 * What is not found is claimed 'not finished', as in a full proof.
 */
import { type AnyOffer, possibleActs } from '../acts/possibleActs.ts';
import type { Hazard } from '../hazards/types.ts';
import { findPart } from '../world/edit.ts';
import type { Means } from './peek.ts';
import { relyingOn } from './relied.ts';
import { type Bite, Bites, nearTo, placesFrom, type Reached, type Try, triesFrom, tryOne } from './traps.ts';

type Wanted = (hazards: readonly Hazard[]) => (offer: AnyOffer) => boolean;

/** Hazards still looked for. */
class Search {
  readonly bites = new Bites();
  private readonly means: Means;
  private readonly asked: readonly Hazard[];

  constructor(means: Means, asked: readonly Hazard[]) {
    this.means = means;
    this.asked = asked;
  }

  get left(): readonly Hazard[] {
    return this.asked.filter(({ id }) => !this.bites.found.has(id));
  }

  /** Looks at acts, those wanted for what is left, until nothing is; gives those that were passed over. */
  private through(tries: readonly Try[], left: () => readonly Hazard[], wanted: Wanted): readonly Try[] {
    let open = left();
    let isWanted = wanted(open);
    return tries.filter((each) => {
      if (open.length === 0 || !isWanted(each.offer)) return true;
      tryOne(this.means, this.bites, each);
      const now = left();
      if (now.length < open.length) isWanted = wanted(now);
      open = now;
      return false;
    });
  }

  /** The same at places, soonest place first; gives what was passed over there, which may meet what it is not about. */
  at(places: readonly Reached[], left: () => readonly Hazard[], wanted: Wanted): readonly (readonly Try[])[] {
    const all = wanted(left());
    return places.map((place) => (left().length === 0 ? [] : this.through(triesFrom(place, all), left, wanted)));
  }

  /** Looks at what was passed over. */
  again(over: readonly (readonly Try[])[], left: () => readonly Hazard[]): void {
    for (const tries of over) this.through(tries, left, () => () => true);
  }
}

const bySoonest = (a: Reached, b: Reached): number =>
  a.world.clock.minute - b.world.clock.minute || a.acts.length - b.acts.length;

/** Operations that are possible at places, each from the place where it is possible soonest. */
function operationsFrom(means: Means, places: readonly Reached[]): readonly Reached[] {
  const soonest = new Map<string, Reached>();
  for (const { world, acts } of places) {
    for (const { act } of possibleActs(world, ['operate', 'owner'])) {
      const text = JSON.stringify(act);
      if (!soonest.has(text)) soonest.set(text, { world: means.peek(world, act).world, acts: [...acts, act] });
    }
  }
  return [...soonest.values()];
}

const aboutThem: Wanted = (hazards) => {
  const parts = new Set(hazards.map(({ part }) => part));
  return ({ about }) => about !== null && parts.has(about);
};

/** A way into each hazard asked about, where one is found; `isOver` says which need no search past what is possible at once. */
export function bitesInShort(
  means: Means,
  arrived: Reached,
  asked: readonly Hazard[],
  isOver: (hazard: Hazard) => boolean,
): ReadonlyMap<string, Bite> {
  const search = new Search(means, asked);
  const places = [...placesFrom(means, arrived)].sort(bySoonest);
  const over = search.at(places, () => search.left, nearTo);
  const open = (): readonly Hazard[] => (means.isSpent ? [] : search.left.filter((hazard) => !isOver(hazard)));
  for (const hazard of open()) {
    for (const acts of relyingOn(arrived.world, hazard)) {
      const isLeft = (): readonly Hazard[] => open().filter((each) => each === hazard);
      if (isLeft().length === 0) break;
      const world = acts.reduce((now, act) => means.peek(now, act).world, arrived.world);
      const relying = placesFrom(means, { world, acts: [...arrived.acts, ...acts] });
      search.at(relying, isLeft, () => () => true);
    }
  }
  search.again(over, () => search.left);
  const onMetal = (): readonly Hazard[] => open().filter(({ part }) => findPart(arrived.world, part) !== null);
  if (onMetal().length === 0) return search.bites.found;
  for (const operated of operationsFrom(means, places)) {
    if (onMetal().length === 0) break;
    search.again(search.at(placesFrom(means, operated), onMetal, aboutThem), onMetal);
  }
  return search.bites.found;
}
