/** Minutes of a drill as the clock of that day showed them. */
import type { World } from '../world/types.ts';

/** '07:08', so many minutes after the call. */
export const clockAt = ({ given }: Pick<World, 'given'>, minute: number): string => clockFrom(given.call.time, minute);

/** The same from the time of the call. */
export const clockFrom = (call: string, minute: number): string => {
  const [hours = 0, minutes = 0] = call.split(':').map(Number);
  const total = hours * 60 + minutes + minute;
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${two(Math.floor(total / 60) % 24)}:${two(total % 60)}`;
};
