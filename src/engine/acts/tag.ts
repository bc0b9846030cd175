/** A hold tag on a device: says who keeps it so. */
import { componentKind } from '../catalogue/components.ts';
import { findPart, withPart } from '../world/edit.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { besidePart } from './presence.ts';

export const holdTag = 'hold';

export const tag: ActKind<'tag'> = {
  minutes: () => 1,
  refuse: (world, act) => {
    const part = findPart(world, act.part);
    if (!part) return 'there is no such part';
    if (componentKind(part.kind).operations.length === 0) return 'there is nothing to hold on it';
    const away = besidePart(world, part);
    if (away) return away;
    return part.tags.includes(holdTag) === act.on ? (act.on ? 'it is tagged already' : 'there is no tag on it') : null;
  },
  apply: (world, act) => {
    const part = findPart(world, act.part);
    if (!part) throw new Error(`no part is called ${act.part}`);
    const tags = act.on ? [...part.tags, holdTag].sort() : part.tags.filter((word) => word !== holdTag);
    return outcome(withPart(world, part.id, { tags }), [
      event('done', part.id, act.on ? `A hold tag is on the ${part.name}.` : `The tag is off the ${part.name}.`),
    ]);
  },
  offers: (world) =>
    world.parts.flatMap((part) =>
      [true, false].map((on) => ({
        act: { act: 'tag', part: part.id, on },
        label: on ? `Tag the ${part.name}` : `Take the tag off the ${part.name}`,
        by: 'hands',
        about: part.id,
      })),
    ),
};
