/**
 * The run form: all that the next act needs and nothing that can be derived. Plain JSON data, frozen, lists sorted by id
 * unless their order has meaning (it says so). Nobody edits a World but `act` and `settle`.
 */
import type { Mechanism, Side } from '../catalogue/types.ts';
import type { RandomState } from '../math/random.ts';
import type { Vec3 } from '../math/vec3.ts';
import type { Scenario, ScenarioSite } from '../scenario/types.ts';

/** Out of plumb: metres aside for each metre up. */
export type Lean = readonly [x: number, y: number];

/** A bare-metal point: a part and one of its terminals, 'p2.cutout/top'. */
export type PointId = string;

export interface World {
  readonly scenario: string;
  /** Hash of the parsed scenario (canonical JSON); world hashes build on it. */
  readonly scenarioHash: string;
  readonly clock: { readonly minute: number };
  readonly site: Site;
  readonly truck: Truck;
  readonly parts: readonly Part[];
  readonly stands: readonly Stand[];
  readonly people: readonly Person[];
  readonly tools: readonly Tool[];
  /** Grounds, bonds and shorts that are on, in the order they were put on. */
  readonly jumpers: readonly Jumper[];
  readonly covers: readonly { readonly part: string; readonly tool: string }[];
  readonly guards: Guards;
  readonly orders: Orders;
  readonly knowledge: Knowledge;
  readonly paper: Paper;
  readonly chance: RandomState;
  /** What is fixed for the whole drill and read by acts: call, supply, crew, job, as in the scenario. */
  readonly given: Pick<Scenario, 'call' | 'supply' | 'crew' | 'job' | 'title' | 'events' | 'variant'>;
  readonly ended: null | 'closed-out' | 'handed-over' | 'struck';
}

/** Weather, light and ground now; the weather to come moves into it as the clock runs. */
export interface Site extends ScenarioSite {
  readonly faults: readonly LaidFault[];
  /** Minute of the last thunder; null: none so far. */
  readonly thunderAt: number | null;
}

/** `cones` with their signs ahead; `barrier`: a vehicle between traffic and work; `truckGround`: the truck on the pole's ground. */
export interface Guards {
  readonly chocks: boolean;
  readonly cones: boolean;
  readonly keepOut: boolean;
  readonly barrier: boolean;
  readonly truckGround: boolean;
}

export interface Truck {
  readonly at: Vec3;
  readonly place: 'arriving' | 'clear' | 'under-line';
  readonly engine: boolean;
}

/** A component of the scene as run. `at` is its mounting point; `azimuth` where its front faces (0 = +x, π/2 = field). */
export interface Part {
  readonly id: string;
  readonly kind: string;
  /** Words for the screen that tell it from its like: 'pin insulator, tap phase, pole QR-14'. */
  readonly name: string;
  readonly pole: string | null;
  readonly premises: string | null;
  readonly at: Vec3;
  /** Other end for spans, drops, leads, guys. */
  readonly end: Vec3 | null;
  readonly azimuth: number;
  /** How far whatever of it is higher than `at` is moved aside, by a pole out of plumb: metres for each metre up; absent: upright. */
  readonly lean?: Lean;
  /** Electrical node of each terminal. */
  readonly nets: Readonly<Record<string, string>>;
  readonly state: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, number>>;
  readonly words: Readonly<Record<string, string>>;
  readonly faults: readonly LaidFault[];
  readonly tags: readonly string[];
  /** Conductors: held up by a support other than the tie. */
  readonly supported: boolean;
}

/** A fault or look-alike as laid on a part, a tool, a person or the site. */
export interface LaidFault {
  readonly id: string;
  readonly kind: string;
  readonly side: Side;
  /** Terminal where a leak ends: 'p2.ground-lead/top'. */
  readonly to: PointId | null;
  readonly values: Readonly<Record<string, number>>;
  readonly says?: string;
}

