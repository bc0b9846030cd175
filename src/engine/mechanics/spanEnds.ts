/**
 * Ends of spans let down from their tie and put back on it: their place, the state of that end, and what it leads into the
 * ground when it lies there. Left out: the new sag of a span with one end low, which the picture draws as it hung.
 */
import type { Metres } from '../units/quantities.ts';
import type { Part, World } from '../world/types.ts';
import { endsAt, hasFallen, type SpanEnd } from './looseRuns.ts';

/** The span with one end at another height, held or not. */
export function withEnd({ part, end }: SpanEnd, height: Metres, position: string, groundOhms: number): Part {
  const place = end === 'a' || part.end === null ? part.at : part.end;
  const moved = [place[0], place[1], height] as const;
  const placed = end === 'a' ? { at: moved } : { end: moved };
  const values = position === 'ground' ? { ...part.values, groundOhms } : part.values;
  return { ...part, ...placed, values, state: { ...part.state, [`${end}-end`]: position } };
}

/** Each end changed; a span that both ends belong to is changed twice. */
export const withEnds = (world: World, ends: readonly SpanEnd[], change: (end: SpanEnd) => Part): World => ({
  ...world,
  parts: world.parts.map((part) =>
    ends.filter((end) => end.part.id === part.id).reduce((sofar, { end }) => change({ part: sofar, end }), part),
  ),
});

/** Puts the conductor back on what the tie ties it to. */
export function liftAt(world: World, tie: Part): World {
  const ends = endsAt(world, tie).filter(hasFallen);
  return withEnds(world, ends, (end) => withEnd(end, tie.at[2], 'held', 0));
}
