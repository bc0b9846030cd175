/** What a mark is, and what its makers work with. */
import type { Film } from './film.ts';
import type { MarkSurface, Point } from './types.ts';

export const markKinds = [
  'crack',
  'chip',
  'burn',
  'flash',
  'stain',
  'scar',
  'rust',
  'oil',
  'crust',
  'hole',
  'split',
  'decay',
  'bore',
  'moss',
  'lichen',
  'band',
  'soil',
  'pale',
  'faded',
  'wet',
  'cut',
  'seam',
  'ribs',
  'droppings',
  'bloom',
  'girdle',
  'bolt',
  'staples',
  'stub',
  'web',
  'heave',
] as const;
export type MarkKind = (typeof markKinds)[number];

/** Marks that are bodies of their own, or a bite out of their part; the others are films on its surface. */
export const solidMarks = ['chip', 'bolt', 'staples', 'stub', 'web', 'heave'] as const satisfies readonly MarkKind[];
export type SolidMark = (typeof solidMarks)[number];
export type FilmMark = Exclude<MarkKind, SolidMark>;

export interface Mark {
  readonly kind: MarkKind;
  /** Side of the part, radians, 0 = +x, counter-clockwise seen from above; π/2 is the field side. */
  readonly azimuth: number;
  /** Height of its lower end over the part's origin, m (along a tilted body: where its surface has that height). */
  readonly z: number;
  /** Length along the surface upward and width, m. */
  readonly length: number;
  readonly width: number;
  readonly seed?: number;
  /** Where its middle is and which way it looks, in the part's frame, instead of side and height; it lies on the surface nearest to it. */
  readonly middle?: Point;
  readonly out?: Point;
  /** 0 hardly to be seen, 1 plain. */
  readonly contrast?: number;
  /**
   * A burn's course as the engine grew it, instead of one from the seed: pairs of [azimuth, z], radians and m; of a mark with a
   * middle, of metres aside and along its surface from there.
   */
  readonly segments?: readonly (readonly [readonly [number, number], readonly [number, number]])[];
}

export interface Work {
  readonly film: Film;
  readonly mark: Mark;
  readonly azimuth: number;
  readonly from: number;
  readonly contrast: number;
  readonly next: () => number;
  readonly seed: number;
  readonly surface: MarkSurface;
}
