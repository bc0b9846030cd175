/** Sound for the drill on the screen: fetched after the first sheet is up, started by the first gesture, captions at once. */
import { effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { paceOf } from '../engine/senses/paceOf.ts';
import type { Heard } from '../engine/senses/types.ts';
import type { World } from '../engine/world/types.ts';
import type { Caption, Desk, Playing } from '../screens/types.ts';
import { captionFor } from '../sound/captionFor.ts';
import type { Soundscape } from '../sound/soundscape.ts';
import { type HeardSound, type LoopName, loopNames, type SoundName } from '../sound/types.ts';
import type { Kept } from './kept.ts';
import { soundOf } from './soundOf.ts';

const files = import.meta.glob<string>('../../assets/sounds/*.wav', { query: '?url', import: 'default', eager: true });

const addresses = (): Record<SoundName, string> =>
  Object.fromEntries(
    Object.entries(files).map(([path, url]) => [path.replace(/^.*\//, '').replace(/\.wav$/, ''), url]),
  ) as Record<SoundName, string>;

const isLoop = (sound: string): sound is LoopName => loopNames.some((name) => name === sound);

/** Azimuths run to the left, bearings to the right. */
const bearingOf = ({ azimuth }: Heard): number | null => (azimuth === null ? null : -azimuth);

const heardSound = (world: World, heard: Heard): HeardSound | null => {
  const { id, sound, level, caption } = heard;
  return isLoop(sound) ? { id, sound, level, bearing: bearingOf(heard), caption, pace: paceOf(world, id) } : null;
};

const heardNow = (playing: Playing | null): readonly Heard[] => playing?.snapshot.value.heard ?? [];

/** Captions of what is heard, with or without sound. */
export const captionsOf = (playing: ReadonlySignal<Playing | null>): ReadonlySignal<readonly Caption[]> => {
  const captions = signal<readonly Caption[]>([]);
  effect(() => {
    const yaw = playing.value?.yaw.value ?? 0;
    captions.value = heardNow(playing.value).map((heard) => ({
      id: heard.id,
      text: captionFor({ bearing: bearingOf(heard), caption: heard.caption }, -yaw),
    }));
  });
  return captions;
};

/** Lets the drill be heard. */
export const soundDrill = (desk: Desk, kept: Kept, problem: Signal<string | null>): void => {
  let scape: Soundscape | null = null;
  const open = async (): Promise<void> => {
    const { createSoundscape } = await import('../sound/soundscape.ts');
    const made = createSoundscape({
      base: addresses(),
      storage: { get: (key) => kept.text(key), set: (key, value) => void kept.saveText(key, value) },
      onProblem: (text) => console.warn(text),
    });
    made.setMuted(!desk.settings.value.sound);
    scape = made;
    follow(made);
  };
  const follow = (made: Soundscape): void => {
    window.addEventListener('pointerdown', () => made.start(), { once: true });
    window.addEventListener('keydown', () => made.start(), { once: true });
    effect(() => made.setMuted(!desk.settings.value.sound));
    effect(() => made.setVolume(desk.settings.value.volume));
    effect(() => {
      const playing = desk.playing.value;
      const over = playing === null || playing.snapshot.value.stage === 'debrief';
      const heard = over
        ? []
        : heardNow(playing)
            .map((heard) => heardSound(playing.snapshot.value.world, heard))
            .filter((each) => each !== null);
      made.update(heard, -(playing?.yaw.value ?? 0));
    });
    let last: unknown = null;
    effect(() => {
      const snapshot = desk.playing.value?.snapshot.value;
      const events = snapshot?.events ?? [];
      if (events === last) return;
      last = events;
      if (snapshot === undefined) return;
      for (const event of events) {
        const once = soundOf(event, snapshot);
        if (once !== null) made.playOnce(once.sound, once);
      }
    });
  };
  effect(() => {
    if (desk.playing.value === null || scape !== null) return;
    open().catch((error: unknown) => {
      problem.value = `Sound could not be loaded (${error instanceof Error ? error.message : String(error)}); the captions go on without it.`;
    });
  });
};
