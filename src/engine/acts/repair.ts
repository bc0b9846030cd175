/** A repair step of the catalogue, done by hand within reach: which faults it mends, what it sets. */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { repairKinds } from '../catalogue/repairs.ts';
import type { RepairKind } from '../catalogue/types.ts';
import type { Vec3 } from '../math/vec3.ts';
import { findPart, withPart } from '../world/edit.ts';
import { placeOfFeature } from '../world/featurePlace.ts';
import { leaningAgain } from '../world/lean.ts';
import { barePlace, bareTerminals } from '../world/points.ts';
import type { Part } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { besidePart, beyondHand, standing, through } from './presence.ts';

const repairIn = (id: string): RepairKind | null => repairKinds.find((kind) => kind.id === id) ?? null;

/** Where hands are put to it: the places touched, or where what it mends is to be seen. */
function places(part: Part, repair: RepairKind): readonly Vec3[] {
  const { features } = componentKind(part.kind);
  const touched = repair.touches.map((terminal) => barePlace(part, terminal)).filter((place) => place !== null);
  if (touched.length > 0) return touched;
  const shown = repair.mends.flatMap((fault) => faultKind(fault).signs.map(({ feature }) => feature));
  const marks = features.filter(({ id }) => shown.includes(id));
  // What has come down is worked on where it is to hang again.
  const mended = { ...part, faults: [] };
  return marks.length > 0 ? marks.map((feature) => placeOfFeature(mended, feature)) : [part.at];
}

const fits = (part: Part, { from = {} }: RepairKind): boolean =>
  Object.entries(from).every(([name, allowed]) => allowed.includes(part.state[name] ?? ''));

/** What it is done to may be there only while a fault is: a limb that hangs down. */
const there = (part: Part, { touches }: RepairKind): boolean =>
  touches.every((terminal) => Object.hasOwn(part.nets, terminal) || bareTerminals(part).includes(terminal));

export const repair: ActKind<'repair'> = {
  minutes: (_world, act) => repairIn(act.repair)?.minutes ?? 0,
  refuse: (world, act) => {
    const part = findPart(world, act.part);
    const kind = repairIn(act.repair);
    if (!part || !kind?.on.includes(part.kind)) return 'that is no repair for it';
    const away = besidePart(world, part);
    if (away) return away;
    if (!there(part, kind)) return 'there is no such thing on it';
    if (!fits(part, kind)) return 'it cannot be done as it stands now';
    if (kind.inHand) return null;
    return (
      places(part, kind)
        .map((place) => beyondHand(world, place))
        .find((reason) => reason !== null) ?? null
    );
  },
  apply: (world, act) => {
    const part = findPart(world, act.part);
    const kind = repairIn(act.repair);
    if (!part || !kind) throw new Error(`no repair ${act.repair} of ${act.part}`);
    const mended = {
      faults: part.faults.filter((fault) => !kind.mends.includes(fault.kind)),
      state: { ...part.state, ...kind.sets },
    };
    const by = through(world, null);
    const done = withPart(world, part.id, mended);
    const parts = leaningAgain(done.parts, { ...part, ...mended });
    return outcome(
      parts === done.parts ? done : { ...done, parts },
      [event('done', part.id, `${kind.label}: ${part.name}. Done.`)],
      [
        {
          ...standing(world, kind.minutes * 60),
          touches: kind.touches.map((terminal) => ({ point: `${part.id}/${terminal}`, through: by })),
          works: kind.inHand === undefined,
        },
      ],
    );
  },
  offers: (world) =>
    world.parts.flatMap((part) =>
      repairKinds
        .filter((kind) => kind.on.includes(part.kind))
        .map((kind) => ({
          act: { act: 'repair', part: part.id, repair: kind.id },
          label: `${kind.label}: ${part.name}`,
          by: 'hands',
          about: part.id,
        })),
    ),
};
