/**
 * A route walked from its start by `act`: whether every act is possible, exposes nobody, owes nothing, and whether the
 * scene had been surveyed before hands went on anything. Minutes and customer-minutes are counted as Service counts them:
 * premises whose own source is a cause stay out and do not count.
 */
import { premisesOut } from '../acts/customersOut.ts';
import type { Act } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import type { Reach } from '../hazards/types.ts';
import { findPart } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import type { Means } from './peek.ts';
import { type Deed, wayTo } from './places.ts';
import { harmful } from './survey.ts';

/** A point on a route. */
export interface Stage {
  readonly world: World;
  /** Every act so far, ways included. */
  readonly acts: readonly Act[];
  readonly customerMinutes: number;
  /** Hands, stick or hooks have been on something. */
  readonly handsOn: boolean;
  /** Minute of the last closing of a device of the line; tests before it count no more. */
  readonly closedAt: number;
}

export const atStart = (world: World): Stage => ({ world, acts: [], customerMinutes: 0, handsOn: false, closedAt: 0 });

const isHandsOn = ({ touches, switches, disturbs, climbs, works }: Reach): boolean =>
  touches.length > 0 || switches !== null || disturbs !== null || climbs !== null || works;

/** Faults of which a sign has been perceived, of those given. */
export function perceivedOf(world: World, ids: readonly string[]): readonly string[] {
  const { looks, heard, tests } = world.knowledge;
  const signs = [
    ...looks.flatMap(({ seen }) => seen),
    ...heard.map(({ sign }) => sign),
    ...tests.flatMap(({ sign }) => sign ?? []),
  ];
  return ids.filter((id) => signs.some((sign) => sign.startsWith(`${id}/`)));
}

const homesApart = new WeakMap<World['given'], ReadonlySet<string>>();

/** Premises with a cause on them at the start: they stay out. */
function apart(start: World): ReadonlySet<string> {
  const known = homesApart.get(start.given);
  if (known !== undefined) return known;
  const homes = new Set(harmful(start).flatMap(({ on }) => findPart(start, on)?.premises ?? []));
  homesApart.set(start.given, homes);
  return homes;
}

const countedKept = new WeakMap<World, number>();

/** Premises that are out and count. */
function countedOut(world: World): number {
  const known = countedKept.get(world);
  if (known !== undefined) return known;
  const counted = premisesOut(world).filter((id) => !apart(world).has(id)).length;
  countedKept.set(world, counted);
  return counted;
}

/** Whether the act closes a contact on the line: what was tested dead before may be alive after. */
function closes(world: World, act: Act): boolean {
  if (act.act !== 'operate') return false;
  const part = findPart(world, act.part);
  return (
    part?.pole != null &&
    componentKind(part.kind).operations.some(({ id, makes }) => id === act.operation && makes !== undefined)
  );
}

/** One act further; null when anything is wrong with it. */
export function further(means: Means, stage: Stage, act: Act, wanted: readonly string[]): Stage | null {
  const { world } = stage;
  const done = means.done(world, act, stage.closedAt, !stage.handsOn);
  if (done === null) return null;
  // Sounding and prodding a pole is part of the survey.
  const surveys = act.act === 'sound' || act.act === 'prod';
  const handsOn = !surveys && done.reach.some(isHandsOn);
  if (handsOn && !stage.handsOn && perceivedOf(world, wanted).length < wanted.length) return null;
  const { minute } = done.world.clock;
  const minutes = minute - world.clock.minute;
  return {
    world: done.world,
    acts: [...stage.acts, act],
    customerMinutes: stage.customerMinutes + (minutes === 0 ? 0 : minutes * countedOut(world)),
    handsOn: stage.handsOn || handsOn,
    closedAt: closes(world, act) ? minute : stage.closedAt,
  };
}

/** One deed further, with the way there. */
export function deedFurther(means: Means, stage: Stage, deed: Deed, wanted: readonly string[]): Stage | null {
  const way = wayTo(stage.world, deed.at);
  if (way === null) return null;
  return [...way, deed.act].reduce<Stage | null>((now, act) => now && further(means, now, act, wanted), stage);
}
