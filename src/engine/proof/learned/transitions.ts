/**
 * `act` learned: its parts in their order (acts/act.ts), each a function of the places that it read (trie.ts). A World is a
 * tuple of the numbers of its members (members.ts), in the reduced form (reduced.ts); a transition is a walk down a few
 * trees. What no run has shown yet is run once by the engine itself over recording Worlds (recording.ts). So an act that
 * does not read a part, a tool or somebody needs no new run where those stand otherwise; that parts are independent, tools
 * alike or looks harmless nobody has to say. Held against `act` itself, step by step (tests).
 */
import type { Act, ActName } from '../../acts/types.ts';
import { settle } from '../../circuit/settle.ts';
import type { World } from '../../world/types.ts';
import { EngineParts, type Judge, type Judged } from './engineParts.ts';
import { Learner } from './learner.ts';
import { at, type MemberName, memberNames } from './members.ts';
import { byMinute, isReduced, reduced, reducedMember, type Timing, timingOf } from './reduced.ts';
import { copy, put, SIZE, type Tuple } from './tuples.ts';

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
  readonly start: Tuple;
  readonly timing: Timing;
  /** Steps asked for. */
  asked = 0;
  private readonly learner: Learner;
  private readonly parts: EngineParts;
  private readonly reductions: readonly Map<number, number>[];
  /** Members set back after each step to what they were at the start. */
  private readonly forgotten: readonly number[];
  private readonly notices: boolean;
  /** The last round of offers in which an act came up. */
  private readonly offeredIn: number[] = [];
  private round = 0;
  private readonly passed: Tuple = new Int32Array(SIZE);
  private readonly pair: Tuple = new Int32Array(2 * SIZE);

  /** `forgets` names members that the caller knows to be read by nothing that it asks for. */
  constructor(world: World, judge: Judge | null, forgets: readonly MemberName[] = []) {
    this.timing = timingOf(world);
    this.learner = new Learner(reduced(settle(world).world, this.timing));
    this.parts = new EngineParts(this.learner, judge);
    this.start = new Int32Array(SIZE);
    this.reductions = memberNames.map(() => new Map());
    this.forgotten = forgets.map((name) => at[name]);
    this.notices = !forgets.includes('knowledge');
  }

  /** Runs of the engine for the steps. */
  get runs(): number {
    return this.learner.runs;
  }

  get acts(): readonly Act[] {
    return this.parts.acts;
  }

  /** The tuple of a World of the same drill. */
  tupleOf(world: World): Tuple {
    const form = reduced(world, this.timing);
    return Int32Array.from(memberNames, (name, i) => this.learner.group(i).numberOf(form[name]));
  }

  /** The World of a tuple. */
  worldOf(tuple: ArrayLike<number>): World {
    return this.learner.worldOf(tuple);
  }

  /** The number of an act. */
  numberOf(act: Act): number {
    return this.parts.numberOf(act);
  }

  /** Acts of the kinds on offer, those that are refused left out. */
  offered(tuple: ArrayLike<number>, names: readonly ActName[], into: number[]): void {
    into.length = 0;
    this.round++;
    for (const name of names) {
      for (const act of this.parts.offering(tuple, name)) {
        if (this.offeredIn[act] === this.round) continue;
        this.offeredIn[act] = this.round;
        if (this.parts.minutes(tuple, act) >= 0) into.push(act);
      }
    }
  }

  private reduce(tuple: Tuple, slot: number): void {
    const member = tuple[slot] as number;
    const name = memberNames[slot] as MemberName;
    const clock = isByMinuteAt[slot] ? (tuple[at.clock] as number) : 0;
    const map = this.reductions[slot] as Map<number, number>;
    const key = member * 4096 + clock;
    let number = map.get(key);
    if (number === undefined) {
      number = this.learner.group(slot).numberOf(reducedMember(this.worldOf(tuple), name, this.timing));
      map.set(key, number);
    }
    tuple[slot] = number;
  }

  /** One step from the tuple into another one; what came of it into `taken`. False where it is impossible. */
  take(from: Tuple, act: number, to: Tuple, taken: Taken): boolean {
    this.asked++;
    const minutes = this.parts.minutes(from, act);
    taken.minutes = minutes;
    if (minutes < 0) return false;
    const { parts, passed, pair } = this;
    copy(from, passed, 0);
    if (minutes > 0) put(passed, parts.passing(passed, minutes));
    const { effects, reach } = parts.applying(passed, act, minutes);
    copy(passed, to, 0);
    put(to, effects);
    put(to, parts.settling(to));
    const flashed = parts.flashing(to, minutes);
    if (flashed.length > 0) {
      put(to, flashed);
      put(to, parts.settling(to));
    }
    taken.reach = reach;
    taken.judged.length = 0;
    let strikes = false;
    if (reach.length > 0) {
      copy(passed, pair, 0);
      copy(to, pair, SIZE);
      for (const each of reach) {
        const judged = parts.judging(pair, each);
        taken.judged.push(judged);
        strikes ||= judged.strikes;
      }
    }
    for (const slot of this.forgotten) to[slot] = this.start[slot] as number;
    // What is perceived keeps no minute (reduced.ts), so nothing more hangs on how the clock got here.
    for (let slot = SIZE - 1; slot >= 0; slot--) {
      if (slot !== at.knowledge) this.reduceAfter(from, to, slot, minutes);
    }
    if (strikes) {
      to[at.ended] = this.learner.group(at.ended).numberOf('struck');
    } else if (this.notices) {
      put(to, parts.noticing(to));
    }
    this.reduceAfter(from, to, at.knowledge, minutes);
    return true;
  }

  private reduceAfter(from: Tuple, to: Tuple, slot: number, minutes: number): void {
    if (isReducedAt[slot] && (to[slot] !== from[slot] || (minutes > 0 && isByMinuteAt[slot]))) this.reduce(to, slot);
  }
}
