/** The branches that a part may have, whatever its state, and the state that each hangs on. */
import { componentKind } from '../../engine/catalogue/components.ts';
import { faultKind } from '../../engine/catalogue/faults.ts';
import type { Branch } from '../../engine/catalogue/types.ts';
import type { Complex } from '../../engine/math/complex.ts';
import type { Part } from '../../engine/world/types.ts';

/** A part that hangs between two poles; the field that its conductors share is drawn in none of them. */
export const isAlongSpan = (part: Part): boolean => part.pole === null && part.premises === null;

/** Magnitude of a phasor. */
export const size = ({ re, im }: Complex): number => Math.hypot(re, im);
/** All states that somebody can put the part in; a conductor lies as it lies, nobody switches it. */
export const statesOf = (part: Part): readonly Part['state'][] => {
  if (isAlongSpan(part)) return [part.state];
  return Object.entries(componentKind(part.kind).states).reduce<readonly Part['state'][]>(
    (all, [name, values]) => all.flatMap((state) => values.map((value) => ({ ...state, [name]: value }))),
    [{}],
  );
};

/** A source that drives nothing counts as one that is off. */
export const isWorking = (branch: Branch): boolean => branch.type !== 'source' || size(branch.emf) > 0;

/** A branch and what opens it. */
export interface Known {
  readonly branch: Branch;
  /** Name of the state that opens it. */
  readonly state: string | null;
}

/** Every branch that the part has in any state, none opened by a fault, and the state that it hangs on. */
export const branchesIn = (part: Part): readonly Known[] => {
  const { branches, states } = componentKind(part.kind);
  // A fault that changes a word of the part changes the branches themselves: what opens others is drawn as a gap.
  const said = part.faults.flatMap(({ kind }) => Object.entries(faultKind(kind).words ?? {}));
  const words = { ...part.words, ...Object.fromEntries(said) };
  const all = statesOf(part).map((state) => ({ state, has: branches({ ...part, words, state }) }));
  const names = new Set(all.flatMap(({ has }) => has.map(({ name }) => name)));
  return [...names].flatMap((name) => {
    const holds = all.filter(({ has }) => has.some((branch) => branch.name === name && isWorking(branch)));
    const branch = (holds[0] ?? all.find(({ has }) => has.some((each) => each.name === name)))?.has.find(
      (each) => each.name === name,
    );
    const hangsOn = Object.keys(states).filter(
      (state) => new Set(holds.map((each) => each.state[state])).size < (states[state]?.length ?? 0),
    );
    return branch ? [{ branch, state: isAlongSpan(part) ? null : (hangsOn[0] ?? null) }] : [];
  });
};
