/** What kinds of control, tool, repair and job there are: all that is done about a fault. */
import type { Level, Source } from './commonTypes.ts';

/** The five subjects of a job briefing, 29 CFR 1910.269(c)(2). */
export const briefingTopics = [
  'hazards',
  'procedures',
  'precautions',
  'energy-controls',
  'protective-equipment',
] as const;

export interface ControlKind {
  readonly id: string;
  readonly name: string;
  readonly level: Level;
  /** Under which subject of the briefing it is written. */
  readonly subject: Exclude<(typeof briefingTopics)[number], 'hazards'>;
  /** Ids of preconditions, each computed from World at the moment of use. */
  readonly preconditions: readonly string[];
  readonly rule: string;
  readonly limits: string;
}

export interface ToolKind {
  readonly id: string;
  readonly name: string;
  readonly barrier?: 'stick' | 'gloves' | 'cover';
  /** Rated volts where it insulates or measures. */
  readonly ratedVolts?: number;
  readonly testMonths?: number;
  /** How far it reaches from the hand, metres. */
  readonly reachM?: number;
  readonly testsOf?: 'primary' | 'secondary';
  /** Volts from which a detector shows voltage. */
  readonly thresholdVolts?: number;
  /** Clamps of a ground set, bond or short. */
  readonly clamps?: number;
  /** Terminals that its clamps are made for, in the safe order; absent: any. */
  readonly fits?: readonly string[];
  /** Holds a conductor in place of its tie. */
  readonly supports?: true;
  /** Gets a worker aloft. */
  readonly lifts?: 'hooks' | 'bucket';
  /** What it tests a pole with. */
  readonly testsPole?: 'sound' | 'prod';
  /** Guards that need it. */
  readonly guards?: 'barrier' | 'truck-ground';
  /** Size of the cable of a ground set, unless its words say another (standards/groundingCable.ts). */
  readonly cable?: string;
  readonly checks: readonly string[];
  readonly wornOn?: 'hands' | 'arms' | 'face' | 'head' | 'body' | 'vest';
  readonly source: Source;
}

/** One repair step: what it needs and which faults it mends. */
export interface RepairKind {
  readonly id: string;
  readonly label: string;
  readonly on: readonly string[];
  readonly by: 'hand' | 'stick';
  readonly minutes: number;
  /** Fault kinds on the part that are gone afterwards. */
  readonly mends: readonly string[];
  /** State in which alone it can be done. */
  readonly from?: Readonly<Record<string, readonly string[]>>;
  /** Done on a piece that has been taken down, so wherever one stands beside its place. */
  readonly inHand?: true;
  /** State written afterwards. */
  readonly sets?: Readonly<Record<string, string>>;
  readonly touches: readonly string[];
  /** The conductor must come off its tie for it, or is tied in again by it. */
  readonly tie?: 'off' | 'on';
  readonly workers: 1 | 2;
  readonly source: Source;
}

/** One step of a job and what shows that it was done: an act, a repair, an operation, or a precondition that holds. */
export interface JobStep {
  readonly id: string;
  readonly words: string;
  readonly shownBy: readonly `${'act' | 'repair' | 'operation' | 'precondition'}:${string}`[];
  /** Not every crew or every place does it. */
  readonly optional?: true;
}

/** A job as it is usually done, its steps in order. */
export interface JobKind {
  readonly id: string;
  readonly name: string;
  readonly steps: readonly JobStep[];
  /** Where the trade differs. */
  readonly limits: string;
  readonly source: Source;
}
