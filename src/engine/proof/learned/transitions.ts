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

/** Members that have a reduced form, what is known last: the others are of the minute that the clock then shows. */
const reducible = memberNames
  .map((name, slot) => ({ name, slot, isByMinute: byMinute.has(name) }))
  .filter(({ name }) => isReduced(name) && name !== 'knowledge')
  .reverse();

const none = new Int32Array(0);

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
  /** By place in the tuple, clock and member: what it is reduced to, and one. */
  private readonly reductions: readonly Int32Array[][];
  /** Members set back after each step to what they were at the start. */
  private readonly forgotten: readonly number[];
  private readonly notices: boolean;
  /** The last round of offers in which an act came up. */
  private readonly offeredIn: number[] = [];
  /** The minutes of each act of the last round. */
  private readonly minutesOf: number[] = [];
  private round = 0;
  private readonly passed: Tuple = new Int32Array(SIZE);
  private readonly pair: Tuple = new Int32Array(2 * SIZE);

  /** `forgets` names members that the caller knows to be read by nothing that it asks for. */
  constructor(world: World, judge: Judge | null, forgets: readonly MemberName[] = []) {
    this.timing = timingOf(world);
    this.learner = new Learner(reduced(settle(world).world, this.timing));
    this.parts = new EngineParts(this.learner, judge);
    this.start = new Int32Array(SIZE);
    this.reductions = memberNames.map(() => []);
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

  /** Acts of the kinds on offer, those that are refused left out, and those that the caller does without. */
  offered(
    tuple: ArrayLike<number>,
    names: readonly ActName[],
    into: number[],
    isLeft: (act: number) => boolean = () => false,
  ): void {
    into.length = 0;
    this.round++;
    for (const name of names) {
      for (const act of this.parts.offering(tuple, name)) {
        if (this.offeredIn[act] === this.round || isLeft(act)) continue;
        this.offeredIn[act] = this.round;
        const minutes = this.parts.minutes(tuple, act);
        this.minutesOf[act] = minutes;
        if (minutes >= 0) into.push(act);
      }
    }
  }

  private reduce(tuple: Tuple, slot: number, name: MemberName, isByMinute: boolean): void {
    const member = tuple[slot] as number;
    const clock = isByMinute ? (tuple[at.clock] as number) : 0;
    const byClock = this.reductions[slot] as Int32Array[];
    let known = byClock[clock] ?? none;
    let number = member < known.length ? (known[member] as number) - 1 : -1;
    if (number < 0) {
      number = this.learner.group(slot).numberOf(reducedMember(this.worldOf(tuple), name, this.timing));
      if (member >= known.length) {
        const longer = new Int32Array(Math.max(2 * known.length, member + 1));
        longer.set(known);
        known = longer;
        byClock[clock] = known;
      }
      known[member] = number + 1;
    }
    tuple[slot] = number;
  }

  /** One step from the tuple into another one; what came of it into `taken`. False where it is impossible. */
  take(from: Tuple, act: number, to: Tuple, taken: Taken): boolean {
    return this.step(from, act, this.parts.minutes(from, act), to, taken);
  }

  /** The same for an act that was offered in that very tuple last. */
  takeOffered(from: Tuple, act: number, to: Tuple, taken: Taken): boolean {
    return this.step(from, act, this.minutesOf[act] as number, to, taken);
  }

  private step(from: Tuple, act: number, minutes: number, to: Tuple, taken: Taken): boolean {
    this.asked++;
    taken.minutes = minutes;
    if (minutes < 0) return false;
    const { parts, pair } = this;
    const passed = minutes > 0 ? this.passed : from;
    if (minutes > 0) {
      copy(from, passed, 0);
      put(passed, parts.passing(passed, minutes));
    }
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
    if (taken.judged.length > 0) taken.judged.length = 0;
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
    for (const { name, slot, isByMinute } of reducible) {
      if (to[slot] !== from[slot] || (isByMinute && minutes > 0)) this.reduce(to, slot, name, isByMinute);
    }
    if (strikes) {
      to[at.ended] = this.learner.group(at.ended).numberOf('struck');
    } else if (this.notices) {
      put(to, parts.noticing(to));
    }
    if (to[at.knowledge] !== from[at.knowledge]) this.reduce(to, at.knowledge, 'knowledge', false);
    return true;
  }
}
