/** Working a device: which operations its kind has from its present state, and what touches what meanwhile. */
import { componentKind } from '../catalogue/components.ts';
import type { Operation } from '../catalogue/types.ts';
import type { Reach } from '../hazards/types.ts';
import type { Part, PointId, World } from '../world/types.ts';
import { standing, through } from './presence.ts';

export const operationOf = (part: Part, id: string): Operation | null =>
  componentKind(part.kind).operations.find((operation) => operation.id === id) ?? null;

/** Why the operation does not fit the part as it stands. */
export function unfit(part: Part, operation: Operation): string | null {
  const fits = Object.entries(operation.from).every(([name, allowed]) => allowed.includes(part.state[name] ?? ''));
  if (fits) return null;
  const done = Object.entries(operation.to).every(([name, value]) => part.state[name] === value);
  return done ? 'it stands so already' : 'it cannot be done as it stands now';
}

export const operated = (part: Part, operation: Operation): Pick<Part, 'state'> => ({
  state: { ...part.state, ...operation.to },
});

const pointsOf = (part: Part, pair: readonly [string, string] | undefined): readonly [PointId, PointId] | null =>
  pair ? [`${part.id}/${pair[0]}`, `${part.id}/${pair[1]}`] : null;

/** Reach of whoever works it by hand or stick. */
export function reachOfOperation(world: World, part: Part, operation: Operation, stick: string | null): Reach {
  const by = through(world, stick);
  const makes = pointsOf(part, operation.makes);
  const breaks = pointsOf(part, operation.breaks);
  return {
    ...standing(world, operation.minutes * 60),
    touches: operation.touches.map((terminal) => ({ point: `${part.id}/${terminal}`, through: by })),
    switches: makes || breaks ? { part: part.id, makes, breaks, through: by } : null,
  };
}

/** Whether a part on a pole can be opened by stick: what a dispatcher gives clearances on. */
export const isolating = (part: Part): boolean =>
  part.pole !== null && componentKind(part.kind).operations.some(({ by, breaks }) => by === 'stick' && breaks);
