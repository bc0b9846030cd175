/** What a kind of component is: its circuit, metal, solids, features, states and what can be done to it. */
import type { Complex } from '../math/complex.ts';
import type { Vec3 } from '../math/vec3.ts';
import type { PartView, Side, Source } from './commonTypes.ts';

/** One branch of a kind's equivalent circuit, between terminals of the part ('earth' is the reference). */
export type Branch =
  /** A current-carrying joint, line or winding lead; z is never zero. Protective when `protects` is there. */
  | {
      readonly type: 'series';
      readonly name: string;
      readonly between: readonly [string, string];
      readonly z: Complex;
      readonly protects?: Protection;
    }
  /** Leakage, load or capacitance: an admittance at 60 Hz, siemens. */
  | { readonly type: 'shunt'; readonly name: string; readonly between: readonly [string, string]; readonly y: Complex }
  /** Thevenin source; group is the synchronism group ('system', or one per generator). */
  | {
      readonly type: 'source';
      readonly name: string;
      readonly between: readonly [string, string];
      readonly emf: Complex;
      readonly z: Complex;
      readonly group: string;
      /** What it can give at most: amperes by itself, or watts by all sources of the part together. */
      readonly limit?: { readonly amperes?: number; readonly watts?: number };
    }
  /** Windings on one core: induced voltages in proportion to turns; magnetising admittance across winding 0's induced voltage. */
  | {
      readonly type: 'transformer';
      readonly name: string;
      readonly windings: readonly {
        readonly between: readonly [string, string];
        readonly turns: number;
        readonly z: Complex;
      }[];
      readonly magnetising: Complex;
      /** Each winding is a length of wire beside others: its ends are one metal. */
      readonly wires?: true;
    };

/** A fuse, breaker or recloser in a series branch, and what its operation does to the part's state. */
export interface Protection {
  readonly curve: 'fuse-link' | 'breaker' | 'recloser';
  /** Rated amperes. */
  readonly rating: number;
  readonly link?: string;
  /** State written when it has operated, e.g. { position: 'open', link: 'blown' }; of a recloser, when it is locked out. */
  readonly opens: Readonly<Record<string, string>>;
  /** Of a recloser: fast trips before the slow ones, waits with open contacts, and the state while it waits. */
  readonly sequence?: {
    readonly fast: number;
    readonly waits: readonly number[];
    readonly waiting: Readonly<Record<string, string>>;
  };
}

/** A voltage relay of a part: what it does when the volts between two terminals have left its band for so long. */
export interface Watch {
  readonly name: string;
  readonly between: readonly [string, string];
  /** Only the volts of this synchronism group; all of them at the worst angle if left out. */
  readonly group?: string;
  readonly below?: number;
  readonly above?: number;
  readonly seconds: number;
  readonly becomes: Readonly<Record<string, string>>;
}

/** A simple solid for sight lines and pointing; coordinates relative to the part's `at`, metres. */
export type Solid =
  | {
      readonly shape: 'cylinder';
      readonly from: Vec3;
      readonly to: Vec3;
      readonly radius: number;
      /** Radius at `to`, of what tapers. */
      readonly tip?: number;
      /** Has flat sheds, or skirts that hang down, round it, of this radius. */
      readonly shedded?: 'sheds' | 'skirts';
    }
  | { readonly shape: 'box'; readonly centre: Vec3; readonly half: Vec3 };

/** Something about a part that can be looked at, with neutral words for its ordinary condition. */
export interface Feature {
  readonly id: string;
  /** Neutral and of like length to every sign's words: 'skirts: brown glaze, even, no marks made out'. */
  readonly healthy: string;
  /** Smallest size that must be resolved to say so, metres. */
  readonly size: number;
  /** Where on the part, relative to `at`, in its own frame. */
  readonly offset: Vec3;
  /** Of a span, lead or guy: so many metres along it from `at` instead, and `offset` from there. */
  readonly along?: number;
  /** Of a pole: counted from its roof. */
  readonly fromTop?: true;
  /** The one way that it looks, of a plate, a dial or a door, in the part's own frame; absent: its side. */
  readonly faces?: Vec3;
  /** Which way wire or timber runs there, in the part's own frame; absent: no way in particular. */
  readonly runs?: Vec3;
  readonly side: Side;
  /** Other words while two terminals stand at more than so many volts to each other: lit windows. */
  readonly live?: { readonly between: readonly [string, string]; readonly minVolts: number; readonly words: string };
  /** Other words by the part's state or words: a fuse tube closed, hanging, gone; a body of polymer. */
  readonly byState?: readonly { readonly when: Readonly<Record<string, string>>; readonly words: string }[];
}

