/** What happened, minute by minute: acts in words, findings, exposures, what others did. */
import { endWords } from '../acts/pointWords.ts';
import type { Act, Replay, Step } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { condition } from '../catalogue/conditions.ts';
import { controlKind } from '../catalogue/controls.ts';
import { repairKind } from '../catalogue/repairs.ts';
import type { Score } from '../score/types.ts';
import { findPart, partById, personById, standById } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import type { TimelineRow } from './types.ts';
import { metWords, nameOf, placeOf, withThe } from './words.ts';

const aids = { eyes: 'by eye', lamp: 'by lamp', glass: 'with the glass' } as const;
const checks = {
  'read-tag': 'read the tag of',
  inspect: 'looked over',
  wipe: 'wiped',
  'air-test': 'air-tested',
  'self-test': 'ran the self-test of',
} as const;
const guards = {
  chocks: 'chocked the wheels',
  cones: 'put out cones',
  'keep-out': 'roped off the place',
  barrier: 'set the barrier vehicle out',
  'truck-ground': 'grounded the truck',
} as const;
const told: Readonly<Record<string, string>> = {
  backfeed: 'that a source of a customer holds the tap alive',
  'cause-found': 'the cause that was found',
  'block-reclosing': 'to block the reclosing',
  'stays-out': 'that one service stays out',
  'public-danger': 'that there is danger to the public',
  restored: 'that service is back',
  'keep-away': 'to keep away from pole and line',
  'own-source': 'what their own source does to the line',
};

const topics: Readonly<Record<string, string>> = {
  eta: 'when the second worker comes',
  noticed: 'what they had noticed',
  upstream: 'the device upstream',
  history: 'the history',
  main: 'the main breaker',
  generator: 'a generator',
  'transfer-switch': 'a transfer switch',
  circuit: 'the circuit',
  customers: 'the customers',
};

const spoken = (slug: string): string => slug.replaceAll('-', ' ');

/** What somebody is asked about, in words. */
export const topicWords = (about: string): string => topics[about] ?? spoken(about);

const lower = (label: string): string => label.slice(0, 1).toLowerCase() + label.slice(1);

const operationLabel = (world: World, part: string, id: string): string => {
  const found = componentKind(partById(world, part).kind).operations.find((each) => each.id === id);
  return found === undefined ? spoken(id) : lower(found.label);
};

type Words = { readonly [N in Act['act']]: (act: Extract<Act, { act: N }>) => string };

