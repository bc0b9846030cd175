import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loudestA } from '../../src/setup/sounds/loudness.mjs';
import { LOUDNESS, makeSounds, PEAK, sounds } from '../../src/setup/sounds/sounds.mjs';
import { loopNames, onceNames } from '../../src/sound/types.ts';
import { linesOf, readWav } from './readWav.ts';

const folder = new URL('../../assets/sounds/', import.meta.url);
const files = readdirSync(folder).sort();
const bytesOf = (file: string): Uint8Array => readFileSync(new URL(file, folder));
const wavOf = (name: string) => readWav(bytesOf(`${name}.wav`));
const hash = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
const decibels = (ratio: number): number => 20 * Math.log10(ratio);

describe('the committed sound files', () => {
  it('are what the script makes, byte for byte', () => {
    const made = [...makeSounds()].map(([file, bytes]) => [file, hash(bytes)]);
    expect(made).toEqual(files.map((file) => [file, hash(bytesOf(file))]));
  });

  it('are one for each sound name, looped where the name says so', () => {
    expect(files).toEqual([...loopNames, ...onceNames].map((name) => `${name}.wav`).sort());
    expect(sounds.filter((s) => s[3]).map((s) => s[0])).toEqual([...loopNames]);
  });

  it('stay small: each under 200 kB, all under 1.8 MB', () => {
    const sizes = files.map((file) => bytesOf(file).length);
    expect(Math.max(...sizes)).toBeLessThan(200_000);
    expect(sizes.reduce((a, b) => a + b)).toBeLessThan(1_800_000);
  });

  it.each(files)('%s neither clips nor stands off zero', (file) => {
    const { samples } = readWav(bytesOf(file));
    const peak = samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
    expect(peak).toBeLessThanOrEqual(PEAK + 1e-4);
    expect(peak).toBeGreaterThan(0.05);
    expect(Math.abs(samples.reduce((sum, x) => sum + x) / samples.length)).toBeLessThan(0.005);
  });

  it.each(files)('%s is as loud as the others within 0.3 dB', (file) => {
    expect(Math.abs(decibels(loudestA(readWav(bytesOf(file))) / LOUDNESS))).toBeLessThan(0.3);
  });

  it.each([...loopNames])('%s has no click at the seam', (name) => {
    const { samples } = wavOf(name);
    const steps = [...samples.subarray(1)].map((x, k) => Math.abs(x - (samples[k] ?? 0))).sort((a, b) => a - b);
    const usual = steps[Math.floor(0.999 * steps.length)] ?? 0;
    const seam = Math.abs((samples[0] ?? 0) - (samples.at(-1) ?? 0));
    expect(seam).toBeLessThan(usual);
  });

  it.each([...onceNames])('%s begins and ends in silence', (name) => {
    const { samples } = wavOf(name);
    expect(Math.abs(samples[0] ?? 1)).toBeLessThan(0.002);
    expect(Math.abs(samples.at(-1) ?? 1)).toBeLessThan(0.002);
  });
});

describe('what the sounds are made of', () => {
  it('the buzz of leaking porcelain stands at 120 Hz, above its harmonics', () => {
    const lines = linesOf(wavOf('insulator-buzz'), 20, 1500);
    expect(lines.slice(0, 4).map((l) => l.hertz)).toEqual([120, 240, 360, 480]);
  });

  it('the crackle keeps to the peaks of the voltage: its energy swings 120 times a second', () => {
    const { rate, samples } = wavOf('insulator-buzz');
    const bright = samples.map((x, k) => x - 2 * (samples[k - 1] ?? 0) + (samples[k - 2] ?? 0)).map((x) => x * x);
    const mean = bright.reduce((a, b) => a + b) / bright.length;
    const lines = linesOf({ rate, samples: bright.map((x) => x - mean) }, 50, 200);
    expect(lines[0]?.hertz).toBe(120);
  });

  it("the engine's strongest lines are multiples of its 30 Hz firing, and not of the shaft's 60 Hz alone", () => {
    const strongest = linesOf(wavOf('generator'), 10, 1000).slice(0, 8);
    for (const { hertz } of strongest) expect(hertz % 30).toBe(0);
    expect(strongest.some(({ hertz }) => hertz % 60 !== 0)).toBe(true);
  });

  it('the hum of a core stands at 120 Hz, then 240 and 360 Hz', () => {
    expect(
      linesOf(wavOf('transformer-hum'), 20, 1000)
        .slice(0, 3)
        .map((l) => l.hertz),
    ).toEqual([120, 240, 360]);
  });

  it('sound wood answers the hammer longer and brighter than soft wood', () => {
    const ring = (name: string): { late: number; bright: number } => {
      const { rate, samples } = wavOf(name);
      const energy = (from: number, to: number): number =>
        samples.subarray(from * rate, to * rate).reduce((sum, x) => sum + x * x, 0);
      const steps = samples.map((x, k) => x - (samples[k - 1] ?? 0)).reduce((sum, x) => sum + x * x, 0);
      return { late: energy(0.06, 0.3) / energy(0, 0.3), bright: steps / energy(0, 0.3) };
    };
    const [sound, dull] = [ring('hammer-sound'), ring('hammer-dull')];
    expect(sound.late).toBeGreaterThan(5 * dull.late);
    expect(sound.bright).toBeGreaterThan(3 * dull.bright);
  });
});

describe('the loudness measure', () => {
  // IEC 61672-1, table of the A-weighting: 63 Hz -26.2, 100 Hz -19.1, 1 kHz 0, 4 kHz +1.0, 8 kHz -1.1 dB
  it.each([
    [63, -26.2],
    [100, -19.1],
    [1000, 0],
    [4000, 1],
    [8000, -1.1],
  ])('weighs a tone of %d Hz by %d dB', (hertz, weight) => {
    const samples = Float64Array.from({ length: 22050 }, (_, k) => Math.sin((2 * Math.PI * hertz * k) / 22050));
    const level = decibels(loudestA({ samples, rate: 22050 }) * Math.SQRT2);
    expect(Math.abs(level - weight)).toBeLessThan(0.35);
  });
});

describe('what is struck or thrown', () => {
  it('a breaker that trips is short and has no boom under its case', () => {
    const { rate, samples } = wavOf('breaker-trip');
    const energy = (from: number, to: number): number =>
      samples.subarray(from * rate, to * rate).reduce((sum, x) => sum + x * x, 0);
    expect(energy(0.15, 0.4) / energy(0, 0.4)).toBeLessThan(0.01);
    const low = linesOf({ rate, samples }, 20, 120).reduce((sum, { power }) => sum + power, 0);
    const mid = linesOf({ rate, samples }, 150, 700).reduce((sum, { power }) => sum + power, 0);
    expect(low).toBeLessThan(0.05 * mid);
  });

  it('a tap changer is one clack after its motor, and quiet for most of the time', () => {
    const { rate, samples } = wavOf('tap-change');
    const blocks = Array.from({ length: 50 }, (_, k) =>
      samples.subarray((k * rate) / 10, ((k + 1) * rate) / 10).reduce((sum, x) => sum + x * x, 0),
    );
    const loudest = Math.max(...blocks);
    expect(blocks.indexOf(loudest)).toBe(11);
    expect(blocks.filter((each) => each < 0.001 * loudest).length).toBeGreaterThan(30);
  });
});
