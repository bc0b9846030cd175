/** The written form, checked and in SI. Every id starts with a letter; part ids are `<pole or premises>.<name>`. */
import type { Phases } from '../catalogue/phaseNets.ts';
import type { Side } from '../catalogue/types.ts';

/** What a scenario was drawn from, by which seed, and which of that seed's it is. */
export interface ScenarioVariant {
  readonly of: string;
  readonly seed: number;
  readonly number: number;
}

export interface Scenario {
  readonly format: 1;
  readonly id: string;
  readonly title: string;
  readonly grade: 1 | 2 | 3;
  readonly teaches: string;
  /** Where a drawn scenario comes from. */
  readonly variant?: ScenarioVariant;
  readonly call: ScenarioCall;
  readonly site: ScenarioSite;
  readonly supply: ScenarioSupply;
  readonly poles: readonly ScenarioPole[];
  readonly spans: readonly ScenarioSpan[];
  /** Secondary conductors from pole to pole, that tie two transformers' secondaries together. */
  readonly secondaries?: readonly ScenarioSecondary[];
  /** Communication cables on the same poles. */
  readonly communications?: readonly ScenarioCable[];
  readonly equipment: readonly ScenarioEquipment[];
  readonly premises: readonly ScenarioPremises[];
  readonly crew: ScenarioCrew;
  /** Whoever else is there or comes: bystanders, a flagger, a foreman; the dog too. */
  readonly people: readonly ScenarioPerson[];
  /** What happens by the clock, in order of time. */
  readonly events: readonly ScenarioEvent[];
  readonly tools: readonly ScenarioTool[];
  readonly faults: readonly ScenarioFault[];
  /** Declared look-alikes: benign kinds laid on parts. */
  readonly lookAlikes: readonly ScenarioFault[];
  readonly job: ScenarioJob;
  /** Notes for the instructor's sheet, in the order written; no part of the drill, nor of its hash. */
  readonly instructor?: readonly string[];
}

export interface ScenarioCall {
  /** Local time of the ticket, 'HH:MM'; date 'YYYY-MM-DD'. */
  readonly date: string;
  readonly time: string;
  readonly place: string;
  readonly from: string;
  readonly said: string;
  readonly customersOut: number;
  /** Oldest first. */
  readonly ticketHistory: readonly string[];
  /** What the caller answers on the telephone, by topic. */
  readonly caller: Readonly<Record<string, string>>;
  /** What the dispatcher answers, by topic, if asked. */
  readonly dispatcher: Readonly<Record<string, string>>;
}

/** What kind of place the line runs through; for the picture only, so unnamed is open farmland. */
export const settings = ['farmland', 'woods', 'orchard', 'village', 'street', 'works'] as const;
export type Setting = (typeof settings)[number];

export interface ScenarioSite {
  readonly setting?: Setting;
  readonly light: 'day' | 'dusk' | 'dawn' | 'night';
  /** Horizontal illuminance from the sky, lux. */
  readonly skyLux: number;
  /** Meteorological visibility, metres. */
  readonly visibilityM: number;
  /** 0 dry … 1 streaming wet. */
  readonly wetness: number;
  readonly windMs: number;
  /** Wind in which nobody goes aloft here: the lift's or the employer's limit. */
  readonly windLimitMs: number;
  readonly precipitation: Precipitation;
  readonly lightning: 'none' | 'near';
  /** Water stands on the ground. */
  readonly flooded: boolean;
  readonly temperatureC: number;
  /** Soil resistivity, ohm metres. */
  readonly resistivity: number;
  readonly altitudeM: number;
  /** Background level, dB(A), and what it is. */
  readonly backgroundDb: number;
  readonly traffic: 'none' | 'light' | 'heavy';
  /** How fast it goes past, metres a second. */
  readonly trafficMs: number;
  readonly weather: readonly ({ readonly atMinute: number } & Partial<WeatherNow>)[];
}

export const precipitations = ['none', 'drizzle', 'rain', 'snow', 'ice'] as const;
export type Precipitation = (typeof precipitations)[number];

/** What of the site a change of weather may name. */
export interface WeatherNow {
  readonly visibilityM: number;
  readonly skyLux: number;
  readonly wetness: number;
  readonly windMs: number;
  readonly precipitation: Precipitation;
  readonly lightning: 'none' | 'near';
  readonly flooded: boolean;
  readonly traffic: 'none' | 'light' | 'heavy';
}

export interface ScenarioSupply {
  /** Phase-to-phase and phase-to-ground volts of the nominal system; of a delta, to its star point. */
  readonly system: string;
  readonly lineVolts: number;
  readonly phaseVolts: number;
  readonly circuit: string;
  /** Where the source feeds in, a net of a pole: 'p1.main'. */
  readonly at: string;
  /** Available phase-to-ground fault current there, amperes, and X/R; of a delta, of three phases. */
  readonly faultAmps: number;
  readonly xOverR: number;
  /** Nothing grounds the system. */
  readonly delta?: true;
  /** Phases that come in, each on its own net; one without a letter if not said. */
  readonly phases?: Phases;
  /** Fault current of three phases, amperes; like the one to ground if not said. */
  readonly threePhaseAmps?: number;
  /** The upstream device as a recloser of the scene, out of sight. */
  readonly recloser?: { readonly pickUpA: number; readonly fast: number; readonly blocked: boolean };
  readonly upstream: {
    readonly name: string;
    readonly customers: number;
    readonly travelMin: number;
    readonly recloses: boolean;
  };
}

