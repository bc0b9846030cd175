/** Score = f(replay of a log): pure, the same in every browser and in Node. */
import { worldHash } from '../acts/log.ts';
import type { Replay } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import { hazardsIn } from '../hazards/hazardsIn.ts';
import { controlPart, judgeControls } from './controls.ts';
import { exposurePart, judgeExposures } from './exposure.ts';
import { judgeFindings } from './judgeFindings.ts';
import { laidIn } from './known.ts';
import { orderPart } from './order.ts';
import { judgeCauses, judgeLookAlikes, recognitionPart } from './recognition.ts';
import { servicePart } from './service.ts';
import type { Score } from './types.ts';
import { verdictOf } from './verdict.ts';

/** Judges a replayed log: five parts, verdict, and what they rest on. */
export const score = (replay: Replay): Score => {
  const hazards = hazardsIn(replay.start);
  const behind = new Set(hazards.flatMap(({ causes }) => causes));
  const laid = laidIn(replay.start);
  const causes = laid.filter(({ fault }) => behind.has(fault.id));
  const lookAlikes = laid.filter(({ fault }) => faultKind(fault.kind).benign);
  const findings = judgeFindings(replay, causes);
  const judgedCauses = judgeCauses(replay, causes, findings, hazards);
  const judgedLookAlikes = judgeLookAlikes(replay.start, lookAlikes, findings);
  const exposures = judgeExposures(replay, causes);
  const controls = judgeControls(replay, hazards);
  return {
    scenario: replay.log.scenario,
    scenarioHash: replay.log.scenarioHash,
    engine: replay.log.engine,
    ...verdictOf(judgedCauses, exposures, replay, causes),
    parts: [
      recognitionPart(judgedCauses, judgedLookAlikes, findings),
      orderPart(replay, causes, exposures),
      controlPart(controls),
      exposurePart(exposures),
      servicePart(replay, causes, replay.log.par),
    ],
    findings,
    causes: judgedCauses,
    lookAlikes: judgedLookAlikes,
    exposures,
    controls,
    hazards,
    worldHash: worldHash(replay.end),
    end: replay.end.ended,
  };
};
