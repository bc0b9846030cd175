/** How a part of the World becomes pieces of hardware. */
import type { Part, World } from '../../engine/world/types.ts';
import type { PartSpec, Point } from '../hardware/types.ts';

/** A piece to build and where its origin stands, world axes. */
export interface Piece {
  readonly spec: PartSpec;
  readonly at: Point;
  /** Set for wires seen from far: their radius, so that they stay even lines. */
  readonly thin?: number;
  /** Set for what hangs between two supports and swings in the wind. */
  readonly swings?: true;
}

/** What a picture may ask of the parts around its own. */
export interface Around {
  readonly world: World;
  /** The part on a pole or premises, by the name after the dot of its id. */
  on(owner: string | null, name: string): Part | null;
  /** Another part of the same pole or premises, by what draws it; null if there is none. */
  beside(part: Part, kind: string): Part | null;
  /** Terminals with a drawn point on a pole: what leads are made up to. */
  terminals(pole: string | null): readonly Terminal[];
  /** A named point of a part as drawn, world axes; null if the part or the point is not there. */
  point(part: string | undefined, name: string): Point | null;
  /** Surface of a pole at an azimuth and height. */
  face(pole: string | null, azimuth: number, z: number, off?: number): Point;
  /** Whether lights burn in this house. */
  lit(part: Part): boolean;
}

/** A terminal where a lead can be made up. */
export interface Terminal {
  readonly part: Part;
  readonly net: string;
  readonly at: Point;
  /** Its own leads are found by nets. */
  readonly led: boolean;
}

export type Picture = (part: Part, around: Around) => readonly Piece[];
