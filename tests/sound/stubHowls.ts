// A stand-in for Howler that keeps what it is told. Files load when the test says so; fades end when it says so.
import type { HowlLike, HowlMaker } from '../../src/sound/howls.ts';

export interface Play {
  readonly url: string;
  readonly loop: boolean;
  volume: number;
  fadingTo: number | null;
  pan: number | null;
  seek: number;
  rate: number;
  playing: boolean;
}

export interface StubHowls extends HowlMaker {
  readonly made: string[];
  readonly plays: Map<number, Play>;
  readonly master: { muted: boolean | null; volume: number | null };
  sounding(): Play[];
  load(): void;
  endFades(): void;
}

export const stubHowls = ({ loaded }: { loaded: boolean }): StubHowls => {
  const made: string[] = [];
  const plays = new Map<number, Play>();
  const master: StubHowls['master'] = { muted: null, volume: null };
  const onLoad: (() => void)[] = [];
  const onFade: { url: string; run: (id: number) => void }[] = [];
  let isLoaded = loaded;
  const playOf = (id: number): Play => {
    const play = plays.get(id);
    if (!play) throw new Error(`no play ${id}`);
    return play;
  };
  const make = (url: string, loop: boolean): HowlLike => {
    made.push(url);
    return {
      state: () => (isLoaded ? 'loaded' : 'loading'),
      once: (_, run) => onLoad.push(run),
      on: (_, run) => onFade.push({ url, run }),
      play() {
        const id = 1000 + plays.size;
        plays.set(id, { url, loop, volume: loop ? 0 : 1, fadingTo: null, pan: null, seek: 0, rate: 1, playing: true });
        return id;
      },
      stop: (id) => {
        playOf(id).playing = false;
      },
      fade(from, to, _, id) {
        const play = playOf(id);
        const cutShort = play.fadingTo !== null;
        play.volume = from;
        play.fadingTo = to;
        if (cutShort) for (const f of onFade) if (f.url === url) f.run(id);
      },
      volume(first: number, id?: number) {
        if (id === undefined) return playOf(first).volume;
        playOf(id).volume = first;
        return undefined;
      },
      rate: (rate, id) => {
        playOf(id).rate = rate;
      },
      stereo: (pan, id) => {
        playOf(id).pan = pan;
      },
      seek: (seconds, id) => {
        playOf(id).seek = seconds;
      },
      duration: () => 4,
    };
  };
  return {
    made,
    plays,
    master,
    make,
    mute: (muted) => {
      master.muted = muted;
    },
    volume: (volume) => {
      master.volume = volume;
    },
    sounding: () => [...plays.values()].filter((play) => play.playing),
    load() {
      isLoaded = true;
      for (const run of onLoad.splice(0)) run();
    },
    endFades() {
      for (const [id, play] of plays) {
        if (play.fadingTo === null) continue;
        play.volume = play.fadingTo;
        play.fadingTo = null;
        for (const f of onFade) if (f.url === play.url) f.run(id);
      }
    },
  };
};
