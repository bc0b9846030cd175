/**
 * Why this crew cannot do a repair whatever it does before. Two arguments, each from what no act changes. Out of reach: it
 * could be done from aloft as things stand, from nowhere on the ground, and nothing on the truck gets anybody up. Always
 * alive: with every device opened that anybody here, a customer or the dispatcher can open, the metal in the way is still
 * one with the source, so it can be neither tested dead nor grounded; and with all that the crew has to put on, hold and
 * cover, hands near it still expose somebody (needs.ts).
 */
import { refusalOf } from '../acts/act.ts';
import { withTraineeAt } from '../acts/go.ts';
import type { Act } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { phaseNets } from '../catalogue/phaseNets.ts';
import { branchesOf } from '../circuit/elementsOf.ts';
import { sectionOf } from '../hazards/section.ts';
import { findPart, splitPoint } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';
import type { Obstacle } from './peek.ts';
import { liftOf, standsFor } from './places.ts';

const joined = (part: Part): number => branchesOf(part).filter(({ type }) => type === 'series').length;

/** The part in whichever of its states, reached by its operations, joins least. */
function openest(part: Part): Part {
  const { operations } = componentKind(part.kind);
  return operations
    .map(({ to }) => ({ ...part, state: { ...part.state, ...to } }))
    .reduce((least, other) => (joined(other) < joined(least) ? other : least), part);
}

/** The World with everything open that can be opened. */
const allOpen = (world: World): World => ({ ...world, parts: world.parts.map(openest), jumpers: [] });

/** Points that obstacles name, those of exposures only. */
function pointsIn(world: World, obstacles: readonly Obstacle[]): readonly string[] {
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

/** The reason in a few words; null where none is shown. */
export function impossibleFor(world: World, act: Act, obstacles: readonly Obstacle[]): string | null {
  if (isOutOfReach(world, act)) return 'it is done aloft, and nothing on the truck gets anybody up there';
  const { at, phases } = world.given.supply;
  const sources = phaseNets(at, phases);
  const open = allOpen(world);
  const alive = pointsIn(world, obstacles).find((point) => {
    const section = sectionOf(open, point);
    return sources.some((net) => section.has(net));
  });
  if (alive === undefined) return null;
  const name = findPart(world, splitPoint(alive)?.[0] ?? '')?.name ?? alive;
  return `${name} stays alive whatever is opened here, and nothing on the truck keeps hands safe beside it`;
}
