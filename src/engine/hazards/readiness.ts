/**
 * What must hold for a control to be the one it claims to be, each read from the World at that moment. Tools and
 * gloves: 29 CFR 1910.269(j)(2), 1910.137(c)(2); deenergizing, testing, grounding: 1910.269(m)(3), (n),
 * 1910.333(b)(2)(iv)(B); people: 1910.269(c), (l)(2). Left out: whether a test was done with care, and how long ago
 * within the drill.
 */
import { briefingTopics } from '../catalogue/controls.ts';
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import type { ToolKind } from '../catalogue/types.ts';
import { branchesOf, netAt } from '../circuit/elementsOf.ts';
import { withinInterval } from '../standards/testInterval.ts';
import type { Volts } from '../units/quantities.ts';
import { findPart, personById, pointsOf, toolById, trainee } from '../world/edit.ts';
import type { Part, Person, PointId, Reading, Tool, World } from '../world/types.ts';
import { changesTo } from './credibleStates.ts';
import { holdingJumpers, isSized } from './groundSize.ts';
import { isGrounded, sectionOf } from './section.ts';
import { isTrafficHeld } from './traffic.ts';
import { isStormy } from './weather.ts';

/** What a precondition is asked about; what is not said is taken from the trainee and the whole scene. */
export interface About {
  readonly who?: string;
  readonly part?: string;
  readonly point?: PointId;
  readonly tool?: string;
  /** Phase-to-phase volts that a barrier must hold. */
  readonly volts?: Volts;
}

type Test = (world: World, about: About) => boolean;

const who = (world: World, { who: id }: About) => (id === undefined ? trainee(world) : personById(world, id));

const worn = (world: World, about: About, on: ToolKind['wornOn']): Tool | null =>
  world.tools.find(
    (tool) => toolKind(tool.kind).wornOn === on && (who(world, about)?.wearing.includes(tool.id) ?? false),
  ) ?? null;

const toolOf = (world: World, about: About): Tool | null =>
  about.tool === undefined ? null : toolById(world, about.tool);

const gloves = (world: World, about: About): Tool | null => {
  const named = toolOf(world, about);
  return named !== null && toolKind(named.kind).barrier === 'gloves' ? named : worn(world, about, 'hands');
};

/** Harmful faults laid on a tool. */
export const faulty = (tool: Tool): boolean => tool.faults.some(({ kind }) => !faultKind(kind).benign);

/** A fault that the tag alone tells, a date gone by: nothing need be wrong with the tool itself. */
export const isOfTag = ({ kind }: Tool['faults'][number]): boolean =>
  faultKind(kind).signs.some(({ sense, by }) => sense === 'read' && by === 'read-tag');

const inDate = (world: World, tool: Tool | null): boolean => {
  if (tool === null) return false;
  const { testMonths } = toolKind(tool.kind);
  if (testMonths === undefined) return true;
  return tool.tested !== null && withinInterval(tool.tested, world.given.crew.today, testMonths);
};

const rating = (tool: Tool | null): Volts =>
  tool === null ? 0 : (tool.ratedVolts ?? toolKind(tool.kind).ratedVolts ?? 0);

const volts = (world: World, about: About): Volts => about.volts ?? world.given.supply.lineVolts;

/** The point asked about, or the first bare one of the part. */
const pointOf = (world: World, { point, part }: About): PointId | null =>
  point ?? (part === undefined ? null : (pointsOf(world).find((id) => id.startsWith(`${part}/`)) ?? null));

/** Readings on the metal of the point, or all, oldest first. */
function readingsOn(world: World, about: About): readonly Reading[] {
  const point = pointOf(world, about);
  if (point === null) return world.knowledge.readings;
  const section = sectionOf(world, point);
  return world.knowledge.readings.filter((reading) => section.has(netAt(world, reading.point)));
}

const lastReading = (world: World, about: About): Reading | null => readingsOn(world, about).at(-1) ?? null;

/** Minutes at which a tester was seen to work: a good self-test, or a reading of voltage. */
const proofs = (world: World, tool: string): readonly number[] => [
  ...world.knowledge.tests
    .filter((test) => test.on === tool && test.test === 'self-test' && test.sign === null)
    .map(({ minute }) => minute),
  ...world.knowledge.readings.filter((r) => r.tool === tool && r.shows === 'voltage').map(({ minute }) => minute),
];

