/** What is pinned of a score: readable at a glance, and a hash of all of it. */
import { hashOf } from '../../../src/engine/math/hash.ts';
import type { Score } from '../../../src/engine/score/types.ts';

export const goldenOf = (score: Score) => ({
  verdict: score.verdict,
  reasons: score.reasons,
  parts: Object.fromEntries(score.parts.map(({ name, value }) => [name, value])),
  exposures: score.exposures.map(
    ({ hazard, quantities }) =>
      `${hazard}: ${quantities.map(({ name, value, unit }) => `${name} ${value.toPrecision(6)} ${unit}`).join(', ')}`,
  ),
  worldHash: score.worldHash,
  scoreHash: hashOf(score),
});
