/**
 * The survey: the least minutes in which signs of all causes can be perceived from the ground, by looking, listening,
 * asking and checking. Looking changes nothing but knowledge, which only grows, and no two looks stand in each other's
 * way; so a state is where one stands and what one knows of, and of all ways that lead there the shortest is kept
 * (explore.ts). A look at what bears no cause tells of none and is left out; a stand's looks by one aid cost once and
 * count together. Light and weather are those of the arrival.
 */

import { acknowledged } from '../acts/acknowledge.ts';
import { minutesOf } from '../acts/act.ts';
import { topicsOf } from '../acts/dispatcher.ts';
import type { Act } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import { signsFrom } from '../senses/signsFrom.ts';
import { aids } from '../senses/types.ts';
import { faultsOf, findPart, personById, toolById } from '../world/edit.ts';
import type { LaidFault, Person, Stand, World } from '../world/types.ts';
import { explore } from './explore.ts';
import { type Deed, placedAt, standsOf } from './places.ts';

/** A fault or look-alike and what carries it. */
export interface Laid {
  readonly on: string;
  readonly fault: LaidFault;
}

/** Faults that are wrong, not only look so. */
export const harmful = (world: World): readonly Laid[] =>
  faultsOf(world).filter(({ fault }) => !faultKind(fault.kind).benign);

/** Something done at a stand, or anywhere, that shows signs of faults. */
export interface Vantage {
  readonly at: string | null;
  readonly acts: readonly Act[];
  readonly shows: readonly string[];
}

const ground = (world: World): readonly Stand[] => standsOf(world).filter(({ aloft }) => aloft === null);

/** The scene as a quiet crew finds it: parked clear, the engine off. */
const quiet = (world: World): World => ({
  ...world,
  truck: { ...world.truck, place: 'clear', engine: false },
  orders: { ...world.orders, reported: [...new Set([...world.orders.reported, acknowledged])] },
});

function seen(world: World, stand: Stand, laid: readonly Laid[]): readonly Vantage[] {
  const here = quiet(placedAt(world, stand));
  const carries = (id: string): string => laid.find(({ fault }) => fault.id === id)?.on ?? '';
  return aids.flatMap((aid) => {
    const shows = signsFrom(here, stand.id, aid)
      .filter(({ sense, perceived, fault }) => sense === 'see' && perceived && carries(fault) !== '')
      .map(({ fault }) => fault);
    const faults = [...new Set(shows)];
    const parts = [...new Set(faults.map(carries))];
    if (faults.length === 0) return [];
    return [{ at: stand.id, acts: parts.map((part): Act => ({ act: 'look', part, aid })), shows: faults }];
  });
}

function heard(world: World, stand: Stand, laid: readonly Laid[]): readonly Vantage[] {
  const here = quiet(placedAt(world, stand));
  const shows = signsFrom(here, stand.id, 'eyes')
    .filter(
      ({ sense, perceived, fault }) => sense === 'hear' && perceived && laid.some((each) => each.fault.id === fault),
    )
    .map(({ fault }) => fault);
  return shows.length === 0 ? [] : [{ at: stand.id, acts: [{ act: 'listen' }], shows: [...new Set(shows)] }];
}

/** Whether an answer of somebody gives away what lies on a part or on somebody, as `ask` has it. */
function tellsOf(world: World, person: Person, on: string): boolean {
  const part = findPart(world, on);
  if (part !== null) return part.premises === person.premises;
  const about = personById(world, on);
  return about !== null && (about.id === person.id || (person.role === 'dispatcher' && about.role === 'second'));
}

/** Answers that tell of it: from whoever may be asked about the topic. */
function answers(world: World, { on, fault }: Laid): readonly Vantage[] {
  return faultKind(fault.kind)
    .signs.filter(({ sense }) => sense === 'ask')
    .flatMap(({ by = '' }) =>
      world.people
        .filter((person) => tellsOf(world, person, on) && topicsOf(person).includes(by))
        .map(({ id, at }) => ({ at, acts: [{ act: 'ask', who: id, about: by }] as const, shows: [fault.id] })),
    );
}

