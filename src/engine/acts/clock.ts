/** The drill's clock in whole minutes: weather by its timeline, people who arrive, the dispatcher's answer, wet tools. */
import { toolKind } from '../catalogue/tools.ts';
import type { Minutes } from '../units/quantities.ts';
import type { Person, Site, Tool, World } from '../world/types.ts';
import { answerClearance } from './clearance.ts';
import { switchingDue } from './dispatcher.ts';
import { besideTruck } from './go.ts';
import { eventsDue, storm, worsening } from './happenings.ts';
import { event } from './kind.ts';
import type { WorldEvent } from './types.ts';

/** Minutes after which a wiped stick is wet again where everything is (estimate). */
export const wetAgainAfter: Minutes = 30;
/** The same where it rains or snows (estimate). */
export const wetAgainInRain: Minutes = 10;
const rains = ['rain', 'snow', 'ice'];
/** Wetness of the place from which tools get wet (estimate; 0 dry, 1 streaming). */
export const wetsTools = 0.5;

type Happening = { readonly world: World; readonly events: readonly WorldEvent[] };

/** Lets the minutes pass, each with what is due in it. */
export function passMinutes(world: World, minutes: Minutes): Happening {
  let now = world;
  const told: WorldEvent[] = [];
  for (let i = 0; i < minutes; i++) {
    now = { ...now, clock: { minute: now.clock.minute + 1 } };
    for (const happen of happenings) {
      const { world: after, events } = happen(now);
      now = after;
      told.push(...events);
    }
  }
  return { world: now, events: told };
}

function weather(world: World): Happening {
  const due = world.site.weather.filter(({ atMinute }) => atMinute === world.clock.minute);
  if (due.length === 0) return { world, events: [] };
  const changes = due.map(({ atMinute: _, ...change }) => change);
  const site: Site = Object.assign({}, world.site, ...changes);
  return {
    world: { ...world, site },
    events: weatherWords(world.site, site).map((words) => event('weather', null, words)),
  };
}

function weatherWords(before: Site, after: Site): readonly string[] {
  const words = [];
  if (after.skyLux !== before.skyLux) words.push(after.skyLux > before.skyLux ? 'It gets lighter.' : 'It gets darker.');
  if (after.visibilityM !== before.visibilityM) {
    words.push(after.visibilityM > before.visibilityM ? 'The air clears.' : 'The air thickens.');
  }
  if (after.wetness !== before.wetness) {
    words.push(after.wetness > before.wetness ? 'Everything gets wetter.' : 'Surfaces begin to dry.');
  }
  if (after.windMs !== before.windMs) words.push(after.windMs > before.windMs ? 'The wind rises.' : 'The wind drops.');
  if (after.precipitation !== before.precipitation) words.push(falling[after.precipitation]);
  if (after.flooded !== before.flooded) {
    words.push(after.flooded ? 'Water stands on the ground now.' : 'The water runs off.');
  }
  if (after.traffic !== before.traffic) words.push(passing[after.traffic]);
  return words;
}

const falling: Readonly<Record<Site['precipitation'], string>> = {
  none: 'It stops coming down.',
  drizzle: 'It begins to drizzle.',
  rain: 'It begins to rain.',
  snow: 'It begins to snow.',
  ice: 'It rains and freezes on everything.',
};

const passing: Readonly<Record<Site['traffic'], string>> = {
  none: 'The road falls quiet.',
  light: 'A car passes now and then.',
  heavy: 'Traffic passes all the time.',
};

function arrivals(world: World): Happening {
  const due = world.people.filter((person) => person.arrivesAt === world.clock.minute && person.at === null);
  if (due.length === 0) return { world, events: [] };
  const place = besideTruck(world);
  const arrive = (person: Person): Person => (due.includes(person) ? { ...person, at: place } : person);
  return {
    world: { ...world, people: world.people.map(arrive) },
    events: due.map((person) => event('arrived', person.id, `${capital(person.name)} is here, at the truck.`)),
  };
}

function dispatcher(world: World): Happening {
  return answerClearance(world) ?? { world, events: [] };
}

function wetting(world: World): Happening {
  const rain = rains.includes(world.site.precipitation);
  if (world.site.wetness < wetsTools && !rain) return { world, events: [] };
  const wets = (tool: Tool): boolean =>
    !tool.wet &&
    toolKind(tool.kind).barrier === 'stick' &&
    world.clock.minute - (tool.checks.wipe?.minute ?? 0) >= (rain ? wetAgainInRain : wetAgainAfter);
  if (!world.tools.some(wets)) return { world, events: [] };
  return {
    world: { ...world, tools: world.tools.map((tool) => (wets(tool) ? { ...tool, wet: true } : tool)) },
    events: [],
  };
}

const happenings = [weather, storm, eventsDue, worsening, arrivals, switchingDue, dispatcher, wetting];

const capital = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);
