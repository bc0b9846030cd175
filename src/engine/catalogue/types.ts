/**
 * What a kind is, shows, withstands and is called. Entries are plain data plus the few handlers that only they need;
 * nobody outside this folder asks what kind a part is: it asks the kind for the property.
 */
import type { Complex } from '../math/complex.ts';
import type { Vec3 } from '../math/vec3.ts';

/** A published document, or the honest words 'common practice', 'estimate', 'from memory'. */
export type Source = string;

/** Which face of a part: the road (−y), the field (+y), toward the source (−x), toward the load (+x), or all round. */
export const sides = ['road', 'field', 'source', 'load', 'top', 'under', 'any'] as const;
export type Side = (typeof sides)[number];

/** Ways in which a hazard reaches somebody. */
export const mechanisms = [
  'contact',
  'approach',
  'flash',
  'step',
  'drop',
  'fall',
  'struck-by',
  'lightning',
  'barrier-loss',
] as const;
export type Mechanism = (typeof mechanisms)[number];
export type Severity = 'fatal' | 'serious' | 'minor' | 'damage';
/** Hierarchy of controls, highest first. */
export const hierarchy = ['elimination', 'substitution', 'engineering', 'administrative', 'ppe'] as const;
export type Level = (typeof hierarchy)[number];

/** What an entry's handlers may know of a part: no World, no neighbours. */
export interface PartView {
  readonly id: string;
  readonly kind: string;
  /** Switch positions and the like, by the kind's `states`. */
  readonly state: Readonly<Record<string, string>>;
  /** Numbers in SI by the kind's `values`: kva, ohms, lengthM … */
  readonly values: Readonly<Record<string, number>>;
  /** Words by the kind's `words`: conductor, link … */
  readonly words: Readonly<Record<string, string>>;
}

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
  | { readonly shape: 'cylinder'; readonly from: Vec3; readonly to: Vec3; readonly radius: number }
  | { readonly shape: 'box'; readonly centre: Vec3; readonly half: Vec3 };

