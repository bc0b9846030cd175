/** A conductor held by an auxiliary arm instead of its tie: the whole run past that pole. */
import { componentKind } from '../catalogue/components.ts';
import { distance, type Vec3 } from '../math/vec3.ts';
import type { Metres } from '../units/quantities.ts';
import { findPart, pointAt } from '../world/edit.ts';
import { bareTerminals } from '../world/points.ts';
import type { Part, PointId, Stand, World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { glovesOn, onFoot, standHere, standing } from './presence.ts';
import { supportsOf } from './toolsFor.ts';

/** How far from the pole's axis a conductor still counts as hanging on it. */
const besideAxis: Metres = 1.5;

const conductor = (part: Part): boolean => part.end !== null && componentKind(part.kind).endPoints.length > 0;

const aside = (at: Vec3, stand: Stand): Metres => distance([at[0], at[1], 0], [stand.feet[0], stand.feet[1], 0]);

/** Bare points of the conductor at the pole where the trainee is aloft. */
function pointsHere(world: World, part: Part): readonly PointId[] {
  const stand = standHere(world);
  if (!stand?.aloft) return [];
  return [...bareTerminals(part)]
    .sort()
    .map((terminal) => `${part.id}/${terminal}`)
    .filter((point) => {
      const at = pointAt(world, point);
      return at !== null && aside(at, stand) <= besideAxis;
    });
}

/** The conductor and what runs on from it on the same net past that pole. */
function runOf(world: World, part: Part): ReadonlySet<string> {
  const nets = pointsHere(world, part).map((point) => part.nets[point.slice(part.id.length + 1)]);
  const onNet = (other: Part): boolean => Object.values(other.nets).some((net) => nets.includes(net));
  return new Set(world.parts.filter((other) => conductor(other) && onNet(other)).map(({ id }) => id));
}

/** Runs that arms hold now: held conductors that share metal hang on one arm. */
function armsInUse(world: World): number {
  const nets: Set<string>[] = [];
  for (const { nets: mine } of world.parts.filter(({ supported }) => supported)) {
    const names = Object.values(mine);
    const joined = nets.filter((group) => names.some((net) => group.has(net)));
    for (const group of joined) nets.splice(nets.indexOf(group), 1);
    nets.push(new Set([...names, ...joined.flatMap((group) => [...group])]));
  }
  return nets.length;
}

export const support: ActKind<'support'> = {
  minutes: () => 5,
  refuse: (world, act) => {
    const part = findPart(world, act.part);
    if (!part || !conductor(part)) return 'that is no conductor';
    const away = onFoot(world);
    if (away) return away;
    if (!standHere(world)?.aloft) return 'that is done aloft';
    if (pointsHere(world, part).length === 0) return 'it is not at this pole';
    if (supportsOf(world).length === 0) return 'there is nothing on the truck to hold it with';
    if (runOf(world, part).size < 2) return 'it ends at this pole, there is no tie to hold it for';
    if (act.on && !part.supported && armsInUse(world) >= supportsOf(world).length) return 'the arm is in use';
    return part.supported === act.on ? (act.on ? 'it is held already' : 'nothing holds it but its tie') : null;
  },
  apply: (world, act) => {
    const part = findPart(world, act.part);
    const [arm] = supportsOf(world);
    if (!part || !arm) throw new Error(`nothing to hold ${act.part} with`);
    const run = runOf(world, part);
    const by = { stick: arm.id, gloves: glovesOn(world) };
    const parts = world.parts.map((other) => (run.has(other.id) ? { ...other, supported: act.on } : other));
    return outcome(
      { ...world, parts },
      [
        event(
          'done',
          part.id,
          act.on ? 'The arm carries the conductor.' : 'The arm is off; the conductor lies on its insulator.',
        ),
      ],
      [
        {
          ...standing(world, 300),
          touches: pointsHere(world, part).map((point) => ({ point, through: by })),
          works: standHere(world)?.aloft?.zone === 'work',
        },
      ],
    );
  },
  offers: (world) =>
    world.parts.filter(conductor).flatMap((part) =>
      [true, false].map((on) => ({
        act: { act: 'support', part: part.id, on },
        label: on ? `Hold the ${part.name} with the auxiliary arm` : `Let the ${part.name} down from the auxiliary arm`,
        by: 'stick',
        about: part.id,
      })),
    ),
};
