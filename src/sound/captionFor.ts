// Words for where a sound comes from, seen from the present view: four quarters.
import type { HeardSound, Radians } from './types.ts';

/** A direction's word, or null for what comes from all round. */
export const directionOf = (
  bearing: Radians | null,
  viewYaw: Radians,
): 'ahead' | 'right' | 'behind' | 'left' | null => {
  if (bearing === null) return null;
  const quarters = (bearing - viewYaw) / (Math.PI / 2);
  const quarter = Math.round(quarters - 4 * Math.floor(quarters / 4)) % 4;
  return quarter === 0 ? 'ahead' : quarter === 1 ? 'right' : quarter === 2 ? 'behind' : 'left';
};

/** The caption with its direction after the first clause: "steady engine, left, some way off". */
export const captionFor = (heard: Pick<HeardSound, 'bearing' | 'caption'>, viewYaw: Radians): string => {
  const direction = directionOf(heard.bearing, viewYaw);
  if (direction === null) return heard.caption;
  const comma = heard.caption.indexOf(',');
  const end = comma < 0 ? heard.caption.length : comma;
  return `${heard.caption.slice(0, end)}, ${direction}${heard.caption.slice(end)}`;
};
