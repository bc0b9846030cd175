// What instruments and radios say. The dispatcher's two notes keep away from the pairs reserved for public warning
// (853 and 960 Hz, and 1050 Hz in the United States). What comes over a radio keeps to a voice channel, 300 to 3000 Hz.
import { sine } from './arithmetic.mjs';
import { add, band, gate, like, mix, noiseOn, shape } from './tape.mjs';

/** A voltage detector's beeper: four beeps a second. */
export const detectorTone = (tape) => {
  for (let k = 0; k < 4; k += 1) {
    const beep = (t) => gate(t, 0.13, 0.004) * (sine(2640 * t) + 0.18 * sine(5280 * t));
    add(tape, 0.06 + 0.25 * k, 0.13, beep);
  }
};

/** Two rising notes ahead of the dispatcher's voice. */
export const dispatcherTone = (tape) => {
  for (const [at, hertz] of [
    [0.01, 720],
    [0.23, 1180],
  ]) {
    add(tape, at, 0.2, (t) => gate(t, 0.2, 0.008) * (sine(hertz * t) + 0.1 * sine(2 * hertz * t)));
  }
};

/** A receiver with nothing to receive: it opens, hisses through a voice channel's band, and shuts. */
export const radioSquelch = (tape, chance) => {
  const hiss = band(noiseOn(like(tape), chance), 350, 2850);
  shape(hiss, (t) => (t < 0.36 ? 0.55 * gate(t - 0.01, 1, 0.004) : gate(t - 0.3, 0.2, 0.003)));
  mix(tape, [[hiss, 1]]);
};
