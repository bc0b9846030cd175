/**
 * A worked survey for beginners: the careful habit without lapses goes round a scene, and its round is told stop by stop: where it
 * stands, what it looks at or asks, what is made out there, and what the trade makes of that. Told by the same dictionary as the
 * simulated trainees use (trade.ts), so nothing is known that could not be perceived.
 */
import type { Act, Replay, Step } from '../acts/types.ts';
import type { Aid } from '../senses/types.ts';
import { findPart, standById, toolById, trainee } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { carefulRound } from './habits.ts';
import { takeDrill } from './takeDrill.ts';
import { type Meaning, meaningsOf } from './trade.ts';

export interface WorkedLook {
  /** Part, tool or person. */
  readonly on: string;
  readonly name: string;
  readonly aid: Aid | null;
  /** What somebody was asked about. */
  readonly about: string | null;
  /** What was perceived, in neutral words. */
  readonly words: string;
  readonly meanings: readonly Meaning[];
}

export type StopKind = 'look' | 'ask' | 'tools' | 'sound' | 'test';

/** What is done at one place before going on. */
export interface WorkedStop {
  readonly kind: StopKind;
  readonly stand: string;
  /** Words for the stand; empty before one has arrived. */
  readonly at: string;
  readonly minute: number;
  /** How many acts of the round had been done when it began. */
  readonly acts: number;
  readonly looks: readonly WorkedLook[];
}

const kindOf = ({ act }: Act): StopKind | null => {
  if (act === 'look') return 'look';
  if (act === 'ask') return 'ask';
  if (act === 'check-tool') return 'tools';
  if (act === 'sound' || act === 'prod') return 'sound';
  return act === 'test' ? 'test' : null;
};

const subjectOf = (act: Act): string => {
  if (act.act === 'look') return act.part;
  if (act.act === 'ask') return act.who;
  if (act.act === 'check-tool') return act.tool;
  if (act.act === 'sound' || act.act === 'prod') return `${act.pole}.pole`;
  return act.act === 'test' ? (act.point.split('/')[0] ?? '') : '';
};

const lookOf = ({ entry, before, after, events }: Step): WorkedLook => {
  const on = subjectOf(entry.act);
  const part = findPart(before, on);
  const tool = toolById(before, on);
  const person = before.people.find(({ id }) => id === on);
  const words = events
    .filter(({ event }) => event !== 'done')
    .map((event) => event.words)
    .join(' ');
  const learnt = after.knowledge.tests.slice(before.knowledge.tests.length);
  const told = [
    { kind: part?.kind ?? (tool === null ? '' : `tool:${tool.kind}`), words },
    ...learnt.map((test) => ({ kind: findPart(after, test.on)?.kind ?? '', words: test.result })),
  ];
  const meanings = told.flatMap(({ kind, words: said }) => meaningsOf(kind, said));
  return {
    on,
    name: part?.name ?? tool?.name ?? person?.name ?? on,
    about: entry.act.act === 'ask' ? entry.act.about : null,
    aid: entry.act.act === 'look' ? entry.act.aid : null,
    words,
    meanings: meanings.filter(({ name }, i) => meanings.findIndex((other) => other.name === name) === i),
  };
};

/** The round of a scene in stops, with the drill that it is told from. */
export const workedSurvey = (start: World): { readonly stops: readonly WorkedStop[]; readonly replay: Replay } => {
  const replay = takeDrill(start, carefulRound, 'worked');
  const stops: WorkedStop[] = [];
  const briefed = replay.steps.findIndex(({ entry }) => entry.act.act === 'brief');
  // What comes after the briefing is work.
  replay.steps.slice(0, briefed < 0 ? undefined : briefed).forEach((step, acts) => {
    const kind = kindOf(step.entry.act);
    if (kind === null) return;
    const stand = trainee(step.before).at ?? '';
    const last = stops.at(-1);
    if (last !== undefined && last.kind === kind && last.stand === stand) {
      stops[stops.length - 1] = { ...last, looks: [...last.looks, lookOf(step)] };
      return;
    }
    const at = standById(step.before, stand)?.name ?? '';
    stops.push({ kind, stand, at, minute: step.before.clock.minute, acts, looks: [lookOf(step)] });
  });
  return { stops, replay };
};
