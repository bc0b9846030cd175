/** Rubber goods laid on a part, by hand, against brushing contact. */
import { toolKind } from '../catalogue/tools.ts';
import type { Vec3 } from '../math/vec3.ts';
import { findPart, pointAt, toolById } from '../world/edit.ts';
import { bareTerminals } from '../world/points.ts';
import type { Part, World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { beyondHand, standing } from './presence.ts';
import { coversOf } from './toolsFor.ts';

/** Where a cover can be laid on it: its bare metal, or the part itself. */
function places(world: World, part: Part): readonly Vec3[] {
  const points = bareTerminals(part).map((terminal) => pointAt(world, `${part.id}/${terminal}`));
  const bare = points.filter((place) => place !== null);
  return bare.length > 0 ? bare : [part.at];
}

export const cover: ActKind<'cover'> = {
  minutes: () => 2,
  refuse: (world, act) => {
    const part = findPart(world, act.part);
    if (!part) return 'there is no such part';
    const tool = toolById(world, act.tool);
    if (!tool) return 'there is no such tool on the truck';
    if (toolKind(tool.kind).barrier !== 'cover') return 'that is no cover';
    const beyond = places(world, part).map((place) => beyondHand(world, place));
    if (!beyond.includes(null)) return beyond[0] ?? 'it is out of reach of the hand from here';
    const used = world.covers.find((entry) => entry.tool === act.tool);
    if (act.on) return used ? 'that cover is on already' : null;
    return used?.part === act.part ? null : 'that cover is not on it';
  },
  apply: (world, act) => {
    const others = world.covers.filter((entry) => entry.tool !== act.tool);
    const covers = act.on
      ? [...others, { part: act.part, tool: act.tool }].sort((a, b) => (a.tool < b.tool ? -1 : 1))
      : others;
    return outcome(
      { ...world, covers },
      [event('done', act.part, act.on ? 'The cover is on.' : 'The cover is off.')],
      [{ ...standing(world, 120), works: true }],
    );
  },
  offers: (world) =>
    world.parts.flatMap((part) =>
      coversOf(world).flatMap((tool) =>
        [true, false].map((on) => ({
          act: { act: 'cover', part: part.id, tool: tool.id, on },
          label: `${on ? 'Lay' : 'Take'} ${tool.name} ${on ? 'on' : 'off'} the ${part.name}`,
          by: 'hands',
          about: part.id,
        })),
      ),
    ),
};
