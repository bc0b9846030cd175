/**
 * Par: the route that the proof found for the call, its minutes and customer-minutes, and what no such route can fall
 * under: the highest of three bounds. One adds what every route does one after the other: parking, the shortest survey, the
 * acts that may not be missed (landmarks.ts), ending. A hand-over's route is nothing but that, so its par is exact. The other is the
 * least minute at which any arrangement of the metal is whole (arrangements.ts), and ending. Where these leave a few minutes
 * open, drills that expose nobody are explored as far as the route (careful.ts): they show that none is shorter, or one
 * that may be, which is then walked and taken if it holds.
 */
import { minutesOf } from '../acts/act.ts';
import { remoteOf } from '../acts/dispatcher.ts';
import type { Act } from '../acts/types.ts';
import type { World } from '../world/types.ts';
import type { Route } from './achieve.ts';
import type { Arrangements } from './arrangements.ts';
import { carefulOf } from './careful.ts';
import type { Blocked, Found, Surveyed } from './findRoute.ts';
import { isRestored } from './goals.ts';
import { guessed } from './guessed.ts';
import { landmarkMinutes } from './landmarks.ts';
import type { Means } from './peek.ts';
import type { Deed } from './places.ts';
import { frontOf, minutesIn, type Shortened, shorten } from './shorten.ts';
import type { Claim, Par, Priced } from './types.ts';
import type { Stage } from './walkThrough.ts';

interface Given {
  readonly arranged: Arrangements | null;
  readonly means: Means;
  readonly start: World;
  readonly survey: Surveyed;
  readonly found: Found;
  readonly handOver: Route | null;
  readonly deadly: ReadonlySet<string>;
  readonly tries: number;
}

/** How much was explored beside the routes walked. */
interface Looked {
  readonly states: number;
  readonly transitions: number;
}

const nothing: Looked = { states: 0, transitions: 0 };

/** Minutes left open, and runs of the engine for closing them. */
const SLACK = 6;
const RUNS = 6000;

export const priced = ({ world, acts, customerMinutes }: Stage): Priced => ({
  minutes: world.clock.minute,
  customerMinutes,
  acts,
});

const ending = 2;

/** Whether the line may become whole by itself, while the call is closed out: somebody else works a device. */
const isWorkedByOthers = ({ parts, given }: World): boolean =>
  parts.some((part) => remoteOf(part).length > 0) || given.events.some(({ what }) => what === 'closes');

/** No drill restores the line sooner than the states explored do, or than they go. */
const leastByStates = (start: World, arranged: Arrangements | null): number => {
  const sooner = arranged && Math.min(arranged.wholeAt ?? Number.POSITIVE_INFINITY, arranged.minutes);
  if (sooner === null || sooner === Number.POSITIVE_INFINITY) return 0;
  return isWorkedByOthers(start) ? sooner : sooner + ending;
};

/** The findings named on the sheet, just before the first deed with hands or the briefing; on a way that never parks there is no place to. */
function withCalls(acts: readonly Act[], calls: readonly Act[]): readonly Act[] {
  const quiet = new Set<Act['act']>([
    'acknowledge',
    'park',
    'engine',
    'look',
    'listen',
    'go',
    'ask',
    'check-tool',
    'sound',
    'prod',
    'wear',
    'tell',
    'wait',
    'guard',
  ]);
  const parked = acts.findIndex(({ act }) => act === 'park');
  if (parked < 0) return acts;
  const at = acts.findIndex(({ act }) => !quiet.has(act));
  const cut = at < 0 ? acts.length : Math.max(at, parked + 1);
  return [...acts.slice(0, cut), ...calls, ...acts.slice(cut)];
}

const isCall = ({ act }: Deed): boolean => act.act === 'call-finding';

interface Shortest extends Shortened, Looked {
  readonly atLeast: number;
}

