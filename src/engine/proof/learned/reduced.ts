/**
 * Of all Worlds with the same future, one. The clock: once nothing is due by it any more, it stands still, and what
 * counts from a minute keeps its age as far as age matters. Knowledge: what was perceived twice once, the last reading of
 * each point, of each tester's proofs the first and the last, minutes by their order alone. Paper: the last briefing.
 * Chance: one in which nothing happens (what may happen by chance is asked apart, chance.ts). Held against `act` by
 * walking both (tests).
 */
import { dispatcherMinutes } from '../../acts/clearance.ts';
import { wetAgainAfter, wetsTools } from '../../acts/clock.ts';
import { stormOver } from '../../hazards/weather.ts';
import { nextUniform, type RandomState, seedFrom } from '../../math/random.ts';
import type { Knowledge, World } from '../../world/types.ts';
import type { Member, MemberName } from './members.ts';

/** Draws in a row that an act may take, and how high the first and the others must be for nothing to happen. */
const DRAWS = 100;
const FIRST = 4;
const HIGH = 0.6;
const LOW = 0.05;

const isCalm = (start: RandomState): boolean => {
  let state = start;
  for (let i = 0; i < DRAWS; i++) {
    const [drawn, next] = nextUniform(state);
    if (drawn < (i < FIRST ? HIGH : LOW)) return false;
    state = next;
  }
  return true;
};

/** The first chance in which a hundred draws bring nothing, on from one seed. */
export const calm: RandomState = (() => {
  let state = seedFrom('calm');
  while (!isCalm(state)) state = nextUniform(state)[1];
  return state;
})();

const rains = ['rain', 'snow', 'ice'];

/** When by the clock nothing is due any more; and whether tools may get wet. */
export interface Timing {
  readonly last: number;
  /** The minute at which the clock then stands. */
  readonly still: number;
  readonly wets: boolean;
}

/** Beyond any order of minutes that knowledge may keep. */
const FAR = 1000;

export function timingOf({ site, people, given, clock }: World): Timing {
  const wets = [site, ...site.weather].some(
    ({ wetness = 0, precipitation = 'none' }) => wetness >= wetsTools || rains.includes(precipitation),
  );
  const last = Math.max(
    clock.minute,
    ...site.weather.map(({ atMinute }) => atMinute),
    ...given.events.map(({ atMinute }) => atMinute),
    ...people.flatMap(({ at, arrivesAt }) => (at === null && arrivesAt !== null ? [arrivesAt] : [])),
    wets ? wetAgainAfter : 0,
  );
  return { last, still: last + FAR, wets };
}

/** Minutes by their order: 0 for the first, the same for the same. */
function ranked<T extends { readonly minute: number }>(list: readonly T[], all: readonly number[]): readonly T[] {
  return list.map((each) => ({ ...each, minute: all.indexOf(each.minute) }));
}

const lastBy = <T>(list: readonly T[], key: (item: T) => string): readonly T[] => [
  ...new Map(list.map((item) => [key(item), item])).values(),
];

const isProof = ({ test, sign }: Knowledge['tests'][number]): boolean => test === 'self-test' && sign === null;

