/**
 * `act` learned: its parts in their order (acts/act.ts), each a function of the places that it read (trie.ts). A World is a
 * tuple of the numbers of its members (members.ts), in the reduced form (reduced.ts); a transition is a walk down a few
 * trees. What no run has shown yet is run once by the engine itself over recording Worlds (recording.ts). So an act that
 * does not read a part, a tool or somebody needs no new run where those stand otherwise; that parts are independent, tools
 * alike or looks harmless nobody has to say. Held against `act` itself, step by step (tests).
 */
import { minutesOf, refusalOf } from '../../acts/act.ts';
import { passMinutes } from '../../acts/clock.ts';
import { fallBy } from '../../acts/falling.ts';
import { flashOver } from '../../acts/flashover.ts';
import type { Offer } from '../../acts/kind.ts';
import { kindOf, kinds } from '../../acts/kinds.ts';
import { hear } from '../../acts/perceive.ts';
import { standing } from '../../acts/presence.ts';
import type { Act, ActName } from '../../acts/types.ts';
import { settle } from '../../circuit/settle.ts';
import type { Reach } from '../../hazards/types.ts';
import { trainee } from '../../world/edit.ts';
import type { World } from '../../world/types.ts';
import { Book, kept } from './books.ts';
import { EffectBook, type Effects } from './effects.ts';
import { at, Group, type MemberName, memberNames, type Place } from './members.ts';
import { type Manner, type Run, recorded } from './recording.ts';
import { byMinute, isReduced, reduced, reducedMember, type Timing, timingOf } from './reduced.ts';
import { Trie } from './trie.ts';

/** Members of a World. */
export const SIZE = memberNames.length;
export type Tuple = Int32Array;

/** What judges a reach: plain data a meeting, `strikes` among it. */
export type Judge = (
  reach: Reach,
  before: World,
  after: World,
) => readonly { readonly hazard: string; readonly strikes: boolean }[];

/** What came of a reach, kept once. */
export interface Judged {
  readonly meetings: ReturnType<Judge>;
  readonly strikes: boolean;
}

interface Applied {
  readonly effects: Effects;
  readonly reach: readonly number[];
}

const none: Effects = [];

/** Acts whose change is worked out on a circuit: they read the parts as one. */
const onCircuit = new Set<ActName>([
  'test',
  'ask',
  'tell',
  'listen',
  'look',
  'touch',
  'order',
  'count-grounds',
  'owner',
  'ground',
  'unground',
]);

const wholeParts: ReadonlySet<MemberName> = new Set(['parts', 'jumpers']);
const nothingWhole: ReadonlySet<MemberName> = new Set();

const isReducedAt = memberNames.map(isReduced);
const isByMinuteAt = memberNames.map((name) => byMinute.has(name));

/** What came of a step. */
export interface Taken {
  /** -1: the act is impossible. */
  minutes: number;
  /** By reach: what it met. */
  readonly judged: Judged[];
  reach: readonly number[];
}

export class Transitions {
  readonly groups: readonly Group[];
  readonly start: Tuple;
  readonly acts: Act[] = [];
  readonly timing: Timing;
  /** Steps asked for, and runs of the engine for them. */
  asked = 0;
  runs = 0;
  private readonly fixed: World;
  private readonly judge: Judge | null;
  private readonly actNumbers = new Map<string, number>();
  private readonly effects: EffectBook;
  private readonly reaches = new Book<Reach>();
  private readonly judgements = new Book<Judged>();
  private readonly begins: Trie<number>[] = [];
  private readonly applies: Trie<Applied>[] = [];
  /** By minutes. */
  private readonly passes: Trie<Effects>[] = [];
  private readonly settles = new Trie<Effects>();
  private readonly flashes: Trie<Effects>[] = [];
  private readonly judges: Trie<number>[] = [];
  private readonly notices = new Trie<Effects>();
  private readonly offers = new Map<ActName, Trie<readonly number[]>>();
  private readonly lists: Set<Place>;
  private readonly reductions: readonly Map<number, number>[];
  /** The last round of offers in which an act came up. */
  private readonly offeredIn: number[] = [];
  private round = 0;
  private readonly passed: Tuple = new Int32Array(SIZE);
  private readonly pair: Tuple = new Int32Array(2 * SIZE);

  constructor(world: World, judge: Judge | null) {
    this.timing = timingOf(world);
    this.fixed = world;
    this.judge = judge;
    const first = reduced(settle(world).world, this.timing);
    this.groups = memberNames.map((name) => new Group(name, first[name]));
    this.start = new Int32Array(SIZE);
    this.effects = new EffectBook(this.groups);
    this.reductions = memberNames.map(() => new Map());
    const list = (name: MemberName, key: string): Place => (this.groups[at[name]] as Group).root.child(key);
    this.lists = new Set([
      ...(['looks', 'heard', 'asked', 'readings', 'tests'] as const).map((key) => list('knowledge', key)),
      list('paper', 'briefings'),
    ]);
  }

