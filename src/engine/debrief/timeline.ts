/** What happened, minute by minute: acts in words, findings, exposures, what others did. */
import type { Act, Replay, Step } from '../acts/types.ts';
import { condition } from '../catalogue/conditions.ts';
import type { Score } from '../score/types.ts';
import { standById } from '../world/edit.ts';
import { nameOf } from './hazardCards.ts';
import type { TimelineRow } from './types.ts';

/** An act in words, past tense and short; the world gives the names. */
export const actWords = ({ entry: { act }, before }: Step): string => {
  const name = (id: string): string => nameOf(before, id);
  const point = (id: string): string => {
    const [part = id, terminal = ''] = id.split('/');
    return `${name(part)} (${terminal})`;
  };
  const words: { readonly [N in Act['act']]: (act: Extract<Act, { act: N }>) => string } = {
    acknowledge: () => 'took the call',
    go: ({ to }) => `went to: ${standById(before, to)?.name ?? to}`,
    park: ({ at }) => (at === 'clear' ? 'parked clear of the line' : 'parked under the line'),
    engine: ({ on }) => (on ? 'started the truck engine' : 'stopped the truck engine'),
    look: ({ part, aid }) => `looked at ${name(part)} (${aid})`,
    listen: () => 'stood still and listened',
    ask: ({ who, about }) =>
      `asked ${before.people.find(({ id }) => id === who)?.name ?? who} about ${about.replaceAll('-', ' ')}`,
    tell: ({ who, what }) =>
      `told ${before.people.find(({ id }) => id === who)?.name ?? who}: ${what.replaceAll('-', ' ')}`,
    guard: (act) => `put out ${act.with.replaceAll('-', ' ')}`,
    'check-tool': ({ tool, check }) => `${check.replaceAll('-', ' ')}: ${name(tool)}`,
    wear: ({ tool, on }) => `${on ? 'put on' : 'took off'} ${name(tool)}`,
    test: ({ point: at, tool }) => `tested ${point(at)} with ${name(tool)}`,
    sound: ({ pole }) => `sounded ${name(pole)}`,
    prod: ({ pole }) => `prodded ${name(pole)}`,
    'call-finding': ({ on, condition: what }) => `called: ${name(on)}, ${condition(what).label}`,
    'withdraw-finding': () => 'withdrew a finding',
    plan: ({ control }) => `planned: ${control.replaceAll('-', ' ')}`,
    'withdraw-plan': () => 'withdrew a plan',
    brief: ({ topics }) => `briefed on ${topics.length} topics`,
    clearance: ({ step, device }) => `${step}ed a clearance on ${name(device)}`.replace('releaseed', 'released'),
    operate: ({ part, operation }) => `${operation.replaceAll('-', ' ')}: ${name(part)}`,
    tag: ({ part, on }) => `${on ? 'tagged' : 'took the tag off'} ${name(part)}`,
    owner: ({ part, operation }) => `asked the owner to ${operation}: ${name(part)}`,
    cover: ({ part, on }) => `${on ? 'covered' : 'uncovered'} ${name(part)}`,
    support: ({ part, on }) => `${on ? 'supported' : 'let go'} ${name(part)}`,
    ground: ({ points }) => `clamped ${points.map(point).join(' to ')}`,
    unground: () => 'took a set of clamps off',
    'count-grounds': () => 'counted the grounds',
    aloft: ({ pole, by }) => `went up ${name(pole)} (${by})`,
    'come-down': () => 'came down',
    repair: ({ part, repair }) => `${repair.replaceAll('-', ' ')}: ${name(part)}`,
    touch: ({ point: at }) => `touched ${point(at)}`,
    'everyone-clear': () => 'had everybody stand clear',
    wait: ({ minutes }) => `waited ${minutes} min`,
    'hand-over': () => 'handed over',
    'close-out': () => 'closed out',
  };
  return (words[act.act] as (act: Act) => string)(act);
};

/** Rows in order of time; perceptions that every act brings are left out. */
export const timelineOf = (replay: Replay, score: Score): readonly TimelineRow[] =>
  replay.steps.flatMap((step, index): TimelineRow[] => {
    const { minute } = step.before.clock;
    const exposures = score.exposures.filter((exposure) => exposure.step === index);
    const happened = step.events.filter(({ event }) =>
      ['operated', 'arrived', 'flash', 'flashover', 'fell', 'struck'].includes(event),
    );
    return [
      { step: index, minute, words: actWords(step), kind: step.entry.act.act === 'call-finding' ? 'finding' : 'act' },
      ...happened.map(({ words }): TimelineRow => ({ step: index, minute, words, kind: 'event' })),
      ...exposures.map(
        ({ part, mechanism, potentiallyFatal }): TimelineRow => ({
          step: index,
          minute,
          words: `exposure: ${mechanism}, ${nameOf(step.before, part)}${potentiallyFatal ? ', could have been fatal' : ''}`,
          kind: 'exposure',
        }),
      ),
    ];
  });
