import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createSoundscape, type Soundscape } from '../../src/sound/soundscape.ts';
import type { HeardSound, SoundName } from '../../src/sound/types.ts';
import { loopNames, onceNames } from '../../src/sound/types.ts';
import { type StubHowls, stubHowls } from './stubHowls.ts';

const base = Object.fromEntries([...loopNames, ...onceNames].map((name) => [name, name])) as Record<SoundName, string>;
const engine: HeardSound = {
  id: 'shed-set',
  sound: 'generator',
  level: 54,
  bearing: -Math.PI / 2,
  caption: 'steady engine, some way off',
};
const buzz: HeardSound = { id: 'pin', sound: 'insulator-buzz', level: 40, bearing: 0, caption: 'buzzing' };

const memory = (first: Record<string, string> = {}) => {
  const kept = new Map(Object.entries(first));
  return {
    get: (key: string) => kept.get(key) ?? null,
    set: (key: string, value: string) => void kept.set(key, value),
  };
};
const fresh = (loaded = true): { stub: StubHowls; scape: Soundscape } => {
  const stub = stubHowls({ loaded });
  return { stub, scape: createSoundscape({ base, howlMaker: stub }) };
};

describe('before the first gesture', () => {
  it('opens no audio, whatever is heard, muted or struck', () => {
    const { stub, scape } = fresh();
    scape.update([engine], 0);
    scape.playOnce('hammer-sound');
    scape.setMuted(true);
    scape.setVolume(0.5);
    expect(stub.made).toEqual([]);
    expect(stub.master).toEqual({ muted: null, volume: null });
  });

  it('captions all the same', () => {
    const { scape } = fresh();
    scape.update([buzz, engine], 0);
    expect(scape.captions().map((c) => c.text)).toEqual(['steady engine, left, some way off', 'buzzing, ahead']);
  });

  it('plays what is heard by then once started', () => {
    const { stub, scape } = fresh();
    scape.update([engine], 0);
    scape.start();
    expect(stub.sounding().map((p) => p.url)).toEqual(['generator']);
  });
});

describe('a loop that labours', () => {
  it('runs at the pace that is heard, and again at its own when the load is gone', () => {
    const { stub, scape } = fresh();
    scape.start();
    scape.update([{ ...engine, pace: 0.97 }], 0);
    expect(stub.sounding().map((p) => p.rate)).toEqual([0.97]);
    scape.update([engine], 0);
    expect(stub.sounding().map((p) => p.rate)).toEqual([1]);
  });
});

describe('loops', () => {
  it('fade in from silence to the gain of their level, panned by bearing', () => {
    const { stub, scape } = fresh();
    scape.start();
    scape.update([engine], 0);
    const [play] = stub.sounding();
    expect(play?.volume).toBe(0);
    expect(play?.pan).toBeCloseTo(-0.85, 9);
    stub.endFades();
    expect(play?.volume).toBeCloseTo(10 ** (-6 / 20), 9);
  });

  it('wait for a file that still loads, then start by themselves', () => {
    const { stub, scape } = fresh(false);
    scape.start();
    scape.update([engine], 0);
    expect(stub.sounding()).toEqual([]);
    stub.load();
    expect(stub.sounding().map((p) => p.url)).toEqual(['generator']);
  });

  it('turn with the view without starting again', () => {
    const { stub, scape } = fresh();
    scape.start();
    scape.update([engine], 0);
    scape.update([engine], Math.PI);
    expect(stub.plays.size).toBe(1);
    expect(stub.sounding()[0]?.pan).toBeCloseTo(0.85, 9);
  });

  it('fade out and stop when no longer heard, even in the middle of fading in', () => {
    const { stub, scape } = fresh();
    scape.start();
    scape.update([engine], 0);
    const [play] = stub.sounding();
    if (!play) throw new Error('the engine does not sound');
    play.volume = 0.3;
    scape.update([], 0);
    expect(play).toMatchObject({ playing: true, volume: 0.3, fadingTo: 0 });
    stub.endFades();
    expect(play.playing).toBe(false);
  });

  it('of one name but two places are two voices that do not run in step', () => {
    const { stub, scape } = fresh();
    scape.start();
    scape.update([engine, { ...engine, id: 'house-set', bearing: Math.PI / 2 }], 0);
    const [a, b] = stub.sounding();
    expect(stub.made.filter((url) => url === 'generator')).toHaveLength(1);
    expect(a?.pan).toBeLessThan(0);
    expect(b?.pan).toBeGreaterThan(0);
    expect(Math.abs((a?.seek ?? 0) - (b?.seek ?? 0))).toBeGreaterThan(0.5);
  });

  it('end with stop, and so do their captions', () => {
    const { stub, scape } = fresh();
    scape.start();
    scape.update([engine], 0);
    stub.endFades();
    scape.stop();
    stub.endFades();
    expect(stub.sounding()).toEqual([]);
    expect(scape.captions()).toEqual([]);
  });
});