/** A standing point: where the feet are and the eye is. */
export interface Stand {
  readonly id: string;
  readonly name: string;
  readonly feet: Vec3;
  /** Metres of the eye above the feet. */
  readonly eye: number;
  /** Set when only reached by climbing or bucket. */
  readonly aloft: null | { readonly pole: string; readonly zone: 'below' | 'work' };
  /** How far hands get from the shoulder here, metres; aloft the worker shifts, so more than an arm. */
  readonly reachM: number;
  readonly near: string | null;
}

export type Role =
  | 'trainee'
  | 'second'
  | 'dispatcher'
  | 'caller'
  | 'customer'
  | 'bystander'
  | 'child'
  | 'dog'
  | 'foreman'
  | 'flagger';

/** What somebody was asked to do and does until told otherwise. */
export type Task = 'watch' | 'flag';

export interface Person {
  readonly id: string;
  readonly role: Role;
  readonly name: string;
  /** Stand id; null: on the radio or telephone, or not here yet. */
  readonly at: string | null;
  readonly arrivesAt: number | null;
  readonly premises: string | null;
  readonly wearing: readonly string[];
  readonly says: Readonly<Record<string, string>>;
  readonly aloftBy: null | 'hooks' | 'bucket';
  /** Trained for line work: 29 CFR 1910.269(a)(2)(ii). */
  readonly qualified: boolean;
  readonly task: Task | null;
  readonly faults: readonly LaidFault[];
}

export interface Tool {
  readonly id: string;
  readonly kind: string;
  readonly name: string;
  readonly ratedVolts: number | null;
  readonly tested: string | null;
  readonly wet: boolean;
  /** Wiped and looked over, air-tested, self-tested: minute of the last time and what came of it. */
  readonly checks: Readonly<Record<string, { readonly minute: number; readonly ok: boolean }>>;
  readonly faults: readonly LaidFault[];
  readonly words: Readonly<Record<string, string>>;
}

/** A protective ground, bond or short: clamps in the order they were put on; first clamp first. */
export interface Jumper {
  readonly id: string;
  readonly tool: string;
  readonly points: readonly PointId[];
}

export interface Orders {
  readonly clearance: null | {
    readonly device: string;
    readonly state: 'requested' | 'held' | 'released';
    readonly minute: number;
  };
  /** Orders to the dispatcher that are on their way, and the minute at which they are carried out. */
  readonly switching: readonly { readonly part: string; readonly operation: string; readonly due: number }[];
  readonly reported: readonly string[];
  readonly customersTold: readonly string[];
}

/** What the trainee has perceived; grows only, in order of time. */
export interface Knowledge {
  readonly looks: readonly {
    readonly part: string;
    readonly aid: string;
    readonly stand: string;
    readonly minute: number;
    readonly seen: readonly string[];
  }[];
  readonly heard: readonly { readonly sign: string; readonly stand: string; readonly minute: number }[];
  readonly asked: readonly { readonly who: string; readonly about: string; readonly minute: number }[];
  readonly readings: readonly Reading[];
  readonly tests: readonly {
    readonly on: string;
    readonly test: string;
    readonly result: string;
    readonly sign: string | null;
    readonly minute: number;
  }[];
}

/** A reading as the instrument displays it. */
export interface Reading {
  readonly point: PointId;
  readonly tool: string;
  readonly shows: 'voltage' | 'no voltage' | 'nothing';
  readonly volts: number | null;
  readonly minute: number;
}

export interface Paper {
  readonly findings: readonly Finding[];
  readonly plans: readonly {
    readonly id: string;
    readonly finding: string | null;
    readonly control: string;
    readonly by: string;
    readonly minute: number;
    /** What the finding can do, as the trainee said it; absent when not said. */
    readonly harm?: Mechanism;
  }[];
  readonly briefings: readonly {
    readonly minute: number;
    readonly topics: readonly string[];
    readonly heard: readonly string[];
    readonly rescue: boolean;
  }[];
}

export interface Finding {
  readonly id: string;
  /** Part, tool, person or 'site'. */
  readonly on: string;
  readonly condition: string;
  readonly minute: number;
  readonly confidence: number | null;
}
