/** Which of one's controls held a cause's hazards and which did not, what else works, and what would have stood higher in the hierarchy. */
import { controlKind } from '../catalogue/controls.ts';
import { type FaultKind, hierarchy } from '../catalogue/types.ts';
import type { JudgedCause, JudgedControl, Score } from '../score/types.ts';
import { lackingWords } from './words.ts';

const rank = (id: string): number => hierarchy.indexOf(controlKind(id).level);

const withRule = (id: string): string => `${controlKind(id).name} (${controlKind(id).rule}).`;

/** From the top of the hierarchy down, each once. */
const ranked = (ids: readonly string[]): readonly string[] => [...new Set(ids)].sort((a, b) => rank(a) - rank(b));

/** What was in the hand; whatever else failed was nothing but care. */
const barriers: readonly string[] = ['hot-stick-only', 'rubber-gloves'];

/** What was relied on in vain, each with all that it lacked. */
const failedLines = (failed: readonly JudgedControl[]): readonly string[] =>
  ranked(failed.map(({ control }) => control)).map((id) => {
    const lacks = [...new Set(failed.filter(({ control }) => control === id).flatMap((each) => each.failed))].sort();
    const missing = lacks.length === 0 ? '' : `; missing: ${lacks.map(lackingWords).join(', ')}`;
    return `${barriers.includes(id) ? `Did not hold here: ${controlKind(id).name}` : 'Nothing held it here'}${missing}.`;
  });

const restWords = (id: string, held: readonly string[]): string => {
  if (held.length === 0) return 'Works';
  return rank(id) < Math.min(...held.map(rank)) ? 'Better, higher in the hierarchy' : 'Works too';
};

/** Lines of a hazard card on controls. */
export const controlLines = (kind: FaultKind, cause: JudgedCause, { controls }: Score): readonly string[] => {
  const mine = controls.filter(({ hazard }) => cause.hazards.includes(hazard));
  const held = ranked(mine.filter(({ worked }) => worked).map(({ control }) => control));
  const rest = ranked(kind.controls).filter((id) => !held.includes(id));
  return [
    ...held.map((id) => `Held it here: ${withRule(id)}`),
    ...failedLines(mine.filter(({ worked }) => !worked)),
    ...rest.map((id) => `${restWords(id, held)}: ${withRule(id)}`),
    ...kind.tempting.map(({ what, why }) => `Tempting and wrong: ${what}; ${why}.`),
  ];
};
