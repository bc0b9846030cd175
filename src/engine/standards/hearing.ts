/**
 * Sound level by distance, background, and whether it is heard. Point source over open ground: 6 dB a doubling of distance
 * (ISO 9613-2 without barriers, ground and air absorption). Wind in open grassland: LA95 = 22.6 lg v + 22.7 (Boersma
 * 1997). Heard when it adds 1 dB to the background, that is from 5.87 dB below it (the 1 dB step is from memory);
 * understood from 10 dB above (NUREG-0700 rev. 2 for signals). A-weighted levels; no spectrum, no hearing loss. Left
 * out: walls, trees, wind that carries sound, the ground’s own dip.
 */
import { log10, pow } from '../math/elementary.ts';
import type { Decibels, Metres, MetresPerSecond } from '../units/quantities.ts';

/** Level at `distance` of a source that has `level` at `reference`. */
export const levelAt = (level: Decibels, reference: Metres, distance: Metres): Decibels =>
  level - 20 * log10(distance / reference);

/** Level at `distance` from sound power: free field 11 dB, over hard ground 8 dB. */
export const levelFromPower = (power: Decibels, distance: Metres, hardGround: boolean): Decibels =>
  power - (20 * log10(distance) + (hardGround ? 8 : 11));

/** Sum of levels that have nothing to do with each other. No level at all is minus infinity. */
export const sumLevels = (levels: readonly Decibels[]): Decibels =>
  levels.length === 0
    ? Number.NEGATIVE_INFINITY
    : 10 * log10(levels.reduce((sum, level) => sum + pow(10, level / 10), 0));

/** Background that wind makes in open grassland; below 1 m/s the 1 m/s value. */
export const windBackground = (speed: MetresPerSecond): Decibels => 22.6 * log10(Math.max(1, speed)) + 22.7;

/** How far under the background a sound is still heard: 10 lg(10^0.1 - 1). */
export const heardMargin: Decibels = 10 * log10(pow(10, 0.1) - 1);

/** Whether a sound of `level` is heard in `background`. */
export const isHeard = (level: Decibels, background: Decibels): boolean => level >= background + heardMargin;

/** Whether a signal of `level` is understood in `background`. */
export const isUnderstood = (level: Decibels, background: Decibels): boolean => level >= background + 10;

/** Distance to which a source is heard. */
export const heardDistance = (level: Decibels, reference: Metres, background: Decibels): Metres =>
  reference * pow(10, (level - background - heardMargin) / 20);
