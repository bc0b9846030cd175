/**
 * The least minutes of a drill that exposes nobody and ends restored, from below: every double of a drill (doings.ts)
 * explored by A* over the learned engine, exposures judged where hands, stick or hooks are on something, up to a bound. No
 * drill is shorter than the first double found whole after closing out; where there is none under the bound, none is.
 * The survey, what is owed (owed.ts) and exposures by standing somewhere are left out, so the bound may be too low, never too high.
 * Chance brings nothing (chance.ts). What the double did is a guess at a route, to be walked by `act` itself (guessed.ts).
 *
 * Telling of what stays can be done anywhere at any time, so where nothing is due by the clock its minute is added at the
 * end; else it is taken as an act.
 *
 * Grounds. Taken is one set of two clamps on metal that is under 50 V in ordinary service (lowClampings.ts), put on unjudged. Any other use
 * costs six minutes that no double has: three clamps on and off; two sets on and off; or, on metal that has to be tested
 * first, two clamps on and off, a test, its tester proved before and after.
 */
import { minutesOf, act as plainAct } from '../acts/act.ts';
import { perClamp } from '../acts/ground.ts';
import { clampSetsOf } from '../acts/toolsFor.ts';
import type { Act } from '../acts/types.ts';
import type { Reach } from '../hazards/types.ts';
import type { World } from '../world/types.ts';
import { doingsOf } from './doings.ts';
import { isWhole } from './goals.ts';
import { kept } from './learned/books.ts';
import { exploreAll } from './learned/exploreAll.ts';
import { at } from './learned/members.ts';
import { Transitions } from './learned/transitions.ts';
import { LowClampings } from './lowClampings.ts';
import type { Means } from './peek.ts';
import { closingOut, stillToCome } from './stillToCome.ts';
import { staysDeadly } from './toDo.ts';

/** Minutes that any other use of grounds takes. */
const OTHER_GROUNDS = 6;

export interface Careful {
  /** No drill is shorter. */
  readonly atLeast: number;
  /** What the first double that came so far did after the call was taken; null where none did. */
  readonly acts: readonly Act[] | null;
  readonly states: number;
  readonly transitions: number;
}

export interface CarefulOptions {
  /** Minutes above which nothing is asked. */
  readonly most: number;
  /** Runs of the engine before it gives up. */
  readonly runs: number;
  /** Minutes between what is known to come and `most`, above which nothing is explored. */
  readonly slack: number;
}

const isBusy = ({ works, touches, switches, climbs, disturbs }: Reach): boolean =>
  works || touches.length > 0 || switches !== null || climbs !== null || disturbs !== null;

const isClamping = ({ switches }: Reach): boolean => switches?.clamps !== undefined;

/** Told to the dispatcher where something that can kill stays. */
export const staying: Act = { act: 'tell', who: 'dispatcher', what: 'stays-out' };

/** From a World fresh from `build`. */
export function carefulOf(
  means: Means,
  start: World,
  deadly: ReadonlySet<string>,
  { most, runs, slack }: CarefulOptions,
): Careful {
  const doings = doingsOf(plainAct(start, { act: 'acknowledge' }).world, most);
  const { world } = doings;
  const judge = (reach: Reach, before: World, after: World) =>
    isBusy(reach) && !isClamping(reach) ? means.step.met(reach, before, after) : [];
  const transitions = new Transitions(world, judge, [
    'knowledge',
    'paper',
    ...(doings.wets ? (['tools'] as const) : []),
  ]);
  const isStill = transitions.timing.last <= world.clock.minute;
  const tells = staysDeadly(world, deadly);
  const telling = tells ? minutesOf(world, staying) : 0;
  const toCome = stillToCome(world, transitions, deadly);
  const hasTold = new Map<number, boolean>();
  const isTold = (tuple: Int32Array): boolean =>
    kept(hasTold, tuple[at.orders] as number, () =>
      transitions.worldOf(tuple).orders.reported.includes(staying.act === 'tell' ? staying.what : ''),
    );
  const rest = (tuple: Int32Array): number => toCome(tuple) + (tells && (isStill || !isTold(tuple)) ? telling : 0);
  const known = rest(transitions.start);
  if (most - known > slack) return { atLeast: known, acts: null, states: 0, transitions: 0 };
  const search = (upTo: number, adds?: (tuple: Int32Array, spare: number) => readonly Act[]) => {
    let acts: readonly Act[] | null = null;
    const explored = exploreAll(transitions, adds ? [...doings.kinds, 'unground'] : doings.kinds, {
      runs,
      most: upTo,
      rest,
      leaves: (act) => doings.leavesOut(act) && !(tells && !isStill && isSame(act, staying)),
      counts: (_, { judged }) => judged.every(({ meetings }) => meetings.length === 0),
      ...(adds && { adds }),
      enter: (tuple, _, route) => {
        const now = transitions.worldOf(tuple);
        if (now.ended !== 'closed-out' || !isWhole(now, deadly) || (tells && !isStill && !isTold(tuple))) return false;
        acts = [...route().slice(0, -1), ...(tells && isStill ? [staying] : []), closingOut];
        return true;
      },
    });
    const atLeast = explored.end === 'exhausted' ? upTo + 1 : explored.minutes;
    return { atLeast, acts, states: explored.states, transitions: explored.transitions };
  };
  const bare = search(most);
  if (clampSetsOf(world).length === 0) return bare;
  const upTo = Math.min(bare.atLeast, known + OTHER_GROUNDS) - 1;
  const setsMinutes = 4 * perClamp;
  if (known + setsMinutes > upTo) return { ...bare, atLeast: upTo + 1 };
  const low = new LowClampings(means, world);
  const grounded = search(upTo, (tuple, spare) => {
    const now = transitions.worldOf(tuple);
    return spare < setsMinutes || now.jumpers.length > 0 ? [] : low.at(now);
  });
  return {
    atLeast: grounded.atLeast,
    acts: grounded.acts ?? bare.acts,
    states: bare.states + grounded.states,
    transitions: bare.transitions + grounded.transitions,
  };
}

const isSame = (a: Act, b: Act): boolean => JSON.stringify(a) === JSON.stringify(b);
