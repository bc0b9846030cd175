/**
 * The job that was asked for, step by step: when each of its usual steps was first done, which were left out, which came
 * before the step that should stand before them. It is told and not scored: what a wrong order does is in the exposures.
 */
import type { Replay, Step } from '../acts/types.ts';
import { jobKind } from '../catalogue/jobs.ts';
import type { JobKind, JobStep } from '../catalogue/types.ts';
import { precondition } from '../hazards/preconditions.ts';
import { clockAt } from './clock.ts';

export interface DoneStep {
  readonly step: JobStep;
  /** Index of the replay's step and its minute; null: never done. */
  readonly at: number | null;
  readonly minute: number | null;
}

const shows = ({ entry: { act }, after }: Step, mark: JobStep['shownBy'][number]): boolean => {
  const [what, id] = mark.split(':');
  if (what === 'act') return act.act === id;
  if (what === 'repair') return act.act === 'repair' && act.repair === id;
  if (what === 'operation') return (act.act === 'operate' || act.act === 'owner') && act.operation === id;
  return precondition(after, id ?? '');
};

/** When each step was first done. A step that looks like an earlier one is looked for after that. */
export function stepsDone(replay: Replay, job: JobKind): readonly DoneStep[] {
  const used = new Map<string, number>();
  return job.steps.map((step) => {
    const key = step.shownBy.join(' ');
    const from = (used.get(key) ?? -1) + 1;
    const found = replay.steps.findIndex((each, i) => i >= from && step.shownBy.some((mark) => shows(each, mark)));
    if (found < 0) return { step, at: null, minute: null };
    used.set(key, found);
    return { step, at: found, minute: replay.steps[found]?.before.clock.minute ?? null };
  });
}

const words = ({ words: text }: JobStep): string => text.replace(/\.$/, '');

/** Lines of the debrief; none where the scenario names no job of the catalogue. */
export function jobLines(replay: Replay): readonly string[] {
  const { kind } = replay.start.given.job;
  if (kind === undefined) return [];
  const job = jobKind(kind);
  let latest = -1;
  const lines = stepsDone(replay, job).map(({ step, at, minute }) => {
    if (at === null) return `Not done: ${words(step)}.`;
    const early = at < latest;
    latest = Math.max(latest, at);
    return `${clockAt(replay.start, minute ?? 0)}${early ? ', earlier than usual' : ''}: ${words(step)}.`;
  });
  return [`${job.name}, as it is usually done.`, ...lines, `Where it differs: ${job.limits}`];
}
