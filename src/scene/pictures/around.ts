/** What pictures ask of what stands around their part, in the frame they are drawn in: a leaning pole's things are drawn as if it stood plumb. */
import type { Group } from 'three';
import { leaned, upright } from '../../engine/world/lean.ts';
import type { Lean, Part, World } from '../../engine/world/types.ts';
import type { PartData, Point } from '../hardware/types.ts';
import { leanOfGroup } from './leanTo.ts';
import { poleForm } from './support.ts';
import { drawnTerminals, isLed } from './tapLeads.ts';
import type { Around, Terminal } from './types.ts';

/** What a part belongs to: a pole, premises, or itself. */
export const ownerOf = (part: Part): string => part.pole ?? part.premises ?? part.id;

/** `built`: the groups drawn of each part so far; `lean`: of the pole that stands plumb in this World, null for none. */
export const aroundOf = (
  world: World,
  built: ReadonlyMap<string, readonly Group[]>,
  lit: (part: Part) => boolean,
  lean: Lean | null = null,
): Around => {
  const byId = new Map(world.parts.map((part) => [part.id, part]));
  const point = (id: string | undefined, name: string): Point | null => {
    for (const group of (id === undefined ? undefined : built.get(id)) ?? []) {
      const p = (group.userData as PartData).points[name];
      if (p === undefined) continue;
      const { x, y, z } = group.position;
      const drawn: Point = [p[0] + x, p[1] + y, p[2] + z];
      const own = leanOfGroup(group);
      const at = own === null ? drawn : leaned(drawn, own);
      return lean === null ? at : upright(at, lean);
    }
    return null;
  };
  return {
    world,
    point,
    lit,
    on: (owner, name) => byId.get(`${owner}.${name}`) ?? null,
    beside: (part, kind) =>
      world.parts.find((p) => p.kind === kind && p.id !== part.id && ownerOf(p) === ownerOf(part)) ?? null,
    terminals: (pole) =>
      world.parts
        .filter((part) => part.pole === pole)
        .flatMap((part): readonly Terminal[] =>
          Object.entries(drawnTerminals[part.kind] ?? {}).flatMap(([terminal, name]): readonly Terminal[] => {
            const at = point(part.id, name);
            const net = part.nets[terminal];
            return at === null || net === undefined ? [] : [{ part, net, at, led: isLed(part.kind) }];
          }),
        ),
    face: (owner, azimuth, z, off = 0) => {
      const pole = byId.get(`${owner}.pole`) ?? null;
      const { height, topDiameter, groundDiameter } = poleForm(pole);
      const r = (groundDiameter + (topDiameter - groundDiameter) * (z / height)) / 2 + off;
      const at = pole?.at ?? [0, 0, 0];
      const spot: Point = [at[0] + r * Math.cos(azimuth), at[1] + r * Math.sin(azimuth), z];
      return pole?.lean === undefined ? spot : leaned(spot, pole.lean);
    },
  };
};
