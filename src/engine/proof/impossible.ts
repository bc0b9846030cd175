/**
 * Why this crew cannot do a repair whatever it does before. Four arguments, each from what no act changes:
 *
 * - Out of reach: it could be done from aloft as things stand, from nowhere on the ground, and nothing gets anybody up.
 * - Always alive: with every device opened that anybody here, a customer or the dispatcher can open, the metal in the way
 *   is still one with the source, so it can be neither tested dead nor grounded; and with all that the crew has to put
 *   on, hold and cover, hands near it still expose somebody (needs.ts).
 * - Never grounded: from every stand from which it can be done, with the crew at its best (extremes.ts), hands come near
 *   metal of more than 600 V in ordinary service, which is owed a ground (owed.ts); there is no clamp on the truck, and
 *   with every device closed that can be, it is one with no electrode. Closing only adds to what is one metal.
 * - Always struck: from every such stand, or on the ground where one must stand to get up there, something can come down
 *   on or swing into whoever does it, though everything is dead, what can be held is held, what else can be mended is
 *   mended and the air is still. Faults that are gone only take away what can come down.
 *
 * From where a repair can be done is geometry; stands are those from which nothing refuses it as things are.
 */
import { refusalOf } from '../acts/act.ts';
import { standBelow } from '../acts/aloft.ts';
import { withTraineeAt } from '../acts/go.ts';
import { standing } from '../acts/presence.ts';
import { clampSetsOf } from '../acts/toolsFor.ts';
import type { Act } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { phaseNets } from '../catalogue/phaseNets.ts';
import { branchesOf } from '../circuit/elementsOf.ts';
import { drop } from '../hazards/drop.ts';
import { isGrounded, sectionOf } from '../hazards/section.ts';
import { struckBy } from '../hazards/struckBy.ts';
import type { Reach } from '../hazards/types.ts';
import { findPart, splitPoint } from '../world/edit.ts';
import type { Part, PointId, Stand, World } from '../world/types.ts';
import { atBest, momentAt } from './extremes.ts';
import { GROUNDED_FROM } from './owed.ts';
import type { Means, Obstacle } from './peek.ts';
import { liftOf, placedAt, standsFor } from './places.ts';

type Repair = Extract<Act, { act: 'repair' }>;

/** How many of its terminals' pairs the part joins. */
export const joined = (part: Part): number => branchesOf(part).filter(({ type }) => type === 'series').length;

/** Its states, as it stands and as its operations leave it. */
const statesOf = (part: Part): readonly Part[] => [
  part,
  ...componentKind(part.kind).operations.map(({ to }) => ({ ...part, state: { ...part.state, ...to } })),
];

/** The part in whichever of these states joins least. */
const openest = (part: Part): Part =>
  statesOf(part).reduce((least, other) => (joined(other) < joined(least) ? other : least));

/** The part as it is in service: whatever it can join, it joins. */
function closest(part: Part): Part {
  const { states } = componentKind(part.kind);
  const whole = Object.keys(part.state).map((name) => [name, states[name]?.[0] ?? part.state[name] ?? '']);
  return [...statesOf(part), { ...part, state: Object.fromEntries(whole) }].reduce((most, other) =>
    joined(other) > joined(most) ? other : most,
  );
}

const remade = (world: World, change: (part: Part) => Part): World => ({
  ...world,
  parts: world.parts.map(change),
  jumpers: [],
});

const nameOf = (world: World, point: PointId): string => findPart(world, splitPoint(point)?.[0] ?? '')?.name ?? point;

/** Points that obstacles name, those of exposures only. */
function pointsIn(world: World, obstacles: readonly Obstacle[]): readonly PointId[] {
  return obstacles.flatMap(({ is, id }) => {
    const point = id.slice(id.indexOf(':') + 1);
    const [part = '', terminal = ''] = splitPoint(point) ?? [];
    return is === 'exposed' && findPart(world, part)?.nets[terminal] !== undefined ? [point] : [];
  });
}

const isOutOfReach = (world: World, act: Act): boolean =>
  liftOf(world) === null &&
  standsFor(world, act).length === 0 &&
  world.stands.some(({ id, aloft }) => aloft !== null && refusalOf(withTraineeAt(world, id, 'hooks'), act) === null);

