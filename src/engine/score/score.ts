/** Score = f(replay of a log): pure, the same in every browser and in Node. */
import { worldHash } from '../acts/log.ts';
import type { Replay } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import { hazardsIn } from '../hazards/hazardsIn.ts';
import { judgeConfidence } from './confidence.ts';
import { contactsOf } from './contacts.ts';
import { controlPart, judgeControls, overControls } from './controls.ts';
import { exposurePart, judgeExposures } from './exposure.ts';
import { judgeFindings } from './judgeFindings.ts';
import { laidIn } from './known.ts';
import { judgePrecedence, orderPart } from './order.ts';
import { judgeCauses, judgeLookAlikes, recognitionPart } from './recognition.ts';
import { servicePart } from './service.ts';
import type { Score } from './types.ts';
import { verdictOf } from './verdict.ts';
import { changedFrom, usualWeights, type Weights } from './weights.ts';

/** Judges a replayed log by the usual weights or an instructor's: five parts, verdict, and what they rest on. */
export const score = (replay: Replay, weights: Weights = usualWeights): Score => {
  const hazards = hazardsIn(replay.start);
  const behind = new Set(hazards.flatMap(({ causes }) => causes));
  const laid = laidIn(replay.start);
  const causes = laid.filter(({ fault }) => behind.has(fault.id));
  const lookAlikes = laid.filter(({ fault }) => faultKind(fault.kind).benign);
  const findings = judgeFindings(replay, causes);
  const judgedCauses = judgeCauses(replay, causes, findings, hazards, weights);
  const judgedLookAlikes = judgeLookAlikes(replay, lookAlikes, findings);
  const exposures = judgeExposures(replay, causes);
  const contacts = contactsOf(replay, hazards);
  const controls = judgeControls(replay, contacts, exposures);
  const over = overControls(replay, controls);
  const precedence = judgePrecedence(replay, causes, contacts, exposures);
  return {
    scenario: replay.log.scenario,
    scenarioHash: replay.log.scenarioHash,
    engine: replay.log.engine,
    weights: { name: weights.name, changed: changedFrom(weights) },
    ...verdictOf({ causes: judgedCauses, exposures, findings, replay, laid: causes, weights }),
    parts: [
      recognitionPart(judgedCauses, judgedLookAlikes, findings),
      orderPart(replay, causes, precedence, exposures, weights),
      controlPart(controls, over, weights),
      exposurePart(exposures, weights),
      servicePart(replay, causes, replay.log.par),
    ],
    findings,
    causes: judgedCauses,
    lookAlikes: judgedLookAlikes,
    exposures,
    controls,
    overControls: over,
    precedence,
    confidence: judgeConfidence(replay, findings),
    hazards,
    worldHash: worldHash(replay.end),
    end: replay.end.ended,
  };
};