function proved(world: World, about: About): boolean {
  const reading = lastReading(world, about);
  if (reading === null) return false;
  const minutes = proofs(world, reading.tool);
  return minutes.some((minute) => minute <= reading.minute) && minutes.some((minute) => minute >= reading.minute);
}

/** Customers' and system's sources that the crew could know of, each asked about or looked at. */
const ownSources = (world: World): readonly Part[] =>
  world.parts.filter((part) => part.premises !== null && branchesOf(part).some(({ type }) => type === 'source'));

const isKnown = (world: World, source: Part): boolean =>
  world.knowledge.looks.some(({ part }) => part === source.id) ||
  world.knowledge.asked.some(
    ({ who: id, about }) => about === 'generator' && personById(world, id)?.premises === source.premises,
  );

const pole = (world: World, about: About): string | null =>
  (about.part === undefined ? null : findPart(world, about.part)?.pole) ?? null;

const lastBriefing = (world: World) => world.paper.briefings.at(-1) ?? null;

const secondHere = (world: World) => world.people.find(({ role, at }) => role === 'second' && at !== null) ?? null;

/** Another qualified worker at the work: trained, fit, not away at the traffic. */
const isSecond = ({ role, at, qualified, task, faults }: Person): boolean =>
  (role === 'second' || role === 'foreman') &&
  at !== null &&
  qualified &&
  task !== 'flag' &&
  !faults.some(({ kind }) => faultKind(kind).person?.unfit);

/** Whether no device recloses: each that the scene has is blocked, or the dispatcher was told where there is none. */
function isBlocked({ parts, given, orders }: World): boolean {
  const states = parts.map(({ state }) => state.reclosing).filter((state) => state !== undefined);
  if (states.length > 0) return states.every((state) => state === 'blocked');
  return !given.supply.upstream.recloses || orders.reported.includes('block-reclosing');
}

const tested = (world: World, name: string): boolean => world.knowledge.tests.some(({ test }) => test === name);

const held = (world: World): World => {
  const jumpers = holdingJumpers(world);
  return jumpers === world.jumpers ? world : { ...world, jumpers };
};

const wornSound = (world: World, about: About, on: ToolKind['wornOn']): boolean => {
  const tool = worn(world, about, on);
  return tool !== null && !faulty(tool);
};

/** An animal that nothing holds. */
export const isLoose = ({ faults }: Person): boolean => faults.some(({ kind }) => faultKind(kind).person?.loose);

/** Whether the dispatcher means another circuit than the crew. */
export const misnamed = (world: World): boolean =>
  world.people.some(({ faults }) => faults.some(({ kind }) => faultKind(kind).person?.misnames));