function aliveAlways(world: World, obstacles: readonly Obstacle[]): string | null {
  const { at, phases } = world.given.supply;
  const sources = phaseNets(at, phases);
  const open = remade(world, openest);
  const alive = pointsIn(world, obstacles).find((point) => {
    const section = sectionOf(open, point);
    return sources.some((net) => section.has(net));
  });
  return alive === undefined ? null : aliveWords(world, alive);
}

/** The World with everything closed that can be, and no grounds on. */
export const allClosed = (world: World): World => remade(world, closest);

/** What doing it from each stand puts hands and body to, with the crew at its best; empty when it can be done from none. */
export function reachesOf(
  means: Means,
  world: World,
  act: Repair,
): readonly { readonly stand: Stand; readonly of: readonly Reach[] }[] {
  return standsFor(world, act).map((stand) => ({ stand, of: means.step.carry(placedAt(world, stand), act).reach }));
}

/** Metal that whoever does it comes near from every stand and that can never be grounded; null when there is a way. */
function neverGrounded(means: Means, best: World, act: Repair): PointId | null {
  if (clampSetsOf(best).length > 0) return null;
  const closed = allClosed(best);
  const near = reachesOf(means, best, act).map(({ of }) =>
    of
      .flatMap((reach) => means.service.metBy(reach, best))
      .find(({ point, volts }) => volts > GROUNDED_FROM && !isGrounded(closed, point)),
  );
  return near.every((each) => each !== undefined) ? (near[0]?.point ?? null) : null;
}

/** The part that strikes whoever does it from any stand; null when one is free of that. */
function alwaysStruck(means: Means, best: World, act: Repair): string | null {
  const dead = momentAt(best, 0);
  const struck = reachesOf(means, best, act).map(({ stand, of }) => {
    const foot = stand.aloft === null ? [] : [standing(placedAt(best, standBelow(best, stand)), 60)];
    return [...of, ...foot].flatMap((reach) => [...drop(reach, dead), ...struckBy(reach, dead)])[0];
  });
  return struck.every((each) => each !== undefined) ? (struck[0]?.part ?? null) : null;
}

const aliveWords = (world: World, point: PointId): string =>
  `${nameOf(world, point)} stays alive whatever is opened here, and nothing on the truck keeps hands safe beside it`;

/** Metal that is one with the source with everything opened, and near which the crew at its best is exposed from any stand; null when there is none. */
function aliveAtBest(means: Means, best: World, act: Repair): PointId | null {
  const open = remade(best, openest);
  const { at, phases } = best.given.supply;
  const isAlive = (point: PointId): boolean => {
    const section = sectionOf(open, point);
    return phaseNets(at, phases).some((net) => section.has(net));
  };
  const near = reachesOf(means, best, act).map(({ of }) => {
    const met = of.flatMap((reach) => means.step.met(reach, open, open));
    return met.find(({ mechanism, point }) => mechanism === 'approach' && point !== null && isAlive(point))?.point;
  });
  return near.every((point) => point != null) ? (near[0] ?? null) : null;
}

/** The reason, where one is shown without looking for measures first; null where none is. */
export function impossibleAtOnce(means: Means, world: World, act: Repair): string | null {
  if (isOutOfReach(world, act)) return unliftedWords;
  const best = atBest(world, act);
  const alive = aliveAtBest(means, best, act);
  return alive === null ? neverAtBest(means, best, act) : aliveWords(world, alive);
}

const unliftedWords = 'it is done aloft, and nothing on the truck gets anybody up there';

function neverAtBest(means: Means, best: World, act: Repair): string | null {
  const bare = neverGrounded(means, best, act);
  if (bare !== null) {
    return `hands come near ${nameOf(best, bare)}, there is nothing on the truck to ground it with, nor anything that keeps hands safe beside it alive`;
  }
  const loose = alwaysStruck(means, best, act);
  return loose === null
    ? null
    : `what is loose at ${findPart(best, loose)?.name ?? loose} can strike whoever goes there, and nothing on the truck holds it`;
}

/** The reason in a few words; null where none is shown. */
export function impossibleFor(means: Means, world: World, act: Act, obstacles: readonly Obstacle[]): string | null {
  if (isOutOfReach(world, act)) return unliftedWords;
  const alive = aliveAlways(world, obstacles);
  if (alive !== null || act.act !== 'repair') return alive;
  return neverAtBest(means, atBest(world, act), act);
}