  /** The tuple of a World of the same drill. */
  tupleOf(world: World): Tuple {
    const form = reduced(world, this.timing);
    return Int32Array.from(memberNames, (name, i) => (this.groups[i] as Group).numberOf(form[name]));
  }

  /** The World of a tuple. */
  worldOf(tuple: ArrayLike<number>): World {
    const members = memberNames.map(
      (name, i) => [name, (this.groups[i] as Group).members[tuple[i] as number]] as const,
    );
    return { ...this.fixed, ...Object.fromEntries(members) } as World;
  }

  /** The number of an act. */
  numberOf(act: Act): number {
    return kept(this.actNumbers, JSON.stringify(act), () => {
      this.acts.push(act);
      this.begins.push(new Trie());
      this.applies.push(new Trie());
      return this.acts.length - 1;
    });
  }

  reachOf(number: number): Reach {
    return this.reaches.things[number] as Reach;
  }

  /** Acts of the kinds on offer, those that are refused left out. */
  offered(tuple: ArrayLike<number>, names: readonly ActName[], into: number[]): void {
    into.length = 0;
    this.round++;
    for (const name of names) {
      const trie = kept(this.offers, name, () => new Trie<readonly number[]>());
      const found =
        trie.find(tuple) ??
        this.learn(trie, tuple, name === 'ground' || name === 'unground' ? wholeParts : nothingWhole, (world, run) => {
          const offers = kinds[name].offers(world) as readonly Offer<ActName>[];
          return offers.map(({ act }) => this.numberOf(run.bare(act) as Act));
        });
      for (const act of found) {
        if (this.offeredIn[act] === this.round) continue;
        this.offeredIn[act] = this.round;
        if (this.minutes(tuple, act) >= 0) into.push(act);
      }
    }
  }

  /** Runs a part of the engine's step over a recording World. */
  private learn<T>(
    trie: Trie<T>,
    tuple: ArrayLike<number>,
    whole: ReadonlySet<MemberName>,
    body: (world: World, run: Run) => T,
  ): T {
    this.runs++;
    const manner: Manner = { whole, lists: this.lists };
    const { run, outcome } = recorded(manner, (each) => body(each.world(this.groups, tuple, 0, this.fixed), each));
    trie.learn(tuple, run.reads, outcome);
    return outcome;
  }

  /** The same for what reads two Worlds. */
  private learnTwo<T>(trie: Trie<T>, pair: Tuple, body: (before: World, after: World, run: Run) => T): T {
    this.runs++;
    const manner: Manner = { whole: wholeParts, lists: this.lists };
    const { run, outcome } = recorded(manner, (each) =>
      body(each.world(this.groups, pair, 0, this.fixed), each.world(this.groups, pair, SIZE, this.fixed), each),
    );
    trie.learn(pair, run.reads, outcome);
    return outcome;
  }

  /** Minutes that the act takes; -1 where it is impossible. */
  minutes(tuple: ArrayLike<number>, act: number): number {
    const trie = this.begins[act] as Trie<number>;
    const intent = this.acts[act] as Act;
    return (
      trie.find(tuple) ??
      this.learn(trie, tuple, nothingWhole, (world) =>
        refusalOf(world, intent) === null ? minutesOf(world, intent) : -1,
      )
    );
  }

  private passing(minutes: number): Effects {
    const trie = this.passes[minutes] ?? new Trie<Effects>();
    this.passes[minutes] = trie;
    return (
      trie.find(this.passed) ??
      this.learn(trie, this.passed, nothingWhole, (world, run) =>
        this.effects.of(run.changes(this.groups, this.passed, passMinutes(world, minutes).world)),
      )
    );
  }

  private applying(act: number, minutes: number): Applied {
    const trie = this.applies[act] as Trie<Applied>;
    const intent = this.acts[act] as Act;
    const known = trie.find(this.passed);
    if (known !== undefined) return known;
    const whole = onCircuit.has(intent.act) ? wholeParts : nothingWhole;
    return this.learn(trie, this.passed, whole, (world, run) => {
      const done = kindOf(intent.act).apply(world, intent);
      const stays = done.reach.length > 0 || minutes === 0 || trainee(done.world).at === null;
      const reach = stays ? done.reach : [standing(done.world, minutes * 60)];
      const fallen = fallBy(done.world, intent).world;
      return {
        reach: reach.map((each) => this.reaches.numberOf(run.bare(each) as Reach)),
        effects: this.effects.of(run.changes(this.groups, this.passed, fallen)),
      };
    });
  }

