/**
 * Where the trainee is and what is within reach from there. Reach is a distance from the shoulder; a stand on the
 * ground is a place of about a step round. Common practice and estimates, no standard.
 */
import { toolKind } from '../catalogue/tools.ts';
import type { Reach, Through } from '../hazards/types.ts';
import { add, distance, length, type Vec3 } from '../math/vec3.ts';
import type { Metres, Seconds } from '../units/quantities.ts';
import { findPart, pointAt, splitPoint, standById, toolById, trainee } from '../world/edit.ts';
import { bareTerminals } from '../world/points.ts';
import type { Part, PointId, Stand, World } from '../world/types.ts';

/** Height of a standing person's shoulder above the feet (common practice). */
export const shoulderHeight: Metres = 1.4;
/** How far one shifts the feet without leaving a stand on the ground (estimate). */
export const step: Metres = 1.2;
/** From where a pole, its butt and what is tagged there can be handled (estimate). */
const besidePole: Metres = 2.5;

/** Why nothing on scene can be done yet. */
export const onFoot = (world: World): string | null =>
  world.truck.place === 'arriving' ? 'the truck is still on the way, park it first' : null;

/** The stand where the trainee is; null on the way there. */
export const standHere = (world: World): Stand | null => {
  const { at } = trainee(world);
  return at === null ? null : standById(world, at);
};

const barrierOf = (world: World, id: string) => {
  const tool = toolById(world, id);
  return tool ? toolKind(tool.kind).barrier : undefined;
};

/** The rubber gloves that the trainee wears. */
export const glovesOn = (world: World): string | null =>
  trainee(world).wearing.find((id) => barrierOf(world, id) === 'gloves') ?? null;

/** What stands between the trainee and what is touched. */
export const through = (world: World, stick: string | null): Through => ({ stick, gloves: glovesOn(world) });

/** Standing where one stands for some time, nothing touched: what every act on scene has in common. */
export function standing(world: World, seconds: Seconds): Reach {
  const person = trainee(world);
  const stand = standHere(world);
  if (stand === null) throw new Error(`${person.id} stands nowhere`);
  return {
    who: person.id,
    stand: stand.id,
    at: stand.feet,
    aloft: stand.aloft !== null,
    touches: [],
    switches: null,
    disturbs: null,
    climbs: stand.aloft && person.aloftBy ? { pole: stand.aloft.pole, by: person.aloftBy } : null,
    works: false,
    seconds,
  };
}

/** How far a place lies beyond the hand, metres; 0 or less is within reach. */
function fromHand(world: World, target: Vec3): Metres {
  const stand = standHere(world);
  if (stand === null) return Number.POSITIVE_INFINITY;
  const shoulder = add(stand.feet, [0, 0, shoulderHeight]);
  return distance(shoulder, target) - stand.reachM - (stand.aloft ? 0 : step);
}

/** Why a place cannot be reached with the bare or gloved hand. */
export const beyondHand = (world: World, target: Vec3): string | null =>
  onFoot(world) ?? (fromHand(world, target) <= 0 ? null : 'it is out of reach of the hand from here');

/** Why a place cannot be reached with that stick. */
export function beyondStick(world: World, target: Vec3, stick: string | null): string | null {
  const away = onFoot(world);
  if (away) return away;
  if (stick === null) return 'that takes a stick';
  const tool = toolById(world, stick);
  if (!tool) return 'there is no such tool on the truck';
  const { barrier, reachM = 0 } = toolKind(tool.kind);
  if (barrier !== 'stick') return 'that tool is no stick';
  return fromHand(world, target) <= reachM ? null : 'it is beyond the end of that stick';
}

/** Whether a name, from wherever it came, is one of the World's bare-metal points. */
function isPoint(world: World, point: PointId): boolean {
  const [id = '', terminal = ''] = splitPoint(point) ?? [];
  const part = findPart(world, id);
  return part !== null && bareTerminals(part).includes(terminal);
}

/** Why a bare-metal point cannot be reached, by stick when one is named, else by hand. */
export function beyondReach(world: World, point: PointId, stick: string | null): string | null {
  const target = isPoint(world, point) ? pointAt(world, point) : null;
  if (target === null) return 'there is no bare metal to be reached';
  return stick === null ? beyondHand(world, target) : beyondStick(world, target, stick);
}

/** Why what hangs on a pole or stands at premises cannot be handled from here: one is not beside it, or either end of it. */
export function besidePart(world: World, part: Part): string | null {
  const away = onFoot(world);
  if (away) return away;
  const stand = standHere(world);
  if (stand === null) return 'that is not here';
  if (part.premises !== null && stand.near === part.premises) return null;
  if (stand.aloft && part.pole !== null) {
    return stand.aloft.pole === part.pole ? null : 'that is not at this pole';
  }
  const ends = part.pole === null && part.end !== null ? [part.at, part.end] : [part.at];
  const beside = ends.some((end) => length([end[0] - stand.feet[0], end[1] - stand.feet[1], 0]) <= besidePole + step);
  return beside ? null : 'that is not here';
}
