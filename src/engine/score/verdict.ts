/**
 * The verdict and its reasons. A potentially fatal exposure always fails; so does leaving what can kill with nobody kept away and
 * nothing told. Passing with remarks: exposures that could not have killed, a fatal cause missed, many calls of what is not
 * there, a call left open. Handing over with the public guarded, sources named and open points tagged passes.
 */
import type { Replay } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { hazardsIn } from '../hazards/hazardsIn.ts';
import { faultsOf, findPart } from '../world/edit.ts';
import type { Part, Person, World } from '../world/types.ts';
import { type Laid, perceived, sourcePremisesOf } from './known.ts';
import type { JudgedCause, JudgedExposure, JudgedFinding, Score } from './types.ts';
import type { Weights } from './weights.ts';

/** Open points: devices that hands or stick left open, in another position than they found, without a tag. */
const untagged = (replay: Replay): readonly Part[] =>
  replay.end.parts.filter((part) => {
    const first = findPart(replay.start, part.id);
    const byCrew = componentKind(part.kind).operations.some(
      ({ by, to, makes }) => by !== 'owner' && makes === undefined && to.position === part.state.position,
    );
    return first?.state.position !== part.state.position && byCrew && part.tags.length === 0;
  });

/** Whether the trainee knew of a customer's source that holds the line alive. */
const knewOfSource = (replay: Replay, causes: readonly Laid[]): boolean =>
  causes.some((laid) => sourcePremisesOf(replay.start, laid) !== null && perceived(replay.end, replay, laid));

/** People of the public who stand where something can reach them. */
const leftInReach = (world: World): readonly Person[] => {
  const there = world.people.filter(({ role, at }) => (role === 'bystander' || role === 'child') && at !== null);
  if (there.length === 0) return [];
  const reached = new Set(hazardsIn(world).map(({ part }) => part));
  return there.filter(({ id }) => reached.has(id));
};

/** What a hand-over owes to those who come after: guarded, reported, tagged. Empty when nothing is owed. */
export const owedAtHandOver = (replay: Replay, causes: readonly Laid[]): readonly string[] => {
  const { guards, orders } = replay.end;
  const told = (what: string): boolean => orders.reported.includes(what);
  const named = told('backfeed') || (!knewOfSource(replay, causes) && (told('public-danger') || told('cause-found')));
  return [
    ...(guards.keepOut ? [] : ['You handed over without keeping the public out.']),
    ...leftInReach(replay.end).map(({ name }) => `You handed over with ${name} in reach of a hazard.`),
    ...(named ? [] : ['You handed over without telling the dispatcher what you knew.']),
    ...untagged(replay).map(({ name }) => `You left without a tag: ${name}.`),
  ];
};

/** What the verdict rests on. */
export interface Grounds {
  readonly causes: readonly JudgedCause[];
  readonly exposures: readonly JudgedExposure[];
  readonly findings: readonly JudgedFinding[];
  readonly replay: Replay;
  readonly laid: readonly Laid[];
  readonly weights: Weights;
}

const isFatal = ({ fault }: Laid): boolean => faultKind(fault.kind).severity === 'fatal';

/** Causes that can kill and still lie there at the end. */
const leftThere = ({ laid, replay }: Grounds): readonly Laid[] => {
  const there = new Set(faultsOf(replay.end).map(({ fault }) => fault.id));
  return laid.filter((each) => isFatal(each) && findPart(replay.end, each.on) !== null && there.has(each.fault.id));
};

/** Told the dispatcher anything beyond having taken the call. */
const isReported = ({ replay }: Grounds): boolean =>
  ['backfeed', 'public-danger', 'cause-found', 'stays-out'].some((what) => replay.end.orders.reported.includes(what));

/** Left what can kill with nobody kept away and nobody told. */
const isAbandoned = (grounds: Grounds): boolean => {
  const { ended, guards } = grounds.replay.end;
  const left = ended === 'handed-over' || ended === 'closed-out';
  return left && !guards.keepOut && !isReported(grounds) && leftThere(grounds).length > 0;
};

const failures = (grounds: Grounds): readonly string[] => {
  const { exposures, replay } = grounds;
  const fatal = exposures.filter(({ potentiallyFatal }) => potentiallyFatal);
  const hazards = [...new Set(fatal.map(({ hazard }) => hazard))];
  return [
    ...(replay.end.ended === 'struck' ? ['Somebody was hit; the drill stopped there.'] : []),
    ...(hazards.length > 0
      ? [
          `${hazards.length === 1 ? 'One hazard that can kill was' : `${hazards.length} hazards that can kill were`} met uncontrolled: that fails a drill whatever else went well.`,
        ]
      : []),
    ...(replay.end.ended === 'closed-out' && replay.end.jumpers.length > 0
      ? ['You closed out with grounds or jumpers still on the line.']
      : []),
    ...(isAbandoned(grounds)
      ? ['You left with what can kill still there, nobody kept away from it and nothing told to the dispatcher.']
      : []),
  ];
};

/** Stopping and handing over is judged by what it owes, not by what was left to be found by those who come. */
const remarksOf = ({ causes, exposures, findings, replay, laid, weights }: Grounds): readonly string[] => {
  const { ended } = replay.end;
  const missed = causes.filter(({ found, severity }) => !found && severity === 'fatal');
  const falseCalls = findings.filter(({ outcome }) => outcome === 'false-call').length;
  return [
    ...(exposures.length > 0
      ? [`${exposures.length === 1 ? 'One exposure' : `${exposures.length} exposures`} could have hurt somebody.`]
      : []),
    ...(ended !== 'handed-over' && missed.length > 0
      ? [`You did not call ${missed.length === 1 ? 'one cause' : `${missed.length} causes`} of hazards that can kill.`]
      : []),
    ...(ended === null ? ['The call was neither closed out nor handed over.'] : []),
    ...(ended === 'handed-over' ? owedAtHandOver(replay, laid) : []),
    ...(falseCalls >= weights.values['remark-false-calls']
      ? [
          `You called ${falseCalls === 1 ? 'one thing' : `${falseCalls} things`} that ${falseCalls === 1 ? 'was' : 'were'} not there.`,
        ]
      : []),
  ];
};

/** Verdict with at least one reason. */
export const verdictOf = (grounds: Grounds): Pick<Score, 'verdict' | 'reasons'> => {
  const failed = failures(grounds);
  if (failed.length > 0) return { verdict: 'fail', reasons: failed };
  const remarks = remarksOf(grounds);
  if (remarks.length > 0) return { verdict: 'remarks', reasons: remarks };
  return {
    verdict: 'pass',
    reasons: [
      grounds.replay.end.ended === 'handed-over'
        ? 'You stopped, guarded the place and handed it over: nobody was in reach of a hazard.'
        : 'Every hazard was controlled before anybody came in reach of it.',
    ],
  };
};
