/**
 * The verdict and its reasons. A potentially fatal exposure always fails. Passing with remarks: exposures that could not have
 * killed, a fatal cause missed, or a call left open. Handing over with the public guarded, sources named and open points tagged passes.
 */
import type { Replay } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { findPart } from '../world/edit.ts';
import type { Part } from '../world/types.ts';
import { type Laid, perceived, premisesOf } from './known.ts';
import type { JudgedCause, JudgedExposure, Score } from './types.ts';
import { severityWeight } from './weights.ts';

/** Devices that hands or stick left in another position than they found, without a tag. */
const untagged = (replay: Replay): readonly Part[] =>
  replay.end.parts.filter((part) => {
    const first = findPart(replay.start, part.id);
    const byCrew = componentKind(part.kind).operations.some(
      ({ by, to }) => by !== 'owner' && to.position === part.state.position,
    );
    return first?.state.position !== part.state.position && byCrew && part.tags.length === 0;
  });

/** Whether the trainee knew of a customer's source that holds the line alive. */
const knewOfSource = (replay: Replay, causes: readonly Laid[]): boolean =>
  causes.some((laid) => premisesOf(replay.start, laid) !== null && perceived(replay.end, replay, laid));

/** What a hand-over owes to those who come after: guarded, reported, tagged. Empty when nothing is owed. */
export const owedAtHandOver = (replay: Replay, causes: readonly Laid[]): readonly string[] => {
  const { guards, orders } = replay.end;
  const told = (what: string): boolean => orders.reported.includes(what);
  const named = told('backfeed') || (!knewOfSource(replay, causes) && (told('public-danger') || told('cause-found')));
  return [
    ...(guards.keepOut ? [] : ['You handed over without keeping the public out.']),
    ...(named ? [] : ['You handed over without telling the dispatcher what you knew.']),
    ...untagged(replay).map(({ name }) => `You left without a tag: ${name}.`),
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

/** Stopping and handing over is judged by what it owes, not by what was left to be found by those who come. */
const remarksOf = (
  causes: readonly JudgedCause[],
  exposures: readonly JudgedExposure[],
  replay: Replay,
  laid: readonly Laid[],
): readonly string[] => {
  const { ended } = replay.end;
  const missed = causes.filter(({ found, weight }) => !found && weight >= severityWeight.fatal);
  return [
    ...(exposures.length > 0
      ? [`${exposures.length === 1 ? 'One exposure' : `${exposures.length} exposures`} could have hurt somebody.`]
      : []),
    ...(ended !== 'handed-over' && missed.length > 0
      ? [`You did not call ${missed.length === 1 ? 'one cause' : `${missed.length} causes`} of hazards that can kill.`]
      : []),
    ...(ended === null ? ['The call was neither closed out nor handed over.'] : []),
    ...(ended === 'handed-over' ? owedAtHandOver(replay, laid) : []),
  ];
};

/** Verdict with at least one reason. */
export const verdictOf = (
  causes: readonly JudgedCause[],
  exposures: readonly JudgedExposure[],
  replay: Replay,
  laid: readonly Laid[],
): Pick<Score, 'verdict' | 'reasons'> => {
  const failed = failures(exposures, replay);
  if (failed.length > 0) return { verdict: 'fail', reasons: failed };
  const remarks = remarksOf(causes, exposures, replay, laid);
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
