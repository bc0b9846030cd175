// Plays the sounds that are heard, with captions. Silent until `start`, which browsers allow only in a gesture; captions
// do not wait for it and do not mind mute. Howler stands behind `howlMaker`, and is opened by the first `start`.
import { createCaptionList } from './captionList.ts';
import { gainOf, panOf } from './ear.ts';
import { type HowlLike, type HowlMaker, howls } from './howls.ts';
import { readSettings, type SoundStorage, writeSettings } from './soundStorage.ts';
import {
  type Caption,
  type HeardSound,
  type LoopName,
  loopNames,
  type OnceName,
  type OnceOptions,
  onceNames,
  type Radians,
  type SoundName,
} from './types.ts';
import { usual } from './usual.ts';
import { createVoices } from './voices.ts';

/** What the soundscape is given. */
export interface SoundscapeOptions {
  /** Address of each sound's file. */
  readonly base: Readonly<Record<SoundName, string>>;
  readonly storage?: SoundStorage;
  readonly howlMaker?: HowlMaker;
  /** Told of files that do not load or play; the console is, if nobody else. */
  readonly onProblem?: (text: string) => void;
}

/** The soundscape of one page. */
export interface Soundscape {
  /** What is heard now, and where the view looks (radians, positive to the right). Call on any change of either. */
  update(heard: readonly HeardSound[], viewYaw: Radians): void;
  /** Plays and captions a sound that happens once. */
  playOnce(sound: OnceName, options?: OnceOptions): void;
  setMuted(muted: boolean): void;
  muted(): boolean;
  /** Loudness of all, 0 to 1; beyond is an error. */
  setVolume(volume: number): void;
  volume(): number;
  captions(): readonly Caption[];
  /** Runs at each change of the captions; the answer ends that. */
  subscribe(run: (captions: readonly Caption[]) => void): () => void;
  /** Call on a user's gesture. */
  start(): void;
  /** Fades everything out and forgets what was heard; `start` and `update` bring sound back. */
  stop(): void;
}

/** A soundscape, silent until started. */
export const createSoundscape = (options: SoundscapeOptions): Soundscape => {
  const { base, storage, howlMaker = howls, onProblem = (text: string) => console.warn(text) } = options;
  const list = createCaptionList();
  const files = new Map<SoundName, HowlLike>();
  let settings = readSettings(storage);
  let started = false;
  let heard: readonly HeardSound[] = [];
  let yaw: Radians = 0;

  const fileOf = (sound: SoundName, loop: boolean): HowlLike => {
    const known = files.get(sound);
    if (known) return known;
    const howl = howlMaker.make(base[sound], loop, onProblem);
    files.set(sound, howl);
    // A file that Howler knows already is loaded when made and does not say so again.
    if (howl.state() !== 'loaded') howl.once('load', follow);
    return howl;
  };
  const loadedLoop = (sound: LoopName): HowlLike | undefined => {
    const howl = fileOf(sound, true);
    return howl.state() === 'loaded' ? howl : undefined;
  };
  const voices = createVoices(loadedLoop);
  const follow = (): void => {
    if (started) voices.follow(heard, yaw);
  };

  return {
    update(nowHeard, viewYaw) {
      heard = nowHeard;
      yaw = viewYaw;
      list.hear(heard, yaw);
      follow();
    },
    playOnce(sound, { bearing = null, level = usual[sound].level, caption = usual[sound].caption } = {}) {
      list.once(sound, bearing, caption, yaw);
      if (!started) return;
      const howl = fileOf(sound, false);
      if (howl.state() !== 'loaded') return; // late is worse than missing: the caption has told it
      const play = howl.play();
      howl.volume(gainOf(level), play);
      howl.stereo(panOf(bearing, yaw), play);
    },
    setMuted(muted) {
      settings = { ...settings, muted };
      writeSettings(storage, settings);
      if (started) howlMaker.mute(muted);
    },
    muted: () => settings.muted,
    setVolume(volume) {
      if (!(volume >= 0 && volume <= 1)) throw new RangeError(`volume ${volume} is not within 0 and 1`);
      settings = { ...settings, volume };
      writeSettings(storage, settings);
      if (started) howlMaker.volume(volume);
    },
    volume: () => settings.volume,
    captions: list.captions,
    subscribe: list.subscribe,
    start() {
      if (started) return;
      started = true;
      howlMaker.mute(settings.muted);
      howlMaker.volume(settings.volume);
      for (const sound of onceNames) fileOf(sound, false);
      for (const sound of loopNames) fileOf(sound, true);
      follow();
    },
    stop() {
      heard = [];
      list.clear();
      follow();
      started = false;
    },
  };
};