  private settling(tuple: Tuple): Effects {
    return (
      this.settles.find(tuple) ??
      this.learn(this.settles, tuple, wholeParts, (world, run) =>
        this.effects.of(run.changes(this.groups, tuple, settle(world).world)),
      )
    );
  }

  private flashing(tuple: Tuple, minutes: number): Effects {
    const trie = this.flashes[minutes] ?? new Trie<Effects>();
    this.flashes[minutes] = trie;
    return (
      trie.find(tuple) ??
      this.learn(trie, tuple, wholeParts, (world, run) =>
        this.effects.of(run.changes(this.groups, tuple, flashOver(world, minutes).world)),
      )
    );
  }

  private judging(reach: number): number {
    const trie = this.judges[reach] ?? new Trie<number>();
    this.judges[reach] = trie;
    const found = trie.find(this.pair);
    if (found !== undefined) return found;
    const { judge } = this;
    if (judge === null) return this.judgements.numberOf({ meetings: [], strikes: false });
    return this.learnTwo(trie, this.pair, (before, after, run) => {
      const meetings = run.bare(judge(this.reachOf(reach), before, after)) as ReturnType<Judge>;
      return this.judgements.numberOf({ meetings, strikes: meetings.some(({ strikes }) => strikes) });
    });
  }

  /** What is noticed unasked; what it was before decides only how that is told (acts/perceive.ts). */
  private noticing(tuple: Tuple): Effects {
    return (
      this.notices.find(tuple) ??
      this.learn(this.notices, tuple, wholeParts, (world, run) =>
        this.effects.of(run.changes(this.groups, tuple, hear(world, 'loud').world)),
      )
    );
  }

  private reduce(tuple: Tuple, slot: number): void {
    const member = tuple[slot] as number;
    const name = memberNames[slot] as MemberName;
    const clock = isByMinuteAt[slot] ? (tuple[at.clock] as number) : 0;
    const map = this.reductions[slot] as Map<number, number>;
    const key = member * 4096 + clock;
    let number = map.get(key);
    if (number === undefined) {
      number = (this.groups[slot] as Group).numberOf(reducedMember(this.worldOf(tuple), name, this.timing));
      map.set(key, number);
    }
    tuple[slot] = number;
  }

  /** One step from the tuple into another one; what came of it into `taken`. False where it is impossible. */
  take(from: Tuple, act: number, to: Tuple, taken: Taken): boolean {
    this.asked++;
    const minutes = this.minutes(from, act);
    taken.minutes = minutes;
    if (minutes < 0) return false;
    const { passed, pair } = this;
    copy(from, passed, 0);
    if (minutes > 0) put(passed, this.passing(minutes));
    const { effects, reach } = this.applying(act, minutes);
    copy(passed, to, 0);
    put(to, effects);
    put(to, this.settling(to));
    const flashed = this.flashing(to, minutes);
    if (flashed !== none && flashed.length > 0) {
      put(to, flashed);
      put(to, this.settling(to));
    }
    taken.reach = reach;
    taken.judged.length = 0;
    let strikes = false;
    if (reach.length > 0) {
      copy(passed, pair, 0);
      copy(to, pair, SIZE);
      for (const each of reach) {
        const judged = this.judgements.things[this.judging(each)] as Judged;
        taken.judged.push(judged);
        strikes ||= judged.strikes;
      }
    }
    // What is perceived keeps no minute (reduced.ts), so nothing more hangs on how the clock got here.
    for (let slot = SIZE - 1; slot >= 0; slot--) {
      if (slot !== at.knowledge) this.reduceAfter(from, to, slot, minutes);
    }
    if (strikes) {
      to[at.ended] = (this.groups[at.ended] as Group).numberOf('struck');
    } else {
      put(to, this.noticing(to));
    }
    this.reduceAfter(from, to, at.knowledge, minutes);
    return true;
  }

  private reduceAfter(from: Tuple, to: Tuple, slot: number, minutes: number): void {
    if (isReducedAt[slot] && (to[slot] !== from[slot] || (minutes > 0 && isByMinuteAt[slot]))) this.reduce(to, slot);
  }
}

/** Copies a tuple; for so few numbers a loop is quickest. */
function copy(from: Tuple, to: Tuple, at: number): void {
  for (let i = 0; i < SIZE; i++) to[at + i] = from[i] as number;
}

/** Writes effects to a tuple. */
function put(tuple: Tuple, effects: Effects): void {
  for (const { slot, effect } of effects) tuple[slot] = effect.of(tuple[slot] as number);
}
