// The only file that knows Howler. The narrow faces below are what the soundscape uses and tests stand in for.
import { Howl, Howler } from 'howler';

/** One sound file; the methods are Howler's. */
export interface HowlLike {
  state(): 'unloaded' | 'loading' | 'loaded';
  once(event: 'load', run: () => void): unknown;
  on(event: 'fade', run: (id: number) => void): unknown;
  play(): number;
  stop(id: number): unknown;
  fade(from: number, to: number, milliseconds: number, id: number): unknown;
  volume(volume: number, id: number): unknown;
  volume(id: number): unknown;
  rate(rate: number, id: number): unknown;
  stereo(pan: number, id: number): unknown;
  seek(seconds: number, id: number): unknown;
  duration(): number;
}

/** Makes files playable and holds what stands above all of them. */
export interface HowlMaker {
  make(url: string, loop: boolean, onProblem: (text: string) => void): HowlLike;
  mute(muted: boolean): void;
  volume(volume: number): void;
}

/** Howler itself. Making the first Howl opens the audio context, so do that in a gesture. */
export const howls: HowlMaker = {
  make: (url, loop, onProblem) =>
    new Howl({
      src: [url],
      format: ['wav'],
      loop,
      volume: loop ? 0 : 1, // a loop begins silent and is faded in
      onloaderror: (_, error) => onProblem(`sound ${url} did not load: ${String(error)}`),
      onplayerror: (_, error) => onProblem(`sound ${url} did not play: ${String(error)}`),
    }),
  mute: (muted) => {
    Howler.mute(muted);
  },
  volume: (volume) => {
    Howler.volume(volume);
  },
};
