import { Howler } from 'howler';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createSoundscape } from '../../src/sound/soundscape.ts';
import { type HeardSound, loopNames, onceNames, type SoundName } from '../../src/sound/types.ts';

const files = import.meta.glob<string>('../../assets/sounds/*.wav', { query: '?url', import: 'default', eager: true });
const base = Object.fromEntries(
  [...loopNames, ...onceNames].map((name) => [name, files[`../../assets/sounds/${name}.wav`]]),
) as Record<SoundName, string>;

// A steady tone, so that levels measured a moment apart can be compared.
const hum: HeardSound = { id: 'tank', sound: 'transformer-hum', level: 54, bearing: 0, caption: 'a low hum' };
const problems: string[] = [];
const scape = createSoundscape({ base, onProblem: (text) => problems.push(text) });

let ears: readonly AnalyserNode[] = [];

const wait = (milliseconds: number): Promise<void> => new Promise((done) => setTimeout(done, milliseconds));
const rms = (ear: AnalyserNode): number => {
  const samples = new Float32Array(ear.fftSize);
  ear.getFloatTimeDomainData(samples);
  return Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);
};
/** Root mean square at the left and the right ear, once fades have ended. */
const listen = async (): Promise<{ left: number; right: number }> => {
  await wait(350);
  const [left, right] = ears.map(rms);
  return { left: left ?? Number.NaN, right: right ?? Number.NaN };
};
const until = async (true_: () => boolean): Promise<void> => {
  for (let k = 0; k < 100 && !true_(); k += 1) await wait(50);
};

describe('the soundscape in a browser', () => {
  let contextBefore: unknown;

  beforeAll(async () => {
    scape.update([hum], 0);
    contextBefore = Howler.ctx;
    scape.start();
    const splitter = Howler.ctx.createChannelSplitter(2);
    Howler.masterGain.connect(splitter);
    ears = [0, 1].map((side) => {
      const ear = Howler.ctx.createAnalyser();
      ear.fftSize = 4096;
      splitter.connect(ear, side);
      return ear;
    });
    await until(() => ears.some((ear) => rms(ear) > 0.01));
  });

  afterAll(() => {
    scape.stop();
    Howler.unload();
  });

  it('opens the audio context at start and not before', () => {
    expect(contextBefore).toBeFalsy();
    expect(Howler.ctx.state).toBe('running');
  });

  it('sounds alike in both ears from ahead, louder in the ear it is at from the side', async () => {
    scape.update([hum], 0);
    const ahead = await listen();
    expect(ahead.left).toBeGreaterThan(0.01);
    expect(ahead.left / ahead.right).toBeCloseTo(1, 1);
    scape.update([{ ...hum, bearing: -Math.PI / 2 }], 0);
    const left = await listen();
    expect(left.left).toBeGreaterThan(4 * left.right);
    expect(left.right).toBeGreaterThan(0);
    scape.update([{ ...hum, bearing: -Math.PI / 2 }], Math.PI);
    const turned = await listen();
    expect(turned.right).toBeGreaterThan(4 * turned.left);
  });

  it('is ten times weaker for 20 dB less', async () => {
    scape.update([hum], 0);
    const near = await listen();
    scape.update([{ ...hum, level: 34 }], 0);
    const far = await listen();
    expect(near.left / far.left).toBeGreaterThan(9);
    expect(near.left / far.left).toBeLessThan(11);
  });

  it('falls silent when muted and comes back', async () => {
    scape.update([hum], 0);
    scape.setMuted(true);
    expect(await listen()).toEqual({ left: 0, right: 0 });
    scape.setMuted(false);
    expect((await listen()).left).toBeGreaterThan(0.01);
  });

  it('follows the volume', async () => {
    scape.setVolume(0.8);
    const loud = await listen();
    scape.setVolume(0.4);
    const soft = await listen();
    scape.setVolume(0.8);
    expect(loud.left / soft.left).toBeGreaterThan(1.8);
    expect(loud.left / soft.left).toBeLessThan(2.2);
  });

  it('falls silent when a sound is heard no more, and sounds again when it is', async () => {
    scape.update([], 0);
    expect(await listen()).toEqual({ left: 0, right: 0 });
    scape.update([hum], 0);
    expect((await listen()).left).toBeGreaterThan(0.01);
  });

  it('keeps a sound that comes back while it fades out', async () => {
    scape.update([hum], 0);
    await listen();
    scape.update([], 0);
    await wait(80);
    scape.update([hum], 0);
    expect((await listen()).left).toBeGreaterThan(0.01);
  });

  it('wakes a context that Howler has put to sleep after a long silence', async () => {
    scape.update([], 0);
    await listen();
    await Howler.ctx.suspend();
    Object.assign(Howler, { state: 'suspended' }); // what Howler's own timer does after 30 s
    scape.update([{ ...hum, bearing: Math.PI / 2, level: 40 }], 0);
    await until(() => ears.some((ear) => rms(ear) > 0.001));
    const woken = await listen();
    expect(Howler.ctx.state).toBe('running');
    expect(woken.right).toBeGreaterThan(4 * woken.left);
    scape.update([{ ...hum, bearing: Math.PI / 2, level: 60 }], 0);
    expect((await listen()).right / woken.right).toBeCloseTo(10, 0);
  });

  it('plays a single sound on the side it comes from, once', async () => {
    scape.update([], 0);
    await listen();
    scape.playOnce('radio-squelch', { bearing: Math.PI / 2 });
    await wait(250);
    const [left, right] = ears.map(rms);
    expect(right).toBeGreaterThan(0.005);
    expect(right).toBeGreaterThan(4 * (left ?? Number.NaN));
    await wait(500);
    expect(await listen()).toEqual({ left: 0, right: 0 });
  });

  it('loads every file without a problem', () => {
    expect(problems).toEqual([]);
  });
});
