// A tape is a stretch of samples, { rate, loop, samples }. On a loop every event runs over the seam into the start and
// every filter is run one lap before it counts, so the seam is a place like any other.
import { cosine, exponential, sine } from './arithmetic.mjs';

/** An empty tape. */
export const tapeOf = (seconds, rate, loop) => ({
  rate,
  loop,
  samples: new Float64Array(Math.round(seconds * rate)),
});

/** An empty tape of the same length, rate and kind. */
export const like = (tape) => ({ ...tape, samples: new Float64Array(tape.samples.length) });

/** Adds wave(t), t in seconds from `at`, over `seconds`; what passes the end of a loop comes in at its start. */
export const add = (tape, at, seconds, wave) => {
  const { samples, rate, loop } = tape;
  const first = Math.ceil(at * rate);
  const last = Math.floor((at + seconds) * rate);
  const n = samples.length;
  for (let k = first; k <= last; k += 1) {
    const place = loop ? ((k % n) + n) % n : k;
    if (place >= 0 && place < n) samples[place] += wave(k / rate - at);
  }
};

/** Fills the tape from time in seconds. On a loop the wave has to be periodic in the loop's length. */
export const fill = (tape, wave) => {
  for (let k = 0; k < tape.samples.length; k += 1) tape.samples[k] += wave(k / tape.rate);
  return tape;
};

/** White noise from -1 to 1. */
export const noiseOn = (tape, chance) => fill(tape, () => 2 * chance() - 1);

const run = (tape, step) => {
  const { samples, loop } = tape;
  if (loop) for (const x of samples) step(x);
  for (let k = 0; k < samples.length; k += 1) samples[k] = step(samples[k]);
  return tape;
};

/** One-pole low pass at `hertz`. */
export const lowPass = (tape, hertz) => {
  const keep = exponential((-2 * Math.PI * hertz) / tape.rate);
  let y = 0;
  return run(tape, (x) => {
    y = x + (y - x) * keep;
    return y;
  });
};

/** One-pole high pass at `hertz`: what the low pass leaves over. */
export const highPass = (tape, hertz) => {
  const keep = exponential((-2 * Math.PI * hertz) / tape.rate);
  let y = 0;
  return run(tape, (x) => {
    y = x + (y - x) * keep;
    return x - y;
  });
};

/** Keeps what lies between two frequencies, 200 Hz on either side let fall away: a windowed sinc of 20 ms (Hann); not for loops. */
export const band = (tape, low, high) => {
  const half = Math.round(0.01 * tape.rate);
  const taps = Float64Array.from({ length: 2 * half + 1 }, (_, k) => {
    const t = (k - half) / tape.rate;
    const ideal = t === 0 ? 2 * (high - low) : (sine(high * t) - sine(low * t)) / (Math.PI * t);
    return (ideal / tape.rate) * (0.5 + 0.5 * cosine((k - half) / (2 * half + 2)));
  });
  const dry = Float64Array.from(tape.samples);
  for (let k = 0; k < dry.length; k += 1) {
    let sum = 0;
    for (let i = 0; i < taps.length; i += 1) sum += taps[i] * (dry[k + half - i] ?? 0);
    tape.samples[k] = sum;
  }
  return tape;
};

/** What a body with the modes [hertz, quality, weight] makes of the tape: two-pole resonators side by side. */
export const resonate = (tape, modes) => {
  const out = like(tape);
  for (const [hertz, quality, weight] of modes) {
    const radius = exponential((-Math.PI * hertz) / (quality * tape.rate));
    const back = 2 * radius * cosine(hertz / tape.rate);
    const gain = (1 - radius) * weight;
    let y1 = 0;
    let y2 = 0;
    const ring = { ...tape, samples: Float64Array.from(tape.samples) };
    run(ring, (x) => {
      const y = gain * x + back * y1 - radius * radius * y2;
      y2 = y1;
      y1 = y;
      return y;
    });
    for (let k = 0; k < out.samples.length; k += 1) out.samples[k] += ring.samples[k];
  }
  return out;
};

/** Each sample times weigh(t). */
export const shape = (tape, weigh) => {
  for (let k = 0; k < tape.samples.length; k += 1) tape.samples[k] *= weigh(k / tape.rate);
  return tape;
};

/** Sums [tape, weight] parts into `tape`, each first brought to an RMS of 1, so that a weight says how strong it is. */
export const mix = (tape, parts) => {
  for (const [part, weight] of parts) {
    let power = 0;
    for (const x of part.samples) power += x * x;
    const gain = weight / Math.sqrt(power / part.samples.length);
    for (let k = 0; k < tape.samples.length; k += 1) tape.samples[k] += gain * part.samples[k];
  }
  return tape;
};

/** Adds later copies [seconds, weight], dulled by `hertz`: what trees and walls send back. */
export const echo = (tape, hertz, copies) => {
  const dry = { ...tape, samples: Float64Array.from(tape.samples) };
  lowPass(dry, hertz);
  const n = tape.samples.length;
  for (const [seconds, weight] of copies) {
    const late = Math.round(seconds * tape.rate);
    for (let k = 0; k < n; k += 1) {
      const from = k - late;
      if (from >= 0) tape.samples[k] += weight * dry.samples[from];
      else if (tape.loop) tape.samples[k] += weight * dry.samples[((from % n) + n) % n];
    }
  }
  return tape;
};

/** A hump from 0 to 1 and back over `seconds`, with rise and fall of `edge` seconds. */
export const gate = (t, seconds, edge) => {
  if (t <= 0 || t >= seconds) return 0;
  const inside = Math.min(t, seconds - t, edge) / edge;
  return 0.5 - 0.5 * cosine(inside / 2);
};

/** A mode struck at t = 0: [hertz, seconds to 1/e, weight]. */
export const struck = (t, modes) => {
  let sum = 0;
  for (const [hertz, decay, weight] of modes) sum += weight * exponential(-t / decay) * sine(hertz * t);
  return sum;
};
