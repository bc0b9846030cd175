/**
 * Where the energy of each committed sound lies, against what the sound is. Frequencies are physics where a source is named, else
 * usual figures of the trade or from memory; shares are what is asked for, chosen here.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readWav } from './readWav.ts';

interface Spectrum {
  /** Hertz from one value to the next. */
  readonly step: number;
  readonly power: Float64Array;
}

const SIZE = 8192;

/** Power spectrum in place by the Cooley-Tukey transform; re and im as long as a power of two. */
const transform = (re: Float64Array, im: Float64Array): void => {
  const n = re.length;
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      [re[i], re[j]] = [re[j] as number, re[i] as number];
      [im[i], im[j]] = [im[j] as number, im[i] as number];
    }
  }
  for (let size = 2; size <= n; size *= 2) {
    for (let k = 0; k < size / 2; k++) {
      const [c, s] = [Math.cos((2 * Math.PI * k) / size), -Math.sin((2 * Math.PI * k) / size)];
      for (let at = k; at < n; at += size) {
        const far = at + size / 2;
        const [x, y] = [re[far] as number, im[far] as number];
        const [a, b] = [x * c - y * s, x * s + y * c];
        [re[far], im[far]] = [(re[at] as number) - a, (im[at] as number) - b];
        [re[at], im[at]] = [(re[at] as number) + a, (im[at] as number) + b];
      }
    }
  }
};

/** Mean power of half-overlapping Hann windows (Welch 1967); a short sound is one window. */
const spectrumOf = (name: string): Spectrum => {
  const { rate, samples } = readWav(readFileSync(new URL(`../../assets/sounds/${name}.wav`, import.meta.url)));
  const power = new Float64Array(SIZE / 2);
  for (let from = 0; from === 0 || from + SIZE <= samples.length; from += SIZE / 2) {
    const long = Math.min(SIZE, samples.length);
    const re = Float64Array.from({ length: SIZE }, (_, k) =>
      k < long ? (samples[from + k] ?? 0) * (0.5 - 0.5 * Math.cos((2 * Math.PI * k) / long)) : 0,
    );
    const im = new Float64Array(SIZE);
    transform(re, im);
    for (let k = 0; k < power.length; k++)
      power[k] = (power[k] as number) + (re[k] as number) ** 2 + (im[k] as number) ** 2;
  }
  return { step: rate / SIZE, power };
};

const known = new Map<string, Spectrum>();
const of = (name: string): Spectrum => {
  const spectrum = known.get(name) ?? spectrumOf(name);
  known.set(name, spectrum);
  return spectrum;
};

/** Share of the energy between two frequencies. */
const share = (name: string, low: number, high: number): number => {
  const { step, power } = of(name);
  const whole = power.reduce((sum, x) => sum + x, 0);
  return power.subarray(Math.floor(low / step), Math.ceil(high / step)).reduce((sum, x) => sum + x, 0) / whole;
};

/** Strongest frequency, Hz. */
const strongest = (name: string): number =>
  of(name).power.reduce((best, x, k, all) => (x > (all[best] as number) ? k : best), 0) * of(name).step;

/** Geometric over arithmetic mean of the power between two frequencies: 1 for white noise, near 0 for a tone. */
const flatness = (name: string, low: number, high: number): number => {
  const { step, power } = of(name);
  const part = power.subarray(Math.floor(low / step), Math.ceil(high / step));
  const logs = part.reduce((sum, x) => sum + Math.log(x + 1e-30), 0) / part.length;
  return Math.exp(logs) / (part.reduce((sum, x) => sum + x, 0) / part.length);
};

it('the transform tells a tone of 120 Hz from one of 60 Hz', () => {
  const tone = (hertz: number): number => {
    const re = Float64Array.from({ length: 1024 }, (_, k) => Math.sin((2 * Math.PI * hertz * k) / 1024));
    const im = new Float64Array(1024);
    transform(re, im);
    return Math.hypot(re[120] ?? 0, im[120] ?? 0);
  };
  expect(tone(120)).toBeCloseTo(512, 6);
  expect(tone(60)).toBeLessThan(1e-6);
});

describe('what swings with the system', () => {
  // Twice the frequency of a 60 Hz system and its multiples: forces and leakage go with the square of field and current.
  const multiples = (name: string): number =>
    [1, 2, 3, 4, 5, 6, 7, 8, 9, 10].reduce((sum, k) => sum + share(name, 120 * k - 8, 120 * k + 8), 0);

  it('a core hums in multiples of 120 Hz and in nothing else', () => {
    expect(multiples('transformer-hum')).toBeGreaterThan(0.95);
  });

  it('leaking porcelain buzzes in multiples of 120 Hz under a crackle that reaches beyond 3 kHz', () => {
    expect(multiples('insulator-buzz')).toBeGreaterThan(0.4);
    expect(share('insulator-buzz', 3000, 11000)).toBeGreaterThan(0.02);
  });
});

describe('what turns or beats its wings', () => {
  // Honey bees in flight: about 230 Hz; published measurements lie between 200 and 260 Hz (from memory).
  it('bees beat at 200 to 250 Hz, and their harmonics stand below', () => {
    expect(strongest('bees')).toBeGreaterThan(200);
    expect(strongest('bees')).toBeLessThan(250);
    expect(share('bees', 200, 250)).toBeGreaterThan(share('bees', 400, 500));
  });

  // A portable set of one cylinder at 3600 rpm fires every second turn: 30 Hz; a diesel of six at 700 rpm 35 Hz.
  it('engines have most of their energy in the low orders of their firing', () => {
    expect(share('generator', 20, 400)).toBeGreaterThan(0.6);
    expect(share('truck-engine', 30, 400)).toBeGreaterThan(0.6);
    expect(Math.abs(strongest('truck-engine') - 35)).toBeLessThan(3);
  });

  // Strouhal: f = 0.2 v / d; 6.35 mm in 6 m/s sings at 189 Hz.
  it('wires in the wind sing near 0.2 v / d', () => {
    expect(Math.abs(strongest('wind-wires') - 189)).toBeLessThan(50);
  });
});

describe('what comes over a radio', () => {
  // Voice channel of land mobile radio: 300 to 3000 Hz (TIA-603, from memory).
  it.each(['radio-squelch', 'dispatcher-tone'])('%s keeps to 300 to 3000 Hz', (name) => {
    expect(share(name, 300, 3000)).toBeGreaterThan(0.99);
  });

  it('an open squelch hisses over the whole channel', () => {
    expect(flatness('radio-squelch', 500, 2700)).toBeGreaterThan(0.3);
  });
});

describe('what falls, blows and rolls', () => {
  it.each(['rain', 'drizzle'])('%s is broad: no tone in it', (name) => {
    expect(flatness(name, 800, 4500)).toBeGreaterThan(0.5);
    expect(share(name, 1000, 5500)).toBeGreaterThan(0.6);
  });

  it('far thunder rolls low', () => {
    expect(share('thunder', 40, 600)).toBeGreaterThan(0.6);
    expect(share('thunder', 2000, 5500)).toBeLessThan(0.03);
  });

  it('a detector beeps on one high note', () => {
    expect(Math.abs(strongest('detector-tone') - 2640)).toBeLessThan(10);
    expect(share('detector-tone', 2500, 2800) + share('detector-tone', 5100, 5500)).toBeGreaterThan(0.98);
  });
});
