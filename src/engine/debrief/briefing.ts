/** The job briefing held against what is there: subjects gone through, who heard it, which causes stood on it with a control that works. */
import type { Replay } from '../acts/types.ts';
import { briefingTopics } from '../catalogue/controls.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Score } from '../score/types.ts';
import { personById } from '../world/edit.ts';
import { clockAt } from './clock.ts';
import { type Subject, subjectWords, underSubjects } from './subjects.ts';
import { nameOf } from './words.ts';

const lowerSubject = (subject: Subject): string => subjectWords[subject].toLowerCase();

/** Ids of findings that named a cause rightly, by cause. */
const namedBy = (score: Score, cause: string): readonly string[] =>
  score.findings.filter((each) => each.outcome === 'hit' && each.cause === cause).map(({ finding }) => finding);

const onSheet = (worked: number, all: number): readonly string[] => {
  if (all === 0) return [];
  if (all === 1) return worked === 1 ? ['The one cause stood on the sheet with a control that works against it.'] : [];
  const [every, none] = all === 2 ? ['Both', 'Neither'] : [`All ${all}`, 'None'];
  const some = worked === all ? `${every} causes` : `${worked === 0 ? none : worked} of the ${all} causes`;
  return [`${some} stood on the sheet with a control that works against ${worked > 1 ? 'them' : 'it'}.`];
};

/** Lines on the briefing, one sentence each. */
export const briefingLines = (replay: Replay, score: Score): readonly string[] => {
  const { briefings, plans } = replay.end.paper;
  const last = briefings.at(-1);
  if (last === undefined) {
    return score.controls.length === 0 ? [] : ['No job briefing was held before the work.'];
  }
  const left = briefingTopics.filter((topic) => !last.topics.includes(topic));
  const under = underSubjects(replay.end);
  const bare = briefingTopics.filter((topic) => last.topics.includes(topic) && under[topic].length === 0);
  const heard = last.heard.filter((id) => id !== 'trainee').map((id) => personById(replay.end, id)?.name ?? id);
  const planned = score.causes.map((cause) => {
    const findings = namedBy(score, cause.cause);
    const mine = plans.filter(({ finding }) => finding !== null && findings.includes(finding));
    return { cause, works: mine.some(({ control }) => faultKind(cause.kind).controls.includes(control)), mine };
  });
  const without = planned.filter(({ works }) => !works);
  return [
    `Held at ${clockAt(replay.start, last.minute)}, ${heard.length === 0 ? 'alone' : `with ${heard.join(' and ')}`}; ${left.length === 0 ? 'all five subjects' : `left out: ${left.map(lowerSubject).join(', ')}`}.`,
    ...(bare.length === 0 ? [] : [`Gone through with nothing written under it: ${bare.map(lowerSubject).join(', ')}.`]),
    ...onSheet(planned.length - without.length, planned.length),
    ...without.map(
      ({ cause, mine }) =>
        `${mine.length === 0 ? 'No control planned for' : 'What was planned does not hold'}: ${faultKind(cause.kind).name} (${nameOf(replay.start, cause.on)}).`,
    ),
  ];
};
