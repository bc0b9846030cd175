/**
 * What is physically odd about a drawn scene, though its file is good: weather, light and temperature that do not go
 * together or with a fault, a fault that needs what is not there, people and sets that make no sense. A rule is a
 * sentence; common sense and common practice, limits are estimates unless a source stands beside them.
 */
import { premisesOut } from '../acts/customersOut.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Scenario, ScenarioPremises } from '../scenario/types.ts';
import type { World } from '../world/types.ts';

interface Scene {
  readonly scenario: Scenario;
  readonly world: World;
}

/** The sentence, or null where nothing is odd. */
type Rule = (scene: Scene) => string | null;

const first = (sentences: readonly (string | null)[]): string | null => sentences.find((each) => each !== null) ?? null;

/** Kinds laid, harmful and harmless. */
const kindsOf = ({ faults, lookAlikes }: Scenario): readonly string[] =>
  [...faults, ...lookAlikes].map(({ kind }) => kind);

const isWet = ({ site }: Scenario): boolean => site.precipitation === 'rain' || site.precipitation === 'drizzle';

/** Temperatures: rain freezes on what is colder than 0 °C and is ice then; snow lies down to wet at about 2 °C. */
const falls: Rule = ({ scenario: { site } }) => {
  const { precipitation, temperatureC, wetness } = site;
  if ((precipitation === 'rain' || precipitation === 'drizzle') && temperatureC < 0) return 'rain falls in frost';
  if (precipitation === 'snow' && temperatureC > 2) return 'snow falls in mild air';
  if (precipitation === 'ice' && temperatureC > 1) return 'ice grows in mild air';
  if (precipitation === 'rain' && wetness < 0.3) return 'it rains on dry ground';
  return null;
};

/** Least and most of the sky's light, lux: full daylight under thick cloud is about 1 klx, night below 1 lx (common practice). */
const sky: Readonly<Record<Scenario['site']['light'], readonly [number, number]>> = {
  day: [500, 150_000],
  dawn: [0.5, 4000],
  dusk: [0.5, 4000],
  night: [0, 1],
};

const light: Rule = ({ scenario: { site } }) => {
  const [least, most] = sky[site.light];
  return site.skyLux < least || site.skyLux > most ? `the sky gives ${site.skyLux} lx by ${site.light}` : null;
};

interface Needs {
  readonly holds: (scenario: Scenario) => boolean;
  readonly why: string;
}

const frost = (scenario: Scenario): boolean => scenario.site.temperatureC <= 1;
const sun = ({ site }: Scenario): boolean => site.light === 'day' && site.skyLux >= 10_000;
const damp = ({ site }: Scenario): boolean => site.wetness >= 0.05;
const dryAir = (scenario: Scenario): boolean => !isWet(scenario) && scenario.site.precipitation !== 'snow';

/** What a kind needs of weather and light to be there at all. */
const needs: Readonly<Record<string, Needs>> = {
  'pole-iced': { holds: frost, why: 'ice hangs on the line in mild air' },
  hoarfrost: { holds: (scenario) => frost(scenario) && dryAir(scenario), why: 'hoarfrost in mild or wet air' },
  'flooded-ground': { holds: damp, why: 'water stands on ground that is dry' },
  'wet-grass': { holds: damp, why: 'the grass is wet on a dry day' },
  'arm-wet-track': { holds: damp, why: 'dry wood has a wet track' },
  'shadow-band': { holds: sun, why: 'a shadow without sun' },
  'lamp-lit-by-day': { holds: ({ site }) => site.light === 'day', why: 'a lamp lit by day, at night' },
  'lightning-near': {
    holds: ({ site }) => site.precipitation !== 'snow' && site.visibilityM >= 1000 && site.skyLux < 15_000,
    why: 'a thunderstorm out of a bright sky, fog or snow',
  },
  'gusty-corner': { holds: ({ site }) => site.windMs > 1, why: 'gusts in still air' },
  'wind-over-limit': { holds: ({ site }) => site.visibilityM >= 1000, why: 'fog in a storm' },
  'spider-web-on-cutout': { holds: (scenario) => !frost(scenario), why: 'a web spun in frost' },
  'moss-at-butt': { holds: ({ site }) => site.precipitation !== 'snow', why: 'moss to be seen under snow' },
  'rod-below-grass': { holds: ({ site }) => site.precipitation !== 'snow', why: 'grass to be seen under snow' },
  'tank-rain-run': { holds: ({ site }) => site.temperatureC > 0, why: 'rain runs down a tank in frost' },
};

/** Whether weather and light of a scene are such that the kind can be there at all. */
export const mayLieIn = (scenario: Scenario, kind: string): boolean => needs[kind]?.holds(scenario) ?? true;

const weather: Rule = ({ scenario }) =>
  first(
    kindsOf(scenario).map((kind) => (mayLieIn(scenario, kind) ? null : `${needs[kind]?.why}: ${faultKind(kind).name}`)),
  );

/** Two of one sort that say the opposite of each other. */
const together: readonly (readonly [string, string, string])[] = [
  ['flooded-ground', 'wet-grass', 'the ground is under water and has wet grass to see'],
  ['lightning-near', 'distant-rumble', 'thunder is both near and far'],
  ['pole-iced', 'hoarfrost', 'ice and hoarfrost at once'],
  ['wind-over-limit', 'gusty-corner', 'a storm and a gust at a corner'],
  ['working-alone', 'second-fatigued', 'a worker who is not coming is tired'],
  ['working-alone', 'second-unqualified', 'a worker who is not coming is untrained'],
  ['working-alone', 'second-muddy', 'a worker who is not coming is muddy'],
  ['traffic-unguarded', 'parked-car', 'a car parked in heavy traffic'],
];

