/** What the solved scene says of each part; the network itself stays in `network/`. */
import type { Vec3 } from '../math/vec3.ts';
import type { NetworkElement } from '../network/types.ts';
import type { PointId } from '../world/types.ts';

export interface PointState {
  readonly point: PointId;
  readonly node: string;
  /** Open-circuit volts to local earth, at the worst angle between sources that are not in step. */
  readonly volts: number;
  /** Amperes that it would drive through 1 kΩ to local earth, at the worst angle. */
  readonly throughKilohm: number;
  /** By both: see `standards`/circuit header for the limits. */
  readonly live: boolean;
  /** Synchronism groups that hold it alive, largest first ('system', 'a.generator'). */
  readonly sources: readonly string[];
}

export interface Operation {
  readonly part: string;
  readonly branch: string;
  readonly amperes: number;
  readonly seconds: number;
  /** Of a recloser: seconds with open contacts until it closes again; null when it is locked out. */
  readonly closesAfter?: number | null;
  /** Of a voltage relay: the volts that made it operate. */
  readonly volts?: number;
}

export interface CircuitSolution {
  readonly elements: readonly NetworkElement[];
  /** Every point with bare metal, sorted by id. */
  readonly points: readonly PointState[];
  point(id: PointId): PointState;
  /** Body current between two points (or point and 'earth') through a series impedance, amperes, worst angle. */
  bodyCurrent(from: PointId, to: PointId | 'earth', ohms: number): number;
  /** Open-circuit volts between two points, worst angle. */
  between(a: PointId, b: PointId | 'earth'): number;
  /** Volts between two feet on the ground, worst angle. */
  step(a: Vec3, b: Vec3): number;
  /** Worst-angle amperes in a part's named branch. */
  branchCurrent(part: string, branch: string): number;
}