describe('single sounds', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('play once, panned against the present view, and at the level given', () => {
    const { stub, scape } = fresh();
    scape.start();
    scape.update([], Math.PI / 2);
    scape.playOnce('cutout-close', { bearing: 0, level: 40 });
    const [play] = stub.sounding();
    expect(play).toMatchObject({ url: 'cutout-close', loop: false });
    expect(play?.volume).toBeCloseTo(0.1, 9);
    expect(play?.pan).toBeCloseTo(-0.85, 9);
  });

  it('keep their caption for a while, then it goes', () => {
    const { scape } = fresh();
    const seen: string[][] = [];
    scape.subscribe((captions) => seen.push(captions.map((c) => c.text)));
    scape.playOnce('hammer-dull', { bearing: 0 });
    vi.advanceTimersByTime(3900);
    expect(scape.captions().map((c) => c.text)).toEqual(['a dull thud, ahead']);
    vi.advanceTimersByTime(200);
    expect(seen).toEqual([['a dull thud, ahead'], []]);
  });
});

describe('captions', () => {
  it('are told to subscribers only when they read differently, and not after they left', () => {
    const { scape } = fresh();
    const seen: string[] = [];
    const leave = scape.subscribe((captions) => seen.push(captions.map((c) => c.text).join('; ')));
    scape.update([buzz], 0);
    scape.update([buzz], 0.1);
    scape.update([buzz], Math.PI);
    leave();
    scape.update([], 0);
    expect(seen).toEqual(['buzzing, ahead', 'buzzing, behind']);
  });
});

describe('mute and volume', () => {
  it('are remembered under loose-tie.sound and in force from the start of the next visit', () => {
    const storage = memory();
    createSoundscape({ base, storage, howlMaker: stubHowls({ loaded: true }) }).setMuted(true);
    const first = createSoundscape({ base, storage, howlMaker: stubHowls({ loaded: true }) });
    first.setVolume(0.25);
    expect(storage.get('loose-tie.sound')).toBe('{"muted":true,"volume":0.25}');
    const stub = stubHowls({ loaded: true });
    const next = createSoundscape({ base, storage, howlMaker: stub });
    expect([next.muted(), next.volume()]).toEqual([true, 0.25]);
    next.start();
    expect(stub.master).toEqual({ muted: true, volume: 0.25 });
  });

  it.each(['', '{', 'null', '[]', '{"muted":"yes","volume":7}', '{"volume":null}'])(
    'are as on the first visit when the kept entry reads %j',
    (text) => {
      const scape = createSoundscape({
        base,
        storage: memory({ 'loose-tie.sound': text }),
        howlMaker: stubHowls({ loaded: true }),
      });
      expect([scape.muted(), scape.volume()]).toEqual([false, 0.8]);
    },
  );

  it('reject a volume that is none', () => {
    const { scape } = fresh();
    for (const volume of [-0.1, 1.1, Number.NaN]) expect(() => scape.setVolume(volume)).toThrow(RangeError);
  });

  it('do not touch the captions', () => {
    const { scape } = fresh();
    scape.start();
    scape.setMuted(true);
    scape.update([buzz], 0);
    expect(scape.captions()).toHaveLength(1);
  });
});
