/**
 * How many pixels the picture is drawn in: those of the screen, no more than twice as many a way as CSS has, no more in all than a
 * mid-range tablet fills sixty times a second, and fewer while frames come too late and fewer pixels are seen to help.
 */

/** Pixels in all: somewhat more than 1920 by 1200 (estimate). */
export const MOST_PIXELS = 2_400_000;
const SHARPEST = 2;

/** Pixels of the picture for each of CSS, each way. */
export const ratioFor = (width: number, height: number, screen: number, share = 1): number =>
  Math.min(screen, SHARPEST, Math.sqrt(MOST_PIXELS / Math.max(1, width * height))) * share;

/** Frames looked at together; milliseconds above which they come late, and below which there is room. */
const FRAMES = 40;
const LATE = 20;
const ROOM = 17.5;
/** A longer gap is a loop that slept. */
const SLEPT = 250;
const STEP = 0.8;
const LEAST = STEP * STEP * STEP;
/** Fewer pixels have helped if frames come in this share of the time they took. */
const HELPED = 0.92;
/** Looks in a row with room before more pixels are tried; and looks to wait where pixels were not what held it up, or fell short before. */
const CALM = 6;
const PATIENCE = 60;

export interface Pace {
  /** Share of the pixels each way that is drawn now. */
  readonly share: number;
  /** Notes the milliseconds since the frame before; true if the share has changed. */
  frame(ms: number): boolean;
}

export const paceOf = (): Pace => {
  let share = 1;
  let sum = 0;
  let count = 0;
  let calm = 0;
  let wait = 0;
  /** What it was like before the last step down, while that has not been found to help. */
  let before: { readonly share: number; readonly mean: number } | null = null;
  const look = (mean: number): void => {
    if (before !== null) {
      const { share: last, mean: then } = before;
      before = null;
      if (mean > HELPED * then) {
        share = last;
        wait = PATIENCE;
        return;
      }
    }
    calm = mean < ROOM ? calm + 1 : 0;
    if (wait > 0) {
      wait--;
      return;
    }
    if (mean > LATE && share > LEAST) {
      before = { share, mean };
      share = Math.max(LEAST, share * STEP);
    } else if (calm >= CALM && share < 1) {
      share = Math.min(1, share / STEP);
      calm = 0;
      wait = CALM;
    }
  };
  return {
    get share() {
      return share;
    },
    frame: (ms) => {
      if (ms > SLEPT) return false;
      sum += ms;
      count++;
      if (count < FRAMES) return false;
      const was = share;
      look(sum / count);
      sum = 0;
      count = 0;
      return share !== was;
    },
  };
};
