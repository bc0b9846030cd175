/**
 * Painting of textures by rows, so that no frame is held up: what is asked for is handed out blank at once and filled later, a few
 * milliseconds at a time.
 */

/** A texture's rows, painted one after the other. */
export type Brush = Generator<void, void, void>;

const waiting: Brush[] = [];
let begun = 0;

/** Takes up a texture to be painted. */
export const paintLater = (brush: Brush): void => {
  waiting.push(brush);
  begun++;
};

/** Paints for so many milliseconds; true when nothing waits any more. */
export const paintFor = (ms: number): boolean => {
  const end = performance.now() + ms;
  while (waiting.length > 0) {
    const [brush] = waiting;
    if (brush?.next().done) waiting.shift();
    if (performance.now() > end) break;
  }
  return waiting.length === 0;
};

/** Paints all that waits, at once: for those who measure and photograph. */
export const paintAll = (): void => {
  while (!paintFor(1000));
};

/** Share of what was ever taken up that is painted, 0 to 1. */
export const painted = (): number => (begun === 0 ? 1 : 1 - waiting.length / begun);
