/** Acts as one says them, here about the pole with the transformer and the span that ends there. */
import type { Act } from '../../../src/engine/acts/types.ts';
import { hold, up } from '../shorthand.ts';

export {
  ask,
  byHand,
  byStick,
  check,
  find,
  go,
  ground,
  look,
  owner,
  plan,
  primary,
  repair,
  secondary,
  tag,
  tell,
  unground,
  wait,
  wear,
} from '../shorthand.ts';

export const aloft = (zone: 'below' | 'work'): Act => up('p2', zone);
export const support = (on: boolean): Act => hold('s1.phase', on);