const opposites: Rule = ({ scenario }) => {
  const kinds = kindsOf(scenario);
  return first(together.map(([a, b, why]) => (kinds.includes(a) && kinds.includes(b) ? why : null)));
};

/** Whether somebody there started it, and had a reason to. */
const set = ({ id, own, says, name }: ScenarioPremises, { scenario, world }: Scene): string | null => {
  if (own === undefined) return null;
  const isEngine = own.kind === 'generator' || own.kind === 'governed-generator';
  if (says.generator === undefined) {
    return own.running && isEngine
      ? `a set runs at ${name} and nobody is home who started it`
      : `nobody at ${name} can say what stands there`;
  }
  const isOut = premisesOut(world).includes(id);
  if (own.running && isEngine && !isOut) return `a set runs at ${name} though the line feeds the house`;
  if (own.kind === 'photovoltaic' && own.running && scenario.site.light === 'night') {
    return `panels give power at ${name} by night`;
  }
  return null;
};

const sets: Rule = (scene) => first(scene.scenario.premises.map((premises) => set(premises, scene)));

/** A fault that sets its part otherwise than the scenario says that it stands. */
const states: Rule = ({ scenario, world }) =>
  first(
    scenario.faults.map(({ kind, on }) => {
      const part = world.parts.find(({ id }) => id === on);
      const { sets: laid = {} } = faultKind(kind);
      const row = scenario.equipment.find(({ id }) => id === on);
      if (part === undefined || row?.state === undefined) return null;
      const against = Object.entries(laid).find(([name, to]) => (row.state?.[name] ?? to) !== to);
      return against === undefined
        ? null
        : `${faultKind(kind).name} on ${part.name}, which stands ${row.state[against[0]]}`;
    }),
  );

/** Neighbouring poles more than this apart in height put the line on a slope that no framing here is for (estimate). */
const STEP = 3.5;

const heights: Rule = ({ scenario: { poles, spans } }) =>
  first(
    spans.map(({ from, to }) => {
      const [a, b] = [from, to].map((net) => poles.find(({ id }) => net.startsWith(`${id}.`)));
      return a && b && Math.abs(a.lengthM - b.lengthM) > STEP
        ? `poles ${a.number} and ${b.number} differ by ${Math.round(Math.abs(a.lengthM - b.lengthM) * 10) / 10} m`
        : null;
    }),
  );

/** Words for weather and light that a file may use, and whether they are true there. */
const spoken: readonly (readonly [RegExp, (scenario: Scenario) => boolean, string])[] = [
  [/\b(?:rains?|raining|drizzles?|drizzling|pouring)\b/i, (scenario) => isWet(scenario) || damp(scenario), 'rain'],
  [/\b(?:fog|foggy|mist)\b/i, ({ site }) => site.visibilityM < 1000, 'fog'],
  [/\b(?:snow|snows|snowing)\b/i, ({ site }) => site.precipitation === 'snow', 'snow'],
  [/\b(?:icy|ice everywhere|frost)\b/i, frost, 'frost'],
  [/\b(?:bone dry|dry wood|all is dry)\b/i, (scenario) => !isWet(scenario) && scenario.site.wetness < 0.3, 'dry wood'],
  [/\b(?:sunshine|bright noon)\b/i, sun, 'sun'],
];

/** What is said at the scene of weather now: the call and the people, not the ticket's past. */
const words: Rule = ({ scenario }) => {
  const { call, premises, people, job } = scenario;
  const texts = [
    call.said,
    call.caller.noticed ?? '',
    job.words,
    ...premises.map(({ says }) => says.noticed ?? ''),
    ...people.map(({ says }) => says.noticed ?? ''),
  ];
  return first(
    spoken.map(([word, isTrue, what]) =>
      texts.some((text) => word.test(text)) && !isTrue(scenario)
        ? `somebody speaks of ${what}, and there is none`
        : null,
    ),
  );
};

/** A call has a reason: somebody is without service, or something is wrong at the place and not only with tools and people. */
const call: Rule = ({ scenario: { faults }, world }) => {
  const brought = new Set([...world.tools, ...world.people].map(({ id }) => id));
  const isAtPlace = faults.some(({ on }) => !brought.has(on));
  return isAtPlace || premisesOut(world).length > 0 ? null : 'a call though nobody is out and nothing is wrong there';
};

/** What is said is written anew last (retell.ts). */
const ofScene: readonly Rule[] = [falls, light, weather, opposites, heights, states, sets, call];

const found = (rules: readonly Rule[], scene: Scene): string | null => {
  for (const rule of rules) {
    const why = rule(scene);
    if (why !== null) return why;
  }
  return null;
};

/** What is odd about the scene, the first thing found; null where nothing is. What is said there is not asked about. */
export const oddScene = (scenario: Scenario, world: World): string | null => found(ofScene, { scenario, world });

/** The same, and what is said. */
export const oddIn = (scenario: Scenario, world: World): string | null =>
  found([...ofScene, words], { scenario, world });