/** What knowledge comes to for whatever reads it. */
export function reducedKnowledge({ looks, heard, asked, readings, tests }: Knowledge): Knowledge {
  // The order of readings matters where two points are one metal: the last one of all counts.
  const kept = lastBy([...readings].reverse(), ({ point }) => point);
  const last = readings.filter((reading) => kept.includes(reading)).map((reading) => ({ ...reading, volts: null }));
  const proofs = [
    ...tests.filter(isProof).map(({ on, minute }) => ({ on, minute })),
    ...readings.filter(({ shows }) => shows === 'voltage').map(({ tool: on, minute }) => ({ on, minute })),
  ].sort((a, b) => a.minute - b.minute);
  const bounds = [...new Set(proofs.map(({ on }) => on))].sort().flatMap((tool) => {
    const minutes = proofs.filter(({ on }) => on === tool).map(({ minute }) => minute);
    return [...new Set([minutes[0] as number, minutes.at(-1) as number])].map((minute) => ({
      on: tool,
      test: 'self-test',
      result: '',
      sign: null,
      minute,
    }));
  });
  const minutes = [...new Set([...last, ...bounds].map(({ minute }) => minute))].sort((a, b) => a - b);
  const plain = <T extends { readonly minute: number }>(list: readonly T[]): readonly T[] => {
    const texts = new Set(list.map((each) => JSON.stringify({ ...each, minute: 0 })));
    return [...texts].sort().map((text) => JSON.parse(text) as T);
  };
  return {
    looks: plain(looks),
    heard: plain(heard),
    asked: plain(asked),
    readings: ranked(last, minutes),
    tests: [...plain(tests.filter((each) => !isProof(each))), ...ranked(bounds, minutes)],
  };
}

type Reduce = (world: World, minute: number, now: number, timing: Timing) => Member;

const age = (since: number, minute: number, most: number, now: number): number => now - Math.min(minute - since, most);

const members: { readonly [N in MemberName]?: Reduce } = {
  clock: (_, __, now) => ({ minute: now }),
  site: ({ site }, minute, now) => ({
    ...site,
    weather: site.weather.filter(({ atMinute }) => atMinute > minute),
    thunderAt: site.thunderAt === null ? null : age(site.thunderAt, minute, stormOver + 1, now),
  }),
  tools: ({ tools }, minute, now, { wets }) =>
    tools.map((tool) => ({
      ...tool,
      checks: Object.fromEntries(
        Object.entries(tool.checks)
          .sort(([a], [b]) => (a < b ? -1 : 1))
          .map(([name, check]) => [
            name,
            { ...check, minute: wets && name === 'wipe' ? age(check.minute, minute, wetAgainAfter, now) : 0 },
          ]),
      ),
    })),
  orders: ({ orders }, minute, now) => ({
    ...orders,
    clearance:
      orders.clearance === null
        ? null
        : {
            ...orders.clearance,
            minute:
              orders.clearance.state === 'requested'
                ? age(orders.clearance.minute, minute, dispatcherMinutes + 1, now)
                : 0,
          },
    switching: orders.switching.map((each) => ({ ...each, due: now + Math.max(0, each.due - minute) })),
    reported: [...orders.reported].sort(),
    customersTold: [...orders.customersTold].sort(),
  }),
  knowledge: ({ knowledge }) => reducedKnowledge(knowledge),
  paper: ({ paper: { briefings } }) => ({
    findings: [],
    plans: [],
    briefings: briefings.slice(-1).map((briefing) => ({ ...briefing, minute: 0 })),
  }),
  chance: () => calm,
};

/** Whether a member of that name may be reduced at all, and whether that hangs on the minute. */
export const isReduced = (name: MemberName): boolean => members[name] !== undefined;
export const byMinute: ReadonlySet<MemberName> = new Set(['clock', 'site', 'tools', 'orders']);

/** The member as it is in the one World that stands for all with the same future. */
export function reducedMember(world: World, name: MemberName, timing: Timing): Member {
  const { minute } = world.clock;
  const now = minute > timing.last ? timing.still : minute;
  return members[name]?.(world, minute, now, timing) ?? world[name];
}

/** The one World that stands for all with the same future. */
export function reduced(world: World, timing: Timing): World {
  return {
    ...world,
    clock: reducedMember(world, 'clock', timing) as World['clock'],
    site: reducedMember(world, 'site', timing) as World['site'],
    tools: reducedMember(world, 'tools', timing) as World['tools'],
    orders: reducedMember(world, 'orders', timing) as World['orders'],
    knowledge: reducedMember(world, 'knowledge', timing) as World['knowledge'],
    paper: reducedMember(world, 'paper', timing) as World['paper'],
    chance: reducedMember(world, 'chance', timing) as World['chance'],
  };
}
