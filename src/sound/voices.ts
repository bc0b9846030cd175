// The loops that sound: one voice for each sound heard, kept by the sound's id, faded in, turned and faded out.
import { gainOf, panOf } from './ear.ts';
import type { HowlLike } from './howls.ts';
import type { HeardSound, LoopName, Radians } from './types.ts';

/** Fades take this long. */
export const FADE_MS = 200;

const STEP = 0.005; // gain and pan changes below this are not heard
const PACE = 0.002; // some three cents: the least step in pitch that an ear tells
const SILENT = 1e-4;
const GOLDEN = 0.618;

const volumeOf = (howl: HowlLike, play: number): number => {
  const volume = howl.volume(play);
  if (typeof volume !== 'number') throw new TypeError(`play ${play} has no volume`);
  return volume;
};

interface Voice {
  readonly howl: HowlLike;
  readonly play: number;
  gain: number;
  pan: number;
  pace: number;
}

/** Keeps the voices in step with what is heard. */
export interface Voices {
  follow(heard: readonly HeardSound[], viewYaw: Radians): void;
}

/** No voices yet; `howlOf` gives a loaded file, or nothing as long as it loads. */
export const createVoices = (howlOf: (sound: LoopName) => HowlLike | undefined): Voices => {
  const voices = new Map<string, Voice>();
  const leaving = new Map<HowlLike, Set<number>>();
  let started = 0;

  const leavingOf = (howl: HowlLike): Set<number> => {
    const known = leaving.get(howl);
    if (known) return known;
    const plays = new Set<number>();
    leaving.set(howl, plays);
    howl.on('fade', (play) => {
      // Howler says 'fade' also for a fade that another one cut short: only silence ends the voice.
      if (volumeOf(howl, play) <= SILENT && plays.delete(play)) howl.stop(play);
    });
    return plays;
  };

  const begin = (howl: HowlLike, pan: number): Voice => {
    const play = howl.play();
    howl.volume(0, play);
    howl.stereo(pan, play);
    // Two like engines must not run in step: they would melt into one that stands between them.
    howl.seek(((started * GOLDEN) % 1) * howl.duration(), play);
    started += 1;
    return { howl, play, gain: 0, pan, pace: 1 };
  };

  const fadeTo = (voice: Voice, gain: number): void => {
    voice.howl.fade(volumeOf(voice.howl, voice.play), gain, FADE_MS, voice.play);
    voice.gain = gain;
  };

  const end = (voice: Voice): void => {
    if (volumeOf(voice.howl, voice.play) <= SILENT) {
      voice.howl.stop(voice.play); // a fade from silence to silence never ends in Howler
      return;
    }
    leavingOf(voice.howl).add(voice.play);
    fadeTo(voice, 0);
  };

  return {
    follow(heard, viewYaw) {
      const wanted = new Set<string>();
      for (const { id, sound, level, bearing, pace = 1 } of heard) {
        const howl = howlOf(sound);
        if (!howl) continue;
        wanted.add(id);
        const pan = panOf(bearing, viewYaw);
        let voice = voices.get(id);
        if (voice && voice.howl !== howl) {
          end(voice);
          voice = undefined;
        }
        if (!voice) {
          voice = begin(howl, pan);
          voices.set(id, voice);
        }
        if (Math.abs(pan - voice.pan) > STEP) {
          voice.howl.stereo(pan, voice.play);
          voice.pan = pan;
        }
        if (Math.abs(pace - voice.pace) > PACE) {
          voice.howl.rate(pace, voice.play);
          voice.pace = pace;
        }
        const gain = gainOf(level);
        if (Math.abs(gain - voice.gain) > STEP * Math.max(gain, voice.gain)) fadeTo(voice, gain);
      }
      for (const [id, voice] of voices) {
        if (wanted.has(id)) continue;
        voices.delete(id);
        end(voice);
      }
    },
  };
};