export interface ScenarioPole {
  readonly id: string;
  readonly number: string;
  /** Along the line (x, source to load) and toward the field side (y), metres. */
  readonly x: number;
  readonly y: number;
  readonly lengthM: number;
  readonly class: string;
  readonly framing: 'tap' | 'tangent' | 'deadend' | 'arm' | 'arm-tap' | 'arm-deadend' | 'arm-suspension' | 'armless';
  /** What carries its conductors through; a pin insulator if not said. */
  readonly insulator?: 'pin' | 'post' | 'polymer-post';
  /** How they are tied; preformed if not said. */
  readonly tie?: 'preformed' | 'hand';
  /** What its dead ends are made of; a polymer insulator if not said. */
  readonly strings?: 'porcelain' | 'polymer' | 'glass';
}

export interface ScenarioSpan {
  readonly id: string;
  /** Nets joined by the phase conductor, 'p1.tap' → 'p2.phase'; the neutral follows. */
  readonly from: string;
  readonly to: string;
  readonly conductor: string;
  readonly neutral: string;
  readonly sagM: number;
  /** Phases that it carries, each from net to net; one without a letter if not said. */
  readonly phases?: Phases;
  /** A single conductor beside others: metres toward the field from the pole, and below its roof. */
  readonly beside?: { readonly across: number; readonly below: number };
}

export interface ScenarioSecondary {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly sagM: number;
}

/** A communication cable from pole to pole, below everything else. */
export interface ScenarioCable {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly sagM: number;
}

export interface ScenarioEquipment {
  readonly id: string;
  readonly kind: string;
  readonly pole: string;
  readonly heightM?: number;
  readonly side?: Side;
  readonly nets?: Readonly<Record<string, string>>;
  readonly state?: Readonly<Record<string, string>>;
  readonly values?: Readonly<Record<string, number>>;
  readonly words?: Readonly<Record<string, string>>;
}

export interface ScenarioPremises {
  readonly id: string;
  readonly name: string;
  readonly x: number;
  readonly y: number;
  /** Pole that serves it and length of the drop. */
  readonly from: string;
  readonly customer: string;
  /** Load on each leg and across both, watts. */
  readonly loadW: readonly [number, number, number];
  readonly main: 'closed' | 'open';
  readonly own?: {
    readonly kind: 'generator' | 'governed-generator' | 'photovoltaic' | 'battery';
    readonly kva: number;
    /** Cabled into the panel with nothing between, or by a transfer switch and its position; and less usual ways. */
    readonly connection:
      | 'panel-cord'
      | 'transfer-switch'
      | 'neutral-transfer-switch'
      | 'interlock'
      | 'panel-breaker'
      | 'none';
    readonly transfer?: 'utility' | 'generator';
    readonly running: boolean;
    /** An inverter that holds its voltage without the line. */
    readonly islands?: boolean;
    readonly place: string;
  };
  /** What the customer answers, by topic. */
  readonly says: Readonly<Record<string, string>>;
}

export interface ScenarioCrew {
  /** Minutes after acknowledging until the second worker is there; 0: already there. */
  readonly secondMin: number;
  readonly secondName: string;
  readonly today: string;
}

export const otherRoles = ['bystander', 'child', 'dog', 'foreman', 'flagger'] as const;

export interface ScenarioPerson {
  readonly id: string;
  readonly role: (typeof otherRoles)[number];
  readonly name: string;
  /** Stand on the ground; absent: not there yet, or only by event. */
  readonly at?: string;
  readonly says: Readonly<Record<string, string>>;
}

export const eventWords = ['comes', 'leaves', 'starts-set', 'closes', 'thunder', 'calls'] as const;

/** Something that happens so many minutes after the call was acknowledged, unless the crew has seen to it. */
export interface ScenarioEvent {
  readonly atMinute: number;
  readonly what: (typeof eventWords)[number];
  /** Person who comes or leaves, or premises whose set is started. */
  readonly who?: string;
  /** Stand where somebody comes to. */
  readonly to?: string;
  /** Device that somebody closes. */
  readonly part?: string;
  readonly says?: string;
}

export interface ScenarioTool {
  readonly id: string;
  readonly kind: string;
  readonly ratedVolts?: number;
  /** Last test, 'YYYY-MM-DD'. */
  readonly tested?: string;
  readonly note?: string;
  readonly words?: Readonly<Record<string, string>>;
}

export interface ScenarioFault {
  readonly id: string;
  readonly kind: string;
  /** Part, tool, person, or 'site'. */
  readonly on: string;
  readonly side?: Side;
  /** Where a leak ends: 'p2.ground-lead/top'. */
  readonly to?: string;
  readonly values?: Readonly<Record<string, number>>;
  /** Words that somebody says because of it. */
  readonly says?: string;
}

export interface ScenarioJob {
  readonly id: string;
  /** The job of the catalogue that it is, with its usual steps. */
  readonly kind?: string;
  readonly words: string;
  /** Parts whose supply must be restored, and the voltage check that proves it. */
  readonly restores: readonly string[];
}
