/** Names of all branches that a part may have: those of its kind in any state, and the leaks of its faults. */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { Part } from '../world/types.ts';

/** All combinations of the kind's states. */
function statesOf(part: Part): Readonly<Record<string, string>>[] {
  return Object.entries(componentKind(part.kind).states).reduce<Readonly<Record<string, string>>[]>(
    (combined, [name, values]) => combined.flatMap((state) => values.map((value) => ({ ...state, [name]: value }))),
    [{}],
  );
}

/** Branch names of the part in any state, its faults' leaks included. */
export function branchNames(part: Part): ReadonlySet<string> {
  const { branches } = componentKind(part.kind);
  const names = statesOf(part).flatMap((state) => branches({ ...part, state }).map(({ name }) => name));
  return new Set([...names, ...part.faults.flatMap(({ kind }) => faultKind(kind).leaks.map(({ name }) => name))]);
}
