/** How well stated confidence fitted: findings called with a confidence, right or not, by the Brier score (standards/brier.ts). */
import type { Replay } from '../acts/types.ts';
import { brier } from '../standards/brier.ts';
import { wilsonInterval } from '../standards/wilson.ts';
import type { Confidence, JudgedFinding } from './types.ts';

/** Null where no finding was called with a confidence. A call that nothing could tell is neither right nor wrong. */
export const judgeConfidence = (replay: Replay, findings: readonly JudgedFinding[]): Confidence | null => {
  const stated = new Map(replay.end.paper.findings.map(({ id, confidence }) => [id, confidence]));
  const judgements = findings.flatMap(({ finding, outcome }) => {
    const sure = stated.get(finding) ?? null;
    return sure === null || outcome === 'not-perceivable' ? [] : [{ sure, right: outcome !== 'false-call' }];
  });
  const parts = brier(judgements);
  if (parts === null) return null;
  const right = judgements.filter((each) => each.right).length;
  const { lower, upper } = wilsonInterval(right, judgements.length);
  const meanSure = judgements.reduce((sum, { sure }) => sum + sure, 0) / judgements.length;
  return {
    asked: judgements.length,
    right,
    rightLow: lower,
    rightHigh: upper,
    meanSure,
    ...parts,
    says: [confidenceWords(judgements.length, right, meanSure)],
  };
};

const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** Too few to tell over- from underconfidence below this gap of what was said and what was right. */
const telling = 0.15;

const confidenceWords = (asked: number, right: number, meanSure: number): string => {
  const stated = `You were ${percent(meanSure)} sure on average of ${asked === 1 ? 'one call' : `${asked} calls`}, and ${right === asked ? (asked === 1 ? 'it was right' : 'all were right') : `${right === 0 ? 'none' : right} ${right < 2 ? 'was' : 'were'} right`}`;
  const gap = meanSure - right / asked;
  if (gap > telling) return `${stated}: surer than the signs allowed.`;
  return gap < -telling ? `${stated}: the signs allowed more.` : `${stated}: that fits.`;
};
