/** Which single sound goes with what happened; most things make none. */
import type { WorldEvent } from '../engine/acts/types.ts';
import type { OnceName } from '../sound/types.ts';

const bySort: Partial<Record<WorldEvent['event'], OnceName>> = {
  operated: 'fuse-bang',
  flash: 'flash',
  flashover: 'flash',
};

/** Whoever speaks or sounds without being a part of the line. */
const bySource: Readonly<Record<string, OnceName>> = { 'said dispatcher': 'radio-squelch', 'heard sky': 'thunder' };

/** The sound of an event, or null. */
export const soundOf = ({ event, on }: WorldEvent): OnceName | null =>
  bySource[`${event} ${on}`] ?? bySort[event] ?? null;
