/** A customer works what is theirs at our asking: stops a set, opens a main. The trainee stands by and watches. */
import { componentKind } from '../catalogue/components.ts';
import { findPart, withPart } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot, standHere } from './presence.ts';
import { operated, operationOf, unfit } from './switching.ts';

const ownerOf = (world: World, part: Part) =>
  world.people.find((person) => person.role === 'customer' && person.premises === part.premises) ?? null;

export const owner: ActKind<'owner'> = {
  minutes: (world, act) => {
    const part = findPart(world, act.part);
    return (part && operationOf(part, act.operation)?.minutes) ?? 0;
  },
  refuse: (world, act) => {
    const part = findPart(world, act.part);
    const operation = part && operationOf(part, act.operation);
    if (!part || !operation) return 'that cannot be done to it';
    if (operation.by !== 'owner' || part.premises === null) return 'that is not a customer’s to do';
    const away = onFoot(world);
    if (away) return away;
    if (!ownerOf(world, part)) return 'nobody is at home';
    return standHere(world)?.near === part.premises ? unfit(part, operation) : 'its owner is not here';
  },
  apply: (world, act) => {
    const part = findPart(world, act.part);
    const operation = part && operationOf(part, act.operation);
    if (!part || !operation) throw new Error(`${act.part} has no operation ${act.operation}`);
    const { minute } = world.clock;
    const watched = { on: part.id, test: 'watched', result: operation.id, sign: null, minute };
    const changed = withPart(world, part.id, operated(part, operation));
    return outcome({ ...changed, knowledge: { ...changed.knowledge, tests: [...changed.knowledge.tests, watched] } }, [
      event('done', part.id, `You ask the owner to ${operation.label}, and watch it done.`),
    ]);
  },
  offers: (world) =>
    world.parts.flatMap((part) =>
      componentKind(part.kind)
        .operations.filter((operation) => operation.by === 'owner')
        .map((operation) => ({
          act: { act: 'owner', part: part.id, operation: operation.id },
          label: `Ask the owner to ${operation.label}, and watch (${part.name})`,
          by: 'talk',
          about: part.id,
        })),
    ),
};