/** Checks of a tool, sounding and prodding of a pole. */
function checks(world: World, { on, fault }: Laid): readonly Vantage[] {
  const ways = new Set(faultKind(fault.kind).signs.map(({ by }) => by));
  const tool = toolById(world, on);
  if (tool !== null) {
    return (['read-tag', 'inspect', 'wipe', 'air-test', 'self-test'] as const)
      .filter((check) => ways.has(check) && toolKind(tool.kind).checks.includes(check))
      .map((check) => ({ at: null, acts: [{ act: 'check-tool', tool: on, check }] as const, shows: [fault.id] }));
  }
  const pole = findPart(world, on)?.pole;
  if (pole == null) return [];
  return (['sound', 'prod'] as const)
    .filter((way) => ways.has(way))
    .map((way) => ({ at: `${pole}.butt`, acts: [{ act: way, pole }] as const, shows: [fault.id] }));
}

/** Signs on somebody who is still on the way: waited for, then looked at. Whoever comes, comes to where the crew is. */
function coming(world: World, laid: readonly Laid[]): readonly Vantage[] {
  return world.people.flatMap(({ id, at, arrivesAt }) => {
    const shows = laid
      .filter(({ on, fault }) => on === id && faultKind(fault.kind).signs.some(({ sense }) => sense === 'see'))
      .map(({ fault }) => fault.id);
    if (at !== null || arrivesAt === null || shows.length === 0) return [];
    const minutes = Math.max(1, arrivesAt - world.clock.minute);
    return [
      {
        at: null,
        acts: [
          { act: 'wait', minutes },
          { act: 'look', part: id, aid: 'eyes' },
        ] as const,
        shows,
      },
    ];
  });
}

/** Everything on the ground that shows a sign of one of the faults. */
export const vantagesOf = (world: World, laid: readonly Laid[]): readonly Vantage[] => [
  ...ground(world).flatMap((stand) => [...seen(world, stand, laid), ...heard(world, stand, laid)]),
  ...laid.flatMap((each) => [...answers(world, each), ...checks(world, each)]),
  ...coming(world, laid),
];

/** Faults of which no vantage shows a sign, by id. */
export const unseen = (vantages: readonly Vantage[], laid: readonly Laid[]): readonly string[] =>
  laid.map(({ fault }) => fault.id).filter((id) => !vantages.some(({ shows }) => shows.includes(id)));

interface At {
  readonly stand: Stand;
  readonly known: readonly string[];
}

/** The shortest survey of a World whose trainee stands on the ground: its deeds, and how much was explored. */
export function surveyOf(
  world: World,
  vantages: readonly Vantage[],
  from: Stand,
): {
  readonly deeds: readonly Deed[];
  readonly minutes: number;
  readonly states: number;
  readonly transitions: number;
} {
  const stands = ground(world);
  const wanted = [...new Set(vantages.flatMap(({ shows }) => shows))].sort();
  const cost = ({ acts }: Vantage, stand: Stand): number => {
    const here = quiet(placedAt(world, stand));
    // The glass is put up once at a stand; a wait runs beside what else is done meanwhile, so it counts as nothing.
    return acts.reduce(
      (sum, act, i) => sum + (act.act === 'wait' || (act.act === 'look' && i > 0) ? 0 : minutesOf(here, act)),
      0,
    );
  };
  const costs = new Map(vantages.map((each) => [each, cost(each, stands.find(({ id }) => id === each.at) ?? from)]));
  const walks = new Map<string, number>();
  const walk = (a: Stand, b: Stand): number => {
    const key = `${a.id} ${b.id}`;
    const known = walks.get(key) ?? minutesOf(quiet(placedAt(world, a)), { act: 'go', to: b.id });
    walks.set(key, known);
    return known;
  };
  const found = explore<At, Vantage | null>({
    start: { stand: from, known: [] },
    key: ({ stand, known }) => `${stand.id} ${known.join(' ')}`,
    done: ({ known }) => known.length === wanted.length,
    next: ({ stand, known }) => [
      ...vantages.flatMap((each) => {
        if (each.at !== null && each.at !== stand.id) return [];
        if (each.shows.every((id) => known.includes(id))) return [];
        const more = [...new Set([...known, ...each.shows])].sort();
        return [{ to: { stand, known: more }, cost: costs.get(each) ?? 0, by: each }];
      }),
      ...stands
        .filter(({ id }) => id !== stand.id)
        .map((to) => ({ to: { stand: to, known }, cost: walk(stand, to), by: null })),
    ],
  });
  return {
    deeds: found.route.flatMap(({ by }) => (by?.acts ?? []).map((act) => ({ act, at: by?.at ?? null }))),
    minutes: found.cost,
    states: found.states,
    transitions: found.transitions,
  };
}
