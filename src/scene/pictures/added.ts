/**
 * What a fault or look-alike adds to the picture of its part where no state of it and no mark shows the sign: short pieces of wire
 * and metal in the true size of the sign, where the catalogue says that it is seen.
 */
import { componentKind } from '../../engine/catalogue/components.ts';
import { faultKind } from '../../engine/catalogue/faults.ts';
import { add } from '../../engine/math/vec3.ts';
import { placeOn } from '../../engine/world/edit.ts';
import { placeOfFeature } from '../../engine/world/featurePlace.ts';
import { turned } from '../../engine/world/points.ts';
import type { Part } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import { wires } from './addedWires.ts';
import { azimuthFrom, leadThrough } from './shared.ts';
import type { Piece } from './types.ts';

/** Azimuth of a part's frame for its wires: of what has two ends, along it. */
const courseOf = ({ at, end, azimuth }: Part): number => (end === null ? azimuth : azimuthFrom(at, end));

/** Pieces that the faults of a part add to its picture, in world axes. */
export const addedBy = (part: Part): readonly Piece[] =>
  part.faults.flatMap(({ kind }) => {
    const sign = faultKind(kind).signs.find(({ sense }) => sense === 'see');
    const feature = componentKind(part.kind).features.find(({ id }) => id === sign?.feature);
    const middle = sign?.place ? placeOn(part, sign.place) : feature ? placeOfFeature(part, feature) : part.at;
    return (wires[kind] ?? []).flatMap(([variant, radius, course]) =>
      leadThrough(
        variant,
        radius,
        course.map((p): Point => add(middle, turned(p, courseOf(part)))),
      ),
    );
  });