/** A lead that a piece of equipment brings along, placed between the middle of its pole and itself. */
export interface LeadKind {
  readonly name: string;
  readonly kind: string;
  /** Framings on which it is there; absent: all. */
  readonly framings?: readonly string[];
  /** Share of the way from the pole to the equipment, and metres beyond that along the line and across it. */
  readonly toward: number;
  readonly aside: readonly [x: number, y: number];
  /** Metres below the roof; negative above it. */
  readonly belowM: number;
  /** Faces the side on which the equipment hangs. */
  readonly faces: boolean;
}

export interface ComponentKind {
  readonly id: string;
  /** Plain trade name as far as known from the ground: 'pin insulator'. */
  readonly name: string;
  readonly terminals: readonly string[];
  /** Default net of each terminal on its pole or premises; a scenario may override. '$id' makes a net of the part's own. */
  readonly nets: Readonly<Record<string, string>>;
  /** Where each terminal's bare metal is, relative to `at`, metres (absent: insulated or not reachable). */
  readonly points: Readonly<Record<string, Vec3>>;
  /** Terminals among `points` that lie at the part's other end (spans, drops), relative to `end`. */
  readonly endPoints: readonly string[];
  /** Allowed positions by state name; the first is the default. */
  readonly states: Readonly<Record<string, readonly string[]>>;
  /** `allowed`: the only sizes that the tables behind it know. */
  readonly values: Readonly<
    Record<
      string,
      {
        readonly default: number;
        readonly dimension: string;
        readonly doc: string;
        readonly allowed?: readonly number[];
      }
    >
  >;
  readonly words: Readonly<
    Record<string, { readonly default: string; readonly doc: string; readonly allowed?: readonly string[] }>
  >;
  /** A scenario may list it as equipment of a pole; the rest comes with framing, spans and premises. */
  readonly equipment?: true;
  readonly branches: (part: PartView) => readonly Branch[];
  /** Voltage relays of the part as it stands. */
  readonly watches?: (part: PartView) => readonly Watch[];
  readonly solids: (part: PartView) => readonly Solid[];
  readonly features: readonly Feature[];
  /** Conditions that a trainee may name on such a part (ids of `conditions`). */
  readonly conditions: readonly string[];
  /** Conditions that hold by the part's state, faults apart: a blown link is `fuse-operated`. */
  readonly trueWhen: readonly { readonly condition: string; readonly when: Readonly<Record<string, string>> }[];
  /** Steady sound of the healthy part, by state; `load`: branches that load its engine, whose note then sags. */
  readonly sound?: (part: PartView) => {
    readonly sound: string;
    readonly level: number;
    readonly atM: number;
    readonly caption: string;
    readonly load?: { readonly branches: readonly string[]; readonly volts: number; readonly rating: number };
  } | null;
  /** What others could do to it unless tagged, blanked, removed or held: state changes that bring energy back. */
  readonly othersMay: readonly {
    readonly when: Readonly<Record<string, string>>;
    readonly becomes: Readonly<Record<string, string>>;
    readonly unless: readonly string[];
    readonly who: string;
  }[];
  /** What a stick, a gloved hand or a person can do to its state, and how the trade calls it. */
  readonly operations: readonly Operation[];
  /**
   * Where it usually hangs: metres below the roof or above ground, and from the middle of the pole; or on another part of the
   * pole, so far along it (common practice).
   */
  readonly mounting?:
    | { readonly belowM: number; readonly outM: number }
    | { readonly aboveM: number; readonly outM: number }
    | { readonly along: string; readonly share: number };
  /** What it makes of another part of its pole, by name: an insulator in a guy, an anchor told apart from it. */
  readonly alters?: { readonly name: string; readonly words: Readonly<Record<string, string>> };
  readonly brings?: readonly LeadKind[];
  /** Holds a conductor that runs on past it, or one that ends at it; so it decides what pulls at its pole. */
  readonly holds?: 'through' | 'end';
  /** Ties a conductor to what holds it; when it lets go, the conductor comes off there. */
  readonly ties?: true;
  readonly source: Source;
}

/** A change of state by a hand, a stick or an owner. */
export interface Operation {
  readonly id: string;
  readonly label: string;
  readonly by: 'stick' | 'hand' | 'owner' | 'dispatcher';
  readonly from: Readonly<Record<string, readonly string[]>>;
  readonly to: Readonly<Record<string, string>>;
  readonly minutes: number;
  /** Terminals whose contact makes or breaks, for flash. */
  readonly makes?: readonly [string, string];
  readonly breaks?: readonly [string, string];
  /** Terminals that the hand or stick touches. */
  readonly touches: readonly string[];
}
