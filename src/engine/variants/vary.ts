/**
 * Varies the written form of a base scenario: light, weather, mounting sides, lengths of poles, premises, tools, crew.
 * Texts that say how far the second worker is are written to fit. What the base says of light, weather or sides in its
 * own words is not: a base for variants leaves that out.
 */
import type { Draw } from './draw.ts';
import type { Bounds } from './types.ts';
import { siteOf, timeFor, weathersOn } from './weather.ts';
import { type Group, groupAt, isGroup, rowsAt } from './written.ts';

const across: Readonly<Record<string, string>> = { road: 'field', field: 'road' };
const along: Readonly<Record<string, string>> = { source: 'load', load: 'source' };

/** The site in other light and weather; changes of weather by the clock go, for they belong to the old. */
function varySite(draw: Draw, written: Group, bounds: Bounds): Group {
  const call = groupAt(written, 'call');
  const date = String(call.date);
  const weathers = weathersOn(bounds.weather, date);
  if (bounds.light.length === 0 || weathers.length === 0) return written;
  const light = draw.one(bounds.light);
  const { weather: _, lightning: __, ...site } = groupAt(written, 'site');
  return {
    ...written,
    call: { ...call, time: timeFor(draw, light, date) },
    site: { ...site, ...siteOf(draw, light, draw.one(weathers)) },
  };
}

/** Whole poles are turned over, so that what hangs side by side still does. */
function varySides(draw: Draw, written: Group, bounds: Bounds): Group {
  if (!bounds.sides) return written;
  const turned = new Map(
    rowsAt(written, 'poles').map(({ id }) => [
      String(id),
      { ...(draw.chance(0.5) ? across : {}), ...(draw.chance(0.5) ? along : {}) } as Readonly<Record<string, string>>,
    ]),
  );
  return {
    ...written,
    equipment: rowsAt(written, 'equipment').map((each) => {
      const pole = String(each.id).split('.')[0] ?? '';
      const side = String(each.side);
      return each.side === undefined ? each : { ...each, side: turned.get(pole)?.[side] ?? side };
    }),
  };
}

/** Lengths, neighbours within a step of the list; a pole with equipment at a height of its own keeps its length. */
function varyPoles(draw: Draw, written: Group, { poleFeet }: Bounds): Group {
  if (poleFeet.length === 0) return written;
  const fixed = new Set(
    rowsAt(written, 'equipment')
      .filter(({ height }) => height !== undefined)
      .map(({ id }) => String(id).split('.')[0]),
  );
  let at = draw.whole(0, poleFeet.length - 1);
  return {
    ...written,
    poles: rowsAt(written, 'poles').map((pole) => {
      at = Math.min(poleFeet.length - 1, Math.max(0, at + draw.whole(-1, 1)));
      return fixed.has(String(pole.id)) ? pole : { ...pole, length: `${poleFeet[at]} ft` };
    }),
  };
}

const places = ['in the garage', 'in the shed', 'behind the house'] as const;

/** A set that may run behind a transfer switch, and what its owner says of it. */
function ownSet(draw: Draw): Group {
  const runs = draw.chance(0.5);
  const place = draw.one(places);
  return {
    own: {
      kind: 'generator',
      rating: `${draw.whole(4, 9)} kVA`,
      connection: 'transfer-switch',
      transfer: runs ? 'generator' : 'utility',
      running: runs,
      place,
    },
    says: {
      generator: runs
        ? `It runs ${place}, behind a transfer switch.`
        : `One stands ${place}, behind a transfer switch.`,
    },
  };
}

const turnedOver = (y: string): string => (y.startsWith('-') ? y.slice(1) : `-${y}`);

function varyPremises(draw: Draw, written: Group, bounds: Bounds): Group {
  if (!bounds.premises) return written;
  const call = groupAt(written, 'call');
  let caller = groupAt(call, 'caller');
  const premises = rowsAt(written, 'premises').map((each): Group => {
    const set = !isGroup(each.own) && draw.chance(0.3) ? ownSet(draw) : {};
    const says = { ...groupAt(each, 'says'), ...groupAt(set, 'says') };
    if (isGroup(set.own) && each.customer === call.from) caller = { ...caller, ...groupAt(set, 'says') };
    const y = String(each.y ?? '0 m');
    return {
      ...each,
      y: bounds.sides && draw.chance(0.5) ? turnedOver(y) : y,
      load: {
        'leg-1': `${draw.whole(2, 9) * 50} W`,
        'leg-2': `${draw.whole(2, 9) * 50} W`,
        both: `${draw.whole(0, 8) * 100} W`,
      },
      ...(isGroup(set.own) ? { own: set.own } : {}),
      says,
    };
  });
  return { ...written, premises, call: { ...call, caller } };
}

function varyCrew(draw: Draw, written: Group, { secondAfter, toolsLess }: Bounds): Group {
  const tools = rowsAt(written, 'tools');
  const gone = new Set(draw.some(tools, draw.whole(0, toolsLess)).map(({ id }) => id));
  const kept = { ...written, tools: tools.filter(({ id }) => !gone.has(id)) };
  if (secondAfter.length === 0) return kept;
  const minutes = draw.one(secondAfter);
  const call = groupAt(written, 'call');
  const eta = minutes === 0 ? 'Your second worker is with you.' : `Your second worker is ${minutes} minutes out.`;
  return {
    ...kept,
    crew: { ...groupAt(written, 'crew'), 'second-after': `${minutes} min` },
    call: { ...groupAt(kept, 'call'), dispatcher: { ...groupAt(call, 'dispatcher'), eta } },
  };
}

/** The base varied within the bounds; faults and look-alikes are laid apart (layFaults.ts). */
export const vary = (draw: Draw, base: Group, bounds: Bounds): Group =>
  [varySite, varySides, varyPoles, varyPremises, varyCrew].reduce((written, step) => step(draw, written, bounds), base);
