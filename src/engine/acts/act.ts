/**
 * The one step of a drill: World and act in, World and what was perceived out. In order: the clock runs on for the
 * act's minutes; the act's own file changes what it touches; what it shakes loose falls; the circuit settles; exposures
 * are judged from the act's reach; what can be perceived now enters knowledge. An impossible act gives the very same World
 * and a reason.
 */
import { settle } from '../circuit/settle.ts';
import type { Operation } from '../circuit/types.ts';
import { exposuresOf } from '../hazards/exposuresOf.ts';
import type { Exposure, Reach } from '../hazards/types.ts';
import { format, formatNumber } from '../units/formatQuantity.ts';
import type { Dimension } from '../units/unitTable.ts';
import { partById } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { passMinutes } from './clock.ts';
import { fallBy } from './falling.ts';
import { flashOver } from './flashover.ts';
import { event } from './kind.ts';
import { kindOf } from './kinds.ts';
import { perceive } from './perceive.ts';
import { standHere, standing } from './presence.ts';
import type { Act, ActResult, WorldEvent } from './types.ts';

/** Why the act is impossible now; null when it can be done. */
export function refusalOf(world: World, act: Act): string | null {
  if (world.ended !== null) return 'the drill is over';
  return kindOf(act.act).refuse(world, act);
}

/** Whole minutes that the act takes. */
export const minutesOf = (world: World, act: Act): number => kindOf(act.act).minutes(world, act);

/** An act done, before anybody judges it or perceives what came of it. */
export interface Carried {
  /** The minutes have passed, the act has not begun. */
  readonly passed: World;
  readonly settled: World;
  readonly reach: readonly Reach[];
  readonly told: { readonly passing: readonly WorldEvent[]; readonly act: readonly WorldEvent[] };
  /** What fell and what the circuit did by itself afterwards. */
  readonly after: readonly WorldEvent[];
}

/** The clock, the act's own change, what falls by it and the circuit's answer; only for an act that is not refused. */
export function carryOut(world: World, intent: Act): Carried {
  const minutes = minutesOf(world, intent);
  const passed = passMinutes(world, minutes);
  const done = kindOf(intent.act).apply(passed.world, intent);
  const fallen = fallBy(done.world, intent);
  const settled = comeToRest(fallen.world, minutes);
  return {
    passed: passed.world,
    settled: settled.world,
    reach: done.reach.length > 0 ? done.reach : standingFor(done.world, minutes),
    told: { passing: passed.events, act: done.events },
    after: [...fallen.events, ...settled.events],
  };
}

/** One step; never throws for what a trainee can cause. */
export function act(world: World, intent: Act): ActResult {
  const reason = refusalOf(world, intent);
  if (reason !== null) return { ok: false, world, reason };
  const { passed, settled, reach, told, after } = carryOut(world, intent);
  const exposures = reach.flatMap((each) => exposuresOf(each, passed, settled));
  const struck = exposures.find(({ strikes }) => strikes);
  if (struck) {
    const ended: World = { ...settled, ended: 'struck' };
    const events = [...told.passing, ...after, event('struck', struck.part, struckWords(struck))];
    return { ok: true, world: ended, events, reach, exposures };
  }
  const events = [...told.passing, ...told.act, ...after];
  const perceived = perceive(world, settled);
  return { ok: true, world: perceived.world, events: [...events, ...perceived.events], reach, exposures };
}

/** What the circuit does by itself: protection operates, a leak may flash over and be cleared. */
function comeToRest(world: World, minutes: number): { readonly world: World; readonly events: readonly WorldEvent[] } {
  const rested = settle(world);
  const flashed = flashOver(rested.world, minutes);
  // What has come to rest stays so until something operates.
  const { parts } = rested.world;
  const again = flashed.world.parts === parts ? { world: flashed.world, operations: [] } : settle(flashed.world);
  const operated = operationEvents(again.world, [...rested.operations, ...again.operations]);
  return { world: again.world, events: [...operated, ...flashed.events] };
}

/** Being there for the act's minutes is all that most acts bring near anything. */
function standingFor(world: World, minutes: number): readonly Reach[] {
  const person = world.people.find(({ role }) => role === 'trainee');
  return minutes > 0 && person?.at != null ? [standing(world, minutes * 60)] : [];
}

/** A device that operates is heard and seen where it hangs; in a house only by who stands there. */
function operationEvents(world: World, operations: readonly Operation[]): readonly WorldEvent[] {
  const near = standHere(world)?.near ?? null;
  return operations
    .map(({ part }) => partById(world, part))
    .filter(({ premises }) => premises === null || premises === near)
    .map((part) =>
      event(
        'operated',
        part.id,
        part.premises === null ? `A bang and a flash: ${part.name}.` : `A snap: ${part.name}.`,
      ),
    );
}

const dimensions: Readonly<Record<string, Dimension>> = {
  V: 'voltage',
  A: 'current',
  m: 'length',
  'cal/cm2': 'arcEnergy',
};

/** One sober line with its number. */
function struckWords({ mechanism, now, quantities }: Exposure): string {
  const told = now.length > 0 ? now : quantities;
  const first = told.find(({ unit }) => unit === 'A') ?? told[0];
  if (!first) return `You are hurt: ${mechanism}. The drill ends here.`;
  const dimension = dimensions[first.unit];
  const value = dimension ? format(first.value, dimension, 'metric') : `${formatNumber(first.value)} ${first.unit}`;
  return `You are hurt: ${first.name}, ${value}. The drill ends here.`;
}
