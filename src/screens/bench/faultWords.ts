/** What a bolted fault at a point would drive, by the network as it stands before anything operates. */
import { componentKind } from '../../engine/catalogue/components.ts';
import { faultCurrent } from '../../engine/circuit/faultCurrent.ts';
import { findPart, splitPoint } from '../../engine/world/edit.ts';
import type { PointId, World } from '../../engine/world/types.ts';
import { ampsOf } from './benchWords.ts';

/** Terminals that are the neutral of a pole or of a house. */
const neutrals = ['neutral', 'n'];

/** The bare neutral of the pole or premises that the point belongs to; earth where there is none. */
export function neutralBeside(world: World, point: PointId): PointId | 'earth' {
  const part = findPart(world, splitPoint(point)?.[0] ?? '');
  const owner = part?.pole ?? part?.premises ?? null;
  const own = world.parts
    .filter((each) => (each.pole ?? each.premises) === owner)
    .flatMap((each) =>
      neutrals
        .filter((name) => componentKind(each.kind).points[name] !== undefined)
        .map((name) => `${each.id}/${name}`),
    )
    .sort();
  return own[0] ?? 'earth';
}

/** Amperes of a bolted fault from the point to the neutral beside it, or to earth; null for the neutral itself. */
export const boltedFault = (world: World, point: PointId): number | null =>
  faultCurrent(world, point, neutralBeside(world, point))?.amperes ?? null;

/** The same in words. */
export function faultWords(world: World, point: PointId): string {
  const amperes = boltedFault(world, point);
  if (amperes === null) return 'This is the neutral itself.';
  const to = neutralBeside(world, point) === 'earth' ? 'earth' : 'the neutral';
  return `A bolted fault to ${to} drives ${ampsOf(amperes)}, before anything operates.`;
}