const tests = {
  clearance: (world) => world.orders.clearance?.state === 'held' && !misnamed(world),
  tagged: (world, about) => {
    const part = about.part === undefined ? null : findPart(world, about.part);
    if (part && part.tags.length > 0) return true;
    return world.parts.every((each) => changesTo(world, each).length === 0 || each.tags.length > 0);
  },
  'source-known': (world) => ownSources(world).every((source) => isKnown(world, source)),
  'tested-dead': (world, about) => lastReading(world, about)?.shows === 'no voltage',
  'detector-proved': proved,
  grounded: (world, about) => {
    const point = pointOf(world, about);
    const holding = held(world);
    return point === null ? holding.jumpers.length > 0 : isGrounded(holding, point);
  },
  'neutral-first': (world) => {
    const jumper = world.jumpers.at(-1);
    const [first] = jumper?.points ?? [];
    if (jumper === undefined || first === undefined) return false;
    return isGrounded({ ...world, jumpers: world.jumpers.filter((other) => other !== jumper) }, first);
  },
  'tool-in-test': (world, about) => inDate(world, toolOf(world, about)),
  'tool-clean-dry': (world, about) => {
    const tool = toolOf(world, about);
    return tool !== null && !tool.wet && (tool.checks.wipe?.ok ?? false);
  },
  'tool-sound': (world, about) => {
    const tool = toolOf(world, about);
    return tool !== null && !faulty(tool);
  },
  'tool-rated': (world, about) => rating(toolOf(world, about)) >= volts(world, about),
  'gloves-rated': (world, about) => rating(gloves(world, about)) >= volts(world, about),
  'gloves-in-test': (world, about) => inDate(world, gloves(world, about)),
  'gloves-air-tested': (world, about) => gloves(world, about)?.checks['air-test']?.ok ?? false,
  'face-shield': (world, about) => worn(world, about, 'face') !== null,
  'fall-gear': (world, about) => wornSound(world, about, 'body'),
  'cover-rated': (world, about) => {
    const cover = world.covers.find(({ part }) => part === about.part);
    const tool = cover === undefined ? null : toolById(world, cover.tool);
    return tool !== null && !faulty(tool) && rating(tool) >= volts(world, about);
  },
  'numbers-matched': (world) => !misnamed(world),
  'reclosing-blocked': isBlocked,
  'traffic-held': (world) => world.site.traffic === 'none' || isTrafficHeld(world),
  'storm-over': (world) => !isStormy(world),
  'wind-within-limit': ({ site }) => site.windMs <= site.windLimitMs,
  'no-ice': ({ site }) => site.precipitation !== 'ice',
  'dry-ground': ({ site }) => !site.flooded,
  'ground-sized': (world) =>
    world.jumpers.every(({ tool }) => {
      const set = toolById(world, tool);
      return set === null || isSized(world, set);
    }),
  sleeves: (world, about) => {
    const tool = worn(world, about, 'arms');
    return tool !== null && !faulty(tool) && inDate(world, tool) && rating(tool) >= volts(world, about);
  },
  'hard-hat': (world, about) => wornSound(world, about, 'head'),
  vest: (world, about) => wornSound(world, about, 'vest'),
  watched: ({ people }) => people.some(({ task, at, qualified }) => task === 'watch' && at !== null && qualified),
  'owner-told': ({ orders, people }) =>
    people
      .filter(({ role }) => role === 'customer')
      .every(({ id }) => orders.customersTold.some((told) => told.startsWith(`${id}/`))),
  'dog-in': ({ people }) => !people.some((person) => person.at !== null && isLoose(person)),
  'vehicle-chocked': ({ guards }) => guards.chocks,
  'engine-off': ({ truck }) => !truck.engine,
  'truck-clear': ({ truck }) => truck.place === 'clear',
  'grounds-counted': (world) => tested(world, 'count-grounds'),
  'crew-clear': (world) => tested(world, 'everyone-clear'),
  'secondary-shorted': (world) =>
    world.jumpers.some(({ tool }) => toolKind(toolById(world, tool)?.kind ?? '').fits !== undefined),
  'scene-known': ({ knowledge }) => new Set(knowledge.looks.map(({ stand }) => stand)).size > 1,
  'lift-sound': ({ tools }) =>
    tools.some((tool) => toolKind(tool.kind).lifts === 'bucket' && !faulty(tool) && tool.checks.inspect !== undefined),
  barricaded: (world) => world.guards.keepOut,
  reported: (world) => world.orders.reported.some((what) => what !== 'acknowledged'),
  'second-qualified': ({ people }) => people.some(isSecond),
  briefed: (world) => {
    const briefing = lastBriefing(world);
    const second = secondHere(world);
    return (
      briefing !== null &&
      briefingTopics.every((topic) => briefing.topics.includes(topic)) &&
      (second === null || briefing.heard.includes(second.id))
    );
  },
  'rescue-ready': (world) => lastBriefing(world)?.rescue ?? false,
  'pole-checked': (world, about) => {
    const id = `${pole(world, about) ?? about.part}.pole`;
    const done = (test: string): boolean =>
      world.knowledge.tests.some(
        (each) => each.test === test && findPart(world, each.on)?.pole === findPart(world, id)?.pole,
      );
    return world.knowledge.looks.some(({ part }) => part === id) && (done('sound') || done('prod'));
  },
} as const satisfies Readonly<Record<string, Test>>;

/** Names of the preconditions read from the World alone. */
export type Precondition = keyof typeof tests;
export const preconditions = Object.keys(tests).sort() as readonly Precondition[];

/** Whether it holds now; throws on an unknown name. */
export function precondition(world: World, id: string, about: About = {}): boolean {
  if (!Object.hasOwn(tests, id)) throw new Error(`no precondition ${id}`);
  return tests[id as Precondition](world, about);
}

/** Those that do not hold now, in the order given. */
export const failing = (world: World, ids: readonly string[], about: About = {}): readonly string[] =>
  ids.filter((id) => !precondition(world, id, about));
