// The captions on show: of what is heard now, louder first, then of what sounded once in the last seconds.
import { captionFor } from './captionFor.ts';
import type { Caption, HeardSound, Radians, SoundName } from './types.ts';

/** How long a single sound's caption stays. */
export const ONCE_SHOWN_MS = 4000;

/** Keeps the list and tells when it reads differently. */
export interface CaptionList {
  captions(): readonly Caption[];
  subscribe(run: (captions: readonly Caption[]) => void): () => void;
  hear(heard: readonly HeardSound[], viewYaw: Radians): void;
  once(sound: SoundName, bearing: Radians | null, caption: string, viewYaw: Radians): void;
  clear(): void;
}

const byLoudness = (a: HeardSound, b: HeardSound): number =>
  b.level - a.level || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/** An empty list. */
export const createCaptionList = (): CaptionList => {
  const listeners = new Set<(captions: readonly Caption[]) => void>();
  const timers = new Set<ReturnType<typeof setTimeout>>();
  let going: readonly Caption[] = [];
  let single: readonly Caption[] = [];
  let shown: readonly Caption[] = [];
  let count = 0;

  const show = (): void => {
    const next = [...going, ...single];
    const same =
      next.length === shown.length && next.every((c, k) => c.id === shown[k]?.id && c.text === shown[k]?.text);
    if (same) return;
    shown = next;
    for (const run of [...listeners]) run(shown);
  };

  return {
    captions: () => shown,
    subscribe(run) {
      listeners.add(run);
      return () => {
        listeners.delete(run);
      };
    },
    hear(heard, viewYaw) {
      going = [...heard]
        .sort(byLoudness)
        .map((one) => ({ id: one.id, sound: one.sound, text: captionFor(one, viewYaw) }));
      show();
    },
    once(sound, bearing, caption, viewYaw) {
      count += 1;
      const line: Caption = { id: `once-${count}`, sound, text: captionFor({ bearing, caption }, viewYaw) };
      single = [...single, line];
      const timer = setTimeout(() => {
        timers.delete(timer);
        single = single.filter((other) => other !== line);
        show();
      }, ONCE_SHOWN_MS);
      timers.add(timer);
      show();
    },
    clear() {
      for (const timer of timers) clearTimeout(timer);
      timers.clear();
      going = [];
      single = [];
      show();
    },
  };
};
