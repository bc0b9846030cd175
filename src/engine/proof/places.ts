/**
 * Where acts are done, and how one gets there. A deed is an act with its standing point; the walking, climbing and
 * coming down between two deeds follow from that, so that deeds can be left out or moved without mending the way.
 */

import { refusalOf } from '../acts/act.ts';
import { standBelow } from '../acts/aloft.ts';
import { withTraineeAt } from '../acts/go.ts';
import { standHere } from '../acts/presence.ts';
import type { Act } from '../acts/types.ts';
import { toolKind } from '../catalogue/tools.ts';
import { standById } from '../world/edit.ts';
import type { Stand, World } from '../world/types.ts';

/** An act and the standing point it is done from; null: from wherever one is. */
export interface Deed {
  readonly act: Act;
  readonly at: string | null;
}

type Lift = 'hooks' | 'bucket';

/** How the crew gets up: by bucket where there is one. */
export function liftOf(world: World): Lift | null {
  const has = (lift: Lift): boolean => world.tools.some(({ kind }) => toolKind(kind).lifts === lift);
  return has('bucket') ? 'bucket' : has('hooks') ? 'hooks' : null;
}

const placed = new WeakMap<World, Map<string, World>>();

/** The World with the trainee set down at a stand, for asking what could be done from there. */
export function placedAt(world: World, stand: Stand): World {
  if (standHere(world)?.id === stand.id) return world;
  const worlds = placed.get(world) ?? new Map<string, World>();
  placed.set(world, worlds);
  const known = worlds.get(stand.id);
  if (known !== undefined) return known;
  const made = withTraineeAt(world, stand.id, stand.aloft === null ? null : liftOf(world));
  worlds.set(stand.id, made);
  return made;
}

const rank = ({ aloft }: Stand): number => (aloft === null ? 0 : aloft.zone === 'below' ? 1 : 2);

const order = new WeakMap<World['stands'], readonly Stand[]>();

/** Stands that somebody can get to: the ground first, then below the work, then at it. */
export function standsOf(world: World): readonly Stand[] {
  const known = order.get(world.stands);
  if (known !== undefined) return known;
  const able = world.stands.filter(({ aloft }) => aloft === null || liftOf(world) !== null);
  const sorted = [...able].sort((a, b) => rank(a) - rank(b) || (a.id < b.id ? -1 : 1));
  order.set(world.stands, sorted);
  return sorted;
}

/** Stands from which the act is possible as the World is now. */
export const standsFor = (world: World, act: Act): readonly Stand[] =>
  standsOf(world).filter((stand) => refusalOf(placedAt(world, stand), act) === null);

/** The first stand from which the act is possible as the World is now; null when there is none. */
export function firstStandFor(world: World, act: Act, at?: string): Stand | null {
  const able = (stand: Stand): boolean => refusalOf(placedAt(world, stand), act) === null;
  return standsOf(world).find((stand) => (at === undefined || stand.id === at) && able(stand)) ?? null;
}

/** The deeds of an act, one a stand it can be done from; a single one where the place does not matter. */
export function deedsOf(world: World, act: Act): readonly Deed[] {
  const stands = standsFor(world, act);
  const everywhere =
    stands.length > 0 && standsOf(world).every((stand) => stand.aloft !== null || stands.includes(stand));
  return everywhere ? [{ act, at: null }] : stands.map(({ id }) => ({ act, at: id }));
}

/** The acts that bring the trainee to a stand; empty when there already, null when nothing leads there. */
export function wayTo(world: World, at: string | null): readonly Act[] | null {
  const here = standHere(world);
  if (at === null || here === null || here.id === at) return [];
  const to = standById(world, at);
  if (to === null) return null;
  const by = liftOf(world);
  if (to.aloft !== null && by === null) return null;
  const up = (stand: Stand): readonly Act[] =>
    stand.aloft === null || by === null ? [] : [{ act: 'aloft', pole: stand.aloft.pole, by, zone: stand.aloft.zone }];
  if (here.aloft !== null && to.aloft !== null && here.aloft.pole === to.aloft.pole) return up(to);
  const down: readonly Act[] = here.aloft === null ? [] : [{ act: 'come-down' }];
  const from = here.aloft === null ? here : standBelow(world, here);
  const foot = to.aloft === null ? to : standBelow(world, to);
  const walk: readonly Act[] = from.id === foot.id ? [] : [{ act: 'go', to: foot.id }];
  return [...down, ...walk, ...up(to)];
}
