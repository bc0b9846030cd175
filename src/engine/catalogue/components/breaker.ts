/** The series branch of a breaker, for kinds that have one. */
import { complex } from '../../math/complex.ts';
import type { Branch, ComponentKind, PartView } from '../types.ts';
import { valueIn } from './shared.ts';

/** A breaker of so many rated amperes. */
export const breakerOf = (
  rating: number,
  name: string,
  from: string,
  to: string,
  opens: Readonly<Record<string, string>>,
): Branch => ({
  type: 'series',
  name,
  between: [from, to],
  z: complex(2e-3, 3e-4),
  protects: { curve: 'breaker', rating, opens },
});

/** A breaker of a panel or set, by the rating that the part declares. */
export const breaker = (
  part: PartView,
  kind: ComponentKind,
  name: string,
  from: string,
  to: string,
  opens: Readonly<Record<string, string>>,
): Branch => breakerOf(valueIn(kind, part, 'ratingA'), name, from, to, opens);