/** Something about a part that can be looked at, with neutral words for its ordinary condition. */
export interface Feature {
  readonly id: string;
  /** Neutral and of like length to every sign's words: 'skirts: brown glaze, even, no marks made out'. */
  readonly healthy: string;
  /** Smallest size that must be resolved to say so, metres. */
  readonly size: number;
  /** Where on the part, relative to `at`. */
  readonly offset: Vec3;
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

/** A sign that can be perceived; sizes in metres. */
export interface SignKind {
  readonly id: string;
  readonly sense: 'see' | 'hear' | 'measure' | 'ask' | 'read' | 'test';
  /** Feature of the component whose words it replaces (sense see). */
  readonly feature?: string;
  /** Neutral words, what is perceived and no diagnosis. */
  readonly words: string;
  /** Smallest dimension to be resolved and longest extent, metres. */
  readonly size?: number;
  readonly extent?: number;
  /** A dark line (crack, wire) follows the line rule, a patch the patch rule. */
  readonly shape?: 'line' | 'patch';
  /** Weber contrast, 0..1, and reflectance of the surface it lies on. */
  readonly contrast?: number;
  readonly reflectance?: number;
  /** Level in dB(A) at 1 m; `follows` scales it with the solved leakage current. */
  readonly sound?: {
    readonly sound: string;
    readonly level: number;
    readonly atM: number;
    readonly caption: string;
    readonly follows?: 'leakage';
  };
  /** Which act reveals it (sense test, ask, read): 'sound', 'prod', 'air-test', 'self-test', 'read-tag', 'inspect' … */
  readonly by?: string;
  readonly source: Source;
}

/** What a fault does to what holds, hangs or stands. */
export interface MechanicalEffect {
  /** Legs of a tie lost: its conductor lies loose. */
  readonly supports?: 'lost';
  /** Bending strength left, 0..1. */
  readonly strength?: number;
  readonly guy?: 'lost';
  /** A conductor has parted so far from its `at`: name of a value in metres. Each piece hangs from its own end, or lies. */
  readonly breaks?: string;
  /** A lead that is held at one terminal only, and what hangs from there, metres. */
  readonly hangs?: { readonly from: string; readonly metres: number };
  /** What may come down from where the part is. */
  readonly drops?: { readonly what: string; readonly kilograms: number };
}

/** A bare point of a fault: so far along the part from its `at` (name of a value), so high above the ground, metres. */
export interface FaultPoint {
  /** Terminal whose metal it is; absent: a net of its own, which the fault's leaks name as they name the point. */
  readonly on?: string;
  readonly along: string;
  readonly above: number;
}

/** Something wrong, or something that only looks wrong (`benign`). */
export interface FaultKind {
  readonly id: string;
  readonly name: string;
  /** Component kinds, tool kinds ('tool:stick'), roles ('person:second') or 'site' on which it can be laid. */
  readonly on: readonly string[];
  /** Words of the part without which it cannot lie there: porcelain cracks, polymer does not. */
  readonly only?: Readonly<Record<string, readonly string[]>>;
  readonly benign: boolean;
  readonly signs: readonly SignKind[];
  /** Conditions that name it rightly. */
  readonly conditions: readonly string[];
  /** Branch names of the part that it opens. */
  readonly opens: readonly string[];
  /** Leakage paths that it makes: terminals of the part; `to` may be overridden by the scenario's `to` (part.terminal). */
  readonly leaks: readonly {
    readonly name: string;
    readonly from: string;
    readonly to: string;
    readonly ohms: string;
    readonly credibleOhms: string;
    /** It ends on another part: the scenario must say where. */
    readonly elsewhere?: true;
    /** Metal that lies on the ground: no arc over a surface, but an electrode where it lies. */
    readonly soil?: true;
  }[];
  /** State that it is laid with; without the fault the part stands in its kind's default state. */
  readonly sets?: Readonly<Record<string, string>>;
  /** Words that hold for the part as long as the fault lies on it: a link too large. */
  readonly words?: Readonly<Record<string, string>>;
  readonly mechanical?: MechanicalEffect;
  /** Bare points that it brings within reach. */
  readonly points?: Readonly<Record<string, FaultPoint>>;
  /** What it makes of a tool: the name of the value that is its rating, the size of its cable. */
  readonly tool?: { readonly rated?: string; readonly cable?: string };
  /** What it makes of somebody. */
  readonly person?: {
    readonly unqualified?: true;
    readonly absent?: true;
    readonly unfit?: true;
    /** Names another circuit than the one meant. */
    readonly misnames?: true;
    /** Is where nobody should be. */
    readonly present?: true;
  };
  /** Preconditions that do not hold as long as it lies there and its part stands as it set it. */
  readonly defeats?: readonly string[];
  /** What it makes of the site; a word that begins with '=' names the value to take. */
  readonly site?: Readonly<Record<string, string | boolean>>;
  /** Chance in a minute that it becomes the other kind by itself. */
  readonly worsens?: { readonly perMinute: number; readonly into: string; readonly words: string };
  readonly values: Readonly<
    Record<string, { readonly default: number; readonly dimension: string; readonly doc: string }>
  >;
  readonly severity: Severity;
  readonly mechanisms: readonly Mechanism[];
  /** Lies beyond the scene: nobody here mends it, it is told to the dispatcher and handed over. */
  readonly beyond?: true;
  /** What it can do to somebody, one plain sentence. */
  readonly harm: string;
  /** Controls that work (ids), and tempting ones that do not with the reason. */
  readonly controls: readonly string[];
  readonly tempting: readonly { readonly what: string; readonly why: string }[];
  /** How to tell it from what looks like it. */
  readonly tellApart: string;
  /** Of a look-alike: conditions that are wrongly called for it. */
  readonly mistakenFor?: readonly string[];
  readonly source: Source;
}

/** A condition in the trade's words, as a trainee may call it. */
export interface ConditionKind {
  readonly id: string;
  readonly label: string;
  /** Means that nothing is wrong. */
  readonly healthy?: boolean;
}

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
