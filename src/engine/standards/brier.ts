/**
 * How well stated confidence fits what was right: Brier's score, mean of (p - o)² (G. W. Brier 1950), and its parts by
 * A. H. Murphy 1973, Journal of Applied Meteorology 12, 595-600: score = reliability - resolution + uncertainty. Judgements
 * are grouped by the very confidence stated, so the identity is exact. With a dozen of them the parts are rough. Left
 * out: intervals of the parts.
 */

/** One judgement: how sure, 0 to 1, and whether it was right. */
export interface Judgement {
  readonly sure: number;
  readonly right: boolean;
}

export interface BrierParts {
  readonly score: number;
  /** 0 when of those called with confidence p a share p was right. */
  readonly reliability: number;
  /** How far the groups differ from the mean share right. */
  readonly resolution: number;
  readonly uncertainty: number;
  /** 1 - score / uncertainty; null where all were right or all were wrong. */
  readonly skill: number | null;
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Score and parts; null without judgements. */
export const brier = (judgements: readonly Judgement[]): BrierParts | null => {
  if (judgements.length === 0) return null;
  const outcome = ({ right }: Judgement): number => (right ? 1 : 0);
  const base = mean(judgements.map(outcome));
  const groups = [...new Set(judgements.map(({ sure }) => sure))]
    .sort((a, b) => a - b)
    .map((sure) => judgements.filter((each) => each.sure === sure));
  const over = (term: (sure: number, share: number) => number): number =>
    groups.reduce((sum, group) => sum + group.length * term(group[0]?.sure ?? 0, mean(group.map(outcome))), 0) /
    judgements.length;
  const square = (x: number): number => x * x;
  const score = mean(judgements.map((each) => square(each.sure - outcome(each))));
  const uncertainty = base * (1 - base);
  return {
    score,
    reliability: over((sure, share) => square(sure - share)),
    resolution: over((_, share) => square(share - base)),
    uncertainty,
    skill: uncertainty === 0 ? null : 1 - score / uncertainty,
  };
};
