/**
 * Varies the written form of a base scenario: light, weather, line, premises, tools, crew. Words that told of the base's
 * own trouble are written anew (retell.ts); what an instructor does not let vary stays as it is.
 */
import type { Draw } from './draw.ts';
import type { Bounds } from './types.ts';
import { varyCrew, varyTools } from './varyCrew.ts';
import { varyBodies, varyFraming, varyPoles, varySides } from './varyLine.ts';
import { siteOf, timeFor, weathersOn } from './weather.ts';
import { type Group, groupAt, isGroup, rowsAt } from './written.ts';

/** The site in other light and weather; changes of weather by the clock go, for they belong to the old. */
function varySite(draw: Draw, written: Group, bounds: Bounds): Group {
  const call = groupAt(written, 'call');
  const date = String(call.date);
  const weathers = weathersOn(bounds.weather, date);
  if (bounds.light.length === 0 || weathers.length === 0) return written;
  const light = draw.one(bounds.light);
  const { weather: _, lightning: __, flooded: ___, ...site } = groupAt(written, 'site');
  return {
    ...written,
    call: { ...call, time: timeFor(draw, light, date) },
    site: { ...site, ...siteOf(draw, light, draw.one(weathers)) },
  };
}

const places = ['in the garage', 'in the shed', 'behind the house'] as const;

/** A set of their own: behind a transfer switch, or on a cord into the panel, where it must run to be of any use. */
function ownSet(draw: Draw): Group {
  const byCord = draw.chance(0.3);
  const runs = byCord || draw.chance(0.5);
  const place = draw.one(places);
  return {
    own: {
      kind: 'generator',
      rating: `${draw.whole(4, 9)} kVA`,
      connection: byCord ? 'panel-cord' : 'transfer-switch',
      ...(byCord ? {} : { transfer: runs ? 'generator' : 'utility' }),
      running: runs,
      place,
    },
    says: {
      generator: byCord
        ? `It runs ${place}. I have a cord from it to a breaker in the panel.`
        : runs
          ? `It runs ${place}, behind a transfer switch.`
          : `One stands ${place}, behind a transfer switch.`,
      ...(byCord ? { main: 'The main? I left it alone.' } : {}),
    },
  };
}

const turnedOver = (y: string): string => (y.startsWith('-') ? y.slice(1) : `-${y}`);

function varyPremises(draw: Draw, written: Group, bounds: Bounds): Group {
  const premises = rowsAt(written, 'premises').map((each): Group => {
    const y = String(each.y ?? '0 m');
    const turned = bounds.sides && draw.chance(0.5) ? { ...each, y: turnedOver(y) } : each;
    if (!bounds.premises) return turned;
    const set = !isGroup(each.own) && draw.chance(0.3) ? ownSet(draw) : {};
    const loads = Object.keys(groupAt(each, 'load'));
    return {
      ...turned,
      // A workshop stays a workshop: each load within a half of what it was.
      load: Object.fromEntries(loads.map((leg) => [leg, scaled(draw, String(groupAt(each, 'load')[leg]))])),
      ...(isGroup(set.own) ? { own: set.own } : {}),
      says: { ...groupAt(each, 'says'), ...groupAt(set, 'says') },
    };
  });
  return { ...written, premises };
}

/** A load within a half more or less, in steps of a tenth. */
function scaled(draw: Draw, written: string): string {
  const [, number = '0', unit = 'W'] = /^\s*([\d.]+)\s*(.*)$/.exec(written) ?? [];
  return `${Number(((Number(number) * draw.whole(5, 15)) / 10).toFixed(2))} ${unit}`;
}

const steps = [varySite, varyFraming, varyBodies, varySides, varyPoles, varyPremises, varyTools, varyCrew] as const;

/** The base varied within the bounds; faults and look-alikes are laid apart (layFaults.ts). */
export const vary = (draw: Draw, base: Group, bounds: Bounds): Group =>
  steps.reduce((written, step) => step(draw, written, bounds), base);