const wordsIn = (world: World): Words => {
  const name = (id: string): string => nameOf(world, id);
  const person = (id: string): string => personById(world, id)?.name ?? id;
  const point = (id: string): string => {
    const [part = id] = id.split('/');
    return findPart(world, part) === null ? id : `${endWords(world, id)} of ${withThe(name(part))}`;
  };
  return {
    acknowledge: () => 'took the call',
    go: ({ to }) => `moved: ${standById(world, to)?.name ?? to}`,
    park: ({ at }) => (at === 'clear' ? 'parked clear of the line' : 'parked under the line'),
    engine: ({ on }) => (on ? 'started the engine of the truck' : 'stopped the engine of the truck'),
    look: ({ part, aid }) => `looked at ${name(part)}, ${aids[aid]}`,
    listen: () => 'stood still and listened',
    ask: ({ who, about }) => `asked ${person(who)} about ${topicWords(about)}`,
    tell: ({ who, what }) => `told ${person(who)} ${told[what] ?? spoken(what)}`,
    guard: (act) => guards[act.with],
    'check-tool': ({ tool, check }) => `${checks[check]} ${name(tool)}`,
    wear: ({ tool, on }) => `${on ? 'put on' : 'took off'} ${name(tool)}`,
    test: ({ point: at, tool }) => `tested ${point(at)} with ${name(tool)}`,
    sound: ({ pole }) => `sounded ${name(`${pole}.pole`)}`,
    prod: ({ pole }) => `prodded ${name(`${pole}.pole`)}`,
    'call-finding': ({ on, condition: what }) => `called: ${name(on)}, ${condition(what).label}`,
    'withdraw-finding': () => 'took a call back',
    plan: ({ control }) => `planned: ${lower(controlKind(control).name)}`,
    'withdraw-plan': () => 'took a plan back',
    brief: ({ topics, rescue }) =>
      `held a job briefing: ${topics.length === 1 ? 'one topic' : `${topics.length} topics`}, rescue ${rescue ? 'ready' : 'not made ready'}`,
    clearance: ({ step, device }) =>
      `${step === 'request' ? 'asked for' : 'gave back'} the clearance on ${name(device)}`,
    order: ({ step, device }) => `asked the dispatcher to ${step} ${name(device)}`,
    send: ({ who, to }) =>
      to === 'away' ? `asked ${person(who)} to go back` : `sent ${person(who)}: ${standById(world, to)?.name ?? to}`,
    assign: ({ who, task }) =>
      task === null
        ? `took ${person(who)} back into the work`
        : `asked ${person(who)} to ${task === 'watch' ? 'watch only' : 'flag the traffic'}`,
    operate: ({ part, operation, stick }) =>
      `${stick === null ? 'by hand' : 'by stick'}: ${operationLabel(world, part, operation)} (${name(part)})`,
    tag: ({ part, on }) => `${on ? 'tagged' : 'took the tag off'} ${name(part)}`,
    owner: ({ part, operation }) => `asked the owner: ${operationLabel(world, part, operation)} (${name(part)})`,
    cover: ({ part, on }) => `${on ? 'covered' : 'uncovered'} ${name(part)}`,
    support: ({ part, on }) => `${on ? 'supported' : 'let go of'} ${name(part)}`,
    ground: ({ points }) => `clamped ${points.map(point).join(', then ')}`,
    unground: () => 'took a set of clamps off',
    'count-grounds': () => 'counted the grounds',
    aloft: ({ pole, by, zone }) =>
      `went up ${name(`${pole}.pole`)} ${by === 'hooks' ? 'on hooks' : 'in the bucket'}, ${zone === 'work' ? 'to the work' : 'below the work'}`,
    'come-down': () => 'came down',
    repair: ({ part, repair }) => `work: ${lower(repairKind(repair).label)} (${name(part)})`,
    touch: ({ point: at }) => `touched ${point(at)}`,
    'everyone-clear': () => 'had everybody stand clear',
    wait: ({ minutes }) => `waited ${minutes} min`,
    'hand-over': () => 'handed over',
    'close-out': () => 'closed out',
  };
};

/** An act in words, past tense and short; the world gives the names. */
export const actWords = ({ entry: { act }, before }: Step): string =>
  (wordsIn(before)[act.act] as (act: Act) => string)(act);

const happenings: ReadonlySet<string> = new Set(['operated', 'arrived', 'flash', 'flashover', 'fell', 'struck']);

/** Rows in order of time; perceptions that every act brings are left out. */
export const timelineOf = (replay: Replay, score: Score): readonly TimelineRow[] => {
  /** What an act exposed somebody to, each once. */
  const exposedWords = (index: number): readonly string[] => {
    const words = score.exposures
      .filter(({ step }) => step === index)
      .map(({ hazard, part, mechanism, potentiallyFatal, step }) => {
        const at = placeOf(replay.steps[step]?.before ?? replay.start, hazard, part);
        return `exposure: ${metWords(mechanism, at)}${potentiallyFatal ? '; could have been fatal' : ''}`;
      });
    return [...new Set(words)];
  };
  return replay.steps.flatMap((step, index): TimelineRow[] => {
    const row = (kind: TimelineRow['kind'], words: string, minute: number): TimelineRow => ({
      step: index,
      minute,
      words,
      kind,
    });
    const [from, to] = [step.before.clock.minute, step.after.clock.minute];
    return [
      row(step.entry.act.act === 'call-finding' ? 'finding' : 'act', actWords(step), from),
      ...exposedWords(index).map((words) => row('exposure', words, from)),
      ...step.events.filter(({ event }) => happenings.has(event)).map(({ words }) => row('event', words, to)),
    ];
  });
};
