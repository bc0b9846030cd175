// Sine, exponential and chance from the four operations alone, which are exact to the bit on every machine, so that the
// committed files can be made again byte for byte. Method: Taylor series after range reduction; mulberry32; FNV-1a.

/** Sine of an angle in turns; error below 1e-11. */
export const sine = (turns) => {
  let part = turns - Math.round(turns);
  if (part > 0.25) part = 0.5 - part;
  else if (part < -0.25) part = -0.5 - part;
  const x = 2 * Math.PI * part;
  const square = x * x;
  let term = x;
  let sum = x;
  for (let k = 2; k <= 16; k += 2) {
    term *= -square / (k * (k + 1));
    sum += term;
  }
  return sum;
};

/** Cosine of an angle in turns. */
export const cosine = (turns) => sine(turns + 0.25);

/** e to the x; relative error below 1e-7 for |x| under 60. */
export const exponential = (x) => {
  const z = x / 1024;
  let result = 1 + z * (1 + (z / 2) * (1 + (z / 3) * (1 + (z / 4) * (1 + z / 5))));
  for (let k = 0; k < 10; k += 1) result *= result;
  return result;
};

const seedOf = (word) => {
  let hash = 0x811c9dc5;
  for (let k = 0; k < word.length; k += 1) hash = Math.imul(hash ^ word.charCodeAt(k), 0x01000193);
  return hash >>> 0;
};

/** A seeded generator of numbers from 0 up to 1; the same word gives the same row. */
export const chanceFrom = (word) => {
  let state = seedOf(word);
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};
