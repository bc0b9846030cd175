/** Intents of the trainee. A refused act gives the same World and a reason; an unwise act happens. */
import type { Mechanism } from '../catalogue/types.ts';
import type { Exposure, Reach } from '../hazards/types.ts';
import type { ScenarioVariant } from '../scenario/types.ts';
import type { Aid } from '../senses/types.ts';
import type { PointId, Task, World } from '../world/types.ts';

export type Act =
  | { readonly act: 'acknowledge' }
  | { readonly act: 'go'; readonly to: string }
  | { readonly act: 'park'; readonly at: 'clear' | 'under-line' }
  | { readonly act: 'engine'; readonly on: boolean }
  | { readonly act: 'look'; readonly part: string; readonly aid: Aid }
  | { readonly act: 'listen' }
  | { readonly act: 'ask'; readonly who: string; readonly about: string }
  | { readonly act: 'tell'; readonly who: string; readonly what: string }
  | { readonly act: 'guard'; readonly with: 'chocks' | 'cones' | 'keep-out' | 'barrier' | 'truck-ground' }
  /** Looks at a tool's tag, wipes it, air-tests gloves, self-tests a detector. */
  | {
      readonly act: 'check-tool';
      readonly tool: string;
      readonly check: 'read-tag' | 'inspect' | 'wipe' | 'air-test' | 'self-test';
    }
  | { readonly act: 'wear'; readonly tool: string; readonly on: boolean; readonly who?: string }
  | { readonly act: 'test'; readonly point: PointId; readonly tool: string; readonly stick: string | null }
  | { readonly act: 'sound'; readonly pole: string }
  | { readonly act: 'prod'; readonly pole: string }
  | { readonly act: 'call-finding'; readonly on: string; readonly condition: string; readonly confidence?: number }
  | { readonly act: 'withdraw-finding'; readonly finding: string }
  | {
      readonly act: 'plan';
      readonly finding: string | null;
      readonly control: string;
      readonly by: string;
      /** What the finding can do, as the trainee says it. */
      readonly harm?: Mechanism;
    }
  | { readonly act: 'withdraw-plan'; readonly plan: string }
  | { readonly act: 'brief'; readonly topics: readonly string[]; readonly rescue: boolean }
  | { readonly act: 'clearance'; readonly step: 'request' | 'release'; readonly device: string }
  /** Has the dispatcher work a device out of sight. */
  | { readonly act: 'order'; readonly device: string; readonly step: 'open' | 'close' }
  /** Sends a worker to a stand or asks somebody of the public to go 'away'. */
  | { readonly act: 'send'; readonly who: string; readonly to: string }
  /** Has a worker watch the work only, or flag the traffic; null: neither. */
  | { readonly act: 'assign'; readonly who: string; readonly task: Task | null }
  /** An operation of the part's kind: open, close, remove-tube, pull, blank, fit … by hand or stick. */
  | { readonly act: 'operate'; readonly part: string; readonly operation: string; readonly stick: string | null }
  | { readonly act: 'tag'; readonly part: string; readonly on: boolean }
  | { readonly act: 'owner'; readonly part: string; readonly operation: string }
  | { readonly act: 'cover'; readonly part: string; readonly tool: string; readonly on: boolean }
  | { readonly act: 'support'; readonly part: string; readonly on: boolean }
  | {
      readonly act: 'ground';
      readonly tool: string;
      readonly points: readonly PointId[];
      readonly stick: string | null;
    }
  | { readonly act: 'unground'; readonly jumper: string; readonly stick: string | null }
  | { readonly act: 'count-grounds' }
  | { readonly act: 'aloft'; readonly pole: string; readonly by: 'hooks' | 'bucket'; readonly zone: 'below' | 'work' }
  | { readonly act: 'come-down' }
  | { readonly act: 'repair'; readonly part: string; readonly repair: string }
  | { readonly act: 'touch'; readonly point: PointId }
  | { readonly act: 'everyone-clear' }
  | { readonly act: 'wait'; readonly minutes: number }
  | { readonly act: 'hand-over' }
  | { readonly act: 'close-out' };

export type ActName = Act['act'];

/** What came of an act, as it is perceived: a tone, a voice, a flash. */
export interface WorldEvent {
  readonly event:
    | 'said'
    | 'heard'
    | 'seen'
    | 'reading'
    | 'operated'
    | 'arrived'
    | 'weather'
    | 'flash'
    | 'flashover'
    | 'fell'
    | 'struck'
    | 'done';
  readonly on: string | null;
  /** One neutral sentence. */
  readonly words: string;
}

export type ActResult =
  | {
      readonly ok: true;
      readonly world: World;
      readonly events: readonly WorldEvent[];
      readonly reach: readonly Reach[];
      readonly exposures: readonly Exposure[];
    }
  | { readonly ok: false; readonly world: World; readonly reason: string };

/** An act on offer from here, the foolish ones too, in the same type. */
export interface OfferedAct {
  readonly act: Act;
  readonly label: string;
  readonly by: 'feet' | 'eyes' | 'hands' | 'stick' | 'radio' | 'truck' | 'talk' | 'paper' | 'tools';
  readonly minutes: number;
  /** Part, tool or person that it concerns. */
  readonly about: string | null;
}

export interface LogEntry {
  readonly act: Act;
  readonly minute: number;
  /** Short hash of the World after. */
  readonly hash: string;
}

export interface Log {
  readonly format: 'loose-tie-log';
  readonly version: 1;
  readonly scenario: string;
  readonly scenarioHash: string;
  readonly engine: string;
  readonly seed: number;
  /** What a drawn scenario was drawn from; absent: nothing. */
  readonly variant?: ScenarioVariant;
  /** Proven par that Service was judged by; null: none. */
  readonly par: {
    readonly minutes: number;
    readonly customerMinutes: number;
    readonly scenarioHash: string;
    readonly engine: string;
  } | null;
  readonly entries: readonly LogEntry[];
}

/** One step of a replay: all that scoring needs. */
export interface Step {
  readonly entry: LogEntry;
  readonly before: World;
  readonly after: World;
  readonly events: readonly WorldEvent[];
  readonly reach: readonly Reach[];
  readonly exposures: readonly Exposure[];
}

export interface Replay {
  readonly log: Log;
  readonly start: World;
  readonly steps: readonly Step[];
  readonly end: World;
}
