// How loud a tape is to the ear, so that all files can be brought to one level and the level at the ear alone decides.
// Method: A-weighted mean square in windows of 125 ms (the "fast" time of a sound level meter), the loudest counts.
// Source: IEC 61672-1, frequency weighting A as the analytic expression of its annex E.
import { cosine, sine } from './arithmetic.mjs';

/** Square of the A-weighting's factor at a frequency in Hz; 1 at 1 kHz. */
export const weightA = (hertz) => {
  const f = hertz * hertz;
  const r = (12194.217 ** 2 * f * f) / ((f + 20.598997 ** 2) * (f + 12194.217 ** 2));
  const square = (r * r) / ((f + 107.65265 ** 2) * (f + 737.86223 ** 2));
  return square * 1.5848931924611136; // +2.00 dB, which brings 1 kHz to 0 dB
};

/** In-place radix-2 Fourier transform of real and imaginary parts, a power of two long. */
export const transform = (real, imaginary) => {
  const n = real.length;
  for (let i = 1, j = 0; i < n; i += 1) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      [real[i], real[j]] = [real[j], real[i]];
      [imaginary[i], imaginary[j]] = [imaginary[j], imaginary[i]];
    }
  }
  for (let size = 2; size <= n; size *= 2) {
    const half = size / 2;
    for (let k = 0; k < half; k += 1) {
      const c = cosine(k / size);
      const s = -sine(k / size);
      for (let i = k; i < n; i += size) {
        const j = i + half;
        const re = real[j] * c - imaginary[j] * s;
        const im = real[j] * s + imaginary[j] * c;
        real[j] = real[i] - re;
        imaginary[j] = imaginary[i] - im;
        real[i] += re;
        imaginary[i] += im;
      }
    }
  }
};

/** Loudest A-weighted RMS in any 125 ms; a full-scale 1 kHz sine gives 0.707. */
export const loudestA = ({ samples, rate }) => {
  const width = Math.round(rate / 8);
  let size = 1;
  while (size < width) size *= 2;
  let most = 0;
  for (let from = -(width >> 1); from + (width >> 1) < samples.length; from += width >> 2) {
    const real = new Float64Array(size);
    const imaginary = new Float64Array(size);
    for (let k = 0; k < width; k += 1) {
      const hann = 0.5 - 0.5 * cosine((k + 0.5) / width);
      real[k] = (samples[from + k] ?? 0) * hann;
    }
    transform(real, imaginary);
    let power = 0;
    for (let k = 1; k < size / 2; k += 1) {
      power += 2 * (real[k] * real[k] + imaginary[k] * imaginary[k]) * weightA((k * rate) / size);
    }
    most = Math.max(most, power / (size * width * 0.375)); // 0.375: mean square of the Hann window
  }
  return Math.sqrt(most);
};
