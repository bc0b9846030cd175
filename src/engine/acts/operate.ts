/** Opening, closing, lifting out, pulling, blanking: an operation of the part's kind by hand or stick. */
import { componentKind } from '../catalogue/components.ts';
import type { Vec3 } from '../math/vec3.ts';
import { findPart, placeOn, withPart } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { beyondHand, beyondStick } from './presence.ts';
import { operated, operationOf, reachOfOperation, unfit } from './switching.ts';
import { sticksOf } from './toolsFor.ts';

const found = (world: World, part: string, operation: string) => {
  const at = findPart(world, part);
  const what = at && operationOf(at, operation);
  return at && what ? { part: at, operation: what } : null;
};

/** Where it is taken hold of: the first terminal touched, else the part itself. */
const holdOf = (part: Part, touches: readonly string[]): Vec3 => {
  const offset = componentKind(part.kind).points[touches[0] ?? ''];
  return offset ? placeOn(part, offset) : part.at;
};

export const operate: ActKind<'operate'> = {
  minutes: (world, act) => found(world, act.part, act.operation)?.operation.minutes ?? 0,
  refuse: (world, act) => {
    const what = found(world, act.part, act.operation);
    if (!what) return 'that cannot be done to it';
    const { part, operation } = what;
    if (operation.by === 'owner') return 'only its owner works that';
    const target = holdOf(part, operation.touches);
    const beyond =
      operation.by === 'stick'
        ? beyondStick(world, target, act.stick)
        : act.stick === null
          ? beyondHand(world, target)
          : 'that is done by hand';
    return beyond ?? unfit(part, operation);
  },
  apply: (world, act) => {
    const what = found(world, act.part, act.operation);
    if (!what) throw new Error(`${act.part} has no operation ${act.operation}`);
    const { part, operation } = what;
    return outcome(
      withPart(world, part.id, operated(part, operation)),
      [event('done', part.id, `${operation.label}: ${part.name}.`)],
      [reachOfOperation(world, part, operation, act.stick)],
    );
  },
  offers: (world) =>
    world.parts.flatMap((part) =>
      componentKind(part.kind).operations.flatMap((operation) =>
        (operation.by === 'stick' ? sticksOf(world) : [null]).map((stick) => ({
          act: { act: 'operate', part: part.id, operation: operation.id, stick: stick?.id ?? null },
          label: `${operation.label}: ${part.name}${stick ? `, with ${stick.name}` : ''}`,
          by: operation.by === 'stick' ? 'stick' : 'hands',
          about: part.id,
        })),
      ),
    ),
};
