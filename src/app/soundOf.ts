/** Which single sound goes with what happened; most things make none. */
import type { WorldEvent } from '../engine/acts/types.ts';
import type { OnceName } from '../sound/types.ts';

const bySort: Partial<Record<WorldEvent['event'], OnceName>> = {
  operated: 'fuse-bang',
  flash: 'flash',
  flashover: 'flash',
};

/** The sound of an event, or null. */
export const soundOf = ({ event, on }: WorldEvent): OnceName | null =>
  event === 'said' && on === 'dispatcher' ? 'radio-squelch' : (bySort[event] ?? null);
