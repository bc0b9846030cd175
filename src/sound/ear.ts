// From level and bearing to what a loudspeaker does. Every file is made to one loudness, so gain needs the level only.
// Gain law: 20 dB is a factor of ten in pressure; 60 dB(A), about speech at one metre, plays at full and louder sounds
// no louder: a headset must not hurt. Pan: the sine of the bearing, for what is ahead and what is behind reach both
// ears alike, and never wholly to one side, as a head does not shut out a sound.
import type { DecibelsA, Radians } from './types.ts';

/** The level that plays at full. */
export const FULL_LEVEL: DecibelsA = 60;

const WIDEST = 0.85;

/** Gain from 0 to 1 for a level at the ear. */
export const gainOf = (level: DecibelsA): number => Math.min(1, 10 ** ((level - FULL_LEVEL) / 20));

/** Stereo place from -0.85 (left) to 0.85 (right); 0 for what comes from all round. */
export const panOf = (bearing: Radians | null, viewYaw: Radians): number =>
  bearing === null ? 0 : WIDEST * Math.sin(bearing - viewYaw);
