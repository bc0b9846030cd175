/**
 * Lightning far off: one soft brightening of the sky now and then, never above one in three seconds (the limit is three a second,
 * WCAG 2.3.1). Times come from a seeded stream. With reduced motion there is none.
 */
import { stream } from '../materials/noise.ts';

/** Seconds between flashes, least and most, and how long one takes to fade. */
const PAUSE = [5, 16] as const;
const FADE = 0.42;

export interface Storm {
  /** Moves on by so many seconds; strength of the flash now, 0 to 1. */
  step(seconds: number): number;
}

/** A storm beyond the horizon. */
export const stormOf = (seed: number): Storm => {
  const next = stream(seed);
  let wait = PAUSE[0];
  let since = FADE;
  return {
    step: (seconds) => {
      wait -= seconds;
      since += seconds;
      if (wait <= 0) {
        wait = PAUSE[0] + (PAUSE[1] - PAUSE[0]) * next();
        since = 0;
      }
      const t = since / FADE;
      return t >= 1 ? 0 : (1 - t) * (1 - t) * (t < 0.08 ? t / 0.08 : 1);
    },
  };
};
