/**
 * The verdict and its reasons. A potentially fatal exposure always fails. Passing with remarks: exposures that could not have
 * killed, a fatal cause missed, or a call left open. Handing over with the public guarded, sources named and open points tagged passes.
 */
import type { Replay } from '../acts/types.ts';
import type { JudgedCause, JudgedExposure, Score } from './types.ts';
import { severityWeight } from './weights.ts';

/** What a hand-over owes to those who come after: guarded, reported, tagged. Empty when nothing is owed. */
export const owedAtHandOver = (replay: Replay): readonly string[] => {
  const world = replay.end;
  const opened = world.parts.filter((part) => {
    const first = replay.start.parts.find(({ id }) => id === part.id);
    return (
      first !== undefined &&
      first.state.position !== part.state.position &&
      part.tags.length === 0 &&
      part.pole !== null
    );
  });
  return [
    ...(world.guards.keepOut ? [] : ['You handed over without keeping the public out.']),
    ...(world.orders.reported.some((what) => what !== 'acknowledged')
      ? []
      : ['You handed over without telling the dispatcher what you had found.']),
    ...opened.map(({ name }) => `You left without a tag: ${name}.`),
  ];
};

const failures = (exposures: readonly JudgedExposure[], replay: Replay): readonly string[] => {
  const fatal = exposures.filter(({ potentiallyFatal }) => potentiallyFatal);
  const hazards = [...new Set(fatal.map(({ hazard }) => hazard))];
  return [
    ...(replay.end.ended === 'struck' ? ['Somebody was really hit; the drill stopped there.'] : []),
    ...(hazards.length > 0
      ? [
          `${hazards.length === 1 ? 'One exposure' : `${hazards.length} exposures`} could have been fatal: that fails a drill whatever else went well.`,
        ]
      : []),
    ...(replay.end.ended === 'closed-out' && replay.end.jumpers.length > 0
      ? ['You closed out with grounds or jumpers still on the line.']
      : []),
  ];
};

const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/** Stopping and handing over is judged by what it owes, not by what was left to be found by those who come. */
const remarksOf = (
  causes: readonly JudgedCause[],
  exposures: readonly JudgedExposure[],
  replay: Replay,
): readonly string[] => {
  const { ended } = replay.end;
  const missed = causes.filter(({ found, weight }) => !found && weight >= severityWeight.fatal);
  return [
    ...(exposures.length > 0 ? [`${plural(exposures.length, 'exposure')} that could have hurt somebody.`] : []),
    ...(ended !== 'handed-over' && missed.length > 0
      ? [`You did not call ${plural(missed.length, 'cause')} of hazards that can kill.`]
      : []),
    ...(ended === null ? ['The call was neither closed out nor handed over.'] : []),
    ...(ended === 'handed-over' ? owedAtHandOver(replay) : []),
  ];
};

/** Verdict with at least one reason. */
export const verdictOf = (
  causes: readonly JudgedCause[],
  exposures: readonly JudgedExposure[],
  replay: Replay,
): Pick<Score, 'verdict' | 'reasons'> => {
  const failed = failures(exposures, replay);
  if (failed.length > 0) return { verdict: 'fail', reasons: failed };
  const remarks = remarksOf(causes, exposures, replay);
  if (remarks.length > 0) return { verdict: 'remarks', reasons: remarks };
  return {
    verdict: 'pass',
    reasons: [
      replay.end.ended === 'handed-over'
        ? 'You stopped, guarded the place and handed it over: nobody was in reach of a hazard.'
        : 'Every hazard was controlled before anybody came in reach of it.',
    ],
  };
};
