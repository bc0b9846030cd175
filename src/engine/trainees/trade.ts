/**
 * What somebody of the trade makes of neutral words: a dictionary from the catalogue's signs to the condition that names them, by
 * kind of part or tool. It knows what such a sign means wherever it is met, and nothing of what was laid in this scene.
 */
import { conditionsFor } from '../catalogue/conditions.ts';
import { faultKinds } from '../catalogue/faults.ts';
import type { FaultKind } from '../catalogue/types.ts';

/** What a sign means: what to call, whether it is only a look-alike, what holds it. */
export interface Meaning {
  readonly condition: string;
  readonly benign: boolean;
  readonly controls: readonly string[];
  /** What the trade calls it, what it can do, how it is told from its like. */
  readonly name: string;
  readonly harm: string;
  readonly tellApart: string;
}

interface Entry extends Meaning {
  /** Words of the sign without the feature's name, as they stand in the line of a look. */
  readonly words: string;
}

const withoutFeature = (words: string): string => words.replace(/^[a-z ]+: /, '');

const entriesOf = ({ signs, conditions, ...kind }: FaultKind): readonly Entry[] => {
  const [condition] = conditions;
  if (condition === undefined) return [];
  return signs
    .filter(({ sense }) => sense !== 'hear' && sense !== 'measure')
    .map(({ words }) => {
      const { benign, controls, name, harm, tellApart } = kind;
      return { words: withoutFeature(words), condition, benign, controls, name, harm, tellApart };
    });
};

const byKind = new Map<string, readonly Entry[]>();
for (const fault of faultKinds) {
  for (const kind of fault.on) byKind.set(kind, [...(byKind.get(kind) ?? []), ...entriesOf(fault)]);
}

/** What perceived words say about a part of that kind ('tool:stick' for a tool); longest sign first. */
export const meaningsOf = (kind: string, perceived: string): readonly Meaning[] => {
  const lower = perceived.toLowerCase();
  return (byKind.get(kind) ?? []).filter(({ words }) => lower.includes(words.toLowerCase()));
};

/** What the trade holds such a condition of such a part with, best first; nothing where it knows of none. */
export const controlsAgainst = (kind: string, condition: string): readonly string[] =>
  faultKinds.find(({ on, conditions, benign }) => !benign && on.includes(kind) && conditions.includes(condition))
    ?.controls ?? [];

/** Everything wrong that can be called on such a part, right or not. */
export const allFaultsOf = (kind: string): readonly string[] =>
  conditionsFor(kind)
    .filter(({ healthy }) => healthy !== true)
    .map(({ id }) => id);