/** The route made shorter, and by what the careful drills show. */
function shortest(given: Given, deeds: readonly Deed[]): Shortest | null {
  const { arranged, means, start, survey, deadly, tries } = given;
  const ends = ({ world }: Stage): boolean => world.ended === 'closed-out' && isRestored(world, deadly);
  const short = shorten(means, start, deeds, survey.wanted, ends, tries);
  if (short === null) return null;
  const arriving = minutesOf(start, { act: 'park', at: 'clear' });
  const added = arriving + survey.minutes + landmarkMinutes(means, survey.route.stage.world, deadly) + ending;
  const atLeast = Math.max(added, leastByStates(start, arranged));
  const found = minutesIn(short.best);
  if (arranged === null || atLeast >= found) return { ...short, ...nothing, atLeast };
  const careful = carefulOf(means, start, deadly, { most: found - 1, runs: RUNS, slack: SLACK });
  const { states, transitions } = careful;
  const least = { states, transitions, atLeast: Math.max(atLeast, careful.atLeast) };
  const guess =
    careful.acts &&
    guessed(
      start,
      careful.acts,
      survey.route.deeds.filter((deed) => !isCall(deed)),
    );
  const better = guess && shorten(means, start, guess, survey.wanted, ends, tries);
  return better && minutesIn(better.best) < found
    ? { ...better, front: frontOf([...short.front, ...better.front]), ...least }
    : { ...short, ...least };
}

/** The par of a start, restored where that is possible, else handed over. */
export function parOf(given: Given): Looked & { readonly par: Par | null } {
  const { survey, found, handOver } = given;
  if (found.route !== null) {
    const calls = survey.route.deeds.filter(isCall).map(({ act }) => act);
    const short = shortest(
      given,
      found.route.deeds.filter((deed) => !isCall(deed)),
    );
    if (short !== null) {
      const call = (route: Priced): Priced => ({ ...route, acts: withCalls(route.acts, calls) });
      const par: Par = {
        ...call(priced(short.best.end)),
        end: 'restored',
        atLeast: short.atLeast,
        front: short.front.map(({ end }) => call(priced(end))),
      };
      return { par, states: short.states, transitions: short.transitions };
    }
  }
  if (handOver === null) return { par: null, ...nothing };
  const price = priced(handOver.stage);
  return { par: { ...price, end: 'handed-over', atLeast: price.minutes, front: [price] }, ...nothing };
}

const blockedWords = ({ act, obstacles }: Blocked): string => {
  const what = 'repair' in act ? `${act.repair} on ${act.part}` : 'part' in act ? `${act.act} ${act.part}` : act.act;
  return `${what}: ${obstacles.map(({ id, failed }) => (failed.length > 0 ? `${id} (${failed.join(', ')})` : id)).join('; ')}`;
};

/** The claims about ends and par. */
export function routeClaims(par: Par | null, found: Found, handOver: Route | null): readonly Claim[] {
  const safe: Claim =
    par === null
      ? { id: 'safe-end', outcome: 'fails', words: 'No route to an end was found that exposes nobody.', acts: [] }
      : {
          id: 'safe-end',
          outcome: 'holds',
          words: `A route that exposes nobody leads to the call ${par.end === 'restored' ? 'restored' : 'handed over'} in ${par.minutes} minutes.`,
          acts: par.acts,
        };
  const stopped = found.blocked.map(blockedWords).join(' | ');
  const never = found.blocked.find((each) => each.never !== undefined && found.route === null)?.never;
  const whole: Claim =
    found.route !== null
      ? {
          id: 'restored',
          outcome: 'holds',
          words:
            stopped === ''
              ? 'The job can be done safely by this crew.'
              : `The job can be done safely; left for others: ${stopped}`,
          acts: [],
        }
      : never !== undefined
        ? {
            id: 'restored',
            outcome: 'holds',
            words: `The job cannot be done by this crew, so it ends in a hand-over: ${never}`,
            acts: [],
          }
        : {
            id: 'restored',
            outcome: 'not finished',
            words: `No safe way was found to do the job with this crew, so it ends in a hand-over. In the way: ${stopped}`,
            acts: [],
          };
  const price: Claim =
    par === null
      ? { id: 'par', outcome: 'fails', words: 'There is no par.', acts: [] }
      : {
          id: 'par',
          outcome: par.minutes === par.atLeast ? 'holds' : 'not finished',
          words:
            par.minutes === par.atLeast
              ? `Par is ${par.minutes} minutes and ${par.customerMinutes} customer-minutes; no such route is shorter.`
              : `Par is ${par.minutes} minutes and ${par.customerMinutes} customer-minutes, of the routes found; none can be under ${par.atLeast}.`,
          acts: [],
        };
  const stop: Claim =
    handOver === null
      ? {
          id: 'hand-over',
          outcome: 'fails',
          words: 'Even guarding, telling and handing over exposes somebody.',
          acts: [],
        }
      : {
          id: 'hand-over',
          outcome: 'holds',
          words: `The scene can be handed over properly in ${handOver.stage.world.clock.minute} minutes.`,
          acts: handOver.stage.acts,
        };
  return [safe, whole, price, stop];
}
