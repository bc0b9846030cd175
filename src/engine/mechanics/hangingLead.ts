/**
 * A lead or a broken conductor that is held at one end only. It hangs straight down from there, or lies on the ground with
 * what is longer than the height; falling and swinging it can be anywhere within its length of the end that holds (plain
 * geometry), nowhere under the ground. Left out: coil and stiffness, whip beyond its length, what it catches on.
 */
import { distance, type Vec3 } from '../math/vec3.ts';
import type { Metres } from '../units/quantities.ts';

/** What hangs: the end that holds, and its length. */
export interface HangingLead {
  readonly held: Vec3;
  readonly length: Metres;
}

/** Where its free end hangs at rest; on the ground straight below if it is longer than the height. */
export const restingEnd = ({ held: [x, y, z], length }: HangingLead): Vec3 => [x, y, Math.max(0, z - length)];

/** How far out from under its end it can lie or swing at a height; zero where it cannot get. */
export const swingAt = ({ held, length }: HangingLead, height: Metres): Metres => {
  const below = held[2] - height;
  return Math.sqrt(Math.max(0, length * length - below * below));
};

/** How far along the ground its free end can lie; zero if it does not reach down. */
export const groundReach = (lead: HangingLead): Metres => swingAt(lead, 0);

/** Distance of a place above ground from everything that it can reach; zero within. */
export const distanceToLead = ({ held, length }: HangingLead, place: Vec3): Metres =>
  Math.max(0, distance(held, place) - length);
