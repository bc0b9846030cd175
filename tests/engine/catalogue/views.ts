import type { ComponentKind, PartView } from '../../../src/engine/catalogue/types.ts';

/** Every combination of a kind's positions. */
export function statesOf(kind: ComponentKind): readonly Readonly<Record<string, string>>[] {
  return Object.entries(kind.states).reduce<readonly Readonly<Record<string, string>>[]>(
    (all, [name, positions]) => all.flatMap((state) => positions.map((position) => ({ ...state, [name]: position }))),
    [{}],
  );
}

const defaults = <T>(declared: Readonly<Record<string, { readonly default: T }>>): Record<string, T> =>
  Object.fromEntries(Object.entries(declared).map(([name, entry]) => [name, entry.default]));

/** A part of the kind as its entry sees it, with the kind's own values and words. */
export const viewOf = (kind: ComponentKind, state: Readonly<Record<string, string>>): PartView => ({
  id: 'x',
  kind: kind.id,
  state,
  values: defaults(kind.values),
  words: defaults(kind.words),
});
