/**
 * What of a World matters for safety and for finishing, as short text; two Worlds with one key have the same acts, the
 * same exposures and the same ends before them. Left out: paper but for the last briefing, chance (an adversary), what
 * was looked at and heard but for what preconditions read, the minute but for what it still brings. `physicalKey` is the
 * part that exposures read; `canonicalKey` adds what tests, reports and the clock add.
 */

import { wetAgainAfter } from '../acts/clock.ts';
import { circuitKey } from '../circuit/circuitKey.ts';
import type { World } from '../world/types.ts';

const numbers = new Map<string, number>();

/** A small number for a text, the same for the same text; long keys are kept once. */
function interned(text: string): string {
  let number = numbers.get(text);
  if (number === undefined) {
    number = numbers.size;
    numbers.set(text, number);
  }
  return number.toString(36);
}

/** A text that follows from a frozen member of a World alone, kept with it. */
function keptWith<T extends object>(write: (value: T) => string): (value: T) => string {
  const kept = new WeakMap<T, string>();
  return (value) => {
    const known = kept.get(value);
    if (known !== undefined) return known;
    const made = interned(write(value));
    kept.set(value, made);
    return made;
  };
}

const partsKey = keptWith<World['parts']>((parts) =>
  parts
    .flatMap(({ id, faults, tags, supported }) =>
      faults.length === 0 && tags.length === 0 && !supported
        ? []
        : [`${id}:${faults.map((fault) => fault.id).join('+')}:${tags.join('+')}:${supported}`],
    )
    .join(' '),
);

const toolsKey = keptWith<World['tools']>((tools) =>
  tools
    .map(({ wet, checks }) => {
      const good = Object.entries(checks).filter(([, { ok }]) => ok);
      return `${wet ? 'w' : ''}${good
        .map(([name]) => name)
        .sort()
        .join('+')}`;
    })
    .join(' '),
);

const peopleKey = keptWith<World['people']>((people) =>
  people
    .map(({ id, at, wearing, aloftBy, task, faults }) =>
      [id, at, wearing.join('+'), aloftBy, JSON.stringify(task), faults.map((fault) => fault.id).join('+')].join(':'),
    )
    .join(' '),
);

const jumpersKey = keptWith<World['jumpers']>((jumpers) =>
  jumpers.map(({ tool, points }) => `${tool}=${points.join('+')}`).join(' '),
);

/** Poles looked at and sounded or prodded. */
const polesKey = keptWith<World['knowledge']>(({ looks, tests }) => {
  const struck = new Set(
    tests.flatMap(({ on, test }) => (test === 'sound' || test === 'prod' ? [on.split('.')[0]] : [])),
  );
  const seen = new Set(looks.map(({ part }) => part));
  return [...struck]
    .filter((pole) => seen.has(`${pole}.pole`))
    .sort()
    .join(' ');
});

const briefingKey = keptWith<World['paper']>(({ briefings }) => {
  const last = briefings.at(-1);
  return last === undefined ? '' : `${last.topics.join('+')}:${last.heard.join('+')}:${last.rescue}`;
});

const siteKey = keptWith<World['site']>((site) => JSON.stringify(site));

const coversText = (covers: World['covers']): string => covers.map(({ part, tool }) => `${part}=${tool}`).join(' ');

/** What barriers and distances read: tools, people, covers, light and ground. */
export const safetyKey = (
  tools: World['tools'],
  people: World['people'],
  covers: World['covers'],
  site: World['site'],
): string => `${toolsKey(tools)}|${peopleKey(people)}|${coversText(covers)}|${siteKey(site)}`;

/** What exposures read: metal, people, tools, covers, orders, the last briefing, checked poles. */
export const physicalKey = (world: World): string =>
  [
    interned(circuitKey(world)),
    partsKey(world.parts),
    jumpersKey(world.jumpers),
    toolsKey(world.tools),
    peopleKey(world.people),
    polesKey(world.knowledge),
    briefingKey(world.paper),
    siteKey(world.site),
    coversText(world.covers),
    JSON.stringify(world.guards),
    world.truck.place,
    world.site.thunderAt === null ? '' : world.clock.minute,
    `${world.orders.clearance?.state ?? ''}:${world.orders.clearance?.device ?? ''}`,
  ].join('|');

/** The last reading of each point and by what it is proved: how old does not matter, before and after does. */
const readingsKey = keptWith<World['knowledge']>(({ readings, tests }) => {
  const last = new Map(readings.map((reading) => [reading.point, reading]));
  const proofs = [
    ...tests.filter(({ test, sign }) => test === 'self-test' && sign === null),
    ...readings.filter(({ shows }) => shows === 'voltage').map(({ tool, minute }) => ({ on: tool, minute })),
  ];
  return [...last.values()]
    .map(({ point, tool, shows, minute }) => {
      const of = proofs.filter(({ on }) => on === tool);
      return `${point}:${tool}:${shows}:${of.some((p) => p.minute <= minute)}:${of.some((p) => p.minute >= minute)}`;
    })
    .sort()
    .join(' ');
});

const askedKey = keptWith<World['knowledge']>(({ asked, looks, tests, heard }) =>
  [
    ...new Set([
      ...asked.map(({ who, about }) => `${who}?${about}`),
      ...looks.flatMap(({ part, seen }) => [part, ...seen]),
      ...looks.flatMap(({ aid, stand }) => (aid === 'glass' ? [`glass@${stand}`] : [])),
      ...heard.map(({ sign }) => sign),
      ...tests.flatMap(({ on, sign, test }) => (sign === null ? (test === 'self-test' ? [`${on}!`] : []) : [sign])),
    ]),
  ]
    .sort()
    .join(' '),
);

/** What the clock still brings, as minutes from now: weather, people, an answer, wet sticks. */
function comingKey({ clock: { minute }, site, people, orders, tools }: World): string {
  const weather = site.weather.filter(({ atMinute }) => atMinute > minute).map(({ atMinute }) => atMinute - minute);
  const arrivals = people.flatMap(({ id, at, arrivesAt }) =>
    at === null && arrivesAt !== null ? [`${id}+${arrivesAt - minute}`] : [],
  );
  const answer = orders.clearance?.state === 'requested' ? minute - orders.clearance.minute : '';
  const drying = tools.flatMap(({ id, wet, checks }) =>
    !wet && checks.wipe !== undefined ? [`${id}~${Math.min(wetAgainAfter, minute - checks.wipe.minute)}`] : [],
  );
  return [weather.join('+'), arrivals.join('+'), answer, drying.join('+')].join(';');
}

/** The whole key. */
export const canonicalKey = (world: World): string =>
  [
    physicalKey(world),
    readingsKey(world.knowledge),
    askedKey(world.knowledge),
    comingKey(world),
    `${world.truck.engine}`,
    [...world.orders.reported].sort().join('+'),
    [...world.orders.customersTold].sort().join('+'),
    world.ended ?? '',
  ].join('|');
